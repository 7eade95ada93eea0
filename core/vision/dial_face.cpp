// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/dial_face.h"

#include <algorithm>
#include <array>
#include <opencv2/imgproc.hpp>
#include <utility>

#include "core/base/stations.h"

namespace lapwing::vision {
namespace {

constexpr int columns = 720;  // two a degree
constexpr int rows = 111;     // a hundred to the unit circle
constexpr double radius_max = 1.1;

constexpr double column_width = 2 * pi / columns;
constexpr int square_side = 240;  // px of the dial seen square on
constexpr double square_unit = square_side / (2 * radius_max);
cv::Mat distance(const cv::Mat& a, const cv::Mat& b) {
    cv::Mat out(a.size(), CV_32F);
    for (int y = 0; y < a.rows; ++y) {
        const auto* l = a.ptr<cv::Vec3b>(y);
        const auto* r = b.ptr<cv::Vec3b>(y);
        auto* d = out.ptr<float>(y);
        for (int x = 0; x < a.cols; ++x) {
            float sum = 0;
            for (int c = 0; c < 3; ++c) {
                const auto off = float(l[x][c]) - float(r[x][c]);
                sum += off * off;
            }
            d[x] = std::sqrt(sum / 3);
        }
    }
    return out;
}
int column_of(double angle) {
    return static_cast<int>(std::lround(wrapped(angle) / column_width)) % columns;
}

/// The place in the unrolled differences.
std::pair<int, int> cell_of(const Line& line, double along, double aside) {
    const cv::Point2d p = line.at(along, aside);
    return {std::min(rows - 1, static_cast<int>(std::lround(100 * std::hypot(p.x, p.y)))),
            column_of(std::atan2(p.y, p.x))};
}
/// Whether a needle is seen there. Taken over a small patch, so that noise does not look like a needle, and
/// against the sides, so that light does not.
bool stands_out(const Face& face, const Line& line, double along, double least, Beside sides) {
    const double middle = (seen_at(face, line, along, -0.012) + seen_at(face, line, along) +
                           seen_at(face, line, along, 0.012)) /
                          3;
    const double left = seen_at(face, line, along, 0.1);
    const double right = seen_at(face, line, along, -0.1);
    const double beside = sides == Beside::each ? std::max(left, right) : (left + right) / 2;
    return middle >= least && middle - beside >= 0.5 * least;
}
}  // namespace

cv::Vec3b Face::plain_at(cv::Point2d plane) const {
    const auto place = [](double x) {
        return std::clamp(static_cast<int>((x + radius_max) * square_unit), 0, square_side - 1);
    };
    return plain.at<cv::Vec3b>(place(plane.y), place(plane.x));
}

Face face_of(const cv::Mat& colour, const DialFrame& frame) {
    cv::Mat map(square_side, square_side, CV_32FC2);
    for (int y = 0; y < square_side; ++y)
        for (int x = 0; x < square_side; ++x) {
            const cv::Point2d px =
                frame.to_image({(x + 0.5) / square_unit - radius_max, (y + 0.5) / square_unit - radius_max});
            map.at<cv::Vec2f>(y, x) = {static_cast<float>(px.x), static_cast<float>(px.y)};
        }
    cv::Mat square;
    cv::remap(colour, square, map, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    // Wide enough that hub, needle, numerals and lines are outvoted by the dial between them.
    constexpr int window = 71;
    Face face;
    cv::medianBlur(square, face.plain, window);
    cv::Mat seen = frame.unroll(colour, columns, rows, radius_max);
    cv::GaussianBlur(seen, seen, {3, 3}, 0.8);
    const double middle = 0.5 * square_side - 0.5;
    const DialFrame square_on(Ellipse{{middle, middle}, square_unit, square_unit, 0});
    face.difference = distance(seen, square_on.unroll(face.plain, columns, rows, radius_max));
    return face;
}

float& seen_at(cv::Mat& difference, const Line& line, double along, double aside) {
    const auto [row, column] = cell_of(line, along, aside);
    return difference.at<float>(row, column);
}

float seen_at(const Face& face, const Line& line, double along, double aside) {
    const auto [row, column] = cell_of(line, along, aside);
    return face.difference.at<float>(row, column);
}

std::vector<Line> lines_of(const Face& face) {
    constexpr double from = 0.24;
    constexpr double to = 0.76;
    constexpr int steps = 27;
    constexpr int offsets = 10;  // either side
    std::vector<Line> lines(columns);
    for (int k = -offsets; k <= offsets; ++k) {
        const double offset = 0.01 * k;
        std::array<std::pair<int, int>, steps> path;  // row, column relative to the direction
        for (std::size_t i = 0; i < steps; ++i) {
            const double r = from + (to - from) * double(i) / (steps - 1);
            path[i] = {static_cast<int>(std::lround(100 * r)),
                       static_cast<int>(std::lround(-std::asin(offset / r) / column_width))};
        }
        // Each row turned to where its place is seen from direction 0.
        std::array<std::vector<float>, steps> rows_of;
        for (std::size_t i = 0; i < steps; ++i) {
            const float* row = face.difference.ptr<float>(path[i].first);
            const int begin = (path[i].second + columns) % columns;
            rows_of[i].assign(row + begin, row + columns);
            rows_of[i].insert(rows_of[i].end(), row, row + begin);
        }
        for (std::size_t x = 0; x < columns; ++x) {
            std::array<float, steps> seen{};
            for (std::size_t i = 0; i < steps; ++i)
                seen[i] = rows_of[i][x];
            std::nth_element(seen.begin(), seen.begin() + steps / 4, seen.end());
            const double worth = seen[steps / 4];
            if (worth > lines[x].worth) lines[x] = {double(x) * column_width, offset, worth};
        }
    }
    return lines;
}

double reach_of(const Face& face, const Line& line, double least, Beside sides) {
    double end = 0;
    int looked = 0;
    int seen = 0;
    for (const double along : stations(0.20, 1.08, 0.01)) {
        ++looked;
        if (!stands_out(face, line, along, least, sides)) continue;
        ++seen;
        if (seen > 0.75 * looked) end = along;
    }
    return end;
}

double seen_far_out(const Face& face, const Line& line, double least) {
    const auto places = stations(0.72, 0.92, 0.01);
    const auto seen = std::ranges::count_if(
        places, [&](double along) { return stands_out(face, line, along, least, Beside::average); });
    return double(seen) / double(places.size());
}

double worth_of(const Face& face, const Line& line, double to, double share) {
    std::vector<float> seen;
    for (const double along : stations(0.24, to, 0.02))
        seen.push_back(seen_at(face, line, along));
    const auto place = seen.begin() + static_cast<std::ptrdiff_t>(share * double(seen.size()));
    std::nth_element(seen.begin(), place, seen.end());
    return *place;
}

}  // namespace lapwing::vision
