// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/doubtful.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "core/uncertainty/instrument.h"
#include "tests/core/uncertainty/drawn_errors.h"

namespace lapwing::uncertainty {
namespace {

constexpr double bar = 1e5;  // NIST SP 811 (read)

Gauge dial() {
    return {.span_pa = 10 * bar,
            .accuracy = en837_class(1.6).value(),
            .readable_step_pa = 0.1 * bar,
            .zero_limit_pa = 0.05 * bar,
            .shares = {0.4, 0.2}};
}

Doubtful read_on(const std::string& name, const Gauge& gauge, double reading_pa) {
    const auto errors = errors_at(gauge, reading_pa);
    Doubtful out;
    out.value = reading_pa;
    out.by_source(name + " zero", errors.offset_pa);
    out.by_source(name + " gain", errors.gain_pa);
    out.by_itself(errors.local_pa);
    out.by_itself(errors.resolution_pa);
    return out;
}

TEST(Doubtful, AgreesWithTheGaugesOwnRulesOnDifferences) {
    const Gauge gauge = dial();
    const auto low = read_on("a", gauge, 3 * bar);
    const auto high = read_on("a", gauge, 8 * bar);
    EXPECT_NEAR(difference(high, low).u(), u_difference_same_gauge_pa(gauge, 8 * bar, 3 * bar), 1e-6);
    EXPECT_NEAR(difference(high, read_on("b", gauge, 3 * bar)).u(),
                u_difference_two_gauges_pa(gauge, 8 * bar, gauge, 3 * bar), 1e-6);
    EXPECT_NEAR(covariance(high, low), covariance_same_gauge_pa2(gauge, 8 * bar, 3 * bar), 1e-3);
    EXPECT_NEAR(low.u(), u_reading_pa(gauge, 3 * bar), 1e-6);
}

TEST(Doubtful, AgreesWithTrialsWhereOneSideWasScaled) {
    // JCGM 101: the earlier reading times 0.9 (another altitude, say), the later one as it is.
    const Gauge gauge = dial();
    const double before = 9 * bar;
    const double after = 7 * bar;
    const auto trials = monte_carlo(
        [&](Draws& draws) {
            DrawnErrors errors(gauge, draws);
            return errors.moved(after) - 0.9 * errors.moved(before);
        },
        11, 100'000);
    const auto change =
        difference(read_on("a", gauge, after), read_on("a", gauge, before).through(0.9 * before, 0.9));
    EXPECT_NEAR(change.value, after - 0.9 * before, 1e-6);
    EXPECT_NEAR(change.u() / trials->u, 1.0, 0.01);
}

TEST(Doubtful, FewRepeatsWidenAsTheMeanOfRepeatsDoes) {
    const Gauge gauge = dial();
    const std::vector<double> readings{6.8 * bar, 6.4 * bar, 6.7 * bar};
    const auto mean = mean_of_repeats(gauge, readings).value();
    auto value = read_on("a", gauge, mean.mean_pa);
    value.by_itself(mean.scatter_pa / std::sqrt(3.0), 2.0);
    EXPECT_NEAR(value.u(), mean.u_pa, 1e-6);
}

TEST(Doubtful, OneSourceCountsOnce) {
    // By definition: moving both ways by as much is not moving at all, twice the same way is twice as far.
    Doubtful value;
    value.by_source("restrictor", 3.0);
    value.by_source("restrictor", -3.0);
    EXPECT_EQ(value.u(), 0.0);
    value.by_source("restrictor", 2.0);
    value.by_source("restrictor", 2.0);
    EXPECT_DOUBLE_EQ(value.u(), 4.0);
}

}  // namespace
}  // namespace lapwing::uncertainty
