// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/overlay.h"

#include <cmath>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "core/vision/decode.h"

namespace lapwing::vision {
namespace {

const cv::Scalar amber{0, 176, 255};  // BGR
const cv::Scalar dark{20, 20, 20};

/// Seen on light and on dark dials alike: a dark line under a bright one.
void line(cv::Mat& picture, cv::Point2d a, cv::Point2d b) {
    constexpr int sub = 4;
    const auto fixed = [](cv::Point2d p) {
        return cv::Point(static_cast<int>(std::lround(p.x * 16)), static_cast<int>(std::lround(p.y * 16)));
    };
    cv::line(picture, fixed(a), fixed(b), dark, 4, cv::LINE_AA, sub);
    cv::line(picture, fixed(a), fixed(b), amber, 2, cv::LINE_AA, sub);
}

}  // namespace

Result<std::vector<std::byte>> draw_overlay(std::span<const std::byte> photo, const NeedleReading& reading) {
    auto decoded = decode(photo, 1280);
    if (!decoded) return tl::unexpected(decoded.error());
    cv::Mat& picture = decoded->colour;
    const auto px = [&](Point p) {
        return cv::Point2d{(p.x + 0.5) / decoded->scale - 0.5, (p.y + 0.5) / decoded->scale - 0.5};
    };
    const auto on_plane = [&](double radius, double angle_deg) {
        const auto& m = reading.plane_to_photo;
        const double x = radius * std::cos(angle_deg * 3.14159265358979323846 / 180);
        const double y = radius * std::sin(angle_deg * 3.14159265358979323846 / 180);
        const double w = m[6] * x + m[7] * y + m[8];
        return px({(m[0] * x + m[1] * y + m[2]) / w, (m[3] * x + m[4] * y + m[5]) / w});
    };
    try {
        if (reading.divisions > 0) {
            for (int i = 0; i < reading.divisions; ++i) {
                const double step = reading.sweep_deg / reading.divisions;
                line(picture, on_plane(1.0, i * step), on_plane(1.0, (i + 1) * step));
            }
            for (int i = 0; i <= reading.divisions; ++i) {
                const bool end = i == 0 || i == reading.divisions;
                const double angle = reading.sweep_deg * i / reading.divisions;
                line(picture, on_plane(1.0, angle), on_plane(end ? 1.12 : 1.03, angle));
            }
            const cv::Point2d centre = px(reading.centre_px);
            line(picture, centre - cv::Point2d{6, 0}, centre + cv::Point2d{6, 0});
            line(picture, centre - cv::Point2d{0, 6}, centre + cv::Point2d{0, 6});
        }
        if (reading.tip_px.x != reading.tail_px.x || reading.tip_px.y != reading.tail_px.y)
            line(picture, px(reading.tail_px), px(reading.tip_px));
        std::vector<unsigned char> png;
        cv::imencode(".png", picture, png);
        const auto* first = reinterpret_cast<const std::byte*>(png.data());
        return std::vector<std::byte>(first, first + png.size());
    } catch (const cv::Exception&) {
        return fail("vision.internal", "The picture with the needle marked could not be drawn.");
    }
}

}  // namespace lapwing::vision
