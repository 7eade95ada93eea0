// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/instrument.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

#include "core/uncertainty/coverage.h"
#include "core/uncertainty/monte_carlo.h"
#include "tests/core/uncertainty/drawn_errors.h"

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
    const double combined = std::sqrt(own * own + 0.08 / 3 / 4 * bar * bar);
    EXPECT_NEAR(mean.freedom, 3 * std::pow(combined / (std::sqrt(0.08 / 3) / 2 * bar), 4),
                1e-6 * mean.freedom);
    EXPECT_NEAR(mean.u_pa, combined * student_factor(mean.freedom) / 2, 1e-6);
    EXPECT_GT(mean.u_pa, combined);
    const std::vector<double> one{10.0 * bar};
    EXPECT_EQ(mean_of_repeats(gauge, one).value().u_pa, u_reading_pa(gauge, 10.0 * bar));
    EXPECT_EQ(mean_of_repeats(gauge, {}).error().code, "gauge.repeats");
    const std::vector<double> missing{10.0 * bar, std::numeric_limits<double>::quiet_NaN()};
    EXPECT_EQ(mean_of_repeats(gauge, missing).error().code, "gauge.repeats");
}

TEST(Instrument, RepeatsPoolTheirScatter) {
    // JCGM 100, H.3.6 (as 4.2.4): squares weighed by their degrees of freedom. By hand, for repeats of 10.0
    // and 10.2 bar with a usual scatter of 0.15 bar that is worth 10: (10 x 0.0225 + 0.02) / 11 = 0.02227
    // bar^2.
    const auto gauge = dial(16, 1.6, 0.2);
    const std::vector<double> two{10.0 * bar, 10.2 * bar};
    const Repeatability usual{0.15 * bar, 10};
    const auto pooled = mean_of_repeats(gauge, two, usual).value();
    EXPECT_NEAR(pooled.scatter_pa, std::sqrt(0.245 / 11) * bar, 1e-6);
    const double own = u_reading_pa(gauge, 10.1 * bar);
    const double combined = std::sqrt(own * own + 0.245 / 11 / 2 * bar * bar);
    EXPECT_NEAR(pooled.u_pa, combined * student_factor(pooled.freedom) / 2, 1e-6);
    // Two repeats that lie close cost little, and more of them narrow.
    EXPECT_LT(pooled.u_pa, 1.5 * own);
    EXPECT_LT(pooled.u_pa, mean_of_repeats(gauge, two).value().u_pa);
    const std::vector<double> four{10.0 * bar, 10.2 * bar, 10.0 * bar, 10.2 * bar};
    EXPECT_LT(mean_of_repeats(gauge, four, usual).value().u_pa, pooled.u_pa);
    // Repeats that really lie far apart still say so.
    const std::vector<double> apart{9.0 * bar, 11.0 * bar};
    EXPECT_GT(mean_of_repeats(gauge, apart, usual).value().u_pa, 2 * pooled.u_pa);
    const std::vector<double> one{10.0 * bar};
    // One reading scatters as much as is usual, and so never seems to know more than two.
    const auto single = mean_of_repeats(gauge, one, usual).value();
    EXPECT_NEAR(single.scatter_pa, 0.15 * bar, 1e-6);
    EXPECT_NEAR(single.u_pa,
                std::hypot(u_reading_pa(gauge, 10.0 * bar), 0.15 * bar) * student_factor(single.freedom) / 2,
                1e-6);
    EXPECT_GT(single.u_pa, pooled.u_pa);
}

TEST(Coverage, StudentsFactor) {
    // JCGM 100, table G.2, column 95.45 % (from memory).
    const struct {
        double freedom, t;
    } rows[] = {{1, 13.97}, {2, 4.53}, {3, 3.31}, {4, 2.87}, {5, 2.65}, {10, 2.28}, {20, 2.13}, {50, 2.05}};
    for (const auto& row : rows)
        EXPECT_NEAR(student_factor(row.freedom), row.t, 0.006) << row.freedom;
    EXPECT_EQ(student_factor(4.9), student_factor(4.0));  // G.4.1, note 1: down to the whole number
    EXPECT_EQ(student_factor(0.3), student_factor(1.0));
    EXPECT_EQ(student_factor(std::numeric_limits<double>::infinity()), 2.0);
    EXPECT_NEAR(student_factor(1e5), 2.0, 1e-4);
}

TEST(Instrument, FewRepeatsWiden) {
    // With a gauge that hardly errs only the scatter counts: 2 u is Student's t times s / sqrt(n), JCGM 100
    // G.3.
    const auto fine = dial(16, 0.05, 1e-6);
    for (std::size_t count : {2U, 3U, 6U}) {
        std::vector<double> repeats(count, 10.0 * bar);
        repeats.front() = 10.6 * bar;
        const auto mean = mean_of_repeats(fine, repeats).value();
        const double by_scatter = mean.scatter_pa / std::sqrt(static_cast<double>(count));
        EXPECT_NEAR(2 * mean.u_pa / by_scatter, student_factor(static_cast<double>(count) - 1), 0.03)
            << count;
    }
    // With a common gauge two repeats that lie close are the gauge's doubt and little more.
    const std::vector<double> close{10.0 * bar, 10.05 * bar};
    const auto common = dial(16, 1.6, 0.2);
    const auto mean = mean_of_repeats(common, close).value();
    EXPECT_LT(mean.u_pa, 1.05 * u_reading_pa(common, mean.mean_pa));
    const std::vector<double> one{10.0 * bar};
    EXPECT_TRUE(std::isinf(mean_of_repeats(common, one).value().freedom));
}

TEST(Instrument, SharedErrorsCountOnceInARatio) {
    const auto gauge = dial(16, 1.6, 0.2);
    const double first = 8 * bar;
    const double second = 10 * bar;
    const double u = u_ratio_same_gauge(gauge, first, second);
    const auto trials = monte_carlo(
                            [&](Draws& draws) {
                                DrawnErrors errors(gauge, draws);
                                const double upper = errors.moved(first);
                                return upper / errors.moved(second);
                            },
                            11)
                            .value();
    EXPECT_NEAR(trials.u / u, 1.0, 0.01);
    const double apart = std::hypot(u_reading_pa(gauge, first), 0.8 * u_reading_pa(gauge, second)) / second;
    EXPECT_LT(u, apart);  // two gauges would know less
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
