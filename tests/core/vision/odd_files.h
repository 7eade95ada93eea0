// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <cstdint>
#include <opencv2/core.hpp>
#include <span>
#include <string>
#include <vector>

/// Photo files of all sorts, good and bad, put together by hand from ITU-T T.81 (JPEG), ISO/IEC 15948 (PNG)
/// and Exif 2.32.
namespace lapwing::test {

using File = std::vector<std::uint8_t>;

[[nodiscard]] inline std::span<const std::byte> as_bytes(const File& file) {
    return std::as_bytes(std::span(file));
}
[[nodiscard]] File text(const std::string& content);

[[nodiscard]] File jpeg_of(const cv::Mat& picture);
/// Some picture, as ".jpg" or ".png".
[[nodiscard]] File picture_file(const char* kind, int width, int height);
/// The markers of a JPEG without a picture in it; `frame` is the second byte of the frame's marker, `in_scan`
/// how many of its colours the first scan holds (0: all).
[[nodiscard]] File jpeg_header(unsigned width, unsigned height, unsigned colours, unsigned frame = 0xC0,
                               unsigned in_scan = 0);
[[nodiscard]] File png_header(std::uint32_t width, std::uint32_t height);
[[nodiscard]] File moving_png();

/// An Exif block that tells the orientation, and a maker and a place, as phones do.
[[nodiscard]] File exif(int orientation, bool little_endian);
[[nodiscard]] File with_exif(const File& jpeg, const File& exif_block);
/// The picture as a camera stores it that is held in this orientation.
[[nodiscard]] cv::Mat stored_as(const cv::Mat& upright, int orientation);

}  // namespace lapwing::test
