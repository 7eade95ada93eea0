// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "core/vision/dial_frame.h"

namespace lapwing::vision {

/// A round edge in the picture: of the bezel, the dial plate or the scale.
struct Ring {
    Ellipse ellipse;
    double seen = 0.0;  ///< share of the way round where the edge was seen, 0..1
};

/// The round things in a grey picture (8 bit) that could be a dial, best first, a few of them at most.
/// Rings round one centre follow each other from the outside in.
[[nodiscard]] std::vector<std::vector<Ring>> find_dials(const cv::Mat& grey);

}  // namespace lapwing::vision
