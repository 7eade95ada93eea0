// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/pivot.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <opencv2/imgproc.hpp>

namespace lapwing::vision {
namespace {

constexpr int radius = 160;  // px of the plate seen square on
constexpr int side = 2 * radius + 1;

cv::Mat square_on(const cv::Mat& grey, const DialFrame& frame) {
    cv::Mat map(side, side, CV_32FC2);
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < side; ++x) {
            const cv::Point2d px = frame.to_image(cv::Point2d(x - radius, y - radius) / double(radius));
            map.at<cv::Vec2f>(y, x) = {static_cast<float>(px.x), static_cast<float>(px.y)};
        }
    cv::Mat out;
    cv::remap(grey, out, map, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return out;
}

/// Every edge votes for the places that it points to, not far from the middle of the plate.
cv::Mat votes_of(const cv::Mat& plate) {
    constexpr double edge_of_plate = 0.93 * radius;
    constexpr double furthest = 0.55 * radius;
    constexpr int nearest = radius / 4;
    cv::Mat smooth;
    cv::Mat dx;
    cv::Mat dy;
    cv::Mat mask;
    cv::GaussianBlur(plate, smooth, {}, 1.0);
    cv::Scharr(smooth, dx, CV_16S, 1, 0, 1.0 / 4);
    cv::Scharr(smooth, dy, CV_16S, 0, 1, 1.0 / 4);
    cv::Canny(dx, dy, mask, 20, 60, true);
    cv::Mat votes = cv::Mat::zeros(side, side, CV_32F);
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < side; ++x) {
            if (!mask.at<std::uint8_t>(y, x) || std::hypot(x - radius, y - radius) > edge_of_plate) continue;
            const double gx = dx.at<short>(y, x);
            const double gy = dy.at<short>(y, x);
            const double length = std::hypot(gx, gy);
            if (length <= 0) continue;
            for (const double way : {1.0, -1.0})
                for (int d = nearest; d < radius; ++d) {
                    const double at_x = x - way * gy / length * d;
                    const double at_y = y + way * gx / length * d;
                    if (std::hypot(at_x - radius, at_y - radius) > furthest) continue;
                    votes.at<float>(cvRound(at_y), cvRound(at_x)) += 1;
                }
        }
    cv::GaussianBlur(votes, votes, {}, 0.02 * radius);
    return votes;
}

}  // namespace

std::vector<cv::Point2d> likely_pivots(const cv::Mat& grey, const Ellipse& plate) {
    const DialFrame frame(plate);
    cv::Mat votes = votes_of(square_on(grey, frame));
    std::vector<cv::Point2d> pivots;
    double best = 0;
    while (pivots.size() < 2) {
        cv::Point place;
        double most = 0;
        cv::minMaxLoc(votes, nullptr, &most, nullptr, &place);
        best = std::max(best, most);
        if (most <= 0 || most < 0.5 * best) break;
        pivots.push_back(frame.to_image(cv::Point2d(place.x - radius, place.y - radius) / double(radius)));
        cv::circle(votes, place, radius / 10, 0, cv::FILLED);
    }
    return pivots;
}

}  // namespace lapwing::vision
