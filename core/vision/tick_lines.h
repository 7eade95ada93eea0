// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "core/vision/dial_frame.h"

/// Thin lines along the radius in an unrolled dial: what scales are made of. Inside core/vision only.
namespace lapwing::vision {

inline constexpr int columns = 1440;  ///< of the unrolled picture: four a degree
inline constexpr int rows_per_radius = 120;
inline constexpr double column_width = 2 * pi / columns;

/// A line that was seen in a band round the centre.
struct Peak {
    double angle;     ///< radians in [0, 2 pi)
    double strength;  ///< grey levels
};

/// How much each place looks like a thin line along the radius: brighter (way = 1) or darker (-1) than what
/// lies to its left and right. Rows are looked at when they are asked for: lines hardly ever reach in to the
/// middle.
class LineLikeness {
public:
    LineLikeness(const cv::Mat& grey, const DialFrame& frame, int rows, int first)
        : grey_(grey), frame_(frame), rows_(rows), first_(first), seen_(looked_at(first, rows)) {}

    [[nodiscard]] int rows() const { return rows_; }
    /// From row 0, the centre, outwards.
    [[nodiscard]] const float* row(int y);

private:
    [[nodiscard]] cv::Mat looked_at(int from, int to) const;

    const cv::Mat& grey_;
    const DialFrame& frame_;
    int rows_;
    int first_;
    cv::Mat seen_;  // from row `first_`
};

[[nodiscard]] double middle_of(std::vector<double> values);

/// Lines of a band's profile that stand out by at least that much.
[[nodiscard]] std::vector<Peak> peaks_of(const std::vector<float>& profile, double least);
[[nodiscard]] double typical_strength(const std::vector<Peak>& peaks);
/// Strengths relative to those around, so that lines under glare or in shade count like the others. What is
/// weak even so is dropped.
void even_out(std::vector<Peak>& peaks);

}  // namespace lapwing::vision
