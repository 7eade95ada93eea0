// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Digits that were read off the dial's other scale. What engines read is common practice, no source; 1 bar is
// 14.50 psi.

#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

PadEntry struck(const char* digits, const char* taken, const char* unit) {
    PadEntry entry;
    entry.struck = digits;
    entry.final = Bench::pressure(taken, unit);
    return entry;
}

std::string other(Bench& bench, const PadEntry& entry) {
    const auto judged = bench.judge(entry);
    return judged.other_unit ? judged.other_unit->text() : std::string();
}

TEST(OtherUnit, PsiOnADialInBarIsAskedAbout) {
    Bench bench(2);
    // Of an engine of which nothing is known: 150 psi are 10.3 bar.
    EXPECT_EQ(other(bench, struck("150", "15.0", "bar")), "150 psi");
    EXPECT_EQ(other(bench, struck("175", "1.75", "bar")), "175 psi");
    // What bar reads as usual is left alone, and so is a dead cylinder.
    for (const auto& [digits, taken] :
         {std::pair("92", "9.2"), std::pair("105", "10.5"), std::pair("125", "12.5"), std::pair("30", "3.0"),
          std::pair("6", "6")})
        EXPECT_EQ(other(bench, struck(digits, taken, "bar")), "") << digits;
    // Its other cylinder reads 9 bar: 125 psi are 8.6, 12.5 bar would be odd.
    bench.dry(2, "9.0", "bar");
    EXPECT_EQ(other(bench, struck("125", "12.5", "bar")), "125 psi");
    EXPECT_EQ(other(bench, struck("92", "9.2", "bar")), "");
}

/// A twin whose other cylinder is worn says nothing against a sound one.
TEST(OtherUnit, WhatTheFactoryCallsNormalIsLeftAlone) {
    Bench bench(2);
    bench.dry(2, "6.4", "bar");
    EXPECT_EQ(other(bench, struck("98", "9.8", "bar")), "98 psi");
    bench.engine().limits.low = Bench::pressure("9.0", "bar");
    bench.engine().limits.high = Bench::pressure("11.5", "bar");
    EXPECT_EQ(other(bench, struck("98", "9.8", "bar")), "");
    EXPECT_EQ(other(bench, struck("98", "0.98", "bar")), "98 psi");
}

TEST(OtherUnit, BarOnADialInPsiAndKilopascalToo) {
    Bench bench(1);
    EXPECT_EQ(other(bench, struck("10.5", "10.5", "psi")), "10.5 bar");
    EXPECT_EQ(other(bench, struck("150", "150", "psi")), "");
    EXPECT_EQ(other(bench, struck("1050", "10.50", "bar")), "");
    EXPECT_EQ(other(bench, struck("1050", "1050", "psi")), "1050 kPa");
    // Beyond the end of the dial nobody reads anything.
    bench.tester(TesterKind::compression_gauge, "100", "psi", "");
    EXPECT_EQ(other(bench, struck("10.5", "10.5", "psi")), "");
}

TEST(OtherUnit, ADieselIsHeldAgainstADiesel) {
    Bench bench(1);
    bench.engine().fuel = Fuel::diesel;
    EXPECT_EQ(other(bench, struck("300", "30.0", "bar")), "");
    EXPECT_EQ(other(bench, struck("420", "4.20", "bar")), "420 psi");
}

TEST(OtherUnit, ASetPressureIsHeldAgainstItsTester) {
    Bench bench(1);
    const auto set = [](const char* digits, const char* taken) {
        PadEntry entry;
        entry.test = TestKind::leak_down;
        entry.struck = digits;
        entry.set = Bench::pressure(taken, "bar");
        return entry;
    };
    EXPECT_EQ(other(bench, set("100", "10.0")), "100 psi");
    EXPECT_EQ(other(bench, set("55", "5.5")), "");
    EXPECT_EQ(other(bench, set("", "10.0")), "") << "carried over: nobody typed it";
    bench.tester(TesterKind::leak_down, "10", "bar", "").set_pressure = Bench::pressure("9", "bar");
    EXPECT_EQ(other(bench, set("100", "10.0")), "");
}

TEST(OtherUnit, TheSameDigitsAreAskedAboutOnce) {
    Bench bench(1);
    bench.engine().limits.lowest = Bench::pressure("120", "psi");
    const auto judged = bench.judge(struck("8.9", "8.9", "psi"));
    ASSERT_TRUE(judged.other_unit);
    EXPECT_EQ(judged.other_unit->text(), "8.9 bar");
    EXPECT_FALSE(says(judged.questions, "pad.slip_low"));
}

}  // namespace
}  // namespace lapwing::findings
