// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/scale.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwing::vision {
namespace {

/// The value that this share of them does not reach.
double quantile(std::vector<double> values, double share) {
    const auto place = values.begin() + static_cast<std::ptrdiff_t>(share * double(values.size()));
    std::nth_element(values.begin(), place, values.end());
    return *place;
}

double middle_of(std::vector<double> values) {
    return quantile(std::move(values), 0.5);
}

/// Takes the frame to the outer ends of the lines and its centre to where the lines say it is. Lines that run
/// on into something else (a numeral, a reflection) have no say in it.
std::optional<DialFrame> drawn_through(const TickRun& run, const DialFrame& frame) {
    std::vector<double> outer;
    for (const Tick& t : run.ticks)
        outer.push_back(t.outer);
    const double middle = middle_of(outer);
    std::vector<cv::Point2f> ends;
    for (const Tick& t : run.ticks)
        if (std::abs(t.outer - middle) < 0.08) ends.emplace_back(frame.to_image(t.outer, t.angle));
    auto ellipse = fit_ellipse(ends, 0.02);
    if (!ellipse) {
        ends.clear();
        for (int i = 0; i < 36; ++i)
            ends.emplace_back(frame.to_image(middle, i * pi / 18));
        ellipse = fit_ellipse(ends, 0.02);
    }
    if (!ellipse) return std::nullopt;
    return DialFrame(*ellipse, frame.to_image(run.shift * run.radius));
}

struct Seen {
    DialFrame frame;
    TickRun run;
};

/// The frame and the lines told by each other, a few times over. A centre that still moves counts for less
/// than lines missed.
Seen refined(const cv::Mat& grey, Seen seen, const TickSearch& search = {0.78, 1.06}) {
    const auto worth = [](const TickRun& run) {
        return run.score * std::exp(-std::hypot(run.shift.x, run.shift.y) / 0.02);
    };
    Seen best = seen;
    for (int round = 0; round < 4; ++round) {
        const auto frame = drawn_through(seen.run, seen.frame);
        if (!frame) break;
        auto run = find_ticks(grey, *frame, search);
        if (!run || run->score < 0.5 * best.run.score) break;
        const bool settled = std::hypot(run->shift.x, run->shift.y) < 0.004 && round > 0;
        seen = {*frame, std::move(*run)};
        if (worth(seen.run) > worth(best.run)) best = seen;
        if (settled) break;
    }
    return best;
}

/// Frames worth a look: each ring square on, and tilted both ways about its long axis. Seen from nearby, the
/// centre of a tilted dial is not the centre of its ellipse.
std::vector<DialFrame> frames_of(const std::vector<Ring>& rings) {
    std::vector<const Ring*> order;
    for (const Ring& r : rings)
        order.push_back(&r);
    std::stable_sort(order.begin(), order.end(),
                     [](const Ring* l, const Ring* r) { return l->seen > r->seen; });
    std::vector<DialFrame> frames;
    for (std::size_t i = 0; i < order.size() && i < 4; ++i)
        frames.emplace_back(order[i]->ellipse);
    for (std::size_t i = 0; i < order.size() && i < 2; ++i) {
        const Ellipse& e = order[i]->ellipse;
        const double tilt =
            std::sqrt(std::max(0.0, 1 - std::pow(std::min(e.a, e.b) / std::max(e.a, e.b), 2)));
        if (tilt < 0.2) continue;
        const double across = e.direction + (e.a > e.b ? pi / 2 : 0);
        const double off = 0.4 * tilt * std::min(e.a, e.b);
        for (const double way : {off, -off})
            frames.emplace_back(e, e.centre + cv::Point2d{way * std::cos(across), way * std::sin(across)});
    }
    return frames;
}

/// How usual a division of this size is: people count in 1, 2 and 5.
double oddness(double division) {
    const double power = std::pow(10.0, std::floor(std::log10(division) + 1e-9));
    const double mantissa = division / power;
    const auto is = [&](double wanted) { return std::abs(mantissa - wanted) < 0.004 * wanted; };
    if (is(1) || is(2) || is(5)) return 0;
    if (is(2.5) || is(4)) return 2;
    return 6;
}

/// Long lines stand at the scale's ends and at even steps between: how well these ends fit that, 0..1.
double long_lines_fit(const TickRun& run, int first, int divisions, double short_length) {
    double best = 0;
    for (const int every : {2, 4, 5, 8, 10, 20}) {
        if (divisions % every != 0 || divisions / every < 2) continue;
        double on = 0;
        double long_on = 0;
        double off = 0;
        double long_off = 0;
        for (const Tick& t : run.ticks) {
            const int place = t.place - first;
            if (place < 0 || place > divisions) continue;
            const bool is_long = t.outer - t.inner > 1.2 * short_length;
            if (place % every == 0) {
                on += 1;
                long_on += is_long;
            } else {
                off += 1;
                long_off += is_long;
            }
        }
        if (on >= 2 && off >= 2) best = std::max(best, long_on / on - long_off / off);
    }
    return best;
}

struct Ends {
    int first = 0;
    int divisions = 0;
    double score = -1e9;
};

/// How the sweep and the way the dial stands fit what is known, or else what is usual.
double posture(double sweep, double start, const DialRange& range) {
    double score = 0;
    if (range.sweep_deg) {
        score -= std::min(16.0, std::pow((sweep - *range.sweep_deg) / 2.0, 2));
    } else {
        double off = 90;
        for (const double usual : {180.0, 210.0, 225.0, 240.0, 250.0, 260.0, 270.0, 300.0, 320.0})
            off = std::min(off, std::abs(sweep - usual) + (usual == 270 ? 0 : 0.5));
        score += std::max(0.0, 1.5 - 0.5 * off);
    }
    // Upright, the gap of the scale is at the bottom, and the lower end on the left.
    if (range.start_deg) {
        const double off = std::remainder(start - (*range.start_deg - 90), 360.0);
        score -= std::min(4.0, std::pow(off / 20, 2));
    } else {
        const double off = std::remainder(start + sweep / 2 + 90, 360.0);
        score -= std::min(3.0, 0.5 * std::pow(off / 20, 2));
    }
    return score;
}

/// Every pair of lines that could be the ends, best first. The long lines, which take time to count, are only
/// asked where they could still change the order; pairs that could not come near the best are left out.
std::vector<Ends> likely_ends(const TickRun& run, const DialRange& range) {
    constexpr double long_lines = 4;
    const int span = run.span();
    const int reach = std::max(3, std::min(12, span / 4));
    const int places = span + 2 * reach + 1;
    std::vector<double> strength(static_cast<std::size_t>(places), 0.0);
    std::vector<double> lengths;
    for (const Tick& t : run.ticks) {
        const int place = t.place - run.ticks.front().place + reach;
        strength[static_cast<std::size_t>(place)] = std::min(1.0, t.strength);
        lengths.push_back(t.outer - t.inner);
    }
    // Every second line of a coarse scale may be a long one.
    const double short_length = quantile(std::move(lengths), 0.35);
    std::vector<double> before(1, 0.0);  // strengths of all lines before a place
    for (const double s : strength)
        before.push_back(before.back() + s);
    std::vector<Ends> all;
    for (int first = 0; first < places; ++first)
        for (int last = first + 4; last < places; ++last) {
            const int divisions = last - first;
            const double sweep = degrees(run.step * divisions);
            if (sweep < 85) continue;
            if (sweep > 345) break;
            const auto lower = static_cast<std::size_t>(first);
            const auto upper = static_cast<std::size_t>(last);
            const double outside = before[lower] + before.back() - before[upper + 1];
            // Glare or a dark zone hides many lines as easily as a few.
            const double hidden = std::min(2.5, 0.5 * std::max(0, reach - first)) +
                                  std::min(2.5, 0.5 * std::max(0, last - reach - span));
            const int place = first - reach + run.ticks.front().place;
            all.push_back({place, divisions,
                           (strength[lower] > 0) + (strength[upper] > 0) - 2 * outside - hidden -
                               oddness((range.max - range.min) / divisions) +
                               posture(sweep, degrees(run.start + run.step * place), range)});
        }
    const auto better = [](const Ends& l, const Ends& r) { return l.score > r.score; };
    std::stable_sort(all.begin(), all.end(), better);
    double best = -1e9;
    std::size_t asked = 0;
    for (; asked < all.size() && all[asked].score + long_lines > best - 4; ++asked) {
        Ends& ends = all[asked];
        ends.score += long_lines * long_lines_fit(run, ends.first, ends.divisions, short_length);
        best = std::max(best, ends.score);
    }
    all.resize(asked);
    std::stable_sort(all.begin(), all.end(), better);
    return all;
}

/// Which lines are the ends.
Scale with_ends(Seen seen, const DialRange& range) {
    const auto all = likely_ends(seen.run, range);
    Scale scale{seen.frame, std::move(seen.run)};
    scale.divisions = scale.run.span();
    if (all.empty()) return scale;
    scale.first = all[0].first;
    scale.divisions = all[0].divisions;
    scale.fit = all[0].score;
    scale.margin = all.size() > 1 ? all[0].score - all[1].score : 4;
    // Ends that explain little must not look sure only because the others explain less.
    scale.margin = std::max(0.0, std::min(scale.margin, all[0].score - 0.5));
    double in = 0;
    for (const Tick& t : scale.run.ticks)
        in += t.place >= scale.first && t.place <= scale.first + scale.divisions;
    scale.seen = in / (scale.divisions + 1);
    return scale;
}

/// Enough of a scale to be held against another one of the same dial.
bool stands(const Scale& scale) {
    return scale.seen > 0.6 && scale.run.score > 6 && scale.run.score > 0.35 * (scale.run.span() + 1);
}

/// Whether two scales of one dial would give different readings: their ends lie in other directions.
bool differ(const Scale& a, const Scale& b) {
    constexpr double much = 3 * pi / 180;
    const auto off = [&](double angle_a, double angle_b) {
        const cv::Point2d p = a.frame.to_plane(b.frame.to_image(1.0, angle_b));
        return std::abs(std::remainder(std::atan2(p.y, p.x) - angle_a, 2 * pi));
    };
    return off(a.angle_min(), b.angle_min()) > much ||
           off(a.angle_min() + a.sweep(), b.angle_min() + b.sweep()) > much;
}

/// How well the range suits the lines, whatever the sweep: a second scale may end anywhere.
double suits(const Scale& scale, const DialRange& range) {
    return scale.fit - posture(degrees(scale.sweep()), degrees(scale.angle_min()), range);
}

/// How unusual the divisions of a scale with this range are.
double oddness_of(const Scale& scale, const DialRange& range) {
    return oddness((range.max - range.min) / scale.divisions);
}

/// Whether the range would make divisions as people count them of a scale that is seen whole. Then it may be
/// this one's, however well it suits another: which has more lines in step with it says nothing of what is
/// written there.
bool could_have(const Scale& scale, const DialRange& range) {
    return oddness_of(scale, range) == 0 && scale.seen > 0.9 && suits(scale, range) > 0;
}

/// Whether both are seen in the same lines: one scale, found twice over.
bool same_lines(const Scale& a, const Scale& b) {
    int shared = 0;
    for (const Tick& t : b.run.ticks) {
        const cv::Point2d p = a.frame.to_plane(b.frame.to_image(0.5 * (t.inner + t.outer), t.angle));
        const double radius = std::hypot(p.x, p.y);
        const double angle = std::atan2(p.y, p.x);
        shared += std::any_of(a.run.ticks.begin(), a.run.ticks.end(), [&](const Tick& other) {
            return radius > other.inner && radius < other.outer &&
                   std::abs(std::remainder(angle - other.angle, 2 * pi)) < 0.2 * a.run.step;
        });
    }
    return shared > 0.6 * double(b.run.ticks.size());
}

}  // namespace

std::optional<Scale> find_scale(const cv::Mat& grey, const std::vector<Ring>& rings, const DialRange& range) {
    constexpr double innermost = 0.45;  // of the scale that shows best: nearer to the hub there is none
    // A run that misses next to nothing can't be bettered by another frame.
    const auto clear = [](const TickRun& run) { return run.score > 20 && run.score > 0.9 * run.span(); };
    std::vector<Seen> all;
    for (const DialFrame& frame : frames_of(rings)) {
        auto run = find_ticks(grey, frame, {0.6, 1.1});
        if (!run) continue;
        all.push_back({frame, std::move(*run)});
        if (clear(all.back().run)) break;
    }
    if (all.empty()) return std::nullopt;
    std::stable_sort(all.begin(), all.end(),
                     [](const Seen& l, const Seen& r) { return l.run.score > r.run.score; });
    // Other round things show as few lines as this; no frame will make a scale of them.
    if (all.front().run.score < 5) return with_ends(std::move(all.front()), range);
    std::vector<Scale> scales;
    for (std::size_t i = 0; i < all.size() && i < 3; ++i) {
        Seen seen = refined(grey, std::move(all[i]));
        const bool enough = clear(seen.run);
        scales.push_back(with_ends(std::move(seen), range));
        if (enough) break;
    }
    std::stable_sort(scales.begin(), scales.end(),
                     [](const Scale& l, const Scale& r) { return l.run.score > r.run.score; });
    // What shows best need not be the scale whose range is known: there may be another one further out or
    // further in, and the ribs of a guard or a pattern in the rim look like lines too. The ends tell: their
    // range, counted in divisions, and where the long lines stand.
    const Scale lead = scales.front();
    const bool explained = lead.fit > 5.5 && stands(lead);
    // Whether what was seen there were its own lines, of which the long ones reach further in or out.
    const auto look = [&](const TickSearch& where, const std::optional<TickSearch>& then) {
        auto run = find_ticks(grey, lead.frame, where);
        if (!run || run->score <= 6) return false;
        Seen seen{lead.frame, std::move(*run)};
        Scale scale = with_ends(then ? refined(grey, std::move(seen), *then) : std::move(seen), range);
        if (same_lines(lead, scale)) return true;
        scales.push_back(std::move(scale));
        return false;
    };
    look({explained ? 1.12 : 1.04, 1.6}, TickSearch{0.9, 1.06});
    std::vector<double> inner;
    for (const Tick& t : lead.run.ticks)
        inner.push_back(t.inner);
    // One inside a scale that explains everything will not be taken, only held against it.
    const auto refine = explained ? std::nullopt : std::optional(TickSearch{0.78, 1.02});
    if (look({innermost, std::min(0.95, quantile(inner, 0.5))}, refine)) {
        // Another scale may lie further in than even the longest of them.
        const double below = quantile(inner, 0.03) - 0.04;
        if (below > innermost + 0.1) look({innermost, below}, refine);
    }
    std::size_t best = 0;
    const auto radius = [](const Scale& s) { return s.frame.ellipse().mean_radius(); };
    // Of two that explain as much, the outer one: its range is the one that is known.
    const auto worth = [&](const Scale& s) {
        return s.fit + (radius(s) > 1.03 * radius(scales[best])   ? 1
                        : radius(s) < 0.97 * radius(scales[best]) ? -1
                                                                  : 0);
    };
    for (std::size_t i = 1; i < scales.size(); ++i) {
        if (!stands(scales[i])) continue;
        if (stands(scales[best]) && worth(scales[i]) <= scales[best].fit) continue;
        // Another ring in step with the lines, be it a second scale, says nothing new of the directions and
        // is the less exact of the two; but it may tell better that these are the ends.
        const bool echo = stands(scales[best]) && !differ(scales[best], scales[i]) &&
                          std::abs(radius(scales[i]) / radius(scales[best]) - 1) > 0.03;
        if (!echo) {
            best = i;
            continue;
        }
        scales[best].fit = scales[i].fit;
        scales[best].margin = std::max(scales[best].margin, scales[i].margin);
    }
    Scale scale = scales[best];
    for (const Scale& other : scales) {
        const double out = radius(other) / radius(scale);
        if (stands(other) && out > 1.15 && out < 2.2 &&
            (!scale.beyond || radius(other) > scale.beyond->ellipse().mean_radius()))
            scale.beyond = other.frame;
    }
    for (const Scale& other : scales) {
        if (!stands(other) || !differ(scale, other) || same_lines(scale, other)) continue;
        const double behind = suits(scale, range) - suits(other, range);
        scale.rival = std::max(scale.rival, std::clamp(1.5 - 0.5 * behind, 0.0, 1.0));
        // Divisions of 2.5 or 4 are rare enough to say that the range may be the other one's.
        if (could_have(other, range) || oddness_of(scale, range) > 0) scale.rival = 1;
    }
    return scale;
}

}  // namespace lapwing::vision
