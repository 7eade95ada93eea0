// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/settle.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/vision/tick_rule.h"

namespace lapwing::vision {
namespace {

constexpr int divisions = 30;

double direction(double place) {  // of half a circle's lines, seen square on
    return pi + pi * place / divisions;
}

/// Half a circle's scale in a frame whose centre was taken for `off` px higher than it is.
Scale mistaken(const Ellipse& circle, double off) {
    const DialFrame frame(circle, circle.centre - cv::Point2d{0, off});
    Scale scale{frame, {}};
    scale.divisions = divisions;
    scale.run.radius = 1;
    for (int i = 0; i <= divisions; ++i) {
        const double a = direction(i);
        const cv::Point2d p =
            frame.to_plane(circle.centre + circle.a * cv::Point2d{std::cos(a), std::sin(a)});
        scale.run.ticks.push_back({wrapped(std::atan2(p.y, p.x)), 0.9, 1.0, 1.0, i});
    }
    scale.run.ticks.back().angle = 2 * pi + std::remainder(scale.run.ticks.back().angle, 2 * pi);
    RuleFit(scale.run.ticks).solve(scale.run);
    return scale;
}

double place_of(const Scale& scale, const Axis& axis) {
    const cv::Point2d way = scale.frame.to_plane(axis.to) - scale.frame.to_plane(axis.from);
    const double along =
        std::remainder(std::atan2(way.y, way.x) - scale.angle_min() - scale.sweep() / 2, 2 * pi) +
        scale.sweep() / 2;
    return along / scale.run.step;
}

// Truth: the lines and the needle are placed by the test, seen square on.
TEST(Settle, BringsTheCentreToWhereTheNeedleTurns) {
    const Ellipse circle{{500, 500}, 300, 300, 0};
    for (const double shown : {0.0, 4.0, 11.5, 26.0}) {
        SCOPED_TRACE(shown);
        Scale scale = mistaken(circle, 24);
        const cv::Point2d way{std::cos(direction(shown)), std::sin(direction(shown))};
        const Axis axis{circle.centre, circle.centre + 250 * way};
        const double before = std::abs(place_of(scale, axis) - shown);
        const double u = settle(scale, axis);
        const double after = std::abs(place_of(scale, axis) - shown);
        EXPECT_LT(after, 0.5 * before + 0.02);
        EXPECT_LT(after, 0.01 * divisions);
        EXPECT_LT(after * scale.run.step, 3 * u);
    }
}

// The lines of three quarters of a circle tell their centre well enough: an axis that passes it by, as it
// does over a tilted plate, must not draw it away.
TEST(Settle, LeavesACentreThatTheLinesKnow) {
    const Ellipse circle{{500, 500}, 300, 300, 0};
    const DialFrame frame(circle);
    Scale scale{frame, {}};
    scale.divisions = 50;
    scale.run.radius = 1;
    for (int i = 0; i <= 50; ++i)
        scale.run.ticks.push_back({0.75 * pi + 1.5 * pi * i / 50, 0.9, 1.0, 1.0, i});
    RuleFit(scale.run.ticks).solve(scale.run);
    const cv::Point2d beside{12, 0};
    const Axis axis{circle.centre + beside, circle.centre + beside + cv::Point2d{0, -250}};
    const double before = place_of(scale, axis);
    (void)settle(scale, axis);
    EXPECT_NEAR(place_of(scale, axis), before, 0.05);
}

}  // namespace
}  // namespace lapwing::vision
