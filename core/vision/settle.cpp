// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/settle.h"

#include <algorithm>
#include <cmath>

#include "core/vision/tick_rule.h"

namespace lapwing::vision {
namespace {

/// How far a needle's axis can pass its pivot by, in the plane of the scale: it is drawn and lit unevenly,
/// and it turns above the plate, so that the tilt moves it. `way` is its direction.
double passes_by(const Ellipse& e, double way) {
    constexpr double uneven = 0.012;
    constexpr double height = 0.06;
    const double flat = std::min(e.a, e.b) / std::max(e.a, e.b);
    const double slope = std::sqrt(std::max(0.0, 1 / (flat * flat) - 1));
    const double tilt_way = e.direction + (e.a < e.b ? 0 : pi / 2);  // along the shorter axis
    return std::hypot(uneven, height * slope * std::sin(way - tilt_way));
}

/// The same lines in a frame of another centre.
void move_to(TickRun& run, const DialFrame& from, const DialFrame& to) {
    for (Tick& t : run.ticks) {
        const cv::Point2d p = to.to_plane(from.to_image(run.radius, t.angle));
        t.angle += std::remainder(std::atan2(p.y, p.x) - t.angle, 2 * pi);
    }
}

}  // namespace

double settle(Scale& scale, const Axis& axis) {
    double angle_u = 0;
    for (int round = 0; round < 4; ++round) {
        const cv::Point2d from = scale.frame.to_plane(axis.from);
        const cv::Point2d way = scale.frame.to_plane(axis.to) - from;
        const double length = std::hypot(way.x, way.y);
        if (length <= 0) return angle_u;
        const double angle = std::atan2(way.y, way.x);
        const double offset = (from.x * way.y - from.y * way.x) / length;
        RuleFit fit(scale.run.ticks);
        fit.pivot_on_axis(angle, offset, passes_by(scale.frame.ellipse(), angle), scale.run.radius);
        fit.solve(scale.run);
        const double along =
            std::remainder(angle - scale.angle_min() - scale.sweep() / 2, 2 * pi) + scale.sweep() / 2;
        angle_u = fit.angle_u(scale.first + along / scale.run.step);
        const cv::Point2d shift = scale.run.shift * scale.run.radius;
        if (std::hypot(shift.x, shift.y) < 0.001 || std::hypot(shift.x, shift.y) > 0.3) break;
        const DialFrame moved(scale.frame.ellipse(), scale.frame.to_image(shift));
        move_to(scale.run, scale.frame, moved);
        scale.frame = moved;
    }
    return angle_u;
}

}  // namespace lapwing::vision
