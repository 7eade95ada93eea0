// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/decode.h"

#include <algorithm>
#include <cstdint>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

namespace lapwing::vision {
namespace {

/// Exif 2.32, 4.6.4, Orientation.
void stand_upright(cv::Mat& picture, int orientation) {
    cv::Mat turned;
    switch (orientation) {
        case 2:
            cv::flip(picture, turned, 1);
            break;
        case 3:
            cv::flip(picture, turned, -1);
            break;
        case 4:
            cv::flip(picture, turned, 0);
            break;
        case 5:
            cv::transpose(picture, turned);
            break;
        case 6:
            cv::rotate(picture, turned, cv::ROTATE_90_CLOCKWISE);
            break;
        case 7:
            cv::transpose(picture, turned);
            cv::flip(turned, turned, -1);
            break;
        case 8:
            cv::rotate(picture, turned, cv::ROTATE_90_COUNTERCLOCKWISE);
            break;
        default:
            return;
    }
    picture = turned;
}

}  // namespace

Result<Decoded> decode(std::span<const std::byte> file, int longest_side) {
    auto header = read_photo_header(file);
    if (!header) return tl::unexpected(header.error());
    const int longest = std::max(header->width, header->height);
    int flag = cv::IMREAD_COLOR;
    if (header->kind == PhotoHeader::Kind::jpeg) {
        const std::int64_t area = std::int64_t{header->width} * header->height;
        int by = 1;
        while (by < 8 &&
               (longest >= 2 * by * longest_side || area / (std::int64_t{by} * by) > largest_unshrinkable_px))
            by *= 2;
        flag = by == 8   ? cv::IMREAD_REDUCED_COLOR_8
               : by == 4 ? cv::IMREAD_REDUCED_COLOR_4
               : by == 2 ? cv::IMREAD_REDUCED_COLOR_2
                         : cv::IMREAD_COLOR;
    }
    Decoded out;
    out.header = *header;
    try {
        // OpenCV only reads from it.
        const cv::Mat bytes(
            1, static_cast<int>(file.size()), CV_8U,
            const_cast<std::byte*>(file.data()));  // NOLINT(cppcoreguidelines-pro-type-const-cast)
        out.colour = cv::imdecode(bytes, flag | cv::IMREAD_IGNORE_ORIENTATION);
        if (out.colour.empty() || out.colour.type() != CV_8UC3)
            return fail("vision.photo_broken",
                        "The photo's file is damaged and can't be read. Take the photo again.");
        const int side = std::max(out.colour.cols, out.colour.rows);
        if (side > longest_side) {
            const double by = double(longest_side) / side;
            cv::Mat small;
            cv::resize(out.colour, small, {}, by, by, cv::INTER_AREA);
            out.colour = small;
        }
        stand_upright(out.colour, header->orientation);
    } catch (const cv::Exception&) {
        return fail("vision.photo_broken",
                    "The photo's file is damaged and can't be read. Take the photo again.");
    }
    out.scale = double(longest) / std::max(out.colour.cols, out.colour.rows);
    return out;
}

}  // namespace lapwing::vision
