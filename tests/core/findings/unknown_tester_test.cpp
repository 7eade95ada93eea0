// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include "core/findings/case.h"
#include "tests/core/findings/bench.h"

/// What can't be told from good is no fault, and what nobody has a limit for is no silence.
namespace lapwing::findings {
namespace {

/// 58 of 80 psi held: 27.5 %, which the trade's bands call work; through a restrictor that nobody measured it
/// may be that of a cylinder that seals well (the doubt is assumptions.json's own).
TEST(UnknownTester, MakesNoFaultOfALeakThatMayBeNone) {
    Bench bench(1);
    bench.leak(1, "80", "58");
    bench.hear(1, Exit::breather, Loudness::clear);
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinders[0].leak_down->state, State::borderline);
    EXPECT_TRUE(says(found.cylinders[0].leak_down->why, "why.leak_tester_unknown"));
    EXPECT_EQ(found.cylinders[0].headline.code, "cylinder.leaks_tester_first");
    EXPECT_EQ(found.next.front().reason.code, "next.name_tester");
    EXPECT_EQ(found.headline.code, "engine.borderline_tester_first");
}

TEST(UnknownTester, DoesNotTalkOverAReadingThatIsLowForSure) {
    Bench bench(1);
    bench.engine().limits.lowest = Bench::pressure("130", "psi");
    bench.dry(1, "90");
    bench.leak(1, "80", "58");
    const Findings found = bench.find();
    ASSERT_EQ(found.cylinders[0].dry->state, State::fault);
    ASSERT_EQ(found.cylinders[0].leak_down->state, State::borderline);
    EXPECT_TRUE(found.cylinders[0].headline.code.starts_with("cylinder.below_limit"))
        << found.cylinders[0].headline.code;
}

TEST(UnknownTester, LeavesTheVerdictToATesterThatIsKnown) {
    Bench bench(1);
    Tester& tester = bench.tester(TesterKind::leak_down, "100", "psi", "1.0");
    tester.restrictor = Bench::mm("1.016");
    bench.leak(1, "80", "58");
    bench.hear(1, Exit::breather, Loudness::clear);
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinders[0].leak_down->state, State::fault);
    EXPECT_NE(found.next.front().reason.code, "next.name_tester");
}

TEST(UnknownTester, DoesNotExcuseALargeLeak) {
    Bench bench(1);
    bench.leak(1, "80", "25");
    EXPECT_EQ(bench.find().cylinders[0].leak_down->state, State::fault);
}

TEST(Crankcase, WithoutALimitAsksForItAndSaysInHowLong) {
    Bench bench(1, StrokeCycle::two);
    Reading& reading = bench.add(TestKind::crankcase, 0);
    reading.set = Bench::pressure("6.5", "psi");
    reading.held = Bench::pressure("4.5", "psi");
    EXPECT_EQ(bench.find().crankcases.front().remark.message.code, "crankcase.no_limit");
    bench.visit().readings.back().hold = *TypedTime::make("6", units::minute);
    const Findings found = bench.find();
    const Message& said = found.crankcases.front().remark.message;
    EXPECT_EQ(said.code, "crankcase.no_limit_timed");
    EXPECT_DOUBLE_EQ(std::get<Figure>(said.args.at(2)).si, 360.0);
    EXPECT_TRUE(std::ranges::any_of(
        found.next, [](const NextStep& step) { return step.reason.code == "next.crankcase_limit"; }));
    bench.engine().crankcase.end_at_least = Bench::pressure("6", "psi");
    EXPECT_FALSE(std::ranges::any_of(
        bench.find().next, [](const NextStep& step) { return step.reason.code == "next.crankcase_limit"; }));
}

/// "Not marked: 6" and a list of twelve can't both be right.
TEST(Prepare, CountsTheStepsThatAReportLists) {
    Bench bench(1);
    bench.dry(1, "150");
    bench.session().conditions.throttle = Throttle::closed;
    const Findings found = bench.find();
    const auto open = steps_left_open(case_of(bench.dossier, bench.visit(), Bench::reference(), {}));
    const auto said = std::ranges::find_if(
        found.weakened_by, [](const Remark& one) { return one.message.code == "weak.steps_open"; });
    ASSERT_NE(said, found.weakened_by.end());
    EXPECT_EQ(std::get<int>(said->message.args.front()), static_cast<int>(open.size()));
    // Noted as closed: nobody needs to ask whether it was held open.
    EXPECT_EQ(std::ranges::count(open, PrepareStep::throttle_open), 0);
}

}  // namespace
}  // namespace lapwing::findings
