// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/photo.h"

#include <algorithm>
#include <opencv2/imgcodecs.hpp>

#include "core/vision/decode.h"

namespace lapwing::vision {
namespace {

Result<std::vector<std::byte>> anew(std::span<const std::byte> photo, int longest_side, int quality) {
    const auto decoded = decode(photo, longest_side);
    if (!decoded) return tl::unexpected(decoded.error());
    try {
        std::vector<unsigned char> jpeg;
        cv::imencode(".jpg", decoded->colour, jpeg, {cv::IMWRITE_JPEG_QUALITY, quality});
        const auto* first = reinterpret_cast<const std::byte*>(jpeg.data());
        return std::vector<std::byte>(first, first + jpeg.size());
    } catch (const cv::Exception&) {
        return fail("vision.internal", "The photo could not be written as a JPEG.");
    }
}

}  // namespace

Result<std::vector<std::byte>> make_keepable(std::span<const std::byte> photo) {
    return anew(photo, keepable_side_px, 92);
}

Result<std::vector<std::byte>> thumbnail(std::span<const std::byte> photo, int longest_side) {
    return anew(photo, std::clamp(longest_side, 16, 2000), 85);
}

}  // namespace lapwing::vision
