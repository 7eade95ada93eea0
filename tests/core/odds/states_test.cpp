// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/states.h"

#include <gtest/gtest.h>

#include "core/findings/touched.h"
#include "core/odds/evidence.h"
#include "core/odds/verdict.h"
#include "tests/core/odds/bench.h"

/// What stays of as-found evidence after something was done to the cylinder.
namespace lapwing::odds {
namespace {

using findings::Path;

bool says(const std::vector<findings::Message>& messages, std::string_view code) {
    return std::ranges::any_of(messages, [&](const auto& message) { return message.code == code; });
}

double width(const CylinderOdds& odds, Path path) {
    return odds.path(path)->share.hi - odds.path(path)->share.lo;
}

CylinderOdds of_tag(Odds& bench, Tag tag) {
    OddsOptions options;
    options.seed = 1;
    options.tag = tag;
    options.surfaces = &Odds::surfaces();
    return where_it_leaks(bench.dossier, bench.visit(), Odds::reference(), options)->cylinders.front();
}

void hear_as(Odds& bench, Exit exit, Loudness loudness, ListenedBy by = ListenedBy::ear) {
    bench.hear(1, exit, loudness);
    bench.visit().exits.back().by = by;
}

/// An exhaust valve is heard; nothing at soap and bubbles, little at the breather.
void as_found(Odds& bench) {
    bench.dry(1, "6.3", "bar");
    bench.leak(1, "5.50", "2.60", "bar");
    hear_as(bench, Exit::exhaust, Loudness::strong);
    hear_as(bench, Exit::intake, Loudness::nothing);
    hear_as(bench, Exit::breather, Loudness::faint);
    hear_as(bench, Exit::joint, Loudness::nothing, ListenedBy::soapy_water);
    hear_as(bench, Exit::coolant, Loudness::nothing, ListenedBy::bubbles);
}

TEST(EarlierStates, NarrowWhatWasNotTouched) {
    Odds bench(1);
    as_found(bench);
    bench.leak(1, "5.50", "4.00", "bar").tag = Tag::after_staking;
    const CylinderOdds now = bench.first();
    const CylinderOdds alone = of_tag(bench, Tag::after_staking);
    EXPECT_TRUE(says(now.reasons, "odds.earlier_state_shared"));
    EXPECT_FALSE(says(now.reasons, "odds.earlier_state_apart"));
    // Rings were heard faintly as found and are the same rings.
    EXPECT_LT(now.path(Path::rings)->fault, 0.5 * alone.path(Path::rings)->fault);
    // Soap and bubbles showed nothing, and nobody touched the joint since.
    for (const Path path : {Path::gasket, Path::coolant}) {
        EXPECT_LT(now.path(path)->fault, 0.3 * alone.path(path)->fault);
        EXPECT_LT(width(now, path), width(alone, path));
    }
    // What still leaks is mostly one of the valves, then.
    const auto valves = [](const CylinderOdds& odds) {
        return odds.path(Path::intake)->main + odds.path(Path::exhaust)->main;
    };
    EXPECT_GT(valves(now), valves(alone) + 0.1);
}

TEST(EarlierStates, NarrowRingsThatWereHeard) {
    Odds bench(1);
    bench.dry(1, "6.3", "bar");
    bench.leak(1, "5.50", "3.20", "bar");
    bench.hear(1, Exit::breather, Loudness::strong);
    bench.hear(1, Exit::intake, Loudness::nothing);
    bench.hear(1, Exit::exhaust, Loudness::nothing);
    bench.leak(1, "5.50", "3.20", "bar").tag = Tag::after_staking;
    const CylinderOdds now = bench.first();
    const CylinderOdds alone = of_tag(bench, Tag::after_staking);
    EXPECT_LT(width(now, Path::rings), 0.6 * width(alone, Path::rings));
    EXPECT_GT(now.path(Path::rings)->main, 0.9);
    EXPECT_FALSE(says(now.reasons, "odds.not_listened"));
}

TEST(EarlierStates, LeaveFreeWhatWasTouched) {
    Odds bench(1);
    as_found(bench);
    bench.leak(1, "5.50", "4.00", "bar").tag = Tag::after_staking;
    const CylinderOdds now = bench.first();
    const CylinderOdds before = of_tag(bench, Tag::as_found);
    EXPECT_GT(before.path(Path::exhaust)->main, 0.95);
    EXPECT_LT(before.path(Path::intake)->main, 0.02);
    // How loud a valve was as found says nothing of it as it is: only the chances of fault before any
    // evidence tell the two apart.
    const auto assumptions = *built_in_assumptions();
    const double by_prior = assumptions.at("exhaust-fault") / assumptions.at("intake-fault");
    const double ratio = now.path(Path::exhaust)->main / now.path(Path::intake)->main;
    EXPECT_GT(ratio, 0.6 * by_prior);
    EXPECT_LT(ratio, 1.7 * by_prior);

    // And a valve that seals now is not suspected for what it was.
    Odds sealed(1);
    as_found(sealed);
    sealed.leak(1, "5.50", "5.35", "bar").tag = Tag::after_staking;
    EXPECT_GT(sealed.first().seals_well, 0.9);
    EXPECT_LT(sealed.first().path(Path::exhaust)->fault, 0.1);
}

TEST(EarlierStates, OilTouchesTheRingsAndRunningTheJointsNot) {
    Odds soaked(1);
    as_found(soaked);
    soaked.leak(1, "5.50", "2.70", "bar").tag = Tag::after_oil_soak;
    EXPECT_GT(soaked.first().path(Path::exhaust)->main, 0.9);

    Odds ran(1);
    as_found(ran);
    ran.leak(1, "5.50", "4.00", "bar").tag = Tag::after_running;
    const CylinderOdds now = ran.first();
    EXPECT_TRUE(says(now.reasons, "odds.earlier_state_ran"));
    EXPECT_LT(now.path(Path::gasket)->fault, 0.3 * of_tag(ran, Tag::after_running).path(Path::gasket)->fault);
    EXPECT_LT(now.path(Path::exhaust)->main, 0.7);
}

TEST(EarlierStates, AreLeftOutWhereNothingIsTheSame) {
    for (const Tag tag : {Tag::after_repair, Tag::as_found}) {
        Odds bench(1);
        as_found(bench);
        // As found after something else: the tags are out of order, and nobody knows what was done.
        if (tag == Tag::as_found)
            for (Reading& reading : bench.visit().readings)
                reading.tag = Tag::after_staking;
        if (tag == Tag::as_found)
            for (ExitNote& note : bench.visit().exits)
                note.tag = Tag::after_staking;
        bench.leak(1, "5.50", "4.00", "bar").tag = tag;
        const CylinderOdds now = bench.first();
        EXPECT_TRUE(says(now.reasons, "odds.earlier_state_apart"));
        EXPECT_FALSE(says(now.reasons, "odds.earlier_state_shared"));
        const CylinderOdds alone = of_tag(bench, tag);
        for (const PathOdds& path : now.paths)
            EXPECT_EQ(path.share.mean, alone.path(path.path)->share.mean);
    }
}

TEST(EarlierStates, AnAdjustedValveIsTheOneThatWasTouched) {
    Odds bench(1);
    bench.wanted_clearances();
    as_found(bench);
    bench.clearance(1, ValveSide::intake, "0.00");
    bench.visit().clearances.back().left = bench.visit().clearances.back().found;
    EXPECT_TRUE(findings::touches(Tag::after_adjustment, Path::intake, bench.visit(), 1));
    EXPECT_FALSE(findings::touches(Tag::after_adjustment, Path::exhaust, bench.visit(), 1));
    bench.leak(1, "5.50", "2.70", "bar").tag = Tag::after_adjustment;
    EXPECT_GT(bench.first().path(Path::exhaust)->main, 0.9);
    // Which one was turned is not noted: it may have been either.
    bench.visit().clearances.clear();
    EXPECT_TRUE(findings::touches(Tag::after_adjustment, Path::exhaust, bench.visit(), 1));
    EXPECT_FALSE(findings::touches(Tag::after_adjustment, Path::rings, bench.visit(), 1));
}

TEST(EarlierStates, AValvePutRightSinceIsNoLongerWhatWasHeard) {
    Odds bench(1);
    bench.wanted_clearances();
    as_found(bench);
    bench.clearance(1, ValveSide::exhaust, "0.02");
    const CylinderOdds before = bench.first();
    EXPECT_GT(before.path(Path::exhaust)->main, 0.9);
    bench.visit().clearances.back().left = Odds::mm("0.15");
    const CylinderOdds now = bench.first();
    EXPECT_TRUE(says(now.reasons, "odds.retest_adjusted"));
    EXPECT_TRUE(now.unsure);
    EXPECT_FALSE(has_verdict(now));
    EXPECT_EQ(headline_of(now, Odds::reference()).code, "odds.retest_adjusted");
    EXPECT_EQ(std::get<findings::Word>(headline_of(now, Odds::reference()).args.at(1)),
              findings::word_of(Path::exhaust));
    // Nothing that was measured tells of the valve as it is: it may well be sound.
    EXPECT_LT(now.path(Path::exhaust)->fault, 0.5 * before.path(Path::exhaust)->fault);
    const auto tests = bench.odds().next_tests;
    EXPECT_TRUE(std::ranges::any_of(
        tests, [](const NextTest& test) { return test.test == findings::Action::leak_down; }));
    // Tested again, and not listened to: what was heard before is not what leaks now.
    bench.leak(1, "5.50", "4.00", "bar").tag = Tag::after_adjustment;
    const CylinderOdds again = bench.first();
    EXPECT_FALSE(says(again.reasons, "odds.retest_adjusted"));
    EXPECT_EQ(headline_of(again, Odds::reference()).code, "odds.not_listened_since");
    hear_as(bench, Exit::intake, Loudness::strong);
    bench.visit().exits.back().tag = Tag::after_adjustment;
    EXPECT_FALSE(says(bench.first().reasons, "odds.not_listened_since"));
}

TEST(EarlierStates, AContradictionInOneIsNotBuiltOn) {
    Odds bench(1);
    bench.leak(1, "5.50", "5.35", "bar");
    for (const Exit exit : {Exit::intake, Exit::exhaust, Exit::breather})
        bench.hear(1, exit, Loudness::strong);
    bench.leak(1, "5.50", "4.00", "bar").tag = Tag::after_staking;
    const CylinderOdds now = bench.first();
    EXPECT_TRUE(says(now.reasons, "odds.earlier_state_apart"));
    EXPECT_TRUE(now.contradictions.empty());
    EXPECT_FALSE(now.unsure);
}

TEST(EarlierStates, AreOrderedByTheirNewestReading) {
    Odds bench(1);
    bench.leak(1, "5.50", "4.00", "bar");
    bench.leak(1, "5.50", "4.10", "bar").tag = Tag::after_staking;
    bench.leak(1, "5.50", "4.20", "bar").tag = Tag::after_oil_soak;
    const auto states = states_of(bench.visit(), 1);
    ASSERT_EQ(states.size(), 3U);
    EXPECT_EQ(states[0].tag, Tag::after_oil_soak);
    EXPECT_EQ(states[1].tag, Tag::after_staking);
    EXPECT_EQ(states[2].tag, Tag::as_found);
    const auto evidence =
        evidence_of(bench.dossier, bench.visit(), Odds::reference(), *built_in_assumptions(), {});
    const auto& earlier = evidence.cylinders.front().earlier;
    ASSERT_EQ(earlier.size(), 2U);
    EXPECT_FALSE(earlier[0].same[0]);  // rings, by the oil
    EXPECT_TRUE(earlier[0].same[1]);
    EXPECT_TRUE(earlier[1].same[0]);
    EXPECT_FALSE(earlier[1].same[1]);  // a valve, by the staking
}

}  // namespace
}  // namespace lapwing::odds
