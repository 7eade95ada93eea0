// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/scale.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwing::vision {
namespace {

double middle_of(std::vector<double> values) {
    const auto place = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), place, values.end());
    return *place;
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
Seen refined(const cv::Mat& grey, Seen seen) {
    const auto worth = [](const TickRun& run) {
        return run.score * std::exp(-std::hypot(run.shift.x, run.shift.y) / 0.02);
    };
    Seen best = seen;
    for (int round = 0; round < 4; ++round) {
        const auto frame = drawn_through(seen.run, seen.frame);
        if (!frame) break;
        auto run = find_ticks(grey, *frame, {0.78, 1.06});
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
double long_lines_fit(const TickRun& run, int first, int divisions, double middle_length) {
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
            const bool is_long = t.outer - t.inner > 1.2 * middle_length;
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

double score_of(const TickRun& run, int first, int divisions, const DialRange& range, double middle_length) {
    const double sweep = degrees(run.step * divisions);
    const double start = degrees(run.start + run.step * first);
    double score = -oddness((range.max - range.min) / divisions);
    for (const Tick& t : run.ticks)
        if (t.place < first || t.place > first + divisions) score -= 2.0 * std::min(1.0, t.strength);
    const auto seen = [&](int place) {
        return std::any_of(run.ticks.begin(), run.ticks.end(),
                           [&](const Tick& t) { return t.place == place; });
    };
    const int last = run.ticks.back().place;
    score -= 0.5 * std::max(0, run.ticks.front().place - first);
    score -= 0.5 * std::max(0, first + divisions - last);
    if (seen(first)) score += 1;
    if (seen(first + divisions)) score += 1;
    score += 4 * long_lines_fit(run, first, divisions, middle_length);
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

/// Which lines are the ends.
Scale with_ends(const Seen& seen, const DialRange& range) {
    const TickRun& run = seen.run;
    std::vector<double> lengths;
    for (const Tick& t : run.ticks)
        lengths.push_back(t.outer - t.inner);
    const double middle_length = middle_of(std::move(lengths));

    const int span = run.span();
    const int reach = std::max(3, std::min(12, span / 4));
    std::vector<Ends> all;
    for (int first = -reach; first <= reach; ++first)
        for (int last = span - reach; last <= span + reach; ++last) {
            const int divisions = last - first;
            const double sweep = degrees(run.step * divisions);
            if (divisions < 4 || sweep < 85 || sweep > 345) continue;
            all.push_back({first, divisions, score_of(run, first, divisions, range, middle_length)});
        }
    Scale scale{seen.frame, run, 0, span, 0, 0, 0};
    if (all.empty()) return scale;
    std::stable_sort(all.begin(), all.end(), [](const Ends& l, const Ends& r) { return l.score > r.score; });
    scale.first = all[0].first;
    scale.divisions = all[0].divisions;
    scale.fit = all[0].score;
    scale.margin = all.size() > 1 ? all[0].score - all[1].score : 10;
    // Ends that explain little must not look sure only because the others explain less.
    scale.margin = std::max(0.0, std::min(scale.margin, all[0].score + 4));
    double in = 0;
    for (const Tick& t : run.ticks)
        in += t.place >= scale.first && t.place <= scale.first + scale.divisions;
    scale.seen = in / (scale.divisions + 1);
    return scale;
}

}  // namespace

std::optional<Scale> find_scale(const cv::Mat& grey, const std::vector<Ring>& rings, const DialRange& range) {
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
    std::optional<Seen> best;
    for (std::size_t i = 0; i < all.size() && i < 3; ++i) {
        Seen seen = refined(grey, std::move(all[i]));
        if (!best || seen.run.score > best->run.score) best = std::move(seen);
        if (clear(best->run)) break;
    }
    Scale scale = with_ends(*best, range);
    // A second scale further in shows up as well as the outer one, whose range is the one that is known.
    if (auto outside = find_ticks(grey, best->frame, {1.12, 1.6});
        outside && outside->score > 0.4 * best->run.score) {
        const Scale outer = with_ends(refined(grey, {best->frame, std::move(*outside)}), range);
        if (outer.run.score > 0.4 * scale.run.score && outer.fit > scale.fit - 3 && outer.seen > 0.6)
            scale = outer;
    }
    return scale;
}

}  // namespace lapwing::vision
