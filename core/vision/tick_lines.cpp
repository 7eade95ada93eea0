// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/tick_lines.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace lapwing::vision {

const float* LineLikeness::row(int y) {
    if (y < first_) {
        int from = std::min(y, first_ - 16);
        if (from < 8) from = 0;
        cv::vconcat(looked_at(from, first_), seen_, seen_);
        first_ = from;
    }
    return seen_.ptr<float>(y - first_);
}

cv::Mat LineLikeness::looked_at(int from, int to) const {
    constexpr int margin = 40;
    const double radius = double(to - 1) / rows_per_radius;
    cv::Mat wide;
    cv::copyMakeBorder(frame_.unroll(grey_, columns, to, radius, from), wide, 0, 0, margin, margin,
                       cv::BORDER_WRAP);
    cv::Mat real;
    wide.convertTo(real, CV_32F);
    // What a narrow blur leaves less what a wide one does, in one pass.
    static const cv::Mat across = [] {
        cv::Mat kernel = -cv::getGaussianKernel(49, 7.0, CV_32F);
        kernel.rowRange(18, 31) += cv::getGaussianKernel(13, 1.8, CV_32F);
        return kernel;
    }();
    cv::Mat out;
    cv::sepFilter2D(real, out, CV_32F, across, cv::Mat::ones(1, 1, CV_32F));
    return out.colRange(margin, margin + columns).clone();
}

double middle_of(std::vector<double> values) {
    if (values.empty()) return 0;
    const auto place = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), place, values.end());
    return *place;
}

std::vector<Peak> peaks_of(const std::vector<float>& profile, double least) {
    const std::size_t n = profile.size();
    std::vector<Peak> peaks;
    for (std::size_t i = 0; i < n; ++i) {
        const double m = profile[i];
        if (m < least) continue;
        const double l = profile[i > 0 ? i - 1 : n - 1];
        const double r = profile[i + 1 < n ? i + 1 : 0];
        if (m <= l || m < r) continue;
        const double curve = l - 2 * m + r;
        const double shift = curve < 0 ? 0.5 * (l - r) / curve : 0;
        peaks.push_back({(double(i) + shift) * column_width, m});
    }
    return peaks;
}

double typical_strength(const std::vector<Peak>& peaks) {
    std::vector<double> strength;
    for (const Peak& p : peaks)
        strength.push_back(p.strength);
    if (strength.empty()) return 0;
    const auto place = strength.begin() + static_cast<std::ptrdiff_t>(strength.size() * 4 / 5);
    std::nth_element(strength.begin(), place, strength.end());
    return *place;
}

void even_out(std::vector<Peak>& peaks) {
    constexpr double around = 25 * pi / 180;
    const double everywhere = typical_strength(peaks);
    std::vector<double> local(peaks.size());
    std::vector<Peak> near;
    for (std::size_t i = 0; i < peaks.size(); ++i) {
        near.clear();
        for (const Peak& p : peaks)
            if (std::abs(std::remainder(p.angle - peaks[i].angle, 2 * pi)) < around) near.push_back(p);
        local[i] = std::max(typical_strength(near), 0.25 * everywhere);
    }
    for (std::size_t i = 0; i < peaks.size(); ++i)
        peaks[i].strength = std::min(1.5, peaks[i].strength / local[i]);
    std::erase_if(peaks, [](const Peak& p) { return p.strength < 0.36; });
}

}  // namespace lapwing::vision
