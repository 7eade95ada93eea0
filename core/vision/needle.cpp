// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/needle.h"

#include <algorithm>
#include <cmath>
#include <exception>
#include <opencv2/imgproc.hpp>

#include "core/vision/decode.h"
#include "core/vision/find_dials.h"
#include "core/vision/needle_line.h"
#include "core/vision/pivot.h"
#include "core/vision/scale.h"
#include "core/vision/settle.h"

namespace lapwing::vision {
namespace {

constexpr int working_side = 1280;  // px; a dial that fills a third of it shows lines one degree apart

/// How much like the needle another line may be: less than half of this is what shadows, streaks of light and
/// print come to.
constexpr double two_needles = 0.25;

Status check(const DialRange& range) {
    if (!std::isfinite(range.min) || !std::isfinite(range.max) || range.max <= range.min)
        return fail("vision.range", "The scale must end above where it begins; {} to {} does not.", range.min,
                    range.max);
    if (range.sweep_deg && !(*range.sweep_deg >= 90 && *range.sweep_deg <= 350))
        return fail("vision.sweep", "A scale sweeps 90 to 350 degrees from end to end; {} is not possible.",
                    *range.sweep_deg);
    if (range.start_deg && !(std::abs(*range.start_deg) <= 360))
        return fail("vision.start",
                    "The scale's start is an angle from 12 o'clock, -360 to 360 degrees; {} is not.",
                    *range.start_deg);
    return {};
}

/// 0 at `none`, 1 at `full`, even between.
double between(double value, double none, double full) {
    return std::clamp((value - none) / (full - none), 0.0, 1.0);
}

/// How likely it is that these lines are the scale and these its ends.
double trust_in(const Scale& scale) {
    const double lines = between(double(scale.run.ticks.size()), 4, 12);
    const double complete = between(scale.seen, 0.45, 0.85);
    const double even = 1 - between(scale.run.spread / scale.run.step, 0.03, 0.12);
    const double ends = 1 - 0.6 * std::exp(-scale.margin);
    const double score = between(scale.run.score / (scale.run.span() + 1), 0.1, 0.6);
    return std::sqrt(lines * complete * even * score) * ends;
}

double trust_in(const NeedleLine& needle) {
    const double stands_out = between(needle.contrast, 5, 20);
    const double straight = between(needle.straight, 0.3, 0.6);
    const double long_enough = between(needle.tip, 0.45, 0.7);
    const double one_way =
        std::max(between(needle.tip - needle.tail, 0.05, 0.25), between(needle.one_way, 0.3, 0.7));
    const double central = 1 - between(std::abs(needle.offset), 0.07, 0.13);
    return std::sqrt(stands_out * straight * long_enough * central) * one_way;
}

Point point(cv::Point2d px, double scale) {
    return {(px.x + 0.5) * scale - 0.5, (px.y + 0.5) * scale - 0.5};
}

/// Everything that is said of a scale.
void describe(NeedleReading& out, const Scale& scale, double px) {
    const DialFrame& frame = scale.frame;
    out.centre_px = point(frame.to_image(cv::Point2d{0, 0}), px);
    out.sweep_deg = degrees(scale.sweep());
    out.divisions = scale.divisions;
    out.min_px = point(frame.to_image(1.0, scale.angle_min()), px);
    out.max_px = point(frame.to_image(1.0, scale.angle_min() + scale.sweep()), px);
    const double c = std::cos(scale.angle_min());
    const double s = std::sin(scale.angle_min());
    const double shift = 0.5 * px - 0.5;
    const cv::Matx33d whole = cv::Matx33d{px, 0, shift, 0, px, shift, 0, 0, 1} * frame.homography() *
                              cv::Matx33d{c, -s, 0, s, c, 0, 0, 0, 1};
    std::copy(whole.val, whole.val + 9, out.plane_to_photo.begin());
}

/// The needle and the frame it was found in.
struct Pointing {
    std::optional<NeedleLine> needle;
    const DialFrame* frame;
    bool agreed = true;  ///< nothing else was found where another scale is

    /// Where the needle points to in the plane of another frame.
    [[nodiscard]] double angle_in(const DialFrame& other) const {
        if (frame == &other) return needle->angle;
        const cv::Point2d way =
            other.to_plane(frame->to_image(along(needle->tip))) - other.to_plane(frame->to_image(along(0)));
        return std::atan2(way.y, way.x);
    }
    /// A place of its axis, so far from the pivot.
    [[nodiscard]] cv::Point2d along(double reach) const {
        const cv::Point2d direction{std::cos(needle->angle), std::sin(needle->angle)};
        return direction * reach + cv::Point2d{direction.y, -direction.x} * needle->offset;
    }
};

/// How far a needle is the only one, 0..1.
double alone(const NeedleLine& needle) {
    return 1 - between(needle.rivalry, 0.5 * two_needles, 1.5 * two_needles);
}

/// Held against the inner of two scales a needle's tail may look like its tip, and the outer one's figures
/// like needles: it is looked for where the outer one is as well, if it reaches there.
Pointing needle_on(const cv::Mat& colour, const Scale& scale) {
    constexpr double to_the_lines = 0.8;
    constexpr double same = 8 * pi / 180;
    Pointing out{find_needle(colour, scale.frame), &scale.frame};
    if (!scale.beyond) return out;
    Pointing far{find_needle(colour, *scale.beyond), &*scale.beyond};
    if (!far.needle || far.needle->tip < to_the_lines) return out;
    const double trust = trust_in(*far.needle) * alone(*far.needle);
    if (trust < 0.5) return out;
    const double here = out.needle ? trust_in(*out.needle) * alone(*out.needle) : 0;
    if (here < 0.5 * trust) return far;
    const double apart = std::abs(std::remainder(far.angle_in(scale.frame) - out.needle->angle, 2 * pi));
    if (apart > pi - same) return far;
    out.agreed = apart < same || here > trust;
    return out;
}

struct Found {
    std::optional<Scale> scale;
    double trust = 0;
    bool besides = false;  ///< the photo shows another dial, about as large

    void offer(std::optional<Scale> other) {
        if (!other) return;
        const double in = trust_in(*other);
        if (scale && in <= trust) return;
        scale = std::move(other);
        trust = in;
    }
};

double radius_of(const Scale& scale) {
    return scale.frame.ellipse().mean_radius();
}

/// Whether this is the middle of the plate that the scale is on.
bool in_middle(const Scale& scale, cv::Point2d px) {
    const cv::Point2d off = scale.frame.ellipse().centre - px;
    return std::hypot(off.x, off.y) < 0.4 * radius_of(scale);
}

/// Not every needle turns in the middle of its plate: scales round the other places where it may.
void offer_round_pivots(Found& best, const cv::Mat& grey, const std::vector<Ring>& rings,
                        const DialRange& range, double enough) {
    const Ring& plate = *std::max_element(rings.begin(), rings.end(),
                                          [](const Ring& l, const Ring& r) { return l.seen < r.seen; });
    for (const cv::Point2d& pivot : likely_pivots(grey, plate.ellipse)) {
        Ring round_it = plate;
        round_it.ellipse.centre = pivot;
        best.offer(find_scale(grey, {round_it}, range));
        if (best.trust > enough) break;
    }
}

/// The scale of one of these dials: of the nearest, for a tester's other gauge lies further off than the one
/// that is photographed.
Found scale_of(const cv::Mat& grey, const std::vector<std::vector<Ring>>& dials, const DialRange& range) {
    constexpr double enough = 0.85;
    constexpr double little = 0.6;
    constexpr double nearer = 1.2;  // times as large
    Found best;
    std::vector<const std::vector<Ring>*> bare;  // that showed no scale
    const auto could_be_nearer = [&](const std::vector<Ring>& rings) {
        const Ellipse& rim = rings.front().ellipse;
        return rim.mean_radius() > nearer * radius_of(*best.scale) && !in_middle(*best.scale, rim.centre);
    };
    const auto weigh = [&](Found other) {
        if (other.trust <= little || in_middle(*best.scale, other.scale->frame.ellipse().centre)) return;
        const double size = radius_of(*other.scale) / radius_of(*best.scale);
        const bool besides = best.besides || (size > 1 / nearer && size <= nearer);
        if (other.trust > enough && size > nearer) best = std::move(other);
        best.besides = besides;
    };
    for (const auto& rings : dials) {
        const bool read = best.trust > enough;
        if (read && !could_be_nearer(rings)) continue;
        Found other;
        other.offer(find_scale(grey, rings, range));
        if (other.trust <= little) bare.push_back(&rings);
        if (read)
            weigh(std::move(other));
        else
            best.offer(std::move(other.scale));
    }
    for (std::size_t i = 0; i < dials.size() && i < 3 && best.trust <= little; ++i)
        offer_round_pivots(best, grey, dials[i], range, enough);
    if (best.trust <= enough) return best;
    for (const auto* rings : bare)
        if (could_be_nearer(*rings)) {
            Found other;
            offer_round_pivots(other, grey, *rings, range, enough);
            weigh(std::move(other));
            break;  // there is no time for more
        }
    return best;
}

NeedleReading read(const Decoded& photo, const DialRange& range, const NeedleOptions& options) {
    NeedleReading out;
    const auto refuse = [&](Refusal why) {
        out.refusal = why;
        return out;
    };
    cv::Mat grey;
    cv::cvtColor(photo.colour, grey, cv::COLOR_BGR2GRAY);
    const auto dials = find_dials(grey);
    if (dials.empty()) return refuse(Refusal::no_dial);
    auto [scale, trust, besides] = scale_of(grey, dials, range);
    if (!scale) return refuse(Refusal::no_scale);
    describe(out, *scale, photo.scale);
    out.confidence = 0.5 * trust;
    if (trust < 0.2) return refuse(Refusal::no_scale);

    const Pointing pointing = needle_on(photo.colour, *scale);
    const auto& needle = pointing.needle;
    if (!needle) return refuse(Refusal::no_needle);
    out.tip_px = point(pointing.frame->to_image(pointing.along(needle->tip)), photo.scale);
    out.tail_px = point(pointing.frame->to_image(pointing.along(0)), photo.scale);
    const Axis axis{pointing.frame->to_image(pointing.along(0)),
                    pointing.frame->to_image(pointing.along(needle->tip))};
    const double rule_u = settle(*scale, axis);
    describe(out, *scale, photo.scale);
    const double sweep = scale->sweep();
    const cv::Point2d way = scale->frame.to_plane(axis.to) - scale->frame.to_plane(axis.from);
    const double angle = std::atan2(way.y, way.x);
    const double along = std::remainder(angle - scale->angle_min() - sweep / 2, 2 * pi) + sweep / 2;
    out.needle_angle_deg = degrees(along);

    const double span = range.max - range.min;
    out.value = range.min + along / sweep * span;
    // What the line says, how well the lines of the scale agree, and a floor for what stays of the tilt.
    const double floor_u = 0.15 * pi / 180;
    const double angle_u = std::hypot(std::hypot(needle->angle_u, rule_u), scale->run.spread, floor_u);
    // Where the ends of the scale are in doubt, it is by whole divisions.
    const double ends_u = (1 - trust) * 2 * scale->run.step;
    out.u = std::hypot(angle_u, ends_u) / sweep * span;
    const double outside = degrees(std::max({0.0, -along, along - sweep}));
    const double in_needle = trust_in(*needle);
    out.confidence = trust * in_needle * alone(*needle) * (pointing.agreed ? 1 : 0.7) *
                     (1 - between(outside, 3, 10)) * (1 - 0.5 * between(degrees(angle_u), 1.5, 4));
    // Figures are not read: which of two scales the range belongs to is then only likely.
    out.confidence = std::min(out.confidence, 1 - 0.3 * scale->rival);
    // Nor is it known which of two gauges is meant.
    if (besides) out.confidence = std::min(out.confidence, 0.7);
    if (in_needle < 0.15) return refuse(Refusal::no_needle);
    if (needle->rivalry > two_needles) return refuse(Refusal::two_needles);
    if (out.confidence < options.least_confidence) return refuse(Refusal::unsure);
    return out;
}

}  // namespace

Result<NeedleReading> read_needle(std::span<const std::byte> photo, const DialRange& range,
                                  const NeedleOptions& options) {
    if (auto fits = check(range); !fits) return tl::unexpected(fits.error());
    auto decoded = decode(photo, working_side);
    if (!decoded) return tl::unexpected(decoded.error());
    try {
        return read(*decoded, range, options);
    } catch (const std::exception& error) {
        return fail("vision.internal", "The photo could not be looked at ({}). Type the value.",
                    error.what());
    }
}

}  // namespace lapwing::vision
