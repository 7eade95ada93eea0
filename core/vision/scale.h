// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "core/vision/dial_frame.h"
#include "core/vision/find_dials.h"
#include "core/vision/needle.h"
#include "core/vision/ticks.h"

namespace lapwing::vision {

/// A dial's scale: the plane it lies in and where it begins and ends there.
struct Scale {
    DialFrame frame;    ///< its unit circle runs through the outer ends of the graduation lines
    TickRun run;        ///< as seen in that frame
    int first = 0;      ///< place of the line at the scale's lower end, counted as the run counts
    int divisions = 0;  ///< from there to the upper end
    double margin = 0;  ///< by how much these ends explain the lines better than the next best ones; >= 0
    double fit = 0;     ///< how well these ends explain the lines; for comparing scales of one dial
    double seen = 0;    ///< share of the scale's lines that were seen, 0..1
    std::optional<DialFrame> beyond = {};  ///< of another scale further out, to which the needle may reach
    double rival = 0;  ///< how well the range would suit another scale of the dial as well, 0..1

    [[nodiscard]] double angle_min() const { return run.start + run.step * first; }
    [[nodiscard]] double sweep() const { return run.step * divisions; }
};

/// Finds the scale of a dial by its graduation lines, and with them the tilt of the dial.
[[nodiscard]] std::optional<Scale> find_scale(const cv::Mat& grey, const std::vector<Ring>& rings,
                                              const DialRange& range);

}  // namespace lapwing::vision
