// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/record.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/core/record/drawn.h"

namespace lapwing {
namespace {

using test::Drawn;
using Json = nlohmann::ordered_json;
using ::testing::HasSubstr;

/// Calls `visit(place, node)` for every node; `place` is written as the reader writes it.
void walk(Json& node, const std::string& place, const auto& visit) {
    if (!place.empty()) visit(place, node);
    if (node.is_object())
        for (auto& [name, value] : node.items())
            walk(value, place.empty() ? name : place + '.' + name, visit);
    else if (node.is_array())
        for (std::size_t i = 0; i < node.size(); ++i)
            walk(node[i], fmt::format("{}[{}]", place, i), visit);
}

std::string last_name(const std::string& place) {
    std::string name = place.substr(place.rfind('.') + 1);
    return name.substr(0, name.find('['));
}

/// A dossier in which every kind of record occurs.
Dossier full_dossier() {
    for (std::uint64_t seed = 1;; ++seed) {
        auto dossier = Drawn(seed).dossier();
        if (dossier.testers.empty() || dossier.visits.empty()) continue;
        const auto& visit = dossier.visits.front();
        if (!visit.readings.empty() && !visit.exits.empty() && !visit.clearances.empty() &&
            !visit.attachments.empty() && !visit.notes.empty() && !visit.plan.empty() &&
            !dossier.engine.tags.empty() && dossier.engine.bore)
            return dossier;
    }
}

RC_GTEST_PROP(Record, EveryDrawnDossierCanExist, (std::uint64_t seed)) {
    for (const auto& record : records_of(Drawn(seed).dossier()))
        std::visit(
            [](const auto& value) {
                const auto fine = checked(value);
                RC_LOG() << (fine ? "" : fine.error().english);
                RC_ASSERT(fine.has_value());
                RC_ASSERT(*fine == value);
            },
            record);
}

RC_GTEST_PROP(Record, DossierComesBackToTheDigit, (std::uint64_t seed)) {
    const auto dossier = Drawn(seed).dossier();
    const auto text = to_json(dossier);
    const auto back = dossier_from_json(text);
    RC_LOG() << (back ? "" : back.error().english);
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == dossier);
    RC_ASSERT(to_json(*back) == text);
}

RC_GTEST_PROP(Record, EveryRecordComesBackAlone, (std::uint64_t seed)) {
    for (const auto& record : records_of(Drawn(seed).dossier())) {
        const auto back = record_from_json(kind_of(record), to_json(record));
        RC_ASSERT(back.has_value());
        RC_ASSERT(*back == record);
    }
}

RC_GTEST_PROP(Record, OrderOfRecordsDoesNotMatter, (std::uint64_t seed)) {
    const auto dossier = Drawn(seed).dossier();
    auto records = records_of(dossier);
    std::mt19937_64 random(seed);
    std::ranges::shuffle(records, random);
    RC_ASSERT(dossier_of(records) == dossier);
}

TEST(Record, KeepsFieldsOfANewerMinorVersionWhereTheyStood) {
    auto json = Json::parse(to_json(full_dossier()));
    json["version"] = "1.7";
    json["weather"] = {{"sky", "grey"}};
    json["engine"]["valves"]["material"] = "stellite";
    json["engine"]["odd/na~me"] = nullptr;
    json["engine"]["cylinders"][0]["liner"] = {1, 2.5, Json::array()};
    json["visits"][0]["torques"] = {1, 2, 3};
    json["visits"][0]["session"]["mood"] = true;
    json["visits"][0]["readings"][0]["taken_by"] = "left hand";
    const auto once = dossier_from_json(json.dump());
    ASSERT_TRUE(once) << once.error().english;
    auto written = Json::parse(to_json(*once));
    EXPECT_EQ(written["version"], "1.4");
    written["version"] = "1.7";
    EXPECT_EQ(nlohmann::json(written), nlohmann::json(json));
    // One record after the other, as the store keeps them, loses nothing either.
    std::vector<Record> stored;
    for (const auto& record : records_of(*once))
        stored.push_back(*record_from_json(kind_of(record), to_json(record)));
    EXPECT_EQ(dossier_of(stored), *once);
}

TEST(Record, RefusesEveryValueOfTheWrongType) {
    auto json = Json::parse(to_json(full_dossier()));
    const std::vector<Json> others{nullptr, true, 7, 0.5, "?", Json::array({Json::array()}), {{"x", 1}}};
    int tried = 0;
    walk(json, "", [&](const std::string& place, Json& node) {
        if (place == "format" || place == "version") return;
        const Json right = node;
        for (const auto& wrong : others) {
            if (wrong.type() == right.type() || (wrong.is_number_integer() && right.is_number())) continue;
            node = wrong;
            const auto back = dossier_from_json(json.dump());
            ++tried;
            if (back) {
                ADD_FAILURE() << place << " took " << wrong;
                continue;
            }
            EXPECT_THAT(back.error().english, HasSubstr(place)) << wrong;
            EXPECT_THAT(back.error().code, testing::StartsWith("record."));
        }
        node = right;
    });
    EXPECT_GT(tried, 500);
}

TEST(Record, RefusesEveryUnknownWordIdTimeUnitAndNumber) {
    static const std::set<std::string> free_text{
        "name",     "description",  "tags",   "history", "contact",  "note",    "plug_thread",
        "accuracy", "thread",       "title",  "text",    "oil_name", "adapter", "author",
        "finding",  "caption",      "work",   "parts",   "reason",   "if_left", "job_number",
        "currency", "read_refusal", "format", "version"};
    auto json = Json::parse(to_json(full_dossier()));
    int tried = 0;
    walk(json, "", [&](const std::string& place, Json& node) {
        if (!node.is_string() || free_text.contains(last_name(place))) return;
        const Json right = node;
        node = "nonsense";
        const auto back = dossier_from_json(json.dump());
        node = right;
        ++tried;
        ASSERT_FALSE(back) << place;
        const auto& sentence = back.error().english;
        EXPECT_TRUE(sentence.find(place) != std::string::npos || back.error().code == "record.impossible")
            << place << ": " << sentence;
        EXPECT_THAT(sentence, HasSubstr("nonsense"));
    });
    EXPECT_GT(tried, 80);
}

TEST(Record, RefusesWhatIsMissing) {
    auto json = Json::parse(to_json(full_dossier()));
    const auto without = [&](const Json::json_pointer& pointer) {
        auto less = json;
        less[pointer.parent_pointer()].erase(pointer.back());
        return dossier_from_json(less.dump());
    };
    for (const auto* pointer : {"/engine",
                                "/engine/id",
                                "/engine/made_at",
                                "/engine/cycle",
                                "/engine/cylinders/0/number",
                                "/engine/owner",
                                "/testers/0/gauge",
                                "/testers/0/gauge/full_scale",
                                "/testers/0/home_made",
                                "/visits/0/session",
                                "/visits/0/session/conditions",
                                "/visits/0/session/conditions/heat",
                                "/visits/0/readings/0/id",
                                "/visits/0/readings/0/test",
                                "/visits/0/readings/0/taken_at",
                                "/visits/0/exits/0/loudness",
                                "/visits/0/clearances/0/side",
                                "/visits/0/attachments/0/tie/to",
                                "/visits/0/attachments/0/bytes",
                                "/visits/0/notes/0/done",
                                "/visits/0/plan/0/option"}) {
        const auto back = without(Json::json_pointer(pointer));
        ASSERT_FALSE(back) << pointer;
        EXPECT_EQ(back.error().code, "record.missing") << pointer;
        EXPECT_THAT(back.error().english, HasSubstr(Json::json_pointer(pointer).back()));
    }
    const auto digits = without(Json::json_pointer("/testers/0/gauge/full_scale/digits"));
    ASSERT_FALSE(digits);
    EXPECT_THAT(digits.error().english, HasSubstr("testers[0].gauge.full_scale.digits"));
    const auto name = without(Json::json_pointer("/engine/name"));
    ASSERT_FALSE(name);
    EXPECT_EQ(name.error().code, "record.impossible");
}

TEST(Record, NamesThePlaceOfAWrongUnit) {
    auto json = Json::parse(to_json(full_dossier()));
    auto& reading = json["visits"][0]["readings"][0];
    reading = {{"id", reading["id"]},
               {"session", reading["session"]},
               {"test", "dry"},
               {"cylinder", 1},
               {"taken_at", "2026-03-14T09:30:00Z"},
               {"tag", "as found"},
               {"oiled", "no"},
               {"from", "typed"},
               {"cranked_by", "starter"},
               {"final", {{"digits", "6.4"}, {"unit", "furlong"}}}};
    const auto back = dossier_from_json(json.dump());
    ASSERT_FALSE(back);
    EXPECT_EQ(back.error().code, "record.unknown_unit");
    EXPECT_THAT(back.error().english, HasSubstr("visits[0].readings[0].final.unit"));
    EXPECT_THAT(back.error().english, HasSubstr("bar"));
}

TEST(Record, RefusesNumbersThatAreNone) {
    const auto text = to_json(full_dossier());
    auto json = Json::parse(text);
    for (const char* digits :
         {"NaN", "inf", "1e5", "0x10", "6,4", "+6", ".5", "7.", "", "--1", "1234567890123456789012345"}) {
        json["testers"][0]["gauge"]["full_scale"]["digits"] = digits;
        const auto back = dossier_from_json(json.dump());
        ASSERT_FALSE(back) << digits;
        EXPECT_THAT(back.error().english, HasSubstr("testers[0].gauge.full_scale.digits")) << digits;
    }
    for (const char* number :
         {"NaN", "1e400", "-1e400", "Infinity", "1.5", "99999999999999999999", "\"1\""}) {
        auto broken = text;
        const std::string key = "\"intake_valves\": ";
        const auto at = broken.find(key) + key.size();
        broken.replace(at, broken.find(',', at) - at, number);
        EXPECT_FALSE(dossier_from_json(broken)) << number;
        // In a field that this version doesn't know a number must be one, too.
        auto unknown = text;
        unknown.insert(unknown.find("\"engine\""), fmt::format("\"later\": {}, ", number));
        EXPECT_EQ(dossier_from_json(unknown).has_value(),
                  std::string(number) == "1.5" || number[0] == '9' || number[0] == '"')
            << number;
    }
}

TEST(Record, RefusesANewerMajorVersionPolitely) {
    auto json = Json::parse(to_json(full_dossier()));
    json["version"] = "2.0";
    json["engine"] = "told quite differently";
    const auto back = dossier_from_json(json.dump());
    ASSERT_FALSE(back);
    EXPECT_EQ(back.error().code, "record.newer_major");
    EXPECT_THAT(back.error().english, HasSubstr("Update"));
    for (const auto* version : {"0.9", "1", "one", "1.x", "-1.0", "1.0.0", ""}) {
        json["version"] = version;
        EXPECT_FALSE(dossier_from_json(json.dump())) << version;
    }
}

TEST(Record, AWordOfANewerMinorVersionAsksForAnUpdate) {
    const auto right = Json::parse(to_json(full_dossier()));
    const std::vector<std::pair<Json::json_pointer, std::string>> spoilt{
        {Json::json_pointer("/engine/fuel"), "hydrogen"},
        {Json::json_pointer("/visits/0/readings/0/test"), "sniff"},
        {Json::json_pointer("/engine/bore/value/unit"), "at"}};
    for (const auto& [place, word] : spoilt) {
        auto json = right;
        ASSERT_TRUE(json.contains(place)) << place;
        json[place] = word;
        json["version"] = "1.9";
        const auto newer = dossier_from_json(json.dump());
        ASSERT_FALSE(newer) << place;
        EXPECT_EQ(newer.error().code, "record.newer_minor");
        EXPECT_THAT(newer.error().english, HasSubstr("newer Lapwing"));
        EXPECT_THAT(newer.error().english, HasSubstr("Update"));
        EXPECT_THAT(newer.error().english, HasSubstr(word));
        // Of the version that this one writes such a word is a fault.
        json["version"] = right["version"];
        EXPECT_THAT(dossier_from_json(json.dump()).error().code, testing::StartsWith("record.unknown_"));
    }
}

TEST(Record, WhatAFileLacksIsListedAndHeldAgainstItsAttachments) {
    auto dossier = full_dossier();
    const auto& photo = dossier.visits[0].attachments.at(0);
    dossier.missing = {{photo.id, Loss::damaged}};
    const auto text = to_json(dossier);
    EXPECT_EQ(dossier_from_json(text), dossier);
    auto json = Json::parse(text);
    json["missing"][0]["since"] = "yesterday";  // a field of a later version
    const auto with_more = dossier_from_json(json.dump());
    ASSERT_TRUE(with_more) << with_more.error().english;
    EXPECT_EQ(*with_more, dossier);
    json["missing"].push_back(json["missing"][0]);
    EXPECT_EQ(dossier_from_json(json.dump()).error().code, "record.missing_of_nothing");
    json["missing"] = {{{"attachment", dossier.engine.id.text()}, {"loss", "lost"}}};
    EXPECT_EQ(dossier_from_json(json.dump()).error().code, "record.missing_of_nothing");
    json["missing"] = {{{"attachment", photo.id.text()}, {"loss", "eaten"}}};
    EXPECT_EQ(dossier_from_json(json.dump()).error().code, "record.unknown_word");
}

TEST(Record, RefusesWhatIsNoSession) {
    for (const char* text :
         {"", "{", "[]", "{}", "null", "\"lapwing-session\"", "{\"format\":\"other\"}", "\xff",
          "{\"format\":\"lapwing-session\"}", "{\"format\":\"lapwing-session\",\"version\":1}",
          "{\"format\":\"lapwing-session\",\"version\":\"1.0\"}"})
        EXPECT_FALSE(dossier_from_json(text)) << text;
}

TEST(Record, RefusesDepthSizeAndNamesSaidTwice) {
    const auto nested = [](int depth) {
        return "{\"x\":" + std::string(static_cast<std::size_t>(depth), '[') +
               std::string(static_cast<std::size_t>(depth), ']') + "}";
    };
    const auto code = [](const std::string& text) {
        return record_from_json(RecordKind::note, text).error().code;
    };
    EXPECT_EQ(code(nested(63)), "record.missing");
    EXPECT_EQ(code(nested(64)), "record.too_deep");
    EXPECT_EQ(code(nested(1'000'000)), "record.too_deep");
    EXPECT_EQ(code("{\"x\":1,\"y\":{\"x\":2},\"x\":3}"), "record.twice");
    EXPECT_EQ(code(std::string(longest_json + 1, ' ')), "record.too_large");
}

TEST(Record, RefusesRecordsThatDontBelongTogether) {
    const auto dossier = full_dossier();
    const auto code = [](std::vector<Record> records) { return dossier_of(std::move(records)).error().code; };
    auto records = records_of(dossier);
    auto twice = records;
    twice.push_back(records.back());
    EXPECT_EQ(code(twice), "record.id_twice");
    auto headless = records;
    headless.erase(headless.begin());
    EXPECT_EQ(code(headless), "record.no_engine");
    auto two = records;
    auto other = dossier.engine;
    other.id.uuid = Drawn(99).uuid();
    two.push_back(other);
    EXPECT_EQ(code(two), "record.two_engines");
    auto stray = records;
    auto reading = dossier.visits[0].readings[0];
    reading.id.uuid = Drawn(98).uuid();
    reading.session.uuid = Drawn(97).uuid();
    stray.push_back(reading);
    EXPECT_EQ(code(stray), "record.orphan");
    auto foreign = records;
    auto session = dossier.visits[0].session;
    session.id.uuid = Drawn(96).uuid();
    session.engine.uuid = Drawn(95).uuid();
    foreign.push_back(session);
    EXPECT_EQ(code(foreign), "record.other_engine");
}

TEST(Record, OwnerStaysOutInEveryField) {
    auto json = Json::parse(to_json(full_dossier()));
    json["engine"]["owner"] = {{"name", "Mill Lane"}, {"contact", "by the pump"}, {"street", "Mill Lane 1"}};
    json["engine"]["colour"] = "green";
    const auto dossier = dossier_from_json(json.dump());
    ASSERT_TRUE(dossier) << dossier.error().english;
    const auto text = to_json(Record(without_owner(dossier->engine)));
    EXPECT_EQ(text.find("Mill Lane"), std::string::npos);
    EXPECT_EQ(text.find("pump"), std::string::npos);
    EXPECT_THAT(text, HasSubstr("green"));
}

TEST(Record, KindsParentsAndIds) {
    const auto dossier = full_dossier();
    const auto& visit = dossier.visits[0];
    EXPECT_EQ(kind_of(Record(visit.plan[0])), RecordKind::plan_line);
    EXPECT_EQ(kind_of(Record(visit.exits[0])), RecordKind::exit_note);
    EXPECT_EQ(parent_of(Record(visit.exits[0])), visit.session.id.uuid);
    EXPECT_EQ(parent_of(Record(visit.session)), dossier.engine.id.uuid);
    EXPECT_TRUE(parent_of(Record(dossier.engine)).is_nil());
    EXPECT_TRUE(parent_of(Record(dossier.testers[0])).is_nil());
    EXPECT_EQ(id_of(Record(visit.notes[0])), visit.notes[0].id.uuid);
}

}  // namespace
}  // namespace lapwing
