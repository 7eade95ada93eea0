// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <chrono>

#include "tests/core/findings/small_car.h"

namespace lapwing::findings {
namespace {

PadEntry leak_entry(const char* set, const char* held, const char* unit = "psi") {
    PadEntry entry;
    entry.test = TestKind::leak_down;
    entry.set = Bench::pressure(set, unit);
    entry.held = Bench::pressure(held, unit);
    return entry;
}

PadJudgement judged_with_model(SmallCar& car, const PadEntry& entry) {
    const ModelFacts facts = model_facts(model_inputs(car.dossier, car.visit(), car.reference(), entry));
    return judge_entry(car.dossier, car.visit(), car.reference(), entry, &facts);
}

PadEntry dry_entry(const char* final, const char* unit = "psi") {
    PadEntry entry;
    entry.final = Bench::pressure(final, unit);
    return entry;
}

TEST(Pad, JudgesALeakWhileItIsTyped) {
    // Jeep service manual 1982: 80 to 60 psi is 25 %; over the trade's 20 % (common practice, no source).
    Bench bench(1);
    // The tester that the band belongs to.
    bench.tester(TesterKind::leak_down, "100", "psi", "1.0").restrictor = Bench::mm("1.016");
    const PadJudgement judged = bench.judge(leak_entry("80", "60"));
    EXPECT_NEAR(judged.leakage->figure.si, 0.25, 1e-12);
    EXPECT_NEAR(judged.converted->orifice.figure.si, 0.25, 1e-6);
    EXPECT_EQ(judged.state, State::fault);
    EXPECT_TRUE(judged.questions.empty());
    EXPECT_FALSE(judged.leakage->from.inputs.empty());
}

TEST(Pad, SaysTheSameAsTheFindings) {
    Bench bench(1);
    bench.tester(TesterKind::leak_down, "100", "psi", "1.6");
    const PadJudgement judged = bench.judge(leak_entry("60", "51"));
    bench.leak(1, "60", "51");
    const auto found = *bench.find().cylinder(1)->leak_down;
    EXPECT_EQ(judged.leakage->figure, found.leakage.figure);
    EXPECT_EQ(judged.converted->orifice.figure, found.on_testers.front().orifice.figure);
    EXPECT_EQ(judged.state, found.state);
}

TEST(Pad, JudgesADialInPercentAsThePressureThatItStandsFor) {
    Bench bench(1);
    bench.tester(TesterKind::leak_down, "80", "psi", "1.6");
    const PadJudgement by_pressure = bench.judge(leak_entry("80", "60.0"));
    PadEntry off_dial = leak_entry("80", "60.0");
    off_dial.dial_loss = *TypedRatio::make("25", units::percent);
    off_dial.held = held_by_dial(*off_dial.set, *off_dial.dial_loss);
    const PadJudgement judged = bench.judge(off_dial);
    EXPECT_NEAR(judged.leakage->figure.si, 0.25, 1e-12);
    // A percent of the dial is 0.8 psi: coarser than tenths of a psi, and the range says so.
    EXPECT_GT(*judged.leakage->figure.u95, *by_pressure.leakage->figure.u95);
    EXPECT_LT(*judged.leakage->figure.u95, *by_pressure.leakage->figure.u95 + 0.02);
}

TEST(Pad, HeldOverSetIsAskedAbout) {
    Bench bench(1);
    const PadJudgement judged = bench.judge(leak_entry("60", "80"));
    EXPECT_TRUE(says(judged.questions, "pad.held_over_set"));
    EXPECT_FALSE(judged.leakage.has_value());
    EXPECT_EQ(judged.state, State::none);
}

TEST(Pad, HeldWithoutSetAsksForIt) {
    PadEntry entry = leak_entry("80", "60");
    entry.set.reset();
    EXPECT_TRUE(says(Bench(1).judge(entry).questions, "pad.no_set"));
}

TEST(Pad, OverTheGaugesScaleIsAskedAbout) {
    Bench bench(1);
    bench.tester(TesterKind::compression_gauge, "16", "bar", "1.6");
    EXPECT_TRUE(says(bench.judge(dry_entry("92", "bar")).questions, "pad.over_scale"));
    EXPECT_FALSE(says(bench.judge(dry_entry("9.2", "bar")).questions, "pad.over_scale"));
}

TEST(Pad, ADecimalSlipAgainstTheOtherCylindersIsAskedAbout) {
    Bench bench(3);
    bench.dry(1, "9.8", "bar");
    bench.dry(2, "9.6", "bar");
    PadEntry entry = dry_entry("0.95", "bar");
    entry.cylinder = 3;
    EXPECT_TRUE(says(bench.judge(entry).questions, "pad.slip_low"));
    entry.final = Bench::pressure("95", "bar");
    EXPECT_TRUE(says(bench.judge(entry).questions, "pad.slip_high"));
    entry.final = Bench::pressure("6.1", "bar");
    EXPECT_TRUE(bench.judge(entry).questions.empty()) << "a low cylinder is what the test is for";
    entry.final = Bench::pressure("0", "bar");
    EXPECT_FALSE(says(bench.judge(entry).questions, "pad.slip_low")) << "a dead cylinder is no slip";
}

TEST(Pad, FirstPuffOverFinalIsAskedAbout) {
    PadEntry entry = dry_entry("120");
    entry.first = Bench::pressure("140", "psi");
    EXPECT_TRUE(says(Bench(1).judge(entry).questions, "pad.first_over_final"));
}

TEST(Pad, VeryLittleHeldAsksForTheRightTdcInAFourStrokeOnly) {
    EXPECT_TRUE(says(Bench(1).judge(leak_entry("80", "5")).questions, "pad.very_low_held"));
    EXPECT_FALSE(
        says(Bench(1, StrokeCycle::two).judge(leak_entry("80", "5")).questions, "pad.very_low_held"));
}

TEST(Pad, AnotherSetPressureThanUsualIsAskedAbout) {
    Bench bench(1);
    bench.tester(TesterKind::leak_down, "100", "psi", "1.6").set_pressure = Bench::pressure("80", "psi");
    EXPECT_TRUE(says(bench.judge(leak_entry("60", "50")).questions, "pad.set_differs"));
    bench.session().conditions.crank_held_by = CrankHeldBy::low_pressure;
    EXPECT_FALSE(says(bench.judge(leak_entry("60", "50")).questions, "pad.set_differs"));
}

TEST(Pad, WetEntryShowsTheRise) {
    Bench bench(1);
    bench.dry(1, "100");
    PadEntry entry;
    entry.test = TestKind::wet;
    entry.final = Bench::pressure("112", "psi");
    EXPECT_NEAR(bench.judge(entry).rise->figure.si, 0.12, 1e-9);
}

TEST(Pad, NothingTypedIsNothingJudged) {
    for (const TestKind test : {TestKind::dry, TestKind::leak_down, TestKind::wet, TestKind::crankcase}) {
        PadEntry entry;
        entry.test = test;
        const PadJudgement judged = Bench(1).judge(entry);
        EXPECT_EQ(judged.state, State::none);
        EXPECT_FALSE(judged.value.has_value());
    }
}

TEST(Pad, IsFastEnoughForEveryKey) {
    Bench bench(16);
    for (int number = 1; number <= 16; ++number)
        bench.dry(number, "150");
    const PadEntry entry = leak_entry("80", "57");
    const auto start = std::chrono::steady_clock::now();
    constexpr int times = 200;
    for (int i = 0; i < times; ++i)
        EXPECT_TRUE(bench.judge(entry).leakage.has_value());
    const auto each = (std::chrono::steady_clock::now() - start) / times;
    // Measured in tens of microseconds; the bound leaves room for sanitizers and a busy machine.
    EXPECT_LT(each, std::chrono::milliseconds(5));
}

TEST(Pad, SaysThatOilWouldLockTheEngine) {
    // A moped's cylinder, 38 x 43 mm at 10:1: pi/4 3.8^2 4.3 / 9 = 5.4 cm3 of chamber (arithmetic).
    SmallCar car;
    car.engine().bore = Sourced<TypedLength>{Bench::mm("38"), {}, {}};
    car.engine().stroke = Sourced<TypedLength>{Bench::mm("43"), {}, {}};
    car.ratio("10");
    PadEntry entry;
    entry.test = TestKind::wet;
    entry.oil_volume = cm3("5");
    EXPECT_TRUE(says(judged_with_model(car, entry).questions, "pad.oil_locks"));
    entry.oil_volume = cm3("15");
    EXPECT_TRUE(says(judged_with_model(car, entry).questions, "pad.oil_locks"));
    entry.oil_volume = cm3("2");
    EXPECT_FALSE(says(judged_with_model(car, entry).questions, "pad.oil_locks"));
}

TEST(Pad, AsksAboutMuchOilAlsoWhereTheChamberIsNotKnown) {
    // Common practice, no source: 5 to 15 ml for a car's cylinder.
    Bench bench(4);
    PadEntry entry;
    entry.test = TestKind::wet;
    entry.oil_volume = cm3("50");
    EXPECT_TRUE(says(bench.judge(entry).questions, "pad.much_oil"));
    entry.oil_volume = cm3("15");
    EXPECT_FALSE(says(bench.judge(entry).questions, "pad.much_oil"));
}

TEST(Pad, AsksAboutLeakDownPressureInACrankcase) {
    // Common practice, no source: a few psi, mostly under 10.
    Bench bench(1);
    PadEntry entry = leak_entry("80", "60");
    entry.test = TestKind::crankcase;
    EXPECT_TRUE(says(bench.judge(entry).questions, "pad.crankcase_high"));
    entry = leak_entry("8", "6");
    entry.test = TestKind::crankcase;
    EXPECT_FALSE(says(bench.judge(entry).questions, "pad.crankcase_high"));
    entry.held.reset();
    entry.set = leak_entry("80", "60").set;
    EXPECT_TRUE(says(bench.judge(entry).questions, "pad.crankcase_high"));
}

}  // namespace
}  // namespace lapwing::findings
