// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cmath>
#include <opencv2/core.hpp>
#include <vector>

#include "core/vision/dial_frame.h"

/// What stands out from a dial, and lines in it. Inside core/vision only.
namespace lapwing::vision {

/// How a dial looks without its needle, and how far the picture is from that.
struct Face {
    cv::Mat plain;       ///< seen square on, BGR
    cv::Mat difference;  ///< unrolled: a row a radius, a column a direction; grey levels, CV_32F

    /// Colour of the dial at a place of its plane.
    [[nodiscard]] cv::Vec3b plain_at(cv::Point2d plane) const;
};
[[nodiscard]] Face face_of(const cv::Mat& colour, const DialFrame& frame);

/// A line across the plane: its direction and how far it passes the centre (to the left of the direction).
struct Line {
    double angle = 0;
    double offset = 0;
    double worth = 0;

    [[nodiscard]] cv::Point2d at(double along, double aside) const {
        const double c = std::cos(angle);
        const double s = std::sin(angle);
        return {along * c + (offset + aside) * s, along * s - (offset + aside) * c};
    }
};

/// What stands out at a place along a line, grey levels.
[[nodiscard]] float& seen_at(cv::Mat& difference, const Line& line, double along, double aside);
[[nodiscard]] float seen_at(const Face& face, const Line& line, double along, double aside = 0);

/// For every direction the best line that stands out from the dial without a break from hub to scale: what
/// counts is the weakest quarter of its length.
[[nodiscard]] std::vector<Line> lines_of(const Face& face);

/// Whether a needle must stand out against both sides on average (its twin edge may lie on one) or against
/// each.
enum class Beside { average, each };

/// How far the needle reaches along the line, seen from the centre: as far as most of the way shows it.
[[nodiscard]] double reach_of(const Face& face, const Line& line, double least, Beside sides);

/// How much of the line is seen where a needle's tip is and its tail is not, 0..1.
[[nodiscard]] double seen_far_out(const Face& face, const Line& line, double least);

/// How well a line stands out up to a radius along its weaker part: the weakest quarter (share = 0.25) or
/// half of it.
[[nodiscard]] double worth_of(const Face& face, const Line& line, double to, double share);

}  // namespace lapwing::vision
