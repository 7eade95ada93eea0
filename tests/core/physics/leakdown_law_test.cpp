// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/leakdown_law.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <utility>

namespace lapwing::physics {
namespace {

constexpr double psi_unit = 6894.757;  // NIST SP 811 (read)

TesterPneumatics tester_psi(double set) {
    TesterPneumatics tester;
    tester.set_gauge_pa = set * psi_unit;
    return tester;
}

/// The reading at `set` of a leak that holds 60 of 80 psi and follows `law`.
LeakdownReading reading_of(LeakLaw law, double set) {
    const auto here = tester_psi(80);
    const auto there = tester_psi(set);
    return {there, held_on_other_tester_gauge_pa(here, 60 * psi_unit, there, law).value()};
}

TEST(LeakExponent, AHoleHasNone) {
    EXPECT_NEAR(leak_exponent(reading_of(LeakLaw::orifice, 80), reading_of(LeakLaw::orifice, 30)).value(),
                0.0, 1e-9);
}

TEST(LeakExponent, ANarrowGapGrowsWithPressure) {
    // From the two laws, written down again: A ~ (p2^2 - p0^2) / (p2 psi(p0 / p2)).
    const auto area = [](double held_gauge_pa) {
        const double held_pa = sea_level_pa + held_gauge_pa;
        return (held_pa * held_pa - sea_level_pa * sea_level_pa) / (held_pa * psi(sea_level_pa / held_pa));
    };
    for (auto [first_psi, second_psi] : {std::pair{100.0, 50.0}, std::pair{20.0, 8.0}, std::pair{4.0, 2.0}}) {
        const auto first = reading_of(LeakLaw::laminar, first_psi);
        const auto second = reading_of(LeakLaw::laminar, second_psi);
        const double wanted = std::log(area(first.held_gauge_pa) / area(second.held_gauge_pa)) /
                              std::log(first.held_gauge_pa / second.held_gauge_pa);
        const double n = leak_exponent(first, second).value();
        EXPECT_NEAR(n, wanted, 1e-6) << first_psi;
        EXPECT_GT(n, 0.5);
        EXPECT_LT(n, 0.95);
    }
}

TEST(LeakExponent, ASeatingLeakIsBelowZero) {
    // A valve that pressure presses home: a hole of half the area at the higher pressure.
    const LeakdownReading low{tester_psi(30), 20 * psi_unit};
    const auto area = leakdown(low.tester, low.held_gauge_pa).value().leak_area_m2;
    LeakdownReading high{tester_psi(80), 79 * psi_unit};
    while (leakdown(high.tester, high.held_gauge_pa).value().leak_area_m2 < area / 2)
        high.held_gauge_pa -= 0.01 * psi_unit;
    EXPECT_NEAR(leak_exponent(high, low).value(),
                std::log(0.5) / std::log(high.held_gauge_pa / low.held_gauge_pa), 0.01);
    EXPECT_DOUBLE_EQ(leak_exponent(high, low).value(), leak_exponent(low, high).value());
}

TEST(LeakExponent, RefusesWhatTellsNothing) {
    const LeakdownReading good{tester_psi(80), 60 * psi_unit};
    const auto code = [&](const LeakdownReading& other) { return leak_exponent(good, other).error().code; };
    EXPECT_EQ(code({tester_psi(30), 30 * psi_unit}), "leakdown.law");
    EXPECT_EQ(code({tester_psi(30), 0.0}), "leakdown.law");
    EXPECT_EQ(code({tester_psi(85), 62 * psi_unit}), "leakdown.law");
    EXPECT_EQ(code({tester_psi(30), 31 * psi_unit}), "leakdown.held_above_set");
    EXPECT_EQ(code({tester_psi(30), std::numeric_limits<double>::quiet_NaN()}), "leakdown.held_negative");
}

}  // namespace
}  // namespace lapwing::physics
