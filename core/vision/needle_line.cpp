// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/needle_line.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "core/base/stations.h"
#include "core/vision/dial_face.h"

namespace lapwing::vision {
namespace {

/// Where the needle lies across its axis, at one distance along it.
struct Cut {
    double along = 0;
    double aside = 0;
    double contrast = 0;
};

std::optional<Cut> cut(const cv::Mat& colour, const Face& face, const DialFrame& frame, const Line& line,
                       double along, double least) {
    constexpr int reach = 30;
    constexpr double step = 0.004;
    std::array<double, 2 * reach + 1> difference{};
    for (std::size_t i = 0; i < difference.size(); ++i) {
        const cv::Point2d p = line.at(along, (double(i) - reach) * step);
        const cv::Vec3b plain = face.plain_at(p);
        const cv::Point2d px = frame.to_image(p);
        const int x = static_cast<int>(std::floor(px.x));
        const int y = static_cast<int>(std::floor(px.y));
        if (x < 0 || y < 0 || x + 1 >= colour.cols || y + 1 >= colour.rows) return std::nullopt;
        const double fx = px.x - x;
        const double fy = px.y - y;
        double sum = 0;
        for (int c = 0; c < 3; ++c) {
            const double top =
                colour.at<cv::Vec3b>(y, x)[c] * (1 - fx) + colour.at<cv::Vec3b>(y, x + 1)[c] * fx;
            const double low =
                colour.at<cv::Vec3b>(y + 1, x)[c] * (1 - fx) + colour.at<cv::Vec3b>(y + 1, x + 1)[c] * fx;
            const double off = top * (1 - fy) + low * fy - plain[c];
            sum += off * off;
        }
        difference[i] = std::sqrt(sum / 3);
    }
    // The strongest place near the axis, then both ways until it has faded by half.
    std::size_t peak = reach;
    for (std::size_t i = reach - 9; i <= reach + 9; ++i)
        if (difference[i] > difference[peak]) peak = i;
    const double half = 0.5 * difference[peak];
    if (difference[peak] < least) return std::nullopt;
    std::size_t left = peak;
    std::size_t right = peak;
    while (left > 0 && difference[left - 1] > half)
        --left;
    while (right + 1 < difference.size() && difference[right + 1] > half)
        ++right;
    if (left == 0 || right + 1 == difference.size()) return std::nullopt;
    double weight = 0;
    double moment = 0;
    for (std::size_t i = left; i <= right; ++i) {
        weight += difference[i] - half;
        moment += (difference[i] - half) * (double(i) - reach) * step;
    }
    return Cut{along, moment / weight, difference[peak]};
}

struct Straight {
    Line line;
    double slope_u = 0;
    double share = 0;
};

/// The axis as the middle of the needle tells it.
std::optional<Straight> straightened(const cv::Mat& colour, const Face& face, const DialFrame& frame,
                                     Line line) {
    constexpr double from = 0.22;
    constexpr double to = 0.86;  // short of the graduation lines
    Straight out;
    for (int round = 0; round < 4; ++round) {
        std::vector<Cut> cuts;
        const auto places = stations(from, to, 0.01);
        for (const double along : places)
            if (const auto c = cut(colour, face, frame, line, along, 0.4 * line.worth)) cuts.push_back(*c);
        if (cuts.size() < 12) return std::nullopt;
        // Least squares with what lies off the line weighted down, from the middle outwards.
        double a = 0;
        double b = 0;
        double scale = 0.02;
        double sum_off = 0;
        double sxx = 0;
        double weights = 0;
        for (int pass = 0; pass < 6; ++pass) {
            double sw = 0, sx = 0, sy = 0, xx = 0, xy = 0;
            for (const Cut& c : cuts) {
                const double off = (c.aside - a - b * c.along) / scale;
                const double w = 1 / (1 + off * off * off * off);
                sw += w;
                sx += w * c.along;
                sy += w * c.aside;
                xx += w * c.along * c.along;
                xy += w * c.along * c.aside;
            }
            const double spread = xx - sx * sx / sw;
            b = (xy - sx * sy / sw) / spread;
            a = (sy - b * sx) / sw;
            std::vector<double> offs;
            for (const Cut& c : cuts)
                offs.push_back(std::abs(c.aside - a - b * c.along));
            std::nth_element(offs.begin(), offs.begin() + static_cast<std::ptrdiff_t>(offs.size() / 2),
                             offs.end());
            scale = std::max(0.002, 2.5 * 1.4826 * offs[offs.size() / 2]);
            sxx = spread;
            weights = sw;
            sum_off = offs[offs.size() / 2] * 1.4826;
        }
        const double turn = std::atan(b);
        // Aside is measured to the left; the axis moves there and turns that way.
        line.offset = (line.offset + a) * std::cos(turn);
        line.angle = wrapped(line.angle - turn);
        // Neighbouring cuts share their pixels: about one in three tells something new.
        out = {line, std::sqrt(3.0) * sum_off / std::sqrt(sxx), weights / double(places.size())};
        if (std::abs(turn) < 1e-4) break;
    }
    return out;
}

/// The other edge of a hollow needle, if that is what was found: as strong, beyond a gap, and such that the
/// middle of the two passes the centre more closely than either. A shadow fails that: its needle passes more
/// closely.
std::optional<Line> twin_of(const Face& face, const Line& line) {
    std::optional<Line> best;
    for (int turn = -18; turn <= 18; ++turn)
        for (int k = -20; k <= 20; ++k) {
            const Line other{line.angle + turn * pi / 180, 0.01 * k, 0};
            const double apart = other.offset - line.offset - 0.3 * turn * pi / 180;  // near the hub
            if (std::abs(apart) < 0.035 || std::abs(apart) > 0.2) continue;
            const double middle = 0.5 * (line.offset + other.offset);
            if (std::abs(middle) > std::min(std::abs(line.offset), std::abs(other.offset)) ||
                std::abs(middle) > 0.05)
                continue;
            const double worth = worth_of(face, other, 0.66, 0.25);
            if (worth > 0.7 * line.worth && (!best || worth > best->worth)) {
                best = other;
                best->worth = worth;
            }
        }
    if (!best) return best;
    const Line between{0.5 * (line.angle + best->angle), 0.5 * (line.offset + best->offset), 0};
    if (worth_of(face, between, 0.38, 0.5) > 0.5 * std::min(line.worth, best->worth)) return std::nullopt;
    return best;
}

/// The middle of all that stands out about as much as the best line: a broad needle holds many lines.
Line middle_line(const std::vector<Line>& lines, const Line& best) {
    double weight = 0;
    double turn = 0;
    double offset = 0;
    for (const Line& l : lines) {
        const double off = std::remainder(l.angle - best.angle, 2 * pi);
        if (std::abs(off) > 14 * pi / 180 || l.worth < 0.85 * best.worth) continue;
        weight += 1;
        turn += off;
        offset += l.offset;
    }
    return {wrapped(best.angle + turn / weight), offset / weight, best.worth};
}

/// A line made out as a needle: which end is the tip, how far it reaches.
std::optional<NeedleLine> made_out(const cv::Mat& colour, const Face& face, const DialFrame& frame,
                                   const std::vector<Line>& lines, const Line& seed) {
    auto axis = straightened(colour, face, frame, middle_line(lines, seed));
    // The middle of a hollow needle is empty; then one of its edges leads on.
    if (!axis || axis->share < 0.6 || axis->slope_u > 0.4 * pi / 180) {
        auto edge = straightened(colour, face, frame, seed);
        if (edge && (!axis || edge->share > axis->share || edge->slope_u < axis->slope_u)) axis = edge;
    }
    if (!axis) return std::nullopt;
    NeedleLine needle;
    Line line = axis->line;
    needle.contrast = seed.worth;
    const double least = 0.4 * seed.worth;
    Line back{wrapped(line.angle + pi), -line.offset, line.worth};
    double tail = reach_of(face, back, least, Beside::each);
    needle.tip = reach_of(face, line, least, Beside::average);
    const double ahead = needle.tip + reach_of(face, line, least, Beside::each);
    const double behind = reach_of(face, back, least, Beside::average);
    // Print near the hub hides the way a needle goes, but a tail never gets as far as the scale.
    const double out = seen_far_out(face, line, least);
    const double out_behind = seen_far_out(face, back, least);
    const bool told = std::abs(out - out_behind) > 0.6;
    if (told ? out_behind > out : behind + tail > ahead) {
        needle.tip = behind;
        std::swap(line, back);
        tail = reach_of(face, back, least, Beside::each);
    }
    if (told && needle.tip < 0.72) needle.tip = 0.9;
    needle.one_way = std::abs(out - out_behind);
    needle.tail = tail;
    if (const auto twin = twin_of(face, line))
        if (const auto other = straightened(colour, face, frame, *twin)) {
            line.angle += 0.5 * std::remainder(other->line.angle - line.angle, 2 * pi);
            line.offset = 0.5 * (line.offset + other->line.offset);
        }
    needle.angle = line.angle;
    needle.offset = line.offset;
    needle.angle_u = axis->slope_u;
    needle.straight = axis->share;
    return needle;
}

double falling(double value, double full, double none) {
    return std::clamp((none - value) / (none - full), 0.0, 1.0);
}

/// How much a line is like a needle: it stands out, passes the centre, reaches the scale on one side only and
/// ends there, and its middle is clear. A streak of light or a shadow's edge is not.
double likeness(const NeedleLine& needle) {
    const double one_way = 1 - falling(needle.one_way, 0.3, 0.7);
    const double clear = falling(degrees(needle.angle_u), 0.6, 1.2);
    return std::sqrt(needle.contrast) * needle.straight * falling(std::abs(needle.offset), 0.06, 0.13) *
           std::max(falling(needle.tail, 0.55, 0.9), one_way) * (0.5 + 0.5 * clear) *
           (1 - falling(needle.tip, 0.35, 0.6)) * (0.5 + 0.5 * falling(needle.tip, 1.03, 1.06));
}

/// How far a line beside the needle can be a needle as well, 0..1. Light and shadow have no clear middle, run
/// past the pivot or on beyond where the needle ends.
double own_right(const NeedleLine& other, const NeedleLine& needle) {
    const double ends = needle.tip < 1.03 ? falling(other.tip, 1.03, 1.06) : 1;
    return falling(degrees(other.angle_u), 0.8, 1.1) * falling(std::abs(other.offset), 0.04, 0.07) * ends;
}

/// Wipes what belongs to a needle out of the differences, hub and tail and all: to both sides until it has
/// faded.
cv::Mat without(const Face& face, const NeedleLine& needle) {
    constexpr double broadest = 0.16;
    constexpr double step = 0.005;
    cv::Mat rest = face.difference.clone();
    const Line axis{needle.angle, needle.offset, 0};
    const auto sideways = stations(0, broadest, step);
    for (const double along : stations(-std::max(needle.tail, 0.3) - 0.1, needle.tip + 0.1, step)) {
        // What was wiped from another place along the axis still counts as it was.
        const double faded = 0.3 * std::max<double>(seen_at(face, axis, along), needle.contrast);
        for (const double way : {1.0, -1.0}) {
            int margin = 3;
            for (const double aside : sideways) {
                if (margin <= 0) break;
                if (aside > 0.02 && seen_at(face, axis, along, way * aside) < faded) --margin;
                seen_at(rest, axis, along, way * aside) = 0;
            }
        }
    }
    return rest;
}

/// The best needles among lines that point to different places, best first.
std::vector<NeedleLine> needles_of(const cv::Mat& colour, const Face& face, const DialFrame& frame,
                                   std::size_t tries, double least) {
    const std::vector<Line> lines = lines_of(face);
    std::vector<Line> seeds = lines;
    std::stable_sort(seeds.begin(), seeds.end(),
                     [](const Line& l, const Line& r) { return l.worth > r.worth; });
    std::vector<NeedleLine> found;
    std::vector<double> tried;
    for (const Line& seed : seeds) {
        if (seed.worth < 6 || seed.worth < least || seed.worth < 0.25 * seeds.front().worth ||
            tried.size() == tries)
            break;
        const bool near = std::any_of(tried.begin(), tried.end(), [&](double angle) {
            return std::abs(std::remainder(angle - seed.angle, 2 * pi)) < 25 * pi / 180;
        });
        if (near) continue;
        tried.push_back(seed.angle);
        const auto needle = made_out(colour, face, frame, lines, seed);
        if (!needle) continue;
        // The same line may be found again from elsewhere.
        const bool known = std::any_of(found.begin(), found.end(), [&](const NeedleLine& other) {
            return std::abs(std::remainder(other.angle - needle->angle, 2 * pi)) < 5 * pi / 180;
        });
        if (!known) found.push_back(*needle);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const NeedleLine& l, const NeedleLine& r) { return likeness(l) > likeness(r); });
    return found;
}

}  // namespace

std::optional<NeedleLine> find_needle(const cv::Mat& colour, const DialFrame& frame) {
    constexpr double same = 8 * pi / 180;
    Face face = face_of(colour, frame);
    const auto found = needles_of(colour, face, frame, 4, 0);
    if (found.empty()) return std::nullopt;
    NeedleLine best = found.front();
    // Another needle may also stand so close by that it is taken for part of this one, until this one is
    // wiped.
    face.difference = without(face, best);
    std::vector<NeedleLine> others(found.begin() + 1, found.end());
    const auto near = [](double angle, double other) {
        return std::abs(std::remainder(angle - other, 2 * pi)) < same;
    };
    // One that was made out before as well was seen whole then: the wiping may have cut a streak of light
    // short.
    for (const NeedleLine& other : needles_of(colour, face, frame, 2, 0.2 * best.contrast))
        if (std::none_of(found.begin() + 1, found.end(),
                         [&](const NeedleLine& whole) { return near(other.angle, whole.angle); }))
            others.push_back(other);
    for (const NeedleLine& other : others) {
        // What is left of its own edges, its shadow and its tail is no other needle.
        const double apart = std::abs(std::remainder(other.angle - best.angle, 2 * pi));
        if (apart > same && apart < pi - same)
            best.rivalry = std::max(best.rivalry, own_right(other, best) * likeness(other) / likeness(best));
    }
    return best;
}

}  // namespace lapwing::vision
