// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The rules that keep a reading from being taken for more than it is. Expected verdicts: the trade's common
// practice as the rule states it, no source, unless a test names one.

#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

TEST(Questions, AirAtIntakeAndExhaustAsksForTheRightTdcBeforeAnyVerdict) {
    Bench bench(1);
    bench.leak(1, "80", "6");
    bench.hear(1, Exit::intake, Loudness::strong);
    bench.hear(1, Exit::exhaust, Loudness::strong);
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.cylinder(1)->questions, "question.tdc"));
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.ask_tdc");
    EXPECT_EQ(found.cylinder(1)->state, State::none);
    EXPECT_EQ(found.next.front().action, Action::turn_once);
    // Only one of the two, or more held: no such question.
    Bench one(1);
    one.leak(1, "80", "6");
    one.hear(1, Exit::exhaust, Loudness::strong);
    EXPECT_FALSE(says(one.find().cylinder(1)->questions, "question.tdc"));
    Bench held(1);
    held.leak(1, "80", "40");
    held.hear(1, Exit::intake, Loudness::clear);
    held.hear(1, Exit::exhaust, Loudness::clear);
    EXPECT_FALSE(says(held.find().cylinder(1)->questions, "question.tdc"));
}

// Dry well under the limit, much better with oil, and then air over that oil: the rings held for the oil.
TEST(Questions, AirOverOilDoesNotClearALowDryReading) {
    Bench bench(1);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry(1, "94");
    bench.wet(1, "137");
    bench.leak(1, "80", "76");
    const Findings found = bench.find();
    const CylinderFindings& one = *found.cylinder(1);
    EXPECT_TRUE(says(one.questions, "question.oil_before_leak_down"));
    EXPECT_EQ(one.leak_down->state, State::good);
    EXPECT_FALSE(one.headline.code.find("seals") != std::string::npos) << one.headline.code;
    EXPECT_FALSE(says(one.contradictions, "contra.low_but_seals"));
    // Before the oil it would have cleared the cylinder.
    Bench right(1);
    right.engine().limits.lowest = Bench::pressure("120", "psi");
    right.dry(1, "94");
    right.leak(1, "80", "76");
    EXPECT_EQ(right.find().cylinder(1)->headline.code, "cylinder.seals_but_reads_low");
}

TEST(Questions, OilBeforeLeakDownIsSaid) {
    Bench bench(1);
    bench.dry(1, "150");
    bench.wet(1, "160");
    bench.leak(1, "80", "70");
    EXPECT_TRUE(says(bench.find().cylinder(1)->questions, "question.oil_before_leak_down"));
    Bench right(1);
    right.dry(1, "150");
    right.leak(1, "80", "70");
    right.wet(1, "160");
    EXPECT_FALSE(says(right.find().cylinder(1)->questions, "question.oil_before_leak_down"));
}

TEST(Diesel, NoWetTest) {
    Bench bench(2);
    bench.engine().fuel = Fuel::diesel;
    bench.dry_all({"400", "250"});
    bench.wet(2, "330");
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.questions, "question.wet_on_diesel"));
    EXPECT_FALSE(says(found.cylinder(2)->rules_of_thumb, "thumb.wet_rings"));
    EXPECT_FALSE(next_is(found, Action::wet, 2));
    PadEntry entry;
    entry.test = TestKind::wet;
    EXPECT_TRUE(says(bench.judge(entry).questions, "pad.diesel_wet"));
}

TEST(Contradictions, LowButSealsWellLooksElsewhere) {
    Bench bench(2);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry_all({"90", "92"});
    bench.leak(1, "80", "77");
    bench.leak(2, "80", "76");
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.cylinder(1)->contradictions, "contra.low_but_seals"));
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.seals_but_reads_low");
    EXPECT_EQ(found.headline.code, "engine.low_but_seals");
}

TEST(Contradictions, LeaksYetReadsWell) {
    Bench bench(1);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry(1, "160");
    bench.leak(1, "80", "45");
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.cylinder(1)->contradictions, "contra.leaks_but_reads_well"));
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.leaks_but_reads_well");
    EXPECT_TRUE(next_is(found, Action::listen, 1));
}

TEST(Contradictions, OilSaysRingsTheEarSaysExhaust) {
    Bench bench(2);
    bench.wanted_clearances();
    bench.dry_all({"160", "100"});
    bench.leak(2, "80", "50");
    bench.hear(2, Exit::exhaust, Loudness::strong);
    bench.hear(2, Exit::breather, Loudness::faint);
    bench.clearance(2, ValveSide::exhaust, "0.15");
    EXPECT_EQ(bench.find().cylinder(2)->points_at, Path::exhaust);
    bench.wet(2, "125");
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.cylinder(2)->contradictions, "contra.rules_disagree"));
    EXPECT_FALSE(found.cylinder(2)->points_at.has_value());
}

TEST(Exits, EquallyLoudOnesNameNoPath) {
    Bench bench(1);
    bench.leak(1, "80", "50");
    bench.hear(1, Exit::breather, Loudness::clear);
    bench.hear(1, Exit::exhaust, Loudness::clear);
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.cylinder(1)->rules_of_thumb, "thumb.exits_tie"));
    EXPECT_FALSE(found.cylinder(1)->points_at.has_value());
}

TEST(Exits, NextPlugHoleOfACompanionIsNoProofOfTheJoint) {
    // 1 and 4 of a four with firing order 1-3-4-2 stand at top dead centre together.
    Bench bench(4);
    bench.engine().firing_order = {1, 3, 4, 2};
    bench.leak(1, "80", "50");
    bench.hear(1, Exit::next_plug_hole, Loudness::clear, 4);
    EXPECT_TRUE(says(bench.find().cylinder(1)->questions, "question.companion"));
    Bench other(4);
    other.engine().firing_order = {1, 3, 4, 2};
    other.leak(1, "80", "50");
    other.hear(1, Exit::next_plug_hole, Loudness::clear, 2);
    EXPECT_FALSE(says(other.find().cylinder(1)->questions, "question.companion"));
}

TEST(Exits, TheJointNamesItsOtherCylinder) {
    Bench bench(3);
    bench.leak(2, "80", "30");
    bench.hear(2, Exit::next_plug_hole, Loudness::strong, 3);
    bench.hear(2, Exit::next_plug_hole, Loudness::faint, 1);
    const Message headline = bench.find().cylinder(2)->headline;
    EXPECT_EQ(headline.code, "cylinder.leaks_at_joint");
    EXPECT_EQ(std::get<int>(headline.args[2]), 3);
    EXPECT_TRUE(says(bench.find().cylinder(2)->rules_of_thumb, "thumb.loudest_exit_joint"));
    // As loud on both sides: the joint, but no telling which.
    bench.hear(2, Exit::next_plug_hole, Loudness::strong, 1);
    EXPECT_EQ(bench.find().cylinder(2)->headline.code, "cylinder.leaks_at");
}

// Working assumptions of the project: a sound cylinder builds up to 1.4 to 2 times its first puff.
TEST(FirstPuff, ABuildUpLikeASoundCylindersSaysNothing) {
    Bench bench(2);
    bench.dry(1, "6.8", "bar").first = Bench::pressure("4.2", "bar");
    bench.dry(2, "9.4", "bar").first = Bench::pressure("5.6", "bar");
    const Findings found = bench.find();
    EXPECT_GE(found.cylinder(1)->dry->state, State::borderline);
    EXPECT_TRUE(found.cylinder(1)->rules_of_thumb.empty());
}

TEST(FirstPuff, NoVerdictOnValvesWhereTheJointLeaks) {
    Bench bench(4);
    bench.dry_all({"160", "64", "60", "158"});
    for (Reading& reading : bench.visit().readings)
        if (reading.cylinder == 2 || reading.cylinder == 3) reading.first = Bench::pressure("55", "psi");
    const Findings found = bench.find();
    for (const int joined : {2, 3}) {
        EXPECT_TRUE(says(found.cylinder(joined)->rules_of_thumb, "thumb.joint"));
        EXPECT_FALSE(says(found.cylinder(joined)->rules_of_thumb, "thumb.first_puff_valves"));
    }
    // The same readings on a cylinder alone.
    bench.visit().readings[2].final = Bench::pressure("159", "psi");
    EXPECT_TRUE(says(bench.find().cylinder(2)->rules_of_thumb, "thumb.first_puff_valves"));
}

TEST(Gauge, ADifferenceWithinItsOwnUncertaintyIsSaid) {
    Bench bench(2);
    bench.tester(TesterKind::compression_gauge, "16", "bar", "2.5");
    const Findings found = bench.dry_all({"10.0", "9.9"}, "bar").find();
    EXPECT_EQ(verdict(found, "within-gauge").remark.message.code, "spread.within_gauge");
    Bench apart(2);
    apart.tester(TesterKind::compression_gauge, "16", "bar", "2.5");
    const Findings clear = apart.dry_all({"10.0", "7.0"}, "bar").find();
    EXPECT_THROW(verdict(clear, "within-gauge"), std::runtime_error);
}

TEST(Gauge, SelfChecksMissingOrFailedAreSaid) {
    Bench bench(1);
    Tester& tester = bench.tester(TesterKind::leak_down, "7", "bar", "1.6");
    bench.leak(1, "5.5", "5.2", "bar");
    EXPECT_TRUE(says(bench.find().weakened_by, "weak.self_check_missing"));
    tester.checks.push_back({TesterCheckKind::outlet_blocked, {}, CheckResult::failed, {}, {}, {}, {}});
    const Findings failed = bench.find();
    EXPECT_TRUE(says(failed.weakened_by, "weak.self_check_failed"));
    EXPECT_EQ(failed.next.front().action, Action::tester_check);
    tester.checks.back().result = CheckResult::passed;
    const Findings passed = bench.find();
    EXPECT_FALSE(says(passed.weakened_by, "weak.self_check_failed"));
    EXPECT_FALSE(says(passed.weakened_by, "weak.self_check_missing"));
}

/// assets/reference/prepare.json: "The rings are oiled then: the reading is no longer a dry one."
TEST(Conditions, OilInTheBoresWeakens) {
    Bench bench(2);
    bench.dry_all({"150", "150"});
    EXPECT_FALSE(says(bench.find().weakened_by, "weak.bores_oiled"));
    bench.session().prepare = {{PrepareStep::bores_oiled, StepState::done, {}}};
    EXPECT_TRUE(says(bench.find().weakened_by, "weak.bores_oiled"));
    bench.session().prepare = {{PrepareStep::bores_oiled, StepState::not_needed, {}}};
    EXPECT_FALSE(says(bench.find().weakened_by, "weak.bores_oiled"));
}

TEST(Conditions, WhatWasNotDoneWeakens) {
    Bench bench(2);
    bench.dry_all({"150", "150"});
    bench.session().prepare = {{PrepareStep::throttle_open, StepState::not_done, {}},
                               {PrepareStep::all_plugs_out, StepState::not_done, {}}};
    bench.session().conditions.battery = *TypedVoltage::make("10.9", units::volt);
    const auto weak = bench.find().weakened_by;
    EXPECT_EQ(std::ranges::count(weak, "weak.step", [](const Remark& r) { return r.message.code; }), 2);
    EXPECT_TRUE(says(weak, "weak.battery"));
    EXPECT_TRUE(says(weak, "weak.heat_unknown"));
    EXPECT_TRUE(says(weak, "weak.tester_unknown"));
    // Leak-down does not mind the throttle.
    Bench air(1);
    air.leak(1, "80", "76");
    air.session().prepare = {{PrepareStep::throttle_open, StepState::not_done, {}}};
    EXPECT_FALSE(says(air.find().weakened_by, "weak.step"));
}

TEST(Conditions, TheFirstCylinderAgainAtTheEndShowsDrift) {
    Bench bench(2);
    bench.dry_all({"150", "148"});
    const auto drifts = [&] {
        const auto weak = bench.find().weakened_by;
        return std::pair(says(weak, "weak.drift_lower"), says(weak, "weak.drift_higher"));
    };
    EXPECT_EQ(drifts(), std::pair(false, false));
    bench.dry(1, "135");  // 10 % less
    EXPECT_EQ(drifts(), std::pair(true, false));
    for (const Remark& weak : bench.find().weakened_by)
        if (weak.message.code == "weak.drift_lower")
            EXPECT_NEAR(std::get<Figure>(weak.message.args[1]).si, 0.10, 1e-9);
    bench.visit().readings.back().final = Bench::pressure("165", "psi");
    EXPECT_EQ(drifts(), std::pair(false, true));
}

TEST(Readings, RepeatsCountAndRedoneOnesDoNot) {
    Bench bench(1);
    bench.dry(1, "150");
    const ReadingId first = bench.visit().readings.front().id;
    bench.dry(1, "154");
    EXPECT_NEAR(units::psi.number(Pressure::from_si(bench.find().cylinder(1)->dry->final.figure.si)), 152.0,
                1e-9);
    bench.visit().readings.back().replaces = first;
    EXPECT_EQ(bench.find().cylinder(1)->dry->repeats, 1);
}

TEST(Readings, TheNewestTagSpeaksUnlessAnotherIsAskedFor) {
    Bench bench(1);
    bench.leak(1, "80", "40");
    bench.leak(1, "80", "76").tag = Tag::after_staking;
    EXPECT_EQ(bench.find().cylinder(1)->state, State::good);
    const Findings before = find(bench.dossier, bench.visit(), Bench::reference(), {Tag::as_found});
    EXPECT_EQ(before.cylinder(1)->state, State::fault);
}

TEST(Engine, LowEverywhereLooksElsewhereFirst) {
    Bench bench(4);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    const Findings found = bench.dry_all({"90", "92", "88", "91"}).find();
    EXPECT_EQ(found.headline.code, "engine.low_everywhere");
}

TEST(Engine, NothingMeasuredStartsWithTheDryTest) {
    Bench bench(2);
    const Findings found = bench.find();
    EXPECT_EQ(found.headline.code, "engine.not_measured");
    EXPECT_EQ(found.state, State::none);
    ASSERT_EQ(found.next.size(), 1U);
    EXPECT_EQ(found.next.front().action, Action::dry);
}

TEST(Engine, AllInRangeLeavesNothingOutstanding) {
    Bench bench(2);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    const Findings found = bench.dry_all({"150", "152"}).find();
    EXPECT_EQ(found.headline.code, "engine.in_range");
    EXPECT_EQ(found.next.front().reason.code, "next.nothing");
}

TEST(Engine, WearAloneIsWatchedAndAPlanIsNotAskedForTwice) {
    Bench bench(1);
    bench.leak(1, "80", "68");  // 15 %: wear
    bench.hear(1, Exit::breather, Loudness::clear);
    EXPECT_EQ(bench.find().next.front().reason.code, "next.watch");
    bench.visit().readings.front().held = Bench::pressure("40", "psi");
    EXPECT_EQ(bench.find().next.front().reason.code, "next.plan");
    bench.visit().plan.emplace_back();
    EXPECT_EQ(bench.find().next.front().reason.code, "next.planned");
    // Once it is done, only another test tells.
    bench.visit().plan.back().done_at =
        Timestamp{bench.visit().readings.back().taken_at.unix_ms + 3'600'000, 60};
    EXPECT_EQ(bench.find().next.front().reason.code, "next.retest");
    Visit later;
    later.readings.push_back(bench.visit().readings.back());
    later.readings.back().taken_at.unix_ms += 7'200'000;
    bench.dossier.visits.push_back(later);
    EXPECT_EQ(bench.find().next.front().reason.code, "next.planned");
}

TEST(Engine, ALowCylinderAsksForLeakDownThenForTheEarThenForOil) {
    Bench bench(2);
    bench.dry_all({"150", "90"});
    EXPECT_TRUE(next_is(bench.find(), Action::leak_down, 2));
    bench.leak(2, "80", "50");
    EXPECT_TRUE(next_is(bench.find(), Action::listen, 2));
    bench.hear(2, Exit::breather, Loudness::clear);
    bench.hear(2, Exit::joint, Loudness::clear);
    EXPECT_TRUE(next_is(bench.find(), Action::wet, 2));
    bench.wet(2, "120");
    EXPECT_FALSE(next_is(bench.find(), Action::wet, 2));
}

}  // namespace
}  // namespace lapwing::findings
