// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/photo.h"

#include <opencv2/imgcodecs.hpp>

#include "core/vision/decode.h"

namespace lapwing::vision {

Result<std::vector<std::byte>> make_keepable(std::span<const std::byte> photo) {
    constexpr int quality = 92;
    const auto decoded = decode(photo, keepable_side_px);
    if (!decoded) return tl::unexpected(decoded.error());
    std::vector<unsigned char> jpeg;
    bool written = false;
    try {
        written = cv::imencode(".jpg", decoded->colour, jpeg, {cv::IMWRITE_JPEG_QUALITY, quality});
    } catch (const cv::Exception&) {
    }
    if (!written || jpeg.empty())
        return fail(
            "vision.internal",
            "The photo could not be written as a JPEG, so it was not kept. Close other apps, then try "
            "again.");
    const auto* first = reinterpret_cast<const std::byte*>(jpeg.data());
    return std::vector<std::byte>(first, first + jpeg.size());
}

}  // namespace lapwing::vision
