// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

#include "core/physics/holding_torque.h"
#include "core/physics/slider_crank.h"

namespace lapwing::physics {
namespace {

constexpr double inch = 0.0254;
constexpr double psi_unit = 6894.757;  // NIST SP 811 (read)
constexpr double degree_rad = pi / 180.0;

TEST(SliderCrank, TextbookExample) {
    // Textbook example of dynamic compression (read): stroke 3.48 in, rod 5.7 in, 70 degrees after bottom
    // dead centre: the piston has risen 0.9053 in.
    const SliderCrank crank{4.0 * inch, 3.48 * inch, 5.7 * inch};
    const double risen_m = crank.stroke_m - crank.piston_travel_m((180.0 - 70.0) * degree_rad);
    EXPECT_NEAR(risen_m / inch, 0.9053, 0.00005);
}

TEST(SliderCrank, EndsOfTheStroke) {
    const SliderCrank crank{0.070, 0.065, 0.125};
    EXPECT_EQ(crank.piston_travel_m(0.0), 0.0);
    EXPECT_NEAR(crank.piston_travel_m(pi), 0.065, 1e-15);
    EXPECT_EQ(crank.volume_rate_m3(0.0), 0.0);
    const double clearance = clearance_volume_m3(crank, 9.0);
    EXPECT_NEAR(crank.volume_m3(pi, clearance) / crank.volume_m3(0.0, clearance), 9.0, 1e-12);
    const double closing = 80 * degree_rad;
    const double trapped = trapped_clearance_volume_m3(crank, 7.0, closing);
    EXPECT_NEAR(crank.volume_m3(pi - closing, trapped) / trapped, 7.0, 1e-12);
}

RC_GTEST_PROP(SliderCrank, RateIsTheDerivativeOfTheTravel, ()) {
    const SliderCrank crank{0.07, *rc::gen::inRange(20, 150) / 1e3, 0.16};
    const double theta = *rc::gen::inRange(-3141, 3141) / 1e3;
    constexpr double small = 1e-5;
    const double slope =
        (crank.piston_travel_m(theta + small) - crank.piston_travel_m(theta - small)) / (2 * small);
    RC_ASSERT(std::abs(slope - crank.piston_travel_rate_m(theta)) < 1e-9);
    // The form in the books: r (1 - cos th) + l - sqrt(l^2 - r^2 sin^2 th).
    const double r = crank.stroke_m / 2;
    const double s = r * std::sin(theta);
    const double book =
        r * (1 - std::cos(theta)) + crank.rod_m - std::sqrt(crank.rod_m * crank.rod_m - s * s);
    RC_ASSERT(std::abs(book - crank.piston_travel_m(theta)) < 1e-15);
}

TEST(SliderCrank, RefusesAbsurdSizes) {
    EXPECT_EQ(check(SliderCrank{0.0, 0.06, 0.1}).error().code, "engine.bore");
    EXPECT_EQ(check(SliderCrank{0.07, -0.06, 0.1}).error().code, "engine.stroke");
    EXPECT_EQ(check(SliderCrank{0.07, 0.06, 0.03}).error().code, "engine.rod");
    EXPECT_EQ(check(SliderCrank{0.07, 0.06, std::numeric_limits<double>::quiet_NaN()}).error().code,
              "engine.rod");
    EXPECT_TRUE(check(SliderCrank{0.07, 0.06, 0.12}));
}

TEST(HoldingTorque, AtSmallAngles) {
    // Computed by others from p dV/dtheta, a second opinion only: 80 psi, bore 4.0 in, stroke 3.48, rod 5.7.
    const SliderCrank crank{4.0 * inch, 3.48 * inch, 5.7 * inch};
    const double gauge_pa = 80 * psi_unit;
    EXPECT_NEAR(holding_torque_nm(crank, gauge_pa, 1 * degree_rad), 4.50, 0.01);
    EXPECT_NEAR(holding_torque_nm(crank, gauge_pa, 2 * degree_rad), 9.00, 0.01);
    EXPECT_NEAR(holding_torque_nm(crank, gauge_pa, 5 * degree_rad), 22.5, 0.05);
    EXPECT_NEAR(holding_torque_nm(crank, gauge_pa, 10 * degree_rad), 44.7, 0.05);
    EXPECT_EQ(holding_torque_nm(crank, gauge_pa, 0.0), 0.0);
}

TEST(HoldingTorque, ForceOnThePiston) {
    // Computed by others: 80 psi on a 5.125 in piston is 1650 lbf (4.448222 N each, NIST SP 811, from
    // memory).
    EXPECT_NEAR(80 * psi_unit * circle_area_m2(5.125 * inch) / 4.448222, 1650, 1);
}

TEST(HoldingTorque, RefusesWhatIsNoPressureOrAngle) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_TRUE(check_holding(5.5e5, -pi));
    EXPECT_TRUE(check_holding(0.0, pi));
    for (double pressure_pa : {-1.0, 8e6, nan, std::numeric_limits<double>::infinity()})
        EXPECT_EQ(check_holding(pressure_pa, 0.1).error().code, "torque.pressure");
    for (double theta_rad : {3.3, -3.3, nan})
        EXPECT_EQ(check_holding(5e5, theta_rad).error().code, "torque.angle");
}

TEST(HoldingTorque, ForceAtABar) {
    EXPECT_DOUBLE_EQ(force_at_bar_n(45.0, 0.5).value(), 90.0);  // lever law
    EXPECT_EQ(force_at_bar_n(45.0, 0.0).error().code, "torque.bar");
}

TEST(Firing, TurnToTheNextCylinder) {
    const std::vector<int> four{1, 3, 4, 2};
    const std::vector<double> even{180, 180, 180, 180};
    EXPECT_EQ(turn_to_compression_tdc_deg(four, even, 1, 3).value(), 180);
    EXPECT_EQ(turn_to_compression_tdc_deg(four, even, 1, 2).value(), 540);
    EXPECT_EQ(turn_to_compression_tdc_deg(four, even, 2, 1).value(), 180);
    EXPECT_EQ(turn_to_compression_tdc_deg(four, even, 4, 4).value(), 720);
    // A 45 degree V-twin on one crankpin: 315 and 405 degrees apart (geometry: 360 -+ 45).
    const std::vector<int> twin{1, 2};
    const std::vector<double> uneven{315, 405};
    EXPECT_EQ(turn_to_compression_tdc_deg(twin, uneven, 1, 2).value(), 315);
    EXPECT_EQ(turn_to_compression_tdc_deg(twin, uneven, 2, 1).value(), 405);
    const std::vector<double> two_stroke{180, 180};
    EXPECT_EQ(turn_to_compression_tdc_deg(twin, two_stroke, 1, 1).value(), 360);
}

TEST(Firing, RefusesWhatDoesNotFit) {
    const std::vector<int> twin{1, 2};
    const auto code = [](const std::vector<int>& order, const std::vector<double>& intervals, int from,
                         int to) {
        return turn_to_compression_tdc_deg(order, intervals, from, to).error().code;
    };
    EXPECT_EQ(code({1, 1}, {360, 360}, 1, 1), "firing.order");
    EXPECT_EQ(code(twin, {720}, 1, 2), "firing.intervals");
    EXPECT_EQ(code(twin, {300, 400}, 1, 2), "firing.intervals");
    EXPECT_EQ(code(twin, {-100, 820}, 1, 2), "firing.intervals");
    EXPECT_EQ(code({}, {}, 1, 2), "firing.intervals");
    EXPECT_EQ(code(twin, {360, 360}, 1, 3), "firing.cylinder");
}

}  // namespace
}  // namespace lapwing::physics
