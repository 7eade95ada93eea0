// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

/// Several gauges in one visit, and gauges that failed their checks. All readings here are made up.

#include <gtest/gtest.h>

#include "core/findings/case.h"
#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

/// Two cylinders, and the second of them read on another gauge of the same make.
Findings on_two_gauges(bool two) {
    Bench bench(2);
    bench.tester(TesterKind::compression_gauge, "16", "bar", "1.6");
    const TesterId other = bench.tester(TesterKind::compression_gauge, "16", "bar", "1.6").id;
    bench.dossier.testers.back().name = "Other gauge";
    bench.session().compression_gauge = bench.dossier.testers.front().id;
    bench.engine().limits.difference = *TypedPressure::make("1.0", units::bar);
    bench.dry(1, "10.0", "bar");
    Reading& second = bench.dry(2, "9.4", "bar");
    if (two) second.tester = other;
    return bench.find();
}

double difference_u95(const Findings& found) {
    for (const RuleVerdict& rule : found.spread)
        if (rule.rule == "own-difference")
            return std::get<Figure>(rule.remark.message.args.front()).u95.value();
    return 0.0;
}

TEST(Gauges, NothingCancelsBetweenTwoOfThem) {
    const double one = difference_u95(on_two_gauges(false));
    const double two = difference_u95(on_two_gauges(true));
    // The limit of class 1.6 over 16 bar is 0.256 bar, rectangular (EN 837-1; JCGM 100, 4.3.7): 0.148 bar
    // standard, and 0.42 bar for the difference of two such gauges at 95 %, before any scatter.
    EXPECT_GT(two, 0.41e5);
    EXPECT_LT(one, 0.9 * two);
    EXPECT_FALSE(says(on_two_gauges(false).weakened_by, "weak.gauges_differ"));
    EXPECT_TRUE(says(on_two_gauges(true).weakened_by, "weak.gauges_differ"));
}

TEST(Gauges, EachThatFailedIsNamedAndToBeReadAgain) {
    Bench bench(2);
    bench.tester(TesterKind::compression_gauge, "16", "bar", "1.6");
    bench.dossier.testers.front().checks = {
        {TesterCheckKind::holds_after_cranking, {}, CheckResult::failed, {}, {}, {}, {}}};
    const TesterId other = bench.tester(TesterKind::compression_gauge, "16", "bar", "1.6").id;
    bench.session().compression_gauge = bench.dossier.testers.front().id;
    bench.dry(1, "10.0", "bar");
    // The gauge of the last reading is sound: the one before it is named all the same.
    bench.dry(2, "9.9", "bar").tester = other;
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.weakened_by, "weak.self_check_failed"));
    EXPECT_EQ(found.next.front().reason.code, "next.tester_failed");

    Bench drilled(1);
    drilled.tester(TesterKind::leak_down, "7", "bar", "1.6").checks = {
        {TesterCheckKind::drilled_hole, {}, CheckResult::failed, {}, {}, {}, {}}};
    drilled.leak(1, "5.50", "5.00", "bar");
    EXPECT_TRUE(says(drilled.find().weakened_by, "weak.self_check_failed"));
}

// A tester that breaks next month did not read wrong today, nor does one that was mended read wrong ever
// since.
TEST(Gauges, AChecksDayDecidesWhatItSpeaksAgainst) {
    constexpr std::int64_t hour = 3600 * 1000;
    const auto with = [](std::vector<std::pair<std::int64_t, CheckResult>> checks) {
        Bench bench(1);
        Tester& tester = bench.tester(TesterKind::leak_down, "7", "bar", "1.6");
        const Timestamp read = bench.leak(1, "5.50", "5.00", "bar").taken_at;
        for (const auto& [hours, result] : checks)
            tester.checks.push_back(
                {TesterCheckKind::outlet_blocked, {read.unix_ms + hours * hour, 0}, result, {}, {}, {}, {}});
        return bench.find().weakened_by;
    };
    using enum CheckResult;
    EXPECT_TRUE(says(with({{-1, failed}}), "weak.self_check_failed"));
    EXPECT_TRUE(says(with({{-24 * 400, failed}}), "weak.self_check_failed"));
    EXPECT_TRUE(says(with({{2, failed}}), "weak.self_check_failed"));
    EXPECT_FALSE(says(with({{-1, passed}, {24 * 30, failed}}), "weak.self_check_failed"));
    EXPECT_FALSE(says(with({{-2, failed}, {-1, passed}}), "weak.self_check_failed"));
    // Mended only after it was read.
    EXPECT_TRUE(says(with({{-1, failed}, {1, passed}}), "weak.self_check_failed"));
    // The check itself may be botched, and done again at once.
    EXPECT_FALSE(says(with({{1, failed}, {2, passed}}), "weak.self_check_failed"));
    EXPECT_TRUE(says(with({{24 * 30, passed}}), "weak.self_check_missing"));
    EXPECT_FALSE(says(with({{1, passed}}), "weak.self_check_missing"));
}

TEST(Gauges, ADieselHasNoThrottleToHoldOpen) {
    const auto headline = [](Fuel fuel) {
        Bench bench(2);
        bench.engine().fuel = fuel;
        bench.engine().limits.lowest = *TypedPressure::make("20", units::bar);
        return bench.dry_all({"14.0", "14.1"}, "bar").find().headline.code;
    };
    EXPECT_EQ(headline(Fuel::petrol), "engine.low_everywhere");
    EXPECT_EQ(headline(Fuel::diesel), "engine.low_everywhere_diesel");
}

}  // namespace
}  // namespace lapwing::findings
