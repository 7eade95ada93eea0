// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Engines of whose card nobody typed more than the number of cylinders: alike is not yet sound.
#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

TEST(Alike, SaysThatNothingOnTheCardTellsWhatItShouldRead) {
    Bench bench(2);
    const Findings found = bench.dry_all({"150", "152"}).find();
    EXPECT_EQ(found.headline.code, "engine.alike");
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.reads_alike");
    EXPECT_EQ(found.state, State::good);
}

TEST(Alike, UnderWhatMakersAskAtLeastIsDoubtful) {
    // No cylinder under 100 psi: GM manuals, petrol.
    for (const std::vector<std::string>& read :
         {std::vector<std::string>{"99", "98"}, {"87", "88"}, {"44", "45"}}) {
        Bench bench(2);
        const Findings found = bench.dry_all(read).find();
        EXPECT_EQ(found.state, State::borderline) << read.front();
        EXPECT_EQ(found.headline.code, "engine.alike_but_low") << read.front();
        EXPECT_EQ(found.cylinder(2)->headline.code, "cylinder.alike_but_low") << read.front();
        EXPECT_EQ(found.next.front().action, Action::leak_down) << read.front();
        EXPECT_TRUE(says(found.cylinder(1)->dry->why, "spread.ratio_under")) << read.front();
    }
}

TEST(Alike, IsNotSaidOfCylindersThatDiffer) {
    // 70 of 90 psi is 78 %: under the 85 % of the outboard maker's rule, and both under 100 psi.
    Bench bench(2);
    const Findings found = bench.dry_all({"90", "70"}).find();
    EXPECT_EQ(found.state, State::borderline);
    EXPECT_NE(found.headline.code, "engine.alike_but_low");
    EXPECT_NE(found.cylinder(2)->headline.code, "cylinder.alike_but_low");
}

TEST(Alike, TheFloorIsOfThisAltitudeAndNotHeldAgainstGoodAir) {
    // Standard atmosphere at 1,600 m: 835 hPa (ISO 2533, from memory), 82 % of sea level's.
    Bench high(2);
    high.session().conditions.station_pressure = Bench::pressure("835", "hPa");
    EXPECT_EQ(high.dry_all({"95", "96"}).find().state, State::good);
    Bench low(2);
    low.session().conditions.station_pressure = Bench::pressure("835", "hPa");
    EXPECT_EQ(low.dry_all({"75", "76"}).find().state, State::borderline);
    Bench air(2);
    air.dry_all({"95", "96"});
    air.leak(1, "80", "77");
    air.leak(2, "80", "77");
    EXPECT_EQ(air.find().state, State::good);
}

TEST(Alike, AMakersOwnFigureWinsOverThatFloor) {
    Bench bench(2);
    bench.engine().limits.lowest = Bench::pressure("80", "psi");
    const Findings found = bench.dry_all({"95", "96"}).find();
    EXPECT_EQ(found.state, State::good);
    EXPECT_EQ(found.headline.code, "engine.in_range");
}

TEST(Alike, NoFloorWhereSomethingElseExplainsTheReading) {
    Bench shut(2);
    shut.session().conditions.throttle = Throttle::closed;
    EXPECT_EQ(shut.dry_all({"60", "61"}).find().headline.code, "engine.throttle_shut");
    // The rule is of four-strokes.
    Bench two_stroke(2, StrokeCycle::two);
    EXPECT_EQ(two_stroke.dry_all({"90", "91"}).find().state, State::good);
}

TEST(Alike, ASingleThatNothingJudgesIsSentToTheAir) {
    Bench bench(1);
    bench.engine().decompressor = Decompressor::none;
    const Findings found = bench.dry_all({"44"}).find();
    EXPECT_EQ(found.state, State::none);
    EXPECT_EQ(found.next.front().reason.code, "next.leak_down_unjudged");
    bench.leak(1, "80", "76");
    EXPECT_FALSE(next_is(bench.find(), Action::leak_down, {}));
}

TEST(Alike, ADieselAtHalfOfWhatMakersAskIsAFault) {
    // Makers' manuals, several: 350 to 430 psi. 13 bar is 189 psi, 54 % of that; 75 % is an assumption.
    Bench bench(2);
    bench.engine().fuel = Fuel::diesel;
    const Findings found = bench.dry_all({"13.0", "13.2"}, "bar").find();
    EXPECT_EQ(found.state, State::fault);
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.far_below_usual");
    for (const RuleVerdict& rule : found.spread) {
        EXPECT_NE(rule.rule, "lowest-70-and-100-psi") << "a rule for petrol engines";
        EXPECT_NE(rule.rule, "highest-x-0.85") << "a rule for petrol engines";
    }
    // A cold engine on a weak battery reads lower than it is.
    Bench cold(2);
    cold.engine().fuel = Fuel::diesel;
    cold.session().conditions.heat = EngineHeat::cold;
    EXPECT_EQ(cold.dry_all({"13.0", "13.2"}, "bar").find().state, State::borderline);
    // 19 bar is 276 psi, 79 %: doubtful, but no fault by itself.
    Bench low(2);
    low.engine().fuel = Fuel::diesel;
    EXPECT_EQ(low.dry_all({"19.0", "19.2"}, "bar").find().state, State::borderline);
}

TEST(Next, AHydraulicLifterIsAskedBeforeItsValveIsBlamed) {
    Bench bench(2);
    bench.engine().valves.adjuster = Adjuster::hydraulic;
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry_all({"90", "150"});
    bench.leak(1, "80", "40");
    bench.leak(2, "80", "74");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    EXPECT_EQ(bench.find().next.front().reason.code, "next.lifter");
    bench.leak(1, "80", "41");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    for (const NextStep& step : bench.find().next)
        EXPECT_NE(step.reason.code, "next.lifter") << "it was tested again";
}

TEST(Next, ALeakDownAfterRunningSettlesTheOil) {
    Bench bench(1);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry_all({"150"});
    bench.wet(1, "160");
    bench.leak(1, "80", "76").oiled = Oiled::before;
    EXPECT_EQ(bench.find().next.front().reason.code, "next.after_oil");
    bench.leak(1, "80", "75").tag = Tag::after_running;
    for (const NextStep& step : bench.find().next)
        EXPECT_NE(step.reason.code, "next.after_oil");
}

TEST(Next, OilThatFlatteredALeakDownAsksForAnother) {
    Bench bench(2);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry_all({"150", "151"});
    bench.leak(1, "80", "76").oiled = Oiled::before;
    bench.leak(2, "80", "76");
    const Findings found = bench.find();
    EXPECT_EQ(found.next.front().reason.code, "next.after_oil");
    EXPECT_EQ(found.next.front().cylinder, 1);
}

}  // namespace
}  // namespace lapwing::findings
