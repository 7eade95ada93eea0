// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/vision/drawn_gauge.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <random>

namespace lapwing::test {
namespace {

constexpr double turn = 3.14159265358979323846 / 180.0;  // radians a degree
constexpr int side = 1500;                               // px of the sheets that are drawn square on
constexpr double edge = 1.30;                            // radii that half a sheet shows
constexpr int sub = 4;                                   // fractional bits of OpenCV's drawing

class Chance {
public:
    explicit Chance(std::uint64_t seed) : random_(seed * 0x9E3779B97F4A7C15ULL + 1) {}
    double between(double low, double high) {
        return low + (high - low) * double(random_() >> 11U) / double(1ULL << 53U);
    }
    int whole(int low, int high) { return low + static_cast<int>(random_() % std::uint64_t(high - low + 1)); }
    bool one_in(int n) { return whole(1, n) == 1; }
    template <class T, std::size_t N>
    T of(const std::array<T, N>& choices) {
        return choices[static_cast<std::size_t>(whole(0, int(N) - 1))];
    }

private:
    std::mt19937_64 random_;
};

cv::Point sheet_point(double x, double y) {
    const double unit = side / (2 * edge) * (1 << sub);
    return {static_cast<int>(std::lround((x + edge) * unit)),
            static_cast<int>(std::lround((y + edge) * unit))};
}
/// Clockwise from 12 o'clock.
cv::Point2d on_circle(double radius, double angle_deg) {
    return {radius * std::sin(angle_deg * turn), -radius * std::cos(angle_deg * turn)};
}
double sheet_length(double radii) {
    return radii * side / (2 * edge);
}

/// A straight stroke with square ends.
void stroke(cv::Mat& sheet, cv::Point2d a, cv::Point2d b, double width_a, double width_b,
            const cv::Scalar& colour) {
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    const cv::Point2d n{-(b.y - a.y) / length, (b.x - a.x) / length};
    const std::array<cv::Point, 4> corners{sheet_point(a.x + n.x * width_a / 2, a.y + n.y * width_a / 2),
                                           sheet_point(b.x + n.x * width_b / 2, b.y + n.y * width_b / 2),
                                           sheet_point(b.x - n.x * width_b / 2, b.y - n.y * width_b / 2),
                                           sheet_point(a.x - n.x * width_a / 2, a.y - n.y * width_a / 2)};
    cv::fillConvexPoly(sheet, corners.data(), 4, colour, cv::LINE_AA, sub);
}

void disc(cv::Mat& sheet, cv::Point2d c, double radius, const cv::Scalar& colour) {
    cv::circle(sheet, sheet_point(c.x, c.y), static_cast<int>(sheet_length(radius) * (1 << sub)), colour,
               cv::FILLED, cv::LINE_AA, sub);
}

void arc(cv::Mat& sheet, double radius, double from_deg, double to_deg, double width,
         const cv::Scalar& colour) {
    const int r = static_cast<int>(sheet_length(radius) * (1 << sub));
    cv::ellipse(sheet, sheet_point(0, 0), {r, r}, 0, from_deg - 90, to_deg - 90, colour,
                std::max(1, static_cast<int>(std::lround(sheet_length(width)))), cv::LINE_AA, sub);
}

void word(cv::Mat& sheet, const std::string& text, cv::Point2d middle, double height,
          const cv::Scalar& colour, int font) {
    int base = 0;
    const double scale = sheet_length(height) / 21.0;
    const int thick = std::max(1, static_cast<int>(std::lround(2.2 * scale)));
    const cv::Size box = cv::getTextSize(text, font, scale, thick, &base);
    const cv::Point at = sheet_point(middle.x, middle.y);
    cv::putText(sheet, text, {(at.x >> sub) - box.width / 2, (at.y >> sub) + box.height / 2}, font, scale,
                colour, thick, cv::LINE_AA);
}

std::string figure(double value) {
    std::string text = cv::format("%.4g", value);
    return text;
}

void draw_scale(cv::Mat& sheet, const DrawnGauge& g, int font) {
    const auto angle = [&](double share) { return g.start_deg + share * g.sweep_deg; };
    if (g.zones) {
        const double r = g.ring + 0.035;
        arc(sheet, r, angle(0.1), angle(0.55), 0.035, {60, 150, 40});
        arc(sheet, r, angle(0.55), angle(0.8), 0.035, {40, 200, 230});
        arc(sheet, r, angle(0.8), angle(1.0), 0.035, {40, 40, 200});
    }
    if (g.arc != ArcShape::none) arc(sheet, g.ring, angle(0), angle(1), g.line_width, g.ink);
    if (g.arc == ArcShape::twin) arc(sheet, g.ring - g.minor_length, angle(0), angle(1), g.line_width, g.ink);
    for (int i = 0; i <= g.divisions; ++i) {
        const bool major = i % g.major_every == 0;
        const bool middle = g.middle_every > 0 && i % g.middle_every == 0;
        const double length = major    ? g.major_length
                              : middle ? (g.major_length + g.minor_length) / 2
                                       : g.minor_length;
        const double width = g.line_width * (major ? 1.8 : 1.0);
        const double a = angle(double(i) / g.divisions);
        stroke(sheet, on_circle(g.ring, a), on_circle(g.ring - length, a), width, width, g.ink);
        if (major && g.words)
            word(sheet, figure(g.min + (g.max - g.min) * i / g.divisions),
                 on_circle(g.ring - g.major_length - 0.09, a), 0.085, g.ink, font);
    }
    const double inner = g.ring - g.major_length - 0.24;
    for (int i = 0; i <= g.inner_divisions; ++i) {
        const double a = angle(double(i) / g.inner_divisions * g.inner_share);
        stroke(sheet, on_circle(inner, a), on_circle(inner - (i % 5 == 0 ? 0.07 : 0.04), a), g.line_width,
               g.line_width, {60, 60, 160});
    }
    if (g.words) {
        word(sheet, "bar", {0, 0.42}, 0.10, g.ink, font);
        word(sheet, "CL 1.6", {0, 0.62}, 0.05, g.ink, font);
        disc(sheet, {-0.28, 0.03}, 0.02, g.ink);
        disc(sheet, {0.28, 0.03}, 0.02, g.ink);
    }
}

/// Painted in `colour`; the hub only on the needle itself, not on its shadow.
void draw_needle(cv::Mat& sheet, const DrawnGauge& g, const cv::Scalar& colour) {
    const double a = g.start_deg + g.sweep_deg * (g.value - g.min) / (g.max - g.min);
    const auto at = [&](double r) { return on_circle(r, a); };
    const double w = g.needle_width;
    switch (g.needle) {
        case NeedleShape::line:
            stroke(sheet, at(0), at(g.needle_tip), 0.3 * w, 0.25 * w, colour);
            break;
        case NeedleShape::taper:
            stroke(sheet, at(0), at(g.needle_tip), w, 0.12 * w, colour);
            break;
        case NeedleShape::sword:
            stroke(sheet, at(0), at(0.85 * g.needle_tip), 0.8 * w, 0.8 * w, colour);
            stroke(sheet, at(0.85 * g.needle_tip), at(g.needle_tip), 0.8 * w, 0.05 * w, colour);
            break;
        case NeedleShape::lance:
            stroke(sheet, at(0), at(0.6 * g.needle_tip), 0.4 * w, 0.4 * w, colour);
            stroke(sheet, at(0.6 * g.needle_tip), at(0.68 * g.needle_tip), 0.4 * w, 1.2 * w, colour);
            stroke(sheet, at(0.68 * g.needle_tip), at(g.needle_tip), 1.2 * w, 0.05 * w, colour);
            break;
        case NeedleShape::hollow: {
            const cv::Point2d aside = on_circle(0.8 * w, a + 90);
            for (const double way : {-1.0, 1.0})
                stroke(sheet, at(0) + aside * way, at(0.8 * g.needle_tip), 0.3 * w, 0.25 * w, colour);
            stroke(sheet, at(0.78 * g.needle_tip), at(g.needle_tip), 0.4 * w, 0.1 * w, colour);
            break;
        }
    }
    const auto back = [&](double r) { return on_circle(-r, a); };
    if (g.tail != TailShape::none) stroke(sheet, at(0), back(g.tail_length), 0.6 * w, 0.8 * w, colour);
    if (g.tail == TailShape::disc) disc(sheet, back(g.tail_length), 1.1 * w, colour);
    if (g.tail == TailShape::crescent) {
        const int r = static_cast<int>(sheet_length(1.5 * w) * (1 << sub));
        const cv::Point2d c = back(g.tail_length - 1.5 * w);
        cv::ellipse(sheet, sheet_point(c.x, c.y), {r, r}, a + 90, -75, 75, colour,
                    static_cast<int>(sheet_length(0.5 * w)), cv::LINE_AA, sub);
    }
}

cv::Matx33d camera(const DrawnGauge& g, double height) {
    const double t = g.tilt_deg * turn;
    const double d = g.tilt_towards_deg * turn;
    const double r = g.roll_deg * turn;
    const auto about_z = [](double a) {
        return cv::Matx33d{std::cos(a), -std::sin(a), 0, std::sin(a), std::cos(a), 0, 0, 0, 1};
    };
    const cv::Matx33d about_x{1, 0, 0, 0, std::cos(t), -std::sin(t), 0, std::sin(t), std::cos(t)};
    const cv::Matx33d turned = about_z(d) * about_x * about_z(-d) * about_z(r);
    // The camera looks along -z from `distance` above the dial; height counts towards it.
    const double focus = g.radius_px * g.distance;
    const cv::Matx33d plane{turned(0, 0),  turned(0, 1),  turned(0, 2) * height,
                            turned(1, 0),  turned(1, 1),  turned(1, 2) * height,
                            -turned(2, 0), -turned(2, 1), g.distance - turned(2, 2) * height};
    return cv::Matx33d{focus, 0, g.centre.x, 0, focus, g.centre.y, 0, 0, 1} * plane;
}

cv::Matx33d sheet_to_picture(const DrawnGauge& g, double height) {
    const double unit = 2 * edge / side;
    return camera(g, height) * cv::Matx33d{unit, 0, -edge, 0, unit, -edge, 0, 0, 1};
}

/// Lays a sheet over the picture where its mask is.
void lay(cv::Mat& picture, const cv::Mat& sheet, const cv::Mat& mask, const cv::Matx33d& where,
         double share = 1) {
    cv::Mat seen;
    cv::Mat cover;
    cv::warpPerspective(sheet, seen, where, picture.size(), cv::INTER_AREA);
    cv::warpPerspective(mask, cover, where, picture.size(), cv::INTER_AREA);
    for (int y = 0; y < picture.rows; ++y)
        for (int x = 0; x < picture.cols; ++x) {
            const double a = share * cover.at<unsigned char>(y, x) / 255.0;
            if (a <= 0) continue;
            auto& p = picture.at<cv::Vec3b>(y, x);
            for (int c = 0; c < 3; ++c)
                p[c] = cv::saturate_cast<unsigned char>(p[c] * (1 - a) + seen.at<cv::Vec3b>(y, x)[c] * a);
        }
}

cv::Mat background(const DrawnGauge& g, Chance& chance) {
    cv::Mat picture(g.size, CV_8UC3,
                    cv::Scalar(chance.between(30, 190), chance.between(30, 190), chance.between(30, 190)));
    const int bars = chance.whole(4, 22);
    for (int i = 0; i < bars; ++i) {
        const auto x = [&] { return static_cast<int>(chance.between(-100, g.size.width + 100)); };
        const auto y = [&] { return static_cast<int>(chance.between(-100, g.size.height + 100)); };
        const cv::Scalar colour(chance.between(10, 230), chance.between(10, 230), chance.between(10, 230));
        if (chance.one_in(4))
            cv::circle(picture, {x(), y()}, chance.whole(10, 90), colour, chance.one_in(2) ? cv::FILLED : 5,
                       cv::LINE_AA);
        else
            cv::line(picture, {x(), y()}, {x(), y()}, colour, chance.whole(3, 60), cv::LINE_AA);
    }
    cv::GaussianBlur(picture, picture, {}, chance.between(1, 6));
    return picture;
}

/// Light thrown back by the glass, and what lies on it.
void spoil(cv::Mat& picture, const DrawnGauge& g, Chance& chance) {
    cv::Mat light(g.size, CV_32F, cv::Scalar(0));
    if (g.glare > 0) {
        const cv::Point2d at = on_circle(chance.between(0.1, 0.7), chance.between(0, 360));
        const cv::Point2d px = projected(g, at.x, at.y);
        if (g.glare_is_bar) {
            const double a = chance.between(0, 180) * turn;
            const cv::Point2d way{std::cos(a) * g.radius_px, std::sin(a) * g.radius_px};
            cv::line(light, px - way, px + way, 1.0, static_cast<int>(0.16 * g.radius_px), cv::LINE_AA);
        } else {
            cv::ellipse(light, px, cv::Size2d(0.3 * g.radius_px, 0.2 * g.radius_px), chance.between(0, 180),
                        0, 360, 1.0, cv::FILLED);
        }
        cv::GaussianBlur(light, light, {}, 0.05 * g.radius_px);
    }
    cv::Mat grime(g.size, CV_32F, cv::Scalar(0));
    for (int i = 0; i < static_cast<int>(40 * g.dirt); ++i) {
        const cv::Point2d at = on_circle(chance.between(0, 0.95), chance.between(0, 360));
        cv::circle(grime, projected(g, at.x, at.y),
                   static_cast<int>(chance.between(0.01, 0.06) * g.radius_px), chance.between(0.1, 0.5),
                   cv::FILLED);
    }
    cv::GaussianBlur(grime, grime, {}, 2);
    const double shade_at = chance.between(0.3, 0.7) * g.size.width;
    for (int y = 0; y < picture.rows; ++y)
        for (int x = 0; x < picture.cols; ++x)
            for (int c = 0; c < 3; ++c) {
                double value = picture.at<cv::Vec3b>(y, x)[c] * g.light;
                if (x > shade_at) value *= 1 - g.shade;
                value += grime.at<float>(y, x) * (70 - value);
                value += g.glare * 220 * light.at<float>(y, x);
                picture.at<cv::Vec3b>(y, x)[c] = cv::saturate_cast<unsigned char>(value);
            }
}

}  // namespace

cv::Point2d projected(const DrawnGauge& gauge, double x, double y, double height) {
    const cv::Vec3d p = camera(gauge, height) * cv::Vec3d{x, y, 1};
    return {p[0] / p[2], p[1] / p[2]};
}

cv::Mat draw(const DrawnGauge& g) {
    Chance chance(g.seed);
    cv::Mat picture = background(g, chance);
    const cv::Mat clear(side, side, CV_8U, cv::Scalar(0));
    const int font =
        chance.of<int, 3>({cv::FONT_HERSHEY_SIMPLEX, cv::FONT_HERSHEY_DUPLEX, cv::FONT_HERSHEY_TRIPLEX});

    cv::Mat rim(side, side, CV_8UC3, g.bezel);
    cv::Mat rim_mask = clear.clone();
    disc(rim_mask, {0, 0}, 1.2, 255);
    disc(rim, {0, 0}, 1.12, g.bezel * 1.25);
    disc(rim, {0, 0}, 1.06, g.bezel * 0.8);
    lay(picture, rim, rim_mask, sheet_to_picture(g, 0.10));

    cv::Mat dial(side, side, CV_8UC3, g.face);
    cv::Mat dial_mask = clear.clone();
    disc(dial_mask, {0, 0}, 1.0, 255);
    draw_scale(dial, g, font);
    lay(picture, dial, dial_mask, sheet_to_picture(g, 0));

    cv::Mat hand = clear.clone();
    draw_needle(hand, g, 255);
    if (g.shadow > 0) {
        cv::Mat moved;
        const double by = sheet_length(g.shadow);
        cv::warpAffine(hand, moved, cv::Matx23d{1, 0, by, 0, 1, 0.7 * by}, hand.size());
        cv::GaussianBlur(moved, moved, {}, 6);
        lay(picture, cv::Mat(side, side, CV_8UC3, cv::Scalar(20, 20, 20)), moved, sheet_to_picture(g, 0),
            0.35);
    }
    lay(picture, cv::Mat(side, side, CV_8UC3, g.needle_colour), hand, sheet_to_picture(g, g.height));
    if (g.held) {
        DrawnGauge second = g;
        second.value = *g.held;
        second.needle = NeedleShape::line;
        second.tail = TailShape::none;
        cv::Mat thin = clear.clone();
        draw_needle(thin, second, 255);
        lay(picture, cv::Mat(side, side, CV_8UC3, cv::Scalar(30, 30, 200)), thin,
            sheet_to_picture(g, 1.2 * g.height));
    }
    cv::Mat cap = clear.clone();
    disc(cap, {0, 0}, g.hub, 255);
    lay(picture, cv::Mat(side, side, CV_8UC3, g.bezel * 0.9), cap, sheet_to_picture(g, 1.3 * g.height));

    spoil(picture, g, chance);
    if (g.blur_px > 0) cv::GaussianBlur(picture, picture, {}, g.blur_px);
    if (g.noise > 0) {
        cv::Mat grain(picture.size(), CV_16SC3);
        cv::RNG generator(g.seed + 7);
        generator.fill(grain, cv::RNG::NORMAL, 0, g.noise);
        cv::add(picture, grain, picture, cv::noArray(), CV_8U);
    }
    return picture;
}

std::vector<unsigned char> photographed(const DrawnGauge& gauge, int quality) {
    std::vector<unsigned char> file;
    cv::imencode(".jpg", draw(gauge), file, {cv::IMWRITE_JPEG_QUALITY, quality});
    return file;
}

DrawnGauge chance_gauge(std::uint64_t seed, Difficulty difficulty) {
    Chance chance(seed);
    DrawnGauge g;
    g.seed = seed;
    const bool easy = difficulty == Difficulty::easy;
    const bool hard = difficulty == Difficulty::hard;

    struct Graduation {
        double max;
        int divisions, middle, major;
    };
    const auto graduation = chance.of<Graduation, 12>({{{4, 40, 5, 10},
                                                        {6, 60, 5, 10},
                                                        {10, 50, 0, 5},
                                                        {10, 100, 5, 10},
                                                        {16, 32, 0, 4},
                                                        {21, 42, 0, 6},
                                                        {25, 50, 5, 10},
                                                        {60, 30, 0, 5},
                                                        {100, 50, 0, 5},
                                                        {160, 32, 0, 8},
                                                        {300, 60, 5, 10},
                                                        {1000, 50, 0, 10}}});
    g.max = graduation.max;
    g.divisions = graduation.divisions;
    g.middle_every = graduation.middle;
    g.major_every = graduation.major;
    g.sweep_deg = chance.of<double, 6>({180, 240, 270, 270, 270, 300});
    g.start_deg = -g.sweep_deg / 2;
    g.ring = chance.between(0.74, 0.90);
    g.minor_length = chance.between(0.04, 0.06);
    g.major_length = g.minor_length * chance.between(1.6, 2.2);
    g.line_width = chance.between(0.007, 0.012) * (graduation.divisions > 60 ? 0.8 : 1);
    g.arc = chance.of<ArcShape, 3>({ArcShape::none, ArcShape::single, ArcShape::twin});
    g.inner_divisions = chance.one_in(4) ? chance.of<int, 3>({28, 40, 58}) : 0;
    g.zones = chance.one_in(4);
    if (chance.one_in(3)) {
        g.face = {34, 30, 30};
        g.ink = {235, 240, 240};
        g.needle_colour =
            chance.of<cv::Scalar, 3>({cv::Scalar{240, 240, 240}, {40, 90, 240}, {40, 210, 240}});
    } else {
        g.face = chance.of<cv::Scalar, 3>({cv::Scalar{225, 235, 238}, {245, 245, 245}, {200, 215, 215}});
        g.needle_colour = chance.of<cv::Scalar, 3>({cv::Scalar{25, 25, 25}, {35, 35, 190}, {110, 60, 20}});
    }
    g.bezel =
        chance.of<cv::Scalar, 4>({cv::Scalar{120, 125, 130}, {40, 40, 42}, {70, 130, 165}, {60, 60, 170}});
    g.needle = chance.of<NeedleShape, 5>(
        {NeedleShape::line, NeedleShape::taper, NeedleShape::sword, NeedleShape::lance, NeedleShape::hollow});
    g.tail =
        chance.of<TailShape, 4>({TailShape::none, TailShape::plain, TailShape::disc, TailShape::crescent});
    g.needle_tip = g.ring - chance.between(-0.02, 0.14);
    g.needle_width = chance.between(0.045, 0.085);
    g.tail_length = chance.between(0.18, 0.36);
    g.hub = chance.between(0.05, 0.12);
    g.height = chance.between(0.03, 0.07);
    g.value = chance.one_in(8) ? 0 : g.max * chance.between(0, 1);

    if (chance.one_in(2)) std::swap(g.size.width, g.size.height);
    const double room = 0.5 * std::min(g.size.width, g.size.height) / 1.25;
    g.radius_px = room * chance.between(hard ? 0.5 : 0.65, 0.95);
    const double slack = std::max(0.0, room - g.radius_px);
    g.centre = {g.size.width / 2.0 + chance.between(-slack, slack),
                g.size.height / 2.0 + chance.between(-slack, slack)};
    g.distance = chance.between(4, 9);
    g.tilt_deg = easy ? chance.between(0, 10) : hard ? chance.between(18, 33) : chance.between(6, 24);
    g.tilt_towards_deg = chance.between(0, 360);
    g.roll_deg = chance.between(-1, 1) * (easy ? 6 : hard ? 20 : 14);
    g.shadow = chance.one_in(2) ? chance.between(0.01, 0.06) : 0;
    if (!easy && chance.one_in(2)) {
        g.glare = chance.between(0.3, hard ? 1.0 : 0.6);
        g.glare_is_bar = chance.one_in(2);
    }
    g.dirt = easy ? 0 : chance.between(0, hard ? 0.8 : 0.4);
    g.light = easy ? chance.between(0.8, 1.05) : chance.between(hard ? 0.35 : 0.6, 1.15);
    g.shade = easy ? 0 : chance.one_in(2) ? chance.between(0.1, 0.45) : 0;
    g.blur_px = easy ? chance.between(0.5, 1.0) : hard ? chance.between(0.8, 2.2) : chance.between(0.6, 1.6);
    g.noise = easy ? 3 : hard ? chance.between(4, 12) : chance.between(3, 7);
    return g;
}

}  // namespace lapwing::test
