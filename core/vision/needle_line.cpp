// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/needle_line.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

namespace lapwing::vision {
namespace {

constexpr int columns = 720;  // two a degree
constexpr int rows = 111;     // a hundred to the unit circle
constexpr double radius_max = 1.1;

constexpr double column_width = 2 * pi / columns;
constexpr int square_side = 240;  // px of the dial seen square on
constexpr double square_unit = square_side / (2 * radius_max);

/// How a dial looks without its needle, and how far the picture is from that.
struct Face {
    cv::Mat plain;       // seen square on, BGR, `square_unit` px a radius
    cv::Mat difference;  // unrolled, grey levels, CV_32F

    [[nodiscard]] cv::Vec3b plain_at(cv::Point2d plane) const {
        const auto place = [](double x) {
            return std::clamp(static_cast<int>((x + radius_max) * square_unit), 0, square_side - 1);
        };
        return plain.at<cv::Vec3b>(place(plane.y), place(plane.x));
    }
};

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

int column_of(double angle) {
    return static_cast<int>(std::lround(wrapped(angle) / column_width)) % columns;
}

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

/// For every direction the best line that stands out from the dial without a break from hub to scale: what
/// counts is the weakest quarter of its length.
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
        for (int x = 0; x < columns; ++x) {
            std::array<float, steps> seen;
            for (std::size_t i = 0; i < steps; ++i)
                seen[i] = face.difference.at<float>(path[i].first, (x + path[i].second + columns) % columns);
            std::nth_element(seen.begin(), seen.begin() + steps / 4, seen.end());
            const double worth = seen[steps / 4];
            Line& line = lines[static_cast<std::size_t>(x)];
            if (worth > line.worth) line = {x * column_width, offset, worth};
        }
    }
    return lines;
}

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
    for (int i = -reach; i <= reach; ++i) {
        const cv::Point2d p = line.at(along, i * step);
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
        difference[static_cast<std::size_t>(i + reach)] = std::sqrt(sum / 3);
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

/// Whether a needle must stand out against both sides on average (its twin edge may lie on one) or against
/// each.
enum class Beside { average, each };

/// How far the needle reaches along the line, seen from the centre: as far as most of the way shows it. Taken
/// over a small patch, so that noise does not look like a needle, and against both sides, so that light does
/// not.
double reach_of(const Face& face, const Line& line, double least, Beside sides) {
    const auto seen_at = [&](double along, double aside) {
        const cv::Point2d p = line.at(along, aside);
        const int row = std::min(rows - 1, static_cast<int>(std::lround(100 * std::hypot(p.x, p.y))));
        return double(face.difference.at<float>(row, column_of(std::atan2(p.y, p.x))));
    };
    double end = 0;
    int looked = 0;
    int seen = 0;
    for (double along = 0.20; along < 1.08; along += 0.01) {
        const double middle = (seen_at(along, -0.012) + seen_at(along, 0) + seen_at(along, 0.012)) / 3;
        const double left = seen_at(along, 0.1);
        const double right = seen_at(along, -0.1);
        const double beside = sides == Beside::each ? std::max(left, right) : (left + right) / 2;
        ++looked;
        if (middle < least || middle - beside < 0.5 * least) continue;
        ++seen;
        if (seen > 0.75 * looked) end = along;
    }
    return end;
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
        int looked = 0;
        for (double along = from; along < to; along += 0.01, ++looked)
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
        out = {line, std::sqrt(3.0) * sum_off / std::sqrt(sxx), weights / looked};
        if (std::abs(turn) < 1e-4) break;
    }
    return out;
}

/// How well a line stands out up to a radius along its weaker part: the weakest quarter (share = 0.25) or
/// half of it.
double worth_of(const Face& face, const Line& line, double to, double share) {
    std::vector<float> seen;
    for (double along = 0.24; along < to; along += 0.02) {
        const cv::Point2d p = line.at(along, 0);
        const int row = std::min(rows - 1, static_cast<int>(std::lround(100 * std::hypot(p.x, p.y))));
        seen.push_back(face.difference.at<float>(row, column_of(std::atan2(p.y, p.x))));
    }
    const auto place = seen.begin() + static_cast<std::ptrdiff_t>(share * double(seen.size()));
    std::nth_element(seen.begin(), place, seen.end());
    return *place;
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

}  // namespace

namespace {

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
    if (const double behind = reach_of(face, back, least, Beside::average); behind + tail > ahead) {
        needle.tip = behind;
        std::swap(line, back);
        tail = reach_of(face, back, least, Beside::each);
    }
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
/// ends there. A streak of light does not.
double likeness(const NeedleLine& needle) {
    return std::sqrt(needle.contrast) * needle.straight * falling(std::abs(needle.offset), 0.06, 0.13) *
           falling(needle.tail, 0.55, 0.9) * (1 - falling(needle.tip, 0.35, 0.6)) *
           (0.5 + 0.5 * falling(needle.tip, 1.03, 1.06));
}

}  // namespace

std::optional<NeedleLine> find_needle(const cv::Mat& colour, const DialFrame& frame) {
    const Face face = face_of(colour, frame);
    const std::vector<Line> lines = lines_of(face);
    std::vector<Line> seeds = lines;
    std::stable_sort(seeds.begin(), seeds.end(),
                     [](const Line& l, const Line& r) { return l.worth > r.worth; });
    std::optional<NeedleLine> best;
    double most = 0;
    double second = 0;
    std::vector<double> tried;
    for (const Line& seed : seeds) {
        if (seed.worth < 6 || seed.worth < 0.25 * seeds.front().worth || tried.size() == 4) break;
        const bool near = std::any_of(tried.begin(), tried.end(), [&](double angle) {
            return std::abs(std::remainder(angle - seed.angle, 2 * pi)) < 25 * pi / 180;
        });
        if (near) continue;
        tried.push_back(seed.angle);
        auto needle = made_out(colour, face, frame, lines, seed);
        if (!needle) continue;
        // The same line may be found again from elsewhere.
        if (best && std::abs(std::remainder(best->angle - needle->angle, 2 * pi)) < 5 * pi / 180) continue;
        const double like = likeness(*needle);
        if (like > most) {
            second = most;
            most = like;
            best = needle;
        } else {
            second = std::max(second, like);
        }
    }
    if (best) best->rivalry = second / most;
    return best;
}

}  // namespace lapwing::vision
