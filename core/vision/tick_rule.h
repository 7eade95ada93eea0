// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <opencv2/core.hpp>

#include "core/vision/ticks.h"

namespace lapwing::vision {

/// Least squares for the rule of a run of graduation lines: start, step and harmonics. The harmonics are held
/// back by what a frame can be wrong by.
class RuleFit {
public:
    explicit RuleFit(const std::vector<Tick>& ticks);

    /// An axis through the pivot was seen in the frame: it passes the frame's centre at `offset` (to the left
    /// of its direction), give or take `u`; `radius` is the run's.
    void pivot_on_axis(double angle, double offset, double u, double radius);

    /// Sets start, step, shift and the second harmonic.
    void solve(TickRun& run) const;
    /// Standard uncertainty of the direction of a place on the scale, seen from the pivot; radians.
    [[nodiscard]] double angle_u(double place) const;

private:
    cv::Matx<double, 6, 6> normal_ = cv::Matx<double, 6, 6>::zeros();
    cv::Matx<double, 6, 1> right_ = cv::Matx<double, 6, 1>::zeros();
};

}  // namespace lapwing::vision
