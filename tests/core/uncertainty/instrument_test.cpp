// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/instrument.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

#include "core/uncertainty/coverage.h"

namespace lapwing::uncertainty {
namespace {

constexpr double bar = 1e5;  // NIST SP 811 (read)

Gauge dial(double span_bar, double class_number, double graduation_bar) {
    return {.span_pa = span_bar * bar,
            .accuracy = en837_class(class_number).value(),
            .readable_step_pa = 0.5 * graduation_bar * bar,
            .zero_limit_pa = 0.0,
            .shares = {0.4, 0.2}};
}

TEST(AccuracyClass, En837) {
    // EN 837-1 (read): class 1.6 on 0-10 bar is 0.16 bar.
    EXPECT_NEAR(en837_class(1.6).value().limit(0.5) * 10, 0.16, 1e-12);
    EXPECT_NEAR(en837_class(1.6).value().limit(0.01) * 10, 0.16, 1e-12);
    EXPECT_EQ(en837_class(0.0).error().code, "gauge.class");
    EXPECT_EQ(en837_class(std::numeric_limits<double>::quiet_NaN()).error().code, "gauge.class");
}

TEST(AccuracyClass, AsmeB40100) {
    // ASME B40.100: A 2-1-2 (read); B 3-2-3, C 4-3-4, D 5-5-5 (from memory).
    const struct {
        AsmeGrade grade;
        double low, middle, high;
    } rows[] = {
        {AsmeGrade::a, 2, 1, 2}, {AsmeGrade::b, 3, 2, 3}, {AsmeGrade::c, 4, 3, 4}, {AsmeGrade::d, 5, 5, 5}};
    for (const auto& row : rows) {
        const auto grade = asme_b40_100(row.grade);
        EXPECT_DOUBLE_EQ(grade.limit(0.1) * 100, row.low);
        EXPECT_DOUBLE_EQ(grade.limit(0.5) * 100, row.middle);
        EXPECT_DOUBLE_EQ(grade.limit(0.9) * 100, row.high);
    }
}

RC_GTEST_PROP(Instrument, ClassLimitHoldsEverywhere, ()) {
    auto gauge = dial(10, 1.6, 0.2);
    gauge.accuracy = asme_b40_100(*rc::gen::element(AsmeGrade::a, AsmeGrade::b, AsmeGrade::c, AsmeGrade::d));
    gauge.readable_step_pa = 0.0;
    const double position = *rc::gen::inRange(0, 1001) / 1000.0;
    const double reading_pa = position * gauge.span_pa;
    const double expected_pa = gauge.accuracy.limit(position) * gauge.span_pa / std::sqrt(3.0);
    RC_ASSERT(std::abs(u_reading_pa(gauge, reading_pa) - expected_pa) < 1e-9 * expected_pa);
}

TEST(Instrument, ResolutionIsRectangular) {
    // JCGM 100, F.2.2.1: u of a step is step / sqrt(12).
    EXPECT_NEAR(errors_at(dial(6, 1.6, 0.1), 3 * bar).resolution_pa, 0.05 * bar / std::sqrt(12.0), 1e-9);
}

TEST(Instrument, OffsetCancelsInADifference) {
    auto gauge = dial(6, 1.6, 0.1);
    const double before = u_difference_same_gauge_pa(gauge, 5.0 * bar, 4.5 * bar);
    EXPECT_LT(before, u_difference_two_gauges_pa(gauge, 5.0 * bar, gauge, 4.5 * bar));
    gauge.zero_limit_pa = 0.5 * bar;  // a bent needle changes no difference
    EXPECT_DOUBLE_EQ(u_difference_same_gauge_pa(gauge, 5.0 * bar, 4.5 * bar), before);
    EXPECT_GT(u_reading_pa(gauge, 5.0 * bar), 0.5 * bar / std::sqrt(3.0));
}

RC_GTEST_PROP(Instrument, DifferenceAgreesWithTheCovariance, ()) {
    const auto gauge = dial(10, 2.5, 0.2);
    const double first = *rc::gen::inRange(0, 1001) * 1e3;
    const double second = *rc::gen::inRange(0, 1001) * 1e3;
    const double u1 = u_reading_pa(gauge, first);
    const double u2 = u_reading_pa(gauge, second);
    const double variance = u1 * u1 + u2 * u2 - 2 * covariance_same_gauge_pa2(gauge, first, second);
    const double u = u_difference_same_gauge_pa(gauge, first, second);
    RC_ASSERT(std::abs(u * u - variance) < 1e-9 * variance);
}

TEST(Instrument, ATenthOfABarIsTheGaugesOwnError) {
    // A fall of 0.1 bar on a 0-6 bar gauge of class 1.6 (+-0.096 bar by EN 837-1) proves nothing; half a bar
    // does.
    const auto gauge = dial(6, 1.6, 0.1);
    EXPECT_FALSE(stands_out(0.1 * bar, u_difference_same_gauge_pa(gauge, 5.0 * bar, 4.9 * bar)));
    EXPECT_FALSE(stands_out(0.1 * bar, u_difference_two_gauges_pa(gauge, 5.0 * bar, gauge, 4.9 * bar)));
    EXPECT_TRUE(stands_out(0.5 * bar, u_difference_same_gauge_pa(gauge, 5.0 * bar, 4.5 * bar)));
}

TEST(Instrument, MeanOfRepeats) {
    const auto gauge = dial(16, 1.6, 0.2);
    const std::vector<double> repeats{10.0 * bar, 10.2 * bar, 10.4 * bar, 10.2 * bar};
    const auto mean = mean_of_repeats(gauge, repeats).value();
    EXPECT_NEAR(mean.mean_pa, 10.2 * bar, 1e-6);
    // Deviations -0.2, 0, 0.2, 0: s^2 = 0.08 / 3.
    EXPECT_NEAR(mean.scatter_pa, std::sqrt(0.08 / 3) * bar, 1e-6);
    const double own = u_reading_pa(gauge, 10.2 * bar);
    EXPECT_NEAR(mean.u_pa, std::sqrt(own * own + 0.08 / 3 / 4 * bar * bar), 1e-6);
    const std::vector<double> one{10.0 * bar};
    EXPECT_EQ(mean_of_repeats(gauge, one).value().u_pa, u_reading_pa(gauge, 10.0 * bar));
    EXPECT_EQ(mean_of_repeats(gauge, {}).error().code, "gauge.repeats");
    const std::vector<double> missing{10.0 * bar, std::numeric_limits<double>::quiet_NaN()};
    EXPECT_EQ(mean_of_repeats(gauge, missing).error().code, "gauge.repeats");
}

TEST(Instrument, RefusesImpossibleGauges) {
    const auto code = [](auto change) {
        auto gauge = dial(6, 1.6, 0.1);
        change(gauge);
        return check(gauge).error().code;
    };
    EXPECT_TRUE(check(dial(6, 1.6, 0.1)));
    EXPECT_EQ(code([](Gauge& g) { g.span_pa = 0; }), "gauge.span");
    EXPECT_EQ(code([](Gauge& g) { g.accuracy.middle_half = 0; }), "gauge.class");
    EXPECT_EQ(code([](Gauge& g) { g.readable_step_pa = -1; }), "gauge.step");
    EXPECT_EQ(code([](Gauge& g) { g.zero_limit_pa = std::numeric_limits<double>::quiet_NaN(); }),
              "gauge.zero");
    EXPECT_EQ(code([](Gauge& g) { g.shares = {0.8, 0.3}; }), "gauge.shares");
}

}  // namespace
}  // namespace lapwing::uncertainty
