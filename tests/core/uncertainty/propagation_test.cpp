// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

#include "core/uncertainty/coverage.h"
#include "core/uncertainty/first_order.h"
#include "core/uncertainty/leakage.h"
#include "core/uncertainty/monte_carlo.h"
#include "tests/core/uncertainty/drawn_errors.h"

namespace lapwing::uncertainty {
namespace {

constexpr double bar = 1e5;            // NIST SP 811 (read)
constexpr double psi_unit = 6894.757;  // NIST SP 811 (read)

// JCGM 100, example H.2: voltage, current and phase give resistance, reactance and impedance. Inputs read;
// outputs and the correlations' third digit from memory.
constexpr Values<3> h2_inputs{4.999, 19.661e-3, 1.04446};
constexpr Values<3> h2_u{0.0032, 0.0095e-3, 0.00075};

constexpr Covariance<3> correlations(double v_i, double v_phi, double i_phi) {
    return {{{1.0, v_i, v_phi}, {v_i, 1.0, i_phi}, {v_phi, i_phi, 1.0}}};
}

Values<3> impedance(const Values<3>& x) {
    const double z = x[0] / x[1];
    return {z * std::cos(x[2]), z * std::sin(x[2]), z};
}

TEST(FirstOrder, JcgmExampleH2) {
    const auto fine = correlations(-0.355, 0.858, -0.645);
    const auto out = propagate<3>(impedance, h2_inputs, covariance_of(h2_u, fine));
    EXPECT_NEAR(out.value[0], 127.732, 0.0006);
    EXPECT_NEAR(out.value[1], 219.847, 0.0006);
    EXPECT_NEAR(out.value[2], 254.260, 0.0006);
    EXPECT_NEAR(out.u(0), 0.071, 0.0006);
    EXPECT_NEAR(out.u(1), 0.295, 0.0006);
    EXPECT_NEAR(out.u(2), 0.236, 0.0006);
}

TEST(FirstOrder, JcgmExampleH2WithPrintedCorrelations) {
    // The printed, rounded correlations give u of 0.070, 0.296, 0.237 (computed by others).
    const auto out =
        propagate<3>(impedance, h2_inputs, covariance_of(h2_u, correlations(-0.36, 0.86, -0.65)));
    EXPECT_NEAR(out.u(0), 0.070, 0.0006);
    EXPECT_NEAR(out.u(1), 0.296, 0.0006);
    EXPECT_NEAR(out.u(2), 0.237, 0.0006);
}

TEST(FirstOrder, LinearFunctionIsExact) {
    // y = 3 a - 2 b with correlation r: u^2 = 9 ua^2 + 4 ub^2 - 12 r ua ub.
    const auto linear = [](const Values<2>& x) { return Values<1>{3 * x[0] - 2 * x[1]}; };
    const Covariance<2> correlation{{{1.0, 0.5}, {0.5, 1.0}}};
    const auto out =
        propagate<1>(linear, Values<2>{1.0, 2.0}, covariance_of(Values<2>{0.1, 0.2}, correlation));
    EXPECT_NEAR(out.u(0), std::sqrt(9 * 0.01 + 4 * 0.04 - 12 * 0.5 * 0.02), 1e-12);
}

TEST(FirstOrder, ExactInputAddsNothing) {
    const auto product = [](const Values<2>& x) { return Values<1>{x[0] * x[1]}; };
    const auto out = propagate<1>(product, Values<2>{2.0, 5.0}, covariance_of(Values<2>{0.0, 0.1}));
    EXPECT_NEAR(out.u(0), 0.2, 1e-12);
}

TEST(MonteCarlo, AgreesWithFirstOrderOnH2) {
    const auto covariance = covariance_of(h2_u, correlations(-0.355, 0.858, -0.645));
    const auto lower = cholesky(covariance).value();
    const auto first = propagate<3>(impedance, h2_inputs, covariance);
    for (std::size_t i = 0; i < 3; ++i) {
        const auto trials =
            monte_carlo([&](Draws& draws) { return impedance(draws.normal(h2_inputs, lower))[i]; }, 20251)
                .value();
        // 200 000 trials know u to 1 / sqrt(2 n), 0.16 %; five times that.
        EXPECT_NEAR(trials.u / first.u(i), 1.0, 0.008) << i;
        EXPECT_NEAR(trials.mean, first.value[i], 0.02 * first.u(i)) << i;
        EXPECT_NEAR((trials.high - trials.low) / (2 * 1.96 * first.u(i)), 1.0, 0.015) << i;
    }
}

TEST(MonteCarlo, KnownDistributions) {
    // Closed answers: a rectangular law of half-width 1 has sd 1/sqrt(3) and its middle 95 % from -0.95 to
    // 0.95; two of them added make a triangle of half-width 2, sd 2/sqrt(6), 95 % to 2 (1 - sqrt(0.05)).
    const auto one = monte_carlo([](Draws& draws) { return draws.rectangular(0.0, 1.0); }, 1).value();
    EXPECT_NEAR(one.mean, 0.0, 0.007);
    EXPECT_NEAR(one.u, std::numbers::inv_sqrt3, 0.004);
    EXPECT_NEAR(one.low, -0.95, 0.006);
    EXPECT_NEAR(one.high, 0.95, 0.006);
    const auto two = monte_carlo(
                         [](Draws& draws) {
                             const double first = draws.rectangular(0.0, 1.0);
                             return first + draws.rectangular(0.0, 1.0);
                         },
                         2)
                         .value();
    EXPECT_NEAR(two.u, 2.0 / std::sqrt(6.0), 0.006);
    EXPECT_NEAR(two.high, 2.0 * (1.0 - std::sqrt(0.05)), 0.012);
    // Normal: fourth moment 3, nothing shared between seeds.
    const auto fourth =
        monte_carlo([](Draws& draws) { return std::pow(draws.standard_normal(), 4); }, 3).value();
    EXPECT_NEAR(fourth.mean, 3.0, 0.15);
    std::uint64_t trial = 0;
    const auto cross = monte_carlo(
        [&trial](Draws& draws) { return draws.standard_normal() * Draws(8, trial++).standard_normal(); }, 7);
    EXPECT_NEAR(cross.value().mean, 0.0, 0.015);
}

TEST(MonteCarlo, SameSeedSameResult) {
    const auto model = [](Draws& draws) { return std::exp(draws.normal(0.0, 0.3)); };
    const auto first = monte_carlo(model, 42, 5000).value();
    const auto again = monte_carlo(model, 42, 5000).value();
    const auto other = monte_carlo(model, 43, 5000).value();
    EXPECT_EQ(first.mean, again.mean);
    EXPECT_EQ(first.high, again.high);
    EXPECT_NE(first.mean, other.mean);
}

TEST(MonteCarlo, RefusesWhatItCannotSum) {
    EXPECT_EQ(monte_carlo([](Draws& draws) { return draws.uniform(); }, 1, 10).error().code,
              "uncertainty.trials");
    EXPECT_EQ(monte_carlo([](Draws& draws) { return std::log(draws.rectangular(0, 1)); }, 1).error().code,
              "uncertainty.trials");
    EXPECT_EQ(cholesky(correlations(0.9, 0.9, -0.9)).error().code, "uncertainty.covariance");
    EXPECT_TRUE(cholesky(correlations(1.0, 1.0, 1.0)));
}

TEST(LeakageUncertainty, EightyToSixty) {
    // Computed by others from the formula: 80/60 with +-2 psi rectangular on both gauges gives 1.80
    // percentage points.
    const double u_pa = 2 * psi_unit / std::sqrt(3.0);
    const auto out = leakage_with_u(80 * psi_unit, u_pa, 60 * psi_unit, u_pa).value();
    EXPECT_NEAR(out.leakage, 0.25, 1e-12);
    EXPECT_NEAR(out.u * 100, 1.80, 0.005);
    EXPECT_NEAR(expanded(out.u) * 100, 3.61, 0.01);
    // The same by a gauge: class 2 on 0-100 psi, no resolution.
    const Gauge gauge{.span_pa = 100 * psi_unit,
                      .accuracy = en837_class(2.0).value(),
                      .readable_step_pa = 0,
                      .zero_limit_pa = 0,
                      .shares = {0.4, 0.2}};
    EXPECT_NEAR(leakage_two_gauges(gauge, 80 * psi_unit, gauge, 60 * psi_unit).value().u * 100, 1.80, 0.005);
    // And by trials of the whole distribution.
    const auto trials = monte_carlo(
                            [](Draws& draws) {
                                const double set = draws.rectangular(80, 2);
                                return 1.0 - draws.rectangular(60, 2) / set;
                            },
                            5)
                            .value();
    EXPECT_NEAR(trials.u / out.u, 1.0, 0.01);
}

TEST(LeakageUncertainty, OneGaugeKnowsMoreThanTwo) {
    const Gauge gauge{.span_pa = 7 * bar,
                      .accuracy = en837_class(1.6).value(),
                      .readable_step_pa = 0.05 * bar,
                      .zero_limit_pa = 0,
                      .shares = {0.4, 0.2}};
    const double set = 5.5 * bar;
    const double held = 4.4 * bar;
    const auto one = leakage_one_gauge(gauge, set, held).value();
    const auto two = leakage_two_gauges(gauge, set, gauge, held).value();
    EXPECT_LT(one.u, two.u);
    EXPECT_GT(leakage_one_gauge(gauge, set, held, 0.2 * bar).value().u, one.u);
    const auto trials = monte_carlo(
                            [&](Draws& draws) {
                                DrawnErrors errors(gauge, draws);
                                const double true_set = errors.moved(set);
                                return 1.0 - errors.moved(held) / true_set;
                            },
                            6)
                            .value();
    EXPECT_NEAR(trials.u / one.u, 1.0, 0.01);
}

TEST(LeakageUncertainty, PureGainCancelsInARatio) {
    const auto shared = [](double offset_share, double gain_share) {
        return Gauge{.span_pa = 7 * bar,
                     .accuracy = en837_class(1.6).value(),
                     .readable_step_pa = 0,
                     .zero_limit_pa = 0,
                     .shares = {offset_share, gain_share}};
    };
    // The whole class limit as gain, at full scale: nothing local is left for the set reading there.
    const auto gain = shared(0.0, 1.0);
    const auto offset = shared(1.0, 0.0);
    const double set = 7 * bar;
    const double held = 6.9999 * bar;
    EXPECT_LT(leakage_one_gauge(gain, set, held).value().u, 1e-4);
    // A pure offset e changes held/set by e (1 - held/set) / set: it cancels only as held nears set.
    const double half = 3.5 * bar;
    EXPECT_NEAR(leakage_one_gauge(offset, set, half).value().u, 0.5 * u_reading_pa(offset, set) / set, 1e-9);
}

TEST(LeakageUncertainty, RefusesImpossibleReadings) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(leakage_with_u(0, 1, 0, 1).error().code, "leakage.set");
    EXPECT_EQ(leakage_with_u(nan, 1, 0, 1).error().code, "leakage.set");
    EXPECT_EQ(leakage_with_u(5e5, 1, 6e5, 1).error().code, "leakage.held");
    EXPECT_EQ(leakage_with_u(5e5, 1, -1, 1).error().code, "leakage.held");
    Gauge gauge;
    EXPECT_EQ(leakage_one_gauge(gauge, 5e5, 4e5).error().code, "gauge.span");
    gauge = {.span_pa = 7 * bar,
             .accuracy = en837_class(1.6).value(),
             .readable_step_pa = 0,
             .zero_limit_pa = 0,
             .shares = {0.4, 0.2}};
    EXPECT_EQ(leakage_one_gauge(gauge, 5e5, 4e5, -1).error().code, "leakage.droop");
}

}  // namespace
}  // namespace lapwing::uncertainty
