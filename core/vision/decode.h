// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <opencv2/core.hpp>
#include <span>

#include "core/base/result.h"
#include "core/vision/photo_header.h"

namespace lapwing::vision {

struct Decoded {
    cv::Mat colour;      ///< 8 bit BGR, upright
    double scale = 1.0;  ///< upright full-size pixels a pixel of `colour`, never below 1
    PhotoHeader header;
};

/// Decodes a photo and turns it upright, shrunk until its longer side has at most `longest_side` pixels.
/// Large JPEGs are shrunk while they are decoded, so that memory stays bounded.
[[nodiscard]] Result<Decoded> decode(std::span<const std::byte> file, int longest_side);

}  // namespace lapwing::vision
