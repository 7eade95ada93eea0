// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "core/vision/dial_frame.h"

namespace lapwing::vision {

/// Places inside a round plate that lines on it point to, likeliest first, a few at most: where the needle
/// may turn. On dials of half a circle that is not the plate's middle. px of the picture, which is grey, 8
/// bit.
[[nodiscard]] std::vector<cv::Point2d> likely_pivots(const cv::Mat& grey, const Ellipse& plate);

}  // namespace lapwing::vision
