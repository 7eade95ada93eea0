// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "core/vision/dial_frame.h"

namespace lapwing::vision {

/// One graduation line, in the plane of its frame.
struct Tick {
    double angle = 0;  ///< radians, not wrapped: rises along the scale
    double inner = 0;  ///< radius of the end towards the centre
    double outer = 0;
    double strength = 0;  ///< contrast, relative to the middle one of its run
    int place = 0;        ///< how many divisions after the first of its run
};

/// Graduation lines that follow each other at even steps: angle = start + step * place + what a wrong centre
/// and a wrong shape of the frame add (first and second harmonic of the angle).
struct TickRun {
    std::vector<Tick> ticks;
    double radius = 0;  ///< of the band where they were seen
    double start = 0;   ///< radians
    double step = 0;    ///< radians, > 0
    cv::Point2d shift;  ///< where the dial's centre lies in the frame, as the first harmonic tells
    double cos2 = 0;
    double sin2 = 0;
    double spread = 0;  ///< radians, standard deviation about that rule
    int strays = 0;     ///< lines as strong that the rule does not explain
    double score = 0;

    /// Angle in the frame of a place on the scale.
    [[nodiscard]] double angle_at(double place) const;
    [[nodiscard]] int span() const { return ticks.empty() ? 0 : ticks.back().place - ticks.front().place; }
};

/// Where a scale is looked for, and how.
struct TickSearch {
    double radius_min = 0.5;  ///< of the frame's unit circle
    double radius_max = 1.15;
};

/// The longest even run of graduation lines that the picture shows in the frame. Empty when there is none.
[[nodiscard]] std::optional<TickRun> find_ticks(const cv::Mat& grey, const DialFrame& frame,
                                                const TickSearch& search);

}  // namespace lapwing::vision
