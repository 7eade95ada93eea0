// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <vector>

#include "core/physics/cranking_many.h"
#include "core/uncertainty/first_order.h"
#include "core/uncertainty/monte_carlo.h"

// The doubt of a reading that the cranking model gives: first order (JCGM 100) and trials of the whole
// distribution (JCGM 101) must agree where the model is nearly straight.
namespace lapwing::uncertainty {
namespace {

physics::CrankingCase case_of(const Values<4>& inputs) {
    physics::CrankingCase of;
    of.crank = {0.070, 0.065, 0.125};
    of.compression_ratio = inputs[0];
    of.closing_after_bdc_rad = inputs[1];
    of.speed_rad_s = inputs[2];
    of.heat_w_m2k = inputs[3];
    return of;
}

TEST(CrankingDoubt, FirstOrderAndTrialsAgree) {
    const Values<4> inputs{9.0, 65 * physics::degree, 250 * physics::per_minute, 200.0};
    const Values<4> u{0.15, 3 * physics::degree, 20 * physics::per_minute, 30.0};
    const auto last = [](const Values<4>& at) {
        return Values<1>{physics::crank(case_of(at)).value().last_gauge_pa};
    };
    const auto first_order = propagate<1>(last, inputs, covariance_of(u));

    constexpr std::size_t trials = 4000;
    std::vector<physics::CrankingCase> cases;
    for (std::size_t trial = 0; trial < trials; ++trial) {
        Draws draws(3, trial);
        Values<4> at = inputs;
        for (std::size_t i = 0; i < 4; ++i)
            at[i] += u[i] * draws.standard_normal();
        cases.push_back(case_of(at));
    }
    const auto readings = physics::crank_many(cases).value();
    std::vector<double> results;
    for (std::size_t trial = 0; trial < trials; ++trial)
        results.push_back(readings.last_gauge_pa(trial));
    const auto monte_carlo = summarize(std::move(results)).value();
    // 4000 trials know u to 1 / sqrt(2 n), 1.1 %; three times that.
    EXPECT_NEAR(monte_carlo.u / first_order.u(0), 1.0, 0.034);
    EXPECT_NEAR(monte_carlo.mean, first_order.value[0], 0.1 * first_order.u(0));
}

}  // namespace
}  // namespace lapwing::uncertainty
