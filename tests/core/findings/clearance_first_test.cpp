// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Clearances come before any verdict on a valve. Expected verdicts: the trade's common practice as the rule
// states it, no source, unless a test names one.

#include "core/findings/case.h"
#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

TEST(Questions, NoVerdictOnAValveBeforeItsClearanceIsRecorded) {
    // Army TM 1-1500-204-23-1: clearance first, a valve without it is held open.
    Bench bench(1);
    bench.wanted_clearances();
    bench.leak(1, "80", "40");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    const Findings unknown = bench.find();
    EXPECT_TRUE(says(unknown.cylinder(1)->questions, "question.clearance"));
    EXPECT_EQ(unknown.cylinder(1)->headline.code, "cylinder.leaks_clearance_first");
    EXPECT_TRUE(next_is(unknown, Action::clearances, 1));
    // The intake's clearance says nothing of the exhaust's.
    bench.clearance(1, ValveSide::intake, "0.10");
    EXPECT_TRUE(says(bench.find().cylinder(1)->questions, "question.clearance"));
    bench.clearance(1, ValveSide::exhaust, "0.15");
    const Findings known = bench.find();
    EXPECT_FALSE(says(known.cylinder(1)->questions, "question.clearance"));
    EXPECT_EQ(known.cylinder(1)->headline.code, "cylinder.leaks_at");
    EXPECT_EQ(known.cylinder(1)->points_at, Path::exhaust);
}

namespace {

/// Exhaust valves of a six without a wanted range; the last one leaks (made up).
Bench six(const std::vector<std::string>& exhausts) {
    Bench bench(static_cast<int>(exhausts.size()));
    for (std::size_t i = 0; i < exhausts.size(); ++i)
        bench.clearance(static_cast<int>(i) + 1, ValveSide::exhaust, exhausts[i]);
    bench.leak(static_cast<int>(exhausts.size()), "80", "40");
    return bench;
}

}  // namespace

TEST(Questions, AClearanceFarBelowItsSiblingsIsAskedAboutFirst) {
    Bench bench = six({"0.50", "0.50", "0.50", "0.50", "0.52", "0.05"});
    const Findings found = bench.find();
    const auto& questions = found.cylinder(6)->questions;
    const auto asked = std::ranges::find(questions, "question.clearance_siblings",
                                         [](const Remark& one) { return one.message.code; });
    ASSERT_NE(asked, questions.end());
    EXPECT_EQ(std::get<Word>(asked->message.args[1]), word_of(ValveSide::exhaust));
    EXPECT_NEAR(std::get<Figure>(asked->message.args[3]).si, 0.05e-3, 1e-9);
    EXPECT_NEAR(std::get<Figure>(asked->message.args[4]).si, 0.50e-3, 1e-9);
    EXPECT_TRUE(says(found.cylinder(6)->clearances.remarks, "clearance.siblings"));
    EXPECT_FALSE(says(found.cylinder(6)->clearances.remarks, "clearance.no_range"));
    ASSERT_FALSE(found.next.empty());
    const auto of_six = std::ranges::find(found.next, std::optional(6), &NextStep::cylinder);
    ASSERT_NE(of_six, found.next.end());
    EXPECT_EQ(next_is(found, Action::adjust, 6), true);
    EXPECT_FALSE(next_is(found, Action::listen, 6));
    EXPECT_FALSE(says(found.cylinder(5)->questions, "question.clearance_siblings"));
    // Put right after the air was on: tested again.
    bench.visit().clearances.back().left = Bench::mm("0.50");
    const Findings after = bench.find();
    EXPECT_FALSE(says(after.cylinder(6)->questions, "question.clearance_siblings"));
    EXPECT_TRUE(next_is(after, Action::leak_down, 6));
}

TEST(Questions, OfAFewOrAlikeClearancesNoneIsTheOddOne) {
    const auto asks_last = [](const std::vector<std::string>& exhausts) {
        Bench bench = six(exhausts);
        return says(bench.find().cylinders.back().questions, "question.clearance_siblings");
    };
    EXPECT_TRUE(asks_last({"0.30", "0.30", "0.10"}));
    EXPECT_FALSE(asks_last({"0.50", "0.05"}));          // of two, nobody can say which
    EXPECT_FALSE(asks_last({"0.50", "0.50", "0.30"}));  // over half
    EXPECT_FALSE(asks_last({"0.15", "0.15", "0.06"}));  // under half, but by less than 0.1 mm
    // The intakes are no siblings of an exhaust valve; a wanted range speaks for itself.
    Bench bench = six({"0.50", "0.05"});
    bench.clearance(1, ValveSide::intake, "0.50");
    bench.clearance(2, ValveSide::intake, "0.50");
    EXPECT_FALSE(says(bench.find().cylinders.back().questions, "question.clearance_siblings"));
    Bench ranged = six({"0.50", "0.50", "0.50", "0.05"});
    ranged.wanted_clearances();
    EXPECT_FALSE(says(ranged.find().cylinders.back().questions, "question.clearance_siblings"));
    EXPECT_TRUE(says(ranged.find().cylinders.back().clearances.remarks, "clearance.too_small"));
    Bench hydraulic = six({"0.50", "0.50", "0.50", "0.05"});
    hydraulic.engine().valves.adjuster = Adjuster::hydraulic;
    EXPECT_FALSE(says(hydraulic.find().cylinders.back().questions, "question.clearance_siblings"));
}

TEST(Questions, ALowReadingBesideSuchAClearanceHasNoVerdict) {
    Bench bench(3);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    bench.dry_all({"140", "141", "60"});
    for (int number : {1, 2, 3})
        bench.clearance(number, ValveSide::exhaust, number == 3 ? "0.05" : "0.50");
    EXPECT_EQ(bench.find().cylinder(3)->headline.code, "cylinder.low_clearance_first");
}

TEST(Questions, NoOrTooLittleClearanceAsksToAdjustFirst) {
    for (const char* found_mm : {"0.00", "0.05"}) {
        Bench bench(1);
        bench.wanted_clearances();
        bench.leak(1, "80", "40");
        bench.hear(1, Exit::exhaust, Loudness::strong);
        bench.clearance(1, ValveSide::exhaust, found_mm);
        const Findings found = bench.find();
        EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.leaks_adjust_first") << found_mm;
        EXPECT_EQ(found.cylinder(1)->clearances.state, State::fault);
        EXPECT_TRUE(next_is(found, Action::adjust, 1));
        // Put right: the old reading does not count for it, so test again; then the verdict may come.
        bench.visit().clearances.front().left = Bench::mm("0.15");
        EXPECT_EQ(bench.find().next.front().reason.code, "next.retest_adjusted");
        bench.leak(1, "80", "76").tag = Tag::after_adjustment;
        EXPECT_EQ(bench.find().cylinder(1)->headline.code, "cylinder.seals_well");
    }
}

TEST(Questions, HydraulicAdjustersHaveNoClearanceToRecord) {
    Bench bench(1);
    bench.engine().valves.adjuster = Adjuster::hydraulic;
    bench.leak(1, "80", "40");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    EXPECT_EQ(bench.find().cylinder(1)->headline.code, "cylinder.leaks_at");
}

}  // namespace
}  // namespace lapwing::findings
