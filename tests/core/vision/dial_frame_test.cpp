// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/dial_frame.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <random>

#include "tests/core/vision/drawn_gauge.h"

namespace lapwing::vision {
namespace {

double from(int low, int high, const char* what) {
    return *rc::gen::map(rc::gen::inRange(0, 10001), [&](int i) {
                return low + (high - low) * i / 10000.0;
            }).as(what);
}

Ellipse any_ellipse() {
    const double a = from(40, 600, "a");
    return {{from(-200, 1500, "x"), from(-200, 1500, "y")},
            a,
            a * from(60, 100, "b over a") / 100,
            from(0, 180, "direction") * pi / 180};
}

double off_ellipse(const Ellipse& e, cv::Point2d p) {
    const double c = std::cos(e.direction);
    const double s = std::sin(e.direction);
    const double dx = p.x - e.centre.x;
    const double dy = p.y - e.centre.y;
    return std::hypot((dx * c + dy * s) / e.a, (dy * c - dx * s) / e.b) - 1;
}

RC_GTEST_PROP(DialFrame, TakesTheUnitCircleToTheEllipseAndItsCentreWhereItWasPut, ()) {
    const Ellipse e = any_ellipse();
    const double t = from(0, 40, "how far the centre is off") / 100;
    const double way = from(0, 360, "which way") * pi / 180;
    const DialFrame plain(e);
    const cv::Point2d centre = plain.to_image(t, way);
    const DialFrame frame(e, centre);
    RC_ASSERT(cv::norm(frame.to_image(cv::Point2d{0, 0}) - centre) < 1e-6 * e.a);
    for (int i = 0; i < 12; ++i) {
        const cv::Point2d p = frame.to_image(1.0, i * pi / 6);
        RC_ASSERT(std::abs(off_ellipse(e, p)) < 1e-9);
        const cv::Point2d back = frame.to_plane(frame.to_image(0.7, i * pi / 6));
        RC_ASSERT(cv::norm(back - cv::Point2d{0.7 * std::cos(i * pi / 6), 0.7 * std::sin(i * pi / 6)}) <
                  1e-9);
    }
}

// The pinhole camera of the drawn gauges is the outside truth here: a circle and its centre, seen through it,
// must give back every angle of the plane but for one common turn.
RC_GTEST_PROP(DialFrame, UndoesTheTiltOfACamera, ()) {
    test::DrawnGauge g;
    g.tilt_deg = from(0, 40, "tilt");
    g.tilt_towards_deg = from(0, 360, "towards");
    g.roll_deg = from(-180, 180, "roll");
    g.distance = from(3, 12, "distance");
    const double ring = from(50, 100, "ring") / 100;
    std::vector<cv::Point2f> circle;
    for (int i = 0; i < 90; ++i)
        circle.emplace_back(test::projected(g, ring * std::cos(i * pi / 45), ring * std::sin(i * pi / 45)));
    const auto ellipse = fit_ellipse(circle, 0.01);
    RC_ASSERT(ellipse.has_value());
    const DialFrame frame(*ellipse, test::projected(g, 0, 0));
    const auto angle_of = [&](double radius, double angle) {
        const cv::Point2d p =
            frame.to_plane(test::projected(g, radius * std::cos(angle), radius * std::sin(angle)));
        return std::atan2(p.y, p.x);
    };
    const double turn = angle_of(ring, 0);
    for (int i = 1; i < 24; ++i) {
        const double a = i * pi / 12;
        RC_ASSERT(std::abs(std::remainder(angle_of(ring, a) - a - turn, 2 * pi)) < 0.002);
        RC_ASSERT(std::abs(std::remainder(angle_of(0.4 * ring, a) - a - turn, 2 * pi)) < 0.002);
    }
    // A direction is the same in every plane above the dial, whatever the parallax does to its place.
    const cv::Point2d hub = frame.to_plane(test::projected(g, 0, 0, 0.06));
    const cv::Point2d tip =
        frame.to_plane(test::projected(g, 0.8 * std::cos(1.0), 0.8 * std::sin(1.0), 0.06));
    const double seen = std::atan2(tip.y - hub.y, tip.x - hub.x);
    RC_ASSERT(std::abs(std::remainder(seen - 1.0 - turn, 2 * pi)) < 0.002);
}

RC_GTEST_PROP(FitEllipse, FindsAnArcOfThreeQuartersAmongStrayPoints, ()) {
    const Ellipse e = any_ellipse();
    std::mt19937 random(static_cast<unsigned>(*rc::gen::inRange(0, 1 << 20)));
    std::uniform_real_distribution<double> share(-1, 1);
    const DialFrame frame(e);
    std::vector<cv::Point2f> points;
    for (int i = 0; i < 60; ++i)
        points.emplace_back(frame.to_image(i % 10 == 0 ? 1 + 0.06 * share(random) : 1, i * 1.5 * pi / 60));
    const auto found = fit_ellipse(points, 0.01);
    RC_ASSERT(found.has_value());
    RC_ASSERT(cv::norm(found->centre - e.centre) < 0.02 * e.a);
    RC_ASSERT(std::abs(found->mean_radius() / e.mean_radius() - 1) < 0.02);
}

TEST(FitEllipse, RefusesTooFewPointsAndNonsense) {
    EXPECT_FALSE(fit_ellipse({}, 0.01));
    EXPECT_FALSE(fit_ellipse({{0, 0}, {1, 0}, {2, 1}}, 0.01));
    EXPECT_FALSE(fit_ellipse(std::vector<cv::Point2f>(20, {5, 5}), 0.01));
}

TEST(DialFrame, UnrollsWhatItShows) {
    // A white sector of 90 degrees to 180 degrees (down to the left) on black.
    cv::Mat picture(400, 400, CV_8U, cv::Scalar(0));
    picture(cv::Rect(0, 200, 200, 200)).setTo(255);
    const DialFrame frame(Ellipse{{199.5, 199.5}, 150, 150, 0});
    const cv::Mat unrolled = frame.unroll(picture, 360, 100, 1.0);
    ASSERT_EQ(unrolled.size(), cv::Size(360, 100));
    for (int column = 3; column < 360; column += 6)
        EXPECT_EQ(unrolled.at<unsigned char>(70, column), column > 90 && column < 180 ? 255 : 0) << column;
}

}  // namespace
}  // namespace lapwing::vision
