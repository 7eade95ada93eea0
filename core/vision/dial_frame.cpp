// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/dial_frame.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace lapwing::vision {
namespace {

cv::Point2d mapped(const cv::Matx33d& m, cv::Point2d p) {
    const double w = m(2, 0) * p.x + m(2, 1) * p.y + m(2, 2);
    return {(m(0, 0) * p.x + m(0, 1) * p.y + m(0, 2)) / w, (m(1, 0) * p.x + m(1, 1) * p.y + m(1, 2)) / w};
}

/// From the unit circle to the ellipse, without a rotation of its own.
cv::Matx33d affine_of(const Ellipse& e) {
    const double c = std::cos(e.direction);
    const double s = std::sin(e.direction);
    const double xy = (e.a - e.b) * c * s;
    return {
        e.a * c * c + e.b * s * s, xy, e.centre.x, xy, e.a * s * s + e.b * c * c, e.centre.y, 0.0, 0.0, 1.0};
}

/// The projective map that keeps the unit circle and takes its centre to `centre` (inside the circle).
cv::Matx33d circle_keeping(cv::Point2d centre) {
    const double t = std::hypot(centre.x, centre.y);
    if (t < 1e-12) return cv::Matx33d::eye();
    const double c = centre.x / t;
    const double s = centre.y / t;
    const cv::Matx33d turn{c, -s, 0, s, c, 0, 0, 0, 1};
    const cv::Matx33d along_x{1, 0, t, 0, std::sqrt(1 - t * t), 0, t, 0, 1};
    return turn * along_x * turn.t();
}

}  // namespace

double wrapped(double radians) {
    const double turn = 2 * pi;
    const double rest = std::fmod(radians, turn);
    return rest < 0 ? rest + turn : rest;
}

std::optional<Ellipse> fit_ellipse(std::vector<cv::Point2f> points, double off) {
    std::optional<Ellipse> found;
    // Starts generous, so that a poor first fit does not throw out the good points.
    for (const double share : {4.0 * off, 2.0 * off, off, off}) {
        if (points.size() < 8) return std::nullopt;
        const cv::RotatedRect box = cv::fitEllipseAMS(points);
        Ellipse e{box.center, box.size.width / 2.0, box.size.height / 2.0, box.angle * pi / 180.0};
        const double small = std::min(e.a, e.b);
        const double large = std::max(e.a, e.b);
        if (!(small > 2.0) || !(large < 1e5) || small < 0.4 * large) return std::nullopt;
        found = e;
        const double c = std::cos(e.direction);
        const double s = std::sin(e.direction);
        std::erase_if(points, [&](const cv::Point2f& p) {
            const double dx = p.x - e.centre.x;
            const double dy = p.y - e.centre.y;
            const double radius = std::hypot((dx * c + dy * s) / e.a, (dy * c - dx * s) / e.b);
            return std::abs(radius - 1.0) > share;
        });
    }
    return found;
}

DialFrame::DialFrame(const Ellipse& ellipse, cv::Point2d centre_px) : ellipse_(ellipse) {
    const cv::Matx33d affine = affine_of(ellipse);
    cv::Point2d inside = mapped(affine.inv(), centre_px);
    // A dial seen so flat that its centre nears the rim can't be read anyway.
    const double t = std::hypot(inside.x, inside.y);
    if (t > 0.5) inside *= 0.5 / t;
    to_image_ = affine * circle_keeping(inside);
    to_plane_ = to_image_.inv();
}

cv::Point2d DialFrame::to_image(cv::Point2d plane) const {
    return mapped(to_image_, plane);
}

cv::Point2d DialFrame::to_plane(cv::Point2d px) const {
    return mapped(to_plane_, px);
}

cv::Mat DialFrame::unroll(const cv::Mat& picture, int columns, int rows, double radius_max,
                          int first_row) const {
    cv::Mat map(rows - first_row, columns, CV_32FC2);
    // Along a radius, numerators and denominator of the map grow evenly: what a column adds to them a step of
    // the radius. This is done for millions of places in a photo that is hard to read.
    struct Growth {
        double x, y, w;
    };
    std::vector<Growth> growth(static_cast<std::size_t>(columns));
    const cv::Matx33d& m = to_image_;
    for (int x = 0; x < columns; ++x) {
        const double c = std::cos(2 * pi * x / columns);
        const double s = std::sin(2 * pi * x / columns);
        growth[static_cast<std::size_t>(x)] = {m(0, 0) * c + m(0, 1) * s, m(1, 0) * c + m(1, 1) * s,
                                               m(2, 0) * c + m(2, 1) * s};
    }
    for (int y = first_row; y < rows; ++y) {
        const double radius = radius_max * y / (rows - 1);
        auto* place = map.ptr<float>(y - first_row);
        for (const Growth& g : growth) {
            const double over = 1.0 / (m(2, 2) + radius * g.w);
            *place++ = static_cast<float>((m(0, 2) + radius * g.x) * over);
            *place++ = static_cast<float>((m(1, 2) + radius * g.y) * over);
        }
    }
    cv::Mat out;
    cv::remap(picture, out, map, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return out;
}

}  // namespace lapwing::vision
