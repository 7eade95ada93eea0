// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/hold.h"

#include <gtest/gtest.h>

#include <boost/numeric/odeint.hpp>
#include <cmath>

namespace lapwing::physics {
namespace {

/// Gauge pressure left in a chamber of 0.6 l that leaks, by Boost.Odeint from V/(R T) dp/dt = -mdot and the
/// flows written down again (isothermal; a hole by Saint-Venant and Wantzel in its textbook form for a flow
/// that is not choked, a gap by the difference of squares).
double left_after(double set_gauge_pa, double seconds, double ambient_pa, LeakLaw law, double leak) {
    constexpr double volume = 0.6e-3, gas = 287.05, kelvin = 293.15, gamma = 1.4;
    const auto rate = [&](const double& gauge, double& change, double) {
        const double p = ambient_pa + std::max(gauge, 0.0);
        const double ratio = ambient_pa / p;
        const double flow = law == LeakLaw::orifice
                                ? leak * p / std::sqrt(gas * kelvin) *
                                      std::sqrt(std::max(2 * gamma / (gamma - 1) *
                                                             (std::pow(ratio, 2 / gamma) -
                                                              std::pow(ratio, (gamma + 1) / gamma)),
                                                         0.0))
                                : leak * (p * p - ambient_pa * ambient_pa);
        change = -gas * kelvin / volume * flow;
    };
    namespace odeint = boost::numeric::odeint;
    double gauge = set_gauge_pa;
    odeint::integrate_adaptive(odeint::make_controlled<odeint::runge_kutta_dopri5<double>>(1e-10, 1e-10),
                               rate, gauge, 0.0, seconds, 0.01);
    return gauge;
}

/// About what loses a tenth to a half in some minutes.
double leak_of(LeakLaw law) {
    return law == LeakLaw::orifice ? 3e-9 : 5e-17;
}

struct Pair {
    Hold read, other;
};
class HeldInOther : public testing::TestWithParam<std::tuple<LeakLaw, Pair>> {};

TEST_P(HeldInOther, IsWhatTheSameLeakLeaves) {
    const auto& [law, pair] = GetParam();
    const auto& [read, other] = pair;
    const double leak = leak_of(law);
    const double end = left_after(read.set_gauge_pa, read.seconds, read.ambient_pa, law, leak);
    ASSERT_GT(end, 0.05 * read.set_gauge_pa);
    ASSERT_LT(end, 0.99 * read.set_gauge_pa);
    const double wanted = left_after(other.set_gauge_pa, other.seconds, other.ambient_pa, law, leak);
    ASSERT_GT(wanted, 0.05 * other.set_gauge_pa);
    EXPECT_NEAR(held_in_other_hold_gauge_pa(read, end, other, law).value(), wanted, 1e-4 * wanted);
}
INSTANTIATE_TEST_SUITE_P(
    All, HeldInOther,
    testing::Combine(testing::Values(LeakLaw::orifice, LeakLaw::laminar),
                     testing::Values(Pair{{50e3, 180.0}, {50e3, 360.0}}, Pair{{50e3, 300.0}, {50e3, 60.0}},
                                     Pair{{50e3, 180.0}, {35e3, 180.0}}, Pair{{30e3, 240.0}, {60e3, 300.0}},
                                     Pair{{50e3, 180.0}, {50e3, 180.0, 80e3}})));

TEST(HeldInOther, IsItselfInTheSameHold) {
    const Hold hold{50e3, 300.0};
    for (const LeakLaw law : {LeakLaw::orifice, LeakLaw::laminar})
        for (const double end : {1e3, 20e3, 49e3})
            EXPECT_NEAR(held_in_other_hold_gauge_pa(hold, end, hold, law).value(), end, 1e-6 * end);
}

TEST(HeldInOther, EmptiesThroughAHoleAndNeverQuiteThroughAGap) {
    const Hold brief{50e3, 60.0};
    const Hold day{50e3, 86'400.0};
    EXPECT_EQ(held_in_other_hold_gauge_pa(brief, 40e3, day, LeakLaw::orifice).value(), 0.0);
    const double gap = held_in_other_hold_gauge_pa(brief, 40e3, day, LeakLaw::laminar).value();
    EXPECT_GE(gap, 0.0);
    EXPECT_LT(gap, 1.0);
}

TEST(HeldInOther, LosesNothingWhereNothingWasLost) {
    EXPECT_EQ(held_in_other_hold_gauge_pa({50e3, 60.0}, 50e3, {40e3, 600.0}, LeakLaw::orifice).value(), 40e3);
}

TEST(HeldInOther, RefusesWhatTellsNothing) {
    const Hold good{50e3, 300.0};
    const auto code = [&](const Hold& read, double end, const Hold& other) {
        const auto out = held_in_other_hold_gauge_pa(read, end, other, LeakLaw::orifice);
        return out ? std::string() : out.error().code;
    };
    EXPECT_EQ(code(good, 0.0, good), "hold.emptied");
    EXPECT_EQ(code(good, 51e3, good), "hold.end");
    EXPECT_EQ(code(good, -1.0, good), "hold.end");
    EXPECT_EQ(code(good, std::nan(""), good), "hold.end");
    EXPECT_EQ(code({0.0, 300.0}, 0.0, good), "hold.set");
    EXPECT_EQ(code(good, 40e3, {2e6, 300.0}), "hold.set");
    EXPECT_EQ(code(good, 40e3, {50e3, 0.0}), "hold.seconds");
    EXPECT_EQ(code({50e3, 300.0, 0.0}, 40e3, good), "hold.ambient");
}

}  // namespace
}  // namespace lapwing::physics
