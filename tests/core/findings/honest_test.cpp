// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A reading says no more than it can, and what stands in its way is said. Expected verdicts: the trade's
// common practice, no source, unless a test names one.

#include <cmath>

#include "core/findings/case.h"
#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

std::string first_reason(const Findings& found) {
    return found.next.front().reason.code;
}

TEST(ShutThrottle, IsRepeatedOpenBeforeAnythingElseAndIsSaidOfEveryReading) {
    Bench bench(2);
    bench.dry_all({"90", "140"});
    bench.session().conditions.throttle = Throttle::closed;
    const Findings shut = bench.find();
    EXPECT_EQ(first_reason(shut), "next.repeat_open");
    EXPECT_EQ(shut.next.front().action, Action::dry);
    EXPECT_EQ(shut.headline.code, "engine.throttle_shut");
    // Without a limit, alike with the others is no "in range".
    EXPECT_EQ(shut.cylinder(2)->headline.code, "cylinder.shut_no_verdict");
    EXPECT_EQ(shut.cylinder(2)->state, State::none);
    EXPECT_EQ(shut.cylinder(1)->headline.code, "cylinder.shut_low");
    bench.session().conditions.heat = EngineHeat::cold;
    EXPECT_EQ(first_reason(bench.find()), "next.repeat_open_warm");
    // What is above the limit with the throttle shut is above it all the same.
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    EXPECT_EQ(bench.find().cylinder(2)->headline.code, "cylinder.shut_in_range");
    bench.session().conditions.throttle = Throttle::held_open;
    const Findings open = bench.find();
    EXPECT_EQ(open.headline.code, "engine.fault");
    EXPECT_EQ(open.cylinder(2)->headline.code, "cylinder.reads_in_range");
    EXPECT_TRUE(std::ranges::any_of(
        open.next, [](const NextStep& step) { return step.reason.code == "next.repeat_warm"; }));
}

TEST(ShutThrottle, LeavesWhatAirSaysAlone) {
    Bench bench(1);
    bench.dry(1, "90");
    bench.leak(1, "80", "40");
    bench.session().conditions.throttle = Throttle::closed;
    EXPECT_EQ(bench.find().headline.code, "engine.fault");
    EXPECT_EQ(first_reason(bench.find()), "next.repeat_open");
}

TEST(VeryLowHeld, IsNotAveragedWithOneThatHeldWell) {
    // 0 and 70 of 80 psi: no mean of them is anything.
    Bench bench(1);
    Reading& wrong = bench.leak(1, "80", "0");
    const ReadingId wrong_id = wrong.id;
    bench.hear(1, Exit::intake, Loudness::strong);
    bench.visit().exits.back().reading = wrong_id;
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.visit().exits.back().reading = wrong_id;
    EXPECT_EQ(bench.find().cylinder(1)->headline.code, "cylinder.ask_tdc");
    bench.leak(1, "80", "70");
    const Findings settled = bench.find();
    const CylinderFindings& one = *settled.cylinder(1);
    EXPECT_NEAR(one.leak_down->leakage.figure.si, 0.125, 1e-12);
    EXPECT_EQ(one.leak_down->repeats, 1);
    EXPECT_TRUE(one.exits.empty()) << "heard at the wrong TDC";
    EXPECT_TRUE(says(one.questions, "question.very_low_first"));
    // The other way round it is not settled: test again.
    Bench last(1);
    last.leak(1, "80", "70");
    last.leak(1, "80", "0");
    const Findings open = last.find();
    EXPECT_NEAR(open.cylinder(1)->leak_down->leakage.figure.si, 0.125, 1e-12);
    EXPECT_TRUE(says(open.cylinder(1)->questions, "question.very_low_last"));
    EXPECT_EQ(open.next.front().action, Action::turn_once);
}

TEST(ShutThrottle, RepeatedInALaterVisitIsPointedToInsteadOfAskedForAgain) {
    Bench bench(2);
    bench.dry_all({"90", "140"});
    bench.session().conditions.throttle = Throttle::closed;
    bench.session().opened_at = Timestamp{1'000'000, 0};
    bench.dossier.visits.push_back(bench.visit());
    Visit& later = bench.dossier.visits.back();
    FixedClock clock{Timestamp{9'000'000, 0}};
    later.session.id = SessionId::make(clock);
    later.session.opened_at = clock.now();
    later.session.conditions.throttle = Throttle::held_open;
    const Findings found = bench.find();
    EXPECT_EQ(first_reason(found), "next.repeated_open");
    // Shut again is no repeat, and one that was begun and not measured is none either.
    later.session.conditions.throttle = Throttle::closed;
    EXPECT_EQ(first_reason(bench.find()), "next.repeat_open");
    later.session.conditions.throttle = Throttle::held_open;
    later.readings.clear();
    EXPECT_EQ(first_reason(bench.find()), "next.repeat_open");
}

TEST(AfterOil, AReadingIsNotAveragedWithOneFromBeforeIt) {
    // 2.8 of 6 bar loses 53.3 %, 4.4 of 6 bar 26.7 % (arithmetic); their mean is the state of nothing.
    Bench bench(1);
    bench.leak(1, "6", "2.8", "bar");
    bench.dry(1, "8.0", "bar").oiled = Oiled::no;
    bench.wet(1, "9.6", "bar");
    bench.leak(1, "6", "4.4", "bar").oiled = Oiled::before;
    bench.dry(1, "9.0", "bar").oiled = Oiled::before;
    const Findings found = bench.find();
    const CylinderFindings& one = *found.cylinder(1);
    EXPECT_NEAR(one.leak_down->leakage.figure.si, 3.2 / 6.0, 1e-9);
    EXPECT_EQ(one.leak_down->repeats, 1);
    EXPECT_NEAR(one.dry->final.figure.si, 8.0e5, 1.0);
    EXPECT_TRUE(says(one.questions, "question.after_oil"));
    // It says nothing of oil where the counted reading had none.
    EXPECT_FALSE(says(one.questions, "question.oil_before_leak_down"));
    // Alone it counts, and the oil is said.
    Bench only(1);
    only.wet(1, "9.6", "bar");
    only.leak(1, "6", "4.4", "bar").oiled = Oiled::before;
    const Findings alone = only.find();
    EXPECT_NEAR(alone.cylinder(1)->leak_down->leakage.figure.si, 1.6 / 6.0, 1e-9);
    EXPECT_FALSE(says(alone.cylinder(1)->questions, "question.after_oil"));
    EXPECT_TRUE(says(alone.cylinder(1)->questions, "question.oil_before_leak_down"));
}

TEST(TwoStroke, CrankcaseIsNamedNextThoughTheCardHasNoLimitAndAirAnswersForADecompressor) {
    Bench bench(1, StrokeCycle::two);
    bench.engine().decompressor = Decompressor::unknown;
    bench.dry(1, "5.2", "bar");
    EXPECT_TRUE(says(bench.find().cylinder(1)->questions, "question.decompressor_unknown"));
    bench.leak(1, "6", "2.5", "bar");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    const Findings found = bench.find();
    EXPECT_FALSE(says(found.cylinder(1)->questions, "question.decompressor_unknown"));
    EXPECT_TRUE(std::ranges::any_of(found.next,
                                    [](const NextStep& step) { return step.action == Action::crankcase; }));
}

TEST(HeldOverSet, IsAskedAboutAndNotCounted) {
    // 60 of 80 psi loses a quarter (arithmetic); 104 of 80 would make a mean that seals well.
    Bench bench(1);
    bench.leak(1, "80", "60");
    bench.leak(1, "80", "104");
    const Findings findings = bench.find();
    const CylinderFindings& one = *findings.cylinder(1);
    EXPECT_NEAR(one.leak_down->leakage.figure.si, 0.25, 1e-12);
    EXPECT_EQ(one.leak_down->repeats, 1);
    EXPECT_TRUE(says(one.questions, "question.over_set"));
    Bench only(1);
    only.leak(1, "80", "104");
    const Findings alone = only.find();
    EXPECT_FALSE(alone.cylinder(1)->leak_down.has_value());
    EXPECT_TRUE(says(alone.cylinder(1)->questions, "question.over_set"));
}

TEST(VeryLowHeld, CountsWhereNothingContradictsIt) {
    Bench bench(1);
    bench.leak(1, "80", "10");
    bench.leak(1, "80", "14");
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinder(1)->leak_down->repeats, 2);
    EXPECT_TRUE(found.cylinder(1)->questions.empty());
    // Another state of the cylinder is no contradiction.
    bench.leak(1, "80", "76").tag = Tag::after_repair;
    EXPECT_TRUE(bench.find().cylinder(1)->questions.empty());
}

TEST(Measured, InPartIsNotInRange) {
    Bench bench(4);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry(1, "150");
    EXPECT_EQ(bench.find().headline.code, "engine.not_all_measured");
    EXPECT_EQ(bench.find().state, State::none);
    bench.dry(2, "90");
    EXPECT_EQ(bench.find().state, State::fault);
    bench.visit().readings.pop_back();
    for (const int number : {2, 3, 4})
        bench.dry(number, "150");
    EXPECT_EQ(bench.find().state, State::good);
}

TEST(WithoutAFactoryFigure, FarBelowWhatMakersAskForIsAFault) {
    // Makers' manuals, several: diesels read about 350 to 430 psi.
    Bench diesel(2);
    diesel.engine().fuel = Fuel::diesel;
    const Findings low = diesel.dry_all({"99", "101"}, "psi").find();
    EXPECT_EQ(low.cylinder(1)->state, State::fault);
    EXPECT_TRUE(says(low.cylinder(1)->dry->why, "why.far_below_typical"));
    EXPECT_EQ(low.cylinder(1)->headline.code, "cylinder.far_below_usual");
    Bench doubtful(2);
    doubtful.engine().fuel = Fuel::diesel;
    EXPECT_EQ(doubtful.dry_all({"300", "301"}, "psi").find().cylinder(1)->state, State::borderline);
    // A small engine may have a decompressor that nobody put on the card.
    Bench small(1);
    small.engine().compression_ratio =
        Sourced<TypedRatio>{*TypedRatio::make("8.5", units::one), Origin::manual, {}};
    small.engine().decompressor = Decompressor::unknown;
    small.dry(1, "60");
    EXPECT_NE(small.find().cylinder(1)->state, State::fault);
    small.engine().decompressor = Decompressor::none;
    EXPECT_EQ(small.find().cylinder(1)->state, State::fault);
}

TEST(FactoryLimit, IsNamedInTheSentenceOfACylinderBelowIt) {
    Bench bench(2);
    bench.engine().limits.lowest = Bench::pressure("10", "bar");
    const Findings found = bench.dry_all({"12.9", "9.2"}, "bar").find();
    const Message& headline = found.cylinder(2)->headline;
    EXPECT_EQ(headline.code, "cylinder.below_limit");
    EXPECT_NEAR(std::get<Figure>(headline.args.at(2)).si, 10e5, 1.0);
}

TEST(Clearance, FoundWithoutAWantedRangeStaysAQuestion) {
    Bench bench(1);
    bench.leak(1, "80", "40");
    bench.hear(1, Exit::intake, Loudness::strong);
    bench.clearance(1, ValveSide::intake, "0.02");
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.cylinder(1)->questions, "question.clearance_wanted"));
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.leaks_clearance_first");
    EXPECT_EQ(first_reason(found), "next.clearance_wanted");
    // Said of a valve that nothing was heard of, too: the card is where to put it.
    Bench quiet(1);
    quiet.dry(1, "150");
    quiet.clearance(1, ValveSide::exhaust, "0.05");
    EXPECT_TRUE(says(quiet.find().cylinder(1)->clearances.remarks, "clearance.no_range"));
    // With the range it is judged: 0.02 mm of 0.08 to 0.12 mm is too little.
    bench.wanted_clearances();
    const Findings judged = bench.find();
    EXPECT_FALSE(says(judged.cylinder(1)->questions, "question.clearance_wanted"));
    EXPECT_EQ(judged.cylinder(1)->headline.code, "cylinder.leaks_adjust_first");
}

TEST(Pad, AsksAboutNothingAtAllAndAboutWetUnderDry) {
    Bench bench(1);
    PadEntry entry;
    entry.final = Bench::pressure("0", "bar");
    EXPECT_TRUE(says(bench.judge(entry).questions, "pad.zero"));
    bench.dry(1, "10", "bar");
    entry.test = TestKind::wet;
    const PadJudgement nothing = bench.judge(entry);
    EXPECT_TRUE(says(nothing.questions, "pad.zero"));
    EXPECT_EQ(nothing.state, State::none);
    entry.final = Bench::pressure("5", "bar");
    EXPECT_TRUE(says(bench.judge(entry).questions, "pad.wet_below_dry"));
    entry.final = Bench::pressure("10.2", "bar");
    const PadJudgement risen = bench.judge(entry);
    EXPECT_TRUE(risen.questions.empty());
    EXPECT_EQ(risen.state, State::none) << "a rise says where, not how much";
}

TEST(Spread, ADifferenceIsThatOfTheTwoFiguresBesideIt) {
    Bench bench(2);
    bench.tester(TesterKind::leak_down, "100", "psi", "0.6").restrictor = Bench::mm("1.016");
    // 43 % and 10 % on another tester than the rule's.
    bench.leak(1, "70", "39.9");
    bench.leak(2, "70", "63");
    const Findings found = bench.find();
    ASSERT_FALSE(found.leak_spread.empty());
    for (const RuleVerdict& rule : found.leak_spread) {
        const auto& args = rule.remark.message.args;
        const auto share_at = [&](std::size_t i) { return std::get<Figure>(args.at(i)).si; };
        EXPECT_NEAR(share_at(5), share_at(1) - share_at(3), 1e-12);
        EXPECT_NEAR(share_at(1), std::round(1000.0 * share_at(1)) / 1000.0, 1e-12);
    }
}

TEST(Spread, ARuleThatOnlyAsksForAnotherLookSaysSo) {
    Bench bench(2);
    const Findings found = bench.dry_all({"105", "150"}).find();
    EXPECT_EQ(verdict(found, "lowest-75").remark.message.code, "spread.ratio_fails");
    EXPECT_EQ(verdict(found, "highest-x-0.85").remark.message.code, "spread.ratio_look_again");
}

}  // namespace
}  // namespace lapwing::findings
