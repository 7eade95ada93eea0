// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/tick_rule.h"

#include <array>
#include <cmath>

namespace lapwing::vision {
namespace {

constexpr double noise = 0.15 * pi / 180;  // of one line

}  // namespace

RuleFit::RuleFit(const std::vector<Tick>& ticks) {
    const std::array<double, 6> scatter{1e3, 1e3, 0.10, 0.10, 0.02, 0.02};
    for (int i = 0; i < 6; ++i)
        normal_(i, i) = std::pow(noise / scatter[static_cast<std::size_t>(i)], 2);
    for (const Tick& t : ticks) {
        const double c = std::cos(t.angle);
        const double s = std::sin(t.angle);
        const cv::Matx<double, 6, 1> terms{1, double(t.place), c, s, c * c - s * s, 2 * s * c};
        normal_ += terms * terms.t();
        right_ += terms * t.angle;
    }
}

void RuleFit::pivot_on_axis(double angle, double offset, double u, double radius) {
    const cv::Matx<double, 6, 1> terms{0, 0, -radius * std::cos(angle), -radius * std::sin(angle), 0, 0};
    const double weight = std::pow(noise / u, 2);
    normal_ += weight * (terms * terms.t());
    right_ += weight * offset * terms;
}

void RuleFit::solve(TickRun& run) const {
    const cv::Matx<double, 6, 1> x = normal_.solve(right_, cv::DECOMP_CHOLESKY);
    run.start = x(0);
    run.step = x(1);
    // A centre that lies at (x, y) turns the line at angle p by y cos p - x sin p.
    run.shift = {-x(3), x(2)};
    run.cos2 = x(4);
    run.sin2 = x(5);
}

double RuleFit::angle_u(double place) const {
    const cv::Matx<double, 6, 1> terms{1, place, 0, 0, 0, 0};
    const cv::Matx<double, 6, 1> x = normal_.solve(terms, cv::DECOMP_CHOLESKY);
    return noise * std::sqrt(std::max(0.0, terms.dot(x)));
}

}  // namespace lapwing::vision
