// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <string>

#include "core/findings/cautions.h"
#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

TEST(ReferenceData, BuiltInFilesRead) {
    const auto reference = built_in_reference();
    ASSERT_TRUE(reference.has_value()) << reference.error().english;
    EXPECT_EQ(reference->spread.size(), 4U);
    EXPECT_EQ(reference->deciding_band().id, "trade");
}

// A file of an earlier version knows nothing of what is asked for since.
TEST(ReferenceData, WhatAnOlderFileLacksIsTakenFromThisProgramAndNamed) {
    const ReferenceTexts own = built_in_texts();
    const auto without = [](std::string_view text, const std::string& id) {
        std::string out(text);
        const auto at = out.find("{ \"" + id);
        const auto end = out.find("\n    {", at);
        return at == std::string::npos || end == std::string::npos ? std::string() : out.erase(at, end - at);
    };
    ReferenceTexts older = own;
    const std::string assumptions = without(own.assumptions, "id\": \"drift\"");
    ASSERT_FALSE(assumptions.empty());
    older.assumptions = assumptions;
    EXPECT_EQ(read_reference(older).error().code, "reference.malformed");
    const auto filled = read_reference(older, &own);
    ASSERT_TRUE(filled.has_value()) << filled.error().english;
    EXPECT_EQ(filled->filled_in, (std::vector<FilledIn>{{"assumptions.json", "drift"}}));
    EXPECT_EQ(filled->assumed("drift"), Bench::reference().assumed("drift"));
    // A number that is there stays, though this program's own is another.
    std::string changed = assumptions;
    const std::string was = "\"id\": \"battery-low\", \"value\": 11.8";
    ASSERT_NE(changed.find(was), std::string::npos);
    changed.replace(changed.find(was), was.size(), "\"id\": \"battery-low\", \"value\": 11.2");
    older.assumptions = changed;
    EXPECT_DOUBLE_EQ(read_reference(older, &own)->assumed("battery-low"), 11.2);
    // Nothing is mended that is there and wrong.
    changed.replace(changed.find("\"value\": 11.2"), 13, "\"value\": \"x\"");
    older.assumptions = changed;
    EXPECT_EQ(read_reference(older, &own).error().code, "reference.malformed");
    EXPECT_TRUE(read_reference(own, &own)->filled_in.empty());
    older = own;
    older.exits = "[]";
    EXPECT_EQ(read_reference(older, &own).error().code, "reference.malformed");
    older.exits = R"({"version": 1, "exits": 3})";
    EXPECT_EQ(read_reference(older, &own).error().code, "reference.malformed");
}

TEST(ReferenceData, EveryPublishedValueNamesItsSource) {
    const Reference& reference = Bench::reference();
    const auto check = [](const auto& list) {
        for (const auto& entry : list) {
            EXPECT_EQ(entry.basis.kind == BasisKind::published, !entry.basis.source.empty()) << entry.id;
            EXPECT_FALSE(entry.basis.comment.empty()) << entry.id;
        }
    };
    check(reference.spread);
    check(reference.leakage);
    check(reference.testers);
    check(reference.assumptions);
    check(reference.typical_cranking);
}

TEST(ReferenceData, AssumptionsComeInSi) {
    const Reference& reference = Bench::reference();
    EXPECT_DOUBLE_EQ(reference.assumed("restrictor-cd"), 0.85);
    EXPECT_DOUBLE_EQ(reference.assumed("restrictor-diameter"), 1.016e-3);
    EXPECT_DOUBLE_EQ(reference.assumed("gauge-class"), 0.025);
    EXPECT_DOUBLE_EQ(reference.assumed("battery-low"), 11.8);
    // NIST SP 811: 1 psi = 6.894757 kPa.
    EXPECT_NEAR(reference.assumed("decompressor-low"), 57 * 6894.757, 0.1);
}

// Working assumptions of the project.
TEST(ReferenceData, HowAGaugesErrorDividesIsHandedToTheGauge) {
    const uncertainty::ErrorShares shares = Bench::reference().error_shares();
    EXPECT_DOUBLE_EQ(shares.offset, 0.4);
    EXPECT_DOUBLE_EQ(shares.gain, 0.2);
}

TEST(ReferenceData, CautionsStandWhereTheDangerIs) {
    const Reference& reference = Bench::reference();
    for (const char* place :
         {"dry", "leak-down", "wet", "exits", "staking", "start", "session", "adapter", "tdc", "crankcase"})
        EXPECT_FALSE(reference.cautions_at(place).empty()) << place;
    EXPECT_TRUE(reference.cautions_at("settings").empty());
}

std::vector<std::string> ids(const std::vector<const Caution*>& cautions) {
    std::vector<std::string> out;
    for (const Caution* caution : cautions)
        out.push_back(caution->id);
    return out;
}

// A diesel has no sparks at its plug holes, but injection lines that can hurt. Common practice, no source.
TEST(ReferenceData, ADieselHasCautionsOfItsOwnInsteadOfThoseOfPetrol) {
    const Reference& reference = Bench::reference();
    Engine petrol, diesel;
    diesel.fuel = Fuel::diesel;
    using Ids = std::vector<std::string>;
    EXPECT_EQ(ids(cautions_for(reference, "dry", petrol)), (Ids{"cranking", "adapter"}));
    EXPECT_EQ(ids(cautions_for(reference, "wet", petrol)), (Ids{"cranking", "adapter", "oil"}));
    // The sum of oil is done without an engine at hand, and a diesel has no wet test.
    EXPECT_EQ(ids(reference.cautions_at("wet")), (Ids{"cranking", "adapter", "oil"}));
    EXPECT_EQ(ids(cautions_for(reference, "leak-down", petrol)), (Ids{"adapter", "air"}));
    EXPECT_EQ(ids(cautions_for(reference, "dry", diesel)),
              (Ids{"diesel-lines", "diesel-cranking", "adapter"}));
    EXPECT_EQ(ids(cautions_for(reference, "leak-down", diesel)), (Ids{"diesel-lines", "adapter", "air"}));
    // Where fuel makes no difference, nothing is left out; nobody noted how it is cooled.
    EXPECT_EQ(ids(cautions_for(reference, "exits", diesel)), ids(reference.cautions_at("exits")));
}

TEST(ReferenceData, ACautionThatConcernsOtherEnginesStandsNowhere) {
    const Reference& reference = Bench::reference();
    Engine engine;
    using Ids = std::vector<std::string>;
    EXPECT_EQ(ids(cautions_for(reference, "staking", engine)), Ids{"staking"});
    engine.description = "Flat four of a two-seat aircraft";
    EXPECT_EQ(ids(cautions_for(reference, "staking", engine)), (Ids{"staking", "aircraft"}));
    EXPECT_EQ(ids(cautions_for(reference, "coolant", engine)), Ids{"coolant-cap"});
    engine.cooling = Cooling::air;
    EXPECT_TRUE(cautions_for(reference, "coolant", engine).empty());
    for (const char* work : {"Stake exhaust valve 2 lightly on its seat", "Tried staking",
                             "Ventil freiklopfen", "Asentar la válvula con toques ligeros"})
        EXPECT_TRUE(says_staking(work)) << work;
    for (const char* work : {"Run it until it is warm, then test again", "New rings", "Ventile einstellen"})
        EXPECT_FALSE(says_staking(work)) << work;
}

TEST(ReferenceData, APlaceForOneFuelNamesAFuelAndAPlaceThatIsThere) {
    const Reference& reference = Bench::reference();
    int found = 0;
    for (const Caution& caution : reference.cautions)
        for (const std::string& place : caution.places)
            if (const auto comma = place.find(','); comma != std::string::npos) {
                ++found;
                ASSERT_EQ(place.substr(comma, 2), ", ") << caution.id;
                EXPECT_TRUE(from_word<Fuel>(place.substr(comma + 2))) << caution.id << ": " << place;
                EXPECT_FALSE(reference.cautions_at(place.substr(0, comma)).empty()) << place;
            }
    EXPECT_GT(found, 0);
}

// Oil in a diesel's small chamber can lock it or fire. Common practice, no source.
TEST(ReferenceData, OilingTheBoresIsNotAskedOfADiesel) {
    EXPECT_FALSE(Bench::reference().prepare_reason(PrepareStep::bores_oiled)->diesel);
}

TEST(ReferenceData, ExitsNamePathsByStrokeCycle) {
    const Reference& reference = Bench::reference();
    EXPECT_EQ(reference.path_of(Exit::exhaust, StrokeCycle::four), Path::exhaust);
    EXPECT_EQ(reference.path_of(Exit::exhaust, StrokeCycle::two), Path::rings);
    EXPECT_EQ(reference.path_of(Exit::breather, StrokeCycle::four), Path::rings);
    EXPECT_EQ(reference.path_of(Exit::other, StrokeCycle::four), std::nullopt);
}

TEST(ReferenceData, MalformedFilesAreRefusedWithTheirPlace) {
    const ReferenceTexts good = built_in_texts();
    ReferenceTexts texts = good;
    texts.wet = "{";
    EXPECT_EQ(read_reference(texts).error().code, "reference.malformed");
    EXPECT_NE(read_reference(texts).error().english.find("wet.json"), std::string::npos);

    const auto changed = [](std::string_view text, const std::string& from, const std::string& to) {
        std::string out(text);
        const auto at = out.find(from);
        EXPECT_NE(at, std::string::npos) << from;
        return out.replace(at, from.size(), to);
    };
    for (const auto& [from, to, place] : {
             std::tuple("\"share\": 0.75", "\"share\": 75", "spread[0]"),
             std::tuple("\"set\": \"80psi\"", "\"set\": \"80\"", "testers[0]"),
             std::tuple("\"kind\": \"lowest of highest\"", "\"kind\": \"lowest\"", "spread[0]"),
             std::tuple("\"version\": 1", "\"version\": 2", "version 2"),
             std::tuple("\"gives_state\": true", "\"gives_state\": false", "exactly one band"),
         }) {
        const std::string limits = changed(good.limits, from, to);
        texts = good;
        texts.limits = limits;
        const auto refused = read_reference(texts);
        ASSERT_FALSE(refused.has_value()) << from;
        EXPECT_NE(refused.error().english.find(place), std::string::npos) << refused.error().english;
    }
    const std::string assumptions = changed(good.assumptions, "\"id\": \"droop\"", "\"id\": \"drop\"");
    texts = good;
    texts.assumptions = assumptions;
    EXPECT_FALSE(read_reference(texts).has_value()) << "an assumption that the code asks for is missing";
    const std::string gauge = changed(good.assumptions, "\"id\": \"gauge-gain\", \"value\": 20",
                                      "\"id\": \"gauge-gain\", \"value\": 70");
    texts.assumptions = gauge;
    EXPECT_FALSE(read_reference(texts).has_value()) << "more than the whole error";
}

}  // namespace
}  // namespace lapwing::findings
