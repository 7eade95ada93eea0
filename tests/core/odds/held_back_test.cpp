// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

/// Where what was measured tells nothing of how much leaks, no odds are shown: they would be little more than
/// the assumptions that they began with. All readings here are made up.

#include <gtest/gtest.h>

#include "core/findings/case.h"
#include "core/odds/evidence.h"
#include "core/odds/verdict.h"
#include "tests/core/odds/bench.h"

namespace lapwing::odds {
namespace {

using findings::Action;
using findings::Path;

std::string headline(const CylinderOdds& odds) {
    return headline_of(odds, findings::Bench::reference()).code;
}

bool says(const std::vector<findings::Message>& messages, std::string_view code) {
    return std::ranges::any_of(messages, [&](const auto& message) { return message.code == code; });
}

void make_diesel(Odds& bench) {
    bench.engine().fuel = Fuel::diesel;
    bench.engine().compression_ratio = {*TypedRatio::make("21.0", units::one), Origin::manual, {}};
    bench.dossier.testers.front().gauge.full_scale = findings::Bench::pressure("60", "bar");
}

TEST(HeldBack, AlikeWhereTheLevelIsNotKnownTellsNothing) {
    Odds alike(4);
    make_diesel(alike);
    alike.dry_all({"15.0", "15.2", "15.0", "14.9"}, "bar");
    for (const CylinderOdds& odds : alike.odds().cylinders) {
        EXPECT_FALSE(has_verdict(odds));
        EXPECT_EQ(headline(odds), "odds.alike_only");
    }
    // One that stands out is told from the others, and so are they.
    Odds uneven(4);
    make_diesel(uneven);
    uneven.dry_all({"27.0", "15.0", "26.5", "27.0"}, "bar");
    for (const CylinderOdds& odds : uneven.odds().cylinders)
        EXPECT_TRUE(has_verdict(odds));
    // Air tells by itself.
    alike.leak(2, "5.50", "5.20", "bar");
    const auto with_air = alike.odds();
    EXPECT_FALSE(has_verdict(with_air.cylinders[0]));
    EXPECT_TRUE(has_verdict(with_air.cylinders[1]));
}

TEST(HeldBack, ALoneReadingOfUnknownLevelTellsNothing) {
    Odds bench(1);
    bench.engine().compression_ratio.reset();
    bench.dry(1, "6.7", "bar");
    EXPECT_EQ(headline(bench.first()), "odds.level_unknown");
    Odds shut(2);
    shut.session().conditions.throttle = Throttle::closed;
    shut.dry(1, "6.0", "bar");
    EXPECT_EQ(headline(shut.first()), "odds.level_unknown");
    shut.dry(2, "6.1", "bar");
    EXPECT_EQ(headline(shut.first()), "odds.alike_only");
    Odds known(1);
    known.dry(1, "6.7", "bar");
    EXPECT_TRUE(has_verdict(known.first()));
}

TEST(HeldBack, WhereEveryCylinderReadsLowSomethingSharedIsLikelier) {
    Odds bench(4);
    bench.dry_all({"5.0", "5.2", "5.1", "5.0"}, "bar");
    for (const CylinderOdds& odds : bench.odds().cylinders) {
        EXPECT_EQ(headline(odds), "odds.low_everywhere");
        EXPECT_FALSE(has_verdict(odds));
    }
    Odds one_sound(4);
    one_sound.dry_all({"5.0", "10.4", "5.1", "5.0"}, "bar");
    for (const CylinderOdds& odds : one_sound.odds().cylinders)
        EXPECT_TRUE(has_verdict(odds));
    bench.leak(3, "5.50", "3.00", "bar");
    for (const CylinderOdds& odds : bench.odds().cylinders)
        EXPECT_NE(headline(odds), "odds.low_everywhere");
}

TEST(HeldBack, WhatWasHeardPointsAndDoesNotMeasure) {
    Odds bench(1);
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.hear(1, Exit::intake, Loudness::nothing);
    bench.hear(1, Exit::breather, Loudness::faint);
    const auto heard = bench.first();
    EXPECT_FALSE(has_verdict(heard));
    EXPECT_EQ(headline_of(heard, findings::Bench::reference()),
              findings::say("odds.heard_points", 1, findings::word_of(Path::exhaust)));
    bench.leak(1, "5.50", "3.00", "bar");
    EXPECT_TRUE(has_verdict(bench.first()));

    Odds quiet(1);
    for (const Exit exit : {Exit::exhaust, Exit::intake, Exit::breather})
        quiet.hear(1, exit, Loudness::nothing);
    EXPECT_EQ(headline(quiet.first()), "odds.heard_only");

    // Out of the joint no air may come, be it ever so little.
    Odds joint(1);
    joint.hear(1, Exit::joint, Loudness::strong);
    joint.visit().exits.back().by = ListenedBy::soapy_water;
    joint.hear(1, Exit::exhaust, Loudness::nothing);
    joint.hear(1, Exit::intake, Loudness::nothing);
    joint.hear(1, Exit::breather, Loudness::nothing);
    EXPECT_EQ(headline(joint.first()), "odds.heard_fault");
}

TEST(HeldBack, NothingIsSaidThatRestsOnOddsThatAreHeldBack) {
    Odds bench(1);
    bench.dry(1, "6.0", "bar");
    const auto shown = bench.first();
    EXPECT_FALSE(shown.expected_after.empty());
    EXPECT_TRUE(says(shown.reasons, "odds.fresh_hone"));
    EXPECT_TRUE(says(shown.reasons, "odds.depends_on_assumptions"));
    bench.wet(1, "3.0", "bar");  // less than dry: it does not fit
    const auto held = bench.first();
    ASSERT_FALSE(has_verdict(held));
    EXPECT_TRUE(held.expected_after.empty());
    EXPECT_FALSE(held.depends_on_assumptions);
    for (const char* code : {"odds.fresh_hone", "odds.depends_on_assumptions", "odds.clearance_first"})
        EXPECT_FALSE(says(held.reasons, code)) << code;
}

TEST(HeldBack, ListeningComesWithTheAirOfALeakDown) {
    Odds bench(2);
    bench.dry_all({"9.8", "6.0"}, "bar");
    for (const NextTest& test : bench.odds().next_tests)
        EXPECT_NE(test.test, Action::listen);
    bench.leak(2, "5.50", "3.20", "bar");
    const auto next = bench.odds().next_tests;
    EXPECT_EQ(next.front().test, Action::listen);
    EXPECT_EQ(next.front().cylinder, 2);
}

TEST(HeldBack, WhatAFailedTesterReadIsLeftOut) {
    Odds bench(1);
    bench.dry(1, "9.8", "bar");
    bench.leak(1, "5.50", "2.50", "bar");
    const auto before = bench.odds();
    EXPECT_LT(before.cylinders[0].seals_well, 0.1);
    TesterCheck failed{TesterCheckKind::outlet_blocked, {}, CheckResult::failed, {}, {}, {}, {}};
    bench.dossier.testers.back().checks = {failed};
    const auto after = bench.odds();
    EXPECT_GT(after.cylinders[0].seals_well, before.cylinders[0].seals_well + 0.3);
    EXPECT_TRUE(says(after.reasons, "odds.tester_failed"));
    Odds all(1);
    all.leak(1, "5.50", "2.50", "bar");
    all.dossier.testers.back().checks = {failed};
    EXPECT_EQ(headline(all.first()), "odds.nothing_left");
    TesterCheck passed{TesterCheckKind::outlet_blocked, {}, CheckResult::passed, {}, {}, {}, {}};
    passed.at.unix_ms = 1;
    bench.dossier.testers.back().checks.push_back(passed);
    EXPECT_EQ(bench.odds().cylinders[0].seals_well, before.cylinders[0].seals_well);
    // A needle off zero by a known amount is reckoned with.
    TesterCheck off_zero{TesterCheckKind::zero_at_rest, {}, CheckResult::failed, {}, {}, {}, {}};
    bench.dossier.testers.back().checks = {off_zero};
    bench.dossier.testers.back().gauge.zero_at_rest = findings::Bench::pressure("0.1", "bar");
    EXPECT_FALSE(says(bench.odds().reasons, "odds.tester_failed"));
}

/// Two that read low on another gauge may owe it to that.
TEST(HeldBack, EachGaugeHasErrorsOfItsOwn) {
    const auto sealing = [](bool another) {
        Odds bench(6);
        bench.dry_all({"10.4", "10.4", "10.4", "10.4", "9.2", "9.2"}, "bar");
        if (another) {
            const auto first = bench.session().compression_gauge;
            const TesterId old = bench.tester(TesterKind::compression_gauge, "40", "bar", "").id;
            bench.session().compression_gauge = first;
            bench.visit().readings[4].tester = bench.visit().readings[5].tester = old;
        }
        const auto odds = bench.odds();
        return 0.5 * (odds.cylinders[4].seals_well + odds.cylinders[5].seals_well);
    };
    EXPECT_GT(sealing(true), sealing(false) + 0.1);
}

/// The mean of one reading on each of two gauges hangs on either only by half.
TEST(HeldBack, RepeatsOnTwoGaugesAreOutForEachOfThem) {
    Odds bench(1);
    const auto first = bench.session().compression_gauge;
    const TesterId other = bench.tester(TesterKind::compression_gauge, "16", "bar", "1.6").id;
    bench.session().compression_gauge = first;
    const auto evidence = [&] {
        return *evidence_of(bench.dossier, bench.visit(), Odds::reference(), *built_in_assumptions(), {})
                    .cylinders.front()
                    .dry;
    };
    bench.dry(1, "9.0", "bar");
    bench.dry(1, "9.1", "bar");
    const CrankEvidence one = evidence();
    EXPECT_EQ(one.apart_pa, 0.0);
    bench.visit().readings.front().tester = other;
    const CrankEvidence two = evidence();
    EXPECT_DOUBLE_EQ(two.offset_pa, 0.5 * one.offset_pa);
    // Of the same make: what the one hangs on, hangs on the other.
    EXPECT_NEAR(two.apart_pa, 0.5 * std::hypot(one.offset_pa, one.gain * one.final_pa), 1e-6);
}

// Not so wild that they are done again (assumptions.json: repeats-apart).
TEST(HeldBack, RepeatsThatScatterAreNoSureMean) {
    const auto width = [](const std::vector<std::string>& readings) {
        Odds bench(1);
        for (const auto& digits : readings)
            bench.dry(1, digits, "bar");
        const auto area = bench.first().leak_area_m2;
        return std::log(area.hi / area.lo);
    };
    EXPECT_GT(width({"8.0", "9.8", "8.2"}), 1.1 * width({"8.0", "8.1", "7.9"}));
    const auto held = [](const std::vector<std::string>& readings) {
        Odds bench(1);
        for (const auto& digits : readings)
            bench.leak(1, "5.50", digits, "bar");
        const auto area = bench.first().leak_area_m2;
        return std::log(area.hi / area.lo);
    };
    EXPECT_GT(held({"1.9", "4.5", "3.2"}), 1.1 * held({"3.2", "3.3", "3.4"}));
}

}  // namespace
}  // namespace lapwing::odds
