// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A reading at its limit: the verdict is the same whichever unit either was typed in. Which readings are
// equal is decimal arithmetic (10.2 bar is 1020 kPa), no source needed.

#include <fmt/format.h>

#include "core/base/apart.h"
#include "core/findings/clearance_fit.h"
#include "tests/core/findings/small_car.h"

namespace lapwing::findings {
namespace {

TEST(Apart, OnlyWhatIsApartOnPaper) {
    EXPECT_FALSE(is_below(10.2 * 1e5, 1020 * 1e3));
    EXPECT_FALSE(is_above(10.2 * 1e5, 1020 * 1e3));
    EXPECT_FALSE(is_below(0.006 * 0.0254, 6 * 2.54e-5));
    EXPECT_FALSE(is_above(0.15 - 0.10, 0.05));
    EXPECT_FALSE(is_below(0.0, 0.0));
    EXPECT_TRUE(is_below(1019.9e3, 1020e3));
    EXPECT_TRUE(is_above(0.0, -1.0));
    EXPECT_TRUE(is_below(-1e-3, 0.0));
}

State cranked(const std::string& bar, const TypedPressure& lowest) {
    Bench bench(1);
    bench.engine().limits.lowest = lowest;
    bench.dry(1, bar, "bar");
    return bench.find().cylinder(1)->dry->state;
}

State crankcase_ends(const std::string& bar, const TypedPressure& least) {
    Bench bench(1, StrokeCycle::two);
    bench.engine().crankcase.end_at_least = least;
    Reading& reading = bench.add(TestKind::crankcase, 0);
    reading.set = Bench::pressure("40", "bar");
    reading.held = Bench::pressure(bar, "bar");
    return bench.find().crankcases.front().state;
}

TEST(Limits, APressureJudgesTheSameInBarAndInKilopascals) {
    for (int tenths = 10; tenths < 400; ++tenths) {
        const std::string bar = fmt::format("{}.{}", tenths / 10, tenths % 10);
        const TypedPressure same = Bench::pressure(bar, "bar");
        const TypedPressure other = Bench::pressure(std::to_string(10 * tenths), "kPa");
        ASSERT_EQ(cranked(bar, other), cranked(bar, same)) << bar;
        ASSERT_NE(cranked(bar, other), State::fault) << bar;
        ASSERT_EQ(crankcase_ends(bar, other), crankcase_ends(bar, same)) << bar;
        ASSERT_NE(crankcase_ends(bar, other), State::fault) << bar;
    }
}

// GM manuals, petrol: no cylinder under 100 psi.
TEST(Limits, ThePadJudgesACrankcaseTheSameInBarAndInKilopascals) {
    for (int tenths = 1; tenths < 100; ++tenths) {
        Bench bench(1, StrokeCycle::two);
        bench.engine().crankcase.end_at_least = Bench::pressure(std::to_string(10 * tenths), "kPa");
        PadEntry entry;
        entry.test = TestKind::crankcase;
        entry.set = bench.engine().crankcase.end_at_least;
        entry.held = Bench::pressure(fmt::format("{}.{}", tenths / 10, tenths % 10), "bar");
        const PadJudgement judged = bench.judge(entry);
        ASSERT_EQ(judged.state, State::borderline) << tenths;
        ASSERT_FALSE(says(judged.questions, "pad.held_over_set")) << tenths;
    }
}

TEST(Limits, AHighestReadingIsNotExceededByItself) {
    for (int tenths = 10; tenths < 400; ++tenths) {
        Bench bench(1);
        bench.engine().limits.lowest = Bench::pressure("0.1", "bar");
        bench.engine().limits.high = Bench::pressure(std::to_string(10 * tenths), "kPa");
        bench.dry(1, fmt::format("{}.{}", tenths / 10, tenths % 10), "bar");
        const Findings found = bench.find();
        ASSERT_FALSE(says(found.cylinder(1)->dry->why, "why.above_high")) << tenths;
        ASSERT_FALSE(says(found.cylinder(1)->questions, "question.above_high")) << tenths;
    }
}

TEST(Limits, AClearanceJudgesTheSameInThousandthsAndInInches) {
    for (int thou = 1; thou < 60; ++thou) {
        Bench bench(1);
        const auto in_thou = [](int count) { return *TypedLength::make(std::to_string(count), units::thou); };
        bench.engine().valves.intake_clearance =
            Sourced<ClearanceRange>{{in_thou(thou), in_thou(thou + 3)}, {}, {}};
        for (const int count : {thou, thou + 3}) {
            bench.visit().clearances.clear();
            bench.clearance(1, ValveSide::intake, "0").found =
                *TypedLength::make(fmt::format("0.{:03}", count), units::inch);
            ASSERT_EQ(bench.find().cylinder(1)->clearances.state, State::good) << count;
        }
    }
}

TEST(Limits, AllThatWasSetMayBeHeld) {
    for (int tenths = 10; tenths < 100; ++tenths) {
        Bench bench(1);
        Reading& reading = bench.leak(1, fmt::format("{}.{}", tenths / 10, tenths % 10),
                                      fmt::format("{}.{}", tenths / 10, tenths % 10), "bar");
        reading.held = Bench::pressure(std::to_string(10 * tenths), "kPa");
        const Findings found = bench.find();
        ASSERT_TRUE(found.cylinder(1)->leak_down) << tenths;
        ASSERT_EQ(found.cylinder(1)->leak_down->state, State::good) << tenths;
    }
}

TEST(Limits, CylindersThatWerePutRightAreNotCalledLowTogether) {
    // A sound cylinder of this engine reads 172 psi, and 130 behind 8 cm3 of hose before the check valve
    // (computed by an independent implementation, no published source).
    SmallCar car(2);
    Tester& gauge = car.tester(TesterKind::compression_gauge, "300", "psi", "1.0");
    gauge.hose_volume = cm3("8");
    gauge.check_valve_at = CheckValveAt::gauge_end;
    car.engine().limits.lowest = Bench::pressure("140", "psi");
    const Findings found = car.dry_all({"130", "130"}).find();
    EXPECT_NE(found.cylinder(1)->dry->state, State::fault);
    EXPECT_NE(found.headline.code, "engine.low_everywhere");
    EXPECT_FALSE(says(found.contradictions, "engine.low_everywhere"));
    for (const NextStep& step : found.next)
        EXPECT_NE(step.reason.code, "next.leak_down_all");
    // No hose explains 70 psi.
    SmallCar low(2);
    low.engine().limits.lowest = Bench::pressure("140", "psi");
    EXPECT_EQ(low.dry_all({"70", "70"}).find().headline.code, "engine.low_everywhere");
}

TEST(Limits, AFirstPuffIsNotLowForWhatStandsInItsWay) {
    // Behind that hose 180 psi are about 136, and a first puff of 80 is more than half of it; of 180 it is
    // less.
    SmallCar car;
    Tester& gauge = car.tester(TesterKind::compression_gauge, "300", "psi", "1.0");
    gauge.hose_volume = cm3("8");
    gauge.check_valve_at = CheckValveAt::gauge_end;
    car.engine().limits.low = Bench::pressure("180", "psi");
    car.dry(1, "110").first = Bench::pressure("80", "psi");
    ASSERT_EQ(car.find().cylinder(1)->dry->state, State::borderline);
    EXPECT_FALSE(says(car.find().cylinder(1)->rules_of_thumb, "thumb.first_puff_valves"));
    car.dossier.testers.front().check_valve_at = CheckValveAt::chamber_end;
    EXPECT_TRUE(says(car.find().cylinder(1)->rules_of_thumb, "thumb.first_puff_valves"));
}

TEST(Limits, AClearanceIsFittedByOneRule) {
    Bench bench(1);
    bench.wanted_clearances();  // intake 0.08 to 0.12 mm
    Clearance clearance;
    const auto state = [&](const char* found) {
        clearance.found = Bench::mm(found);
        return state_of(fit_of(bench.engine(), clearance));
    };
    EXPECT_EQ(state("0.10"), State::good);
    EXPECT_EQ(state("0.05"), State::fault);
    EXPECT_EQ(state("0.20"), State::borderline);  // the valve seats
    EXPECT_EQ(state("0"), State::fault);
    clearance.left = Bench::mm("0.10");
    EXPECT_EQ(state("0.05"), State::good);
    clearance.left.reset();
    bench.engine().valves.intake_clearance.reset();
    EXPECT_EQ(state("0.10"), State::none);
    EXPECT_EQ(state("0"), State::fault);  // held open, whatever the maker wants
}

}  // namespace
}  // namespace lapwing::findings
