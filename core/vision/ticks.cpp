// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/vision/ticks.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/vision/tick_lines.h"
#include "core/vision/tick_rule.h"

namespace lapwing::vision {
namespace {

constexpr double shortest_span = 150 * pi / 180;  // of an arc that can be a scale
constexpr double longest_span = 335 * pi / 180;
constexpr double longest_gap = 40 * pi / 180;  // hidden by glare, needle or numeral

/// Follows a scale from one line to the next: the step may change slowly, as tilt makes it.
class Follower {
public:
    explicit Follower(const std::vector<Peak>& peaks) : peaks_(peaks) {}

    /// From peak `first` on with this step; places count from 0 there. Way is 1 or -1.
    void follow(std::size_t first, double step, int way,
                std::vector<std::pair<std::size_t, int>>& found) const {
        double at = peaks_[first].angle;
        double gone = 0;
        int place = 0;
        int missed = 0;
        while (gone < 2 * pi - shortest_gap_) {
            const double reach = (missed + 1) * step;
            const double tolerance = std::min(0.22 + 0.04 * missed, 0.34) * step;
            const auto next = nearest(at + way * reach, tolerance);
            if (!next) {
                if (++missed * step > longest_gap) break;
                continue;
            }
            const double moved = std::abs(difference(peaks_[*next].angle, at));
            gone += moved;
            if (gone > 2 * pi - shortest_gap_) break;
            place += way * (missed + 1);
            step += 0.35 * (moved / (missed + 1) - step);
            at = peaks_[*next].angle;
            missed = 0;
            found.emplace_back(*next, place);
        }
    }

    /// Of two directions that lie in the same turn, give or take one.
    [[nodiscard]] static double difference(double a, double b) {
        const double off = a - b;
        return off > pi ? off - 2 * pi : off < -pi ? off + 2 * pi : off;
    }

private:
    [[nodiscard]] std::optional<std::size_t> nearest(double angle, double tolerance) const {
        angle = wrapped(angle);
        const auto right = std::lower_bound(peaks_.begin(), peaks_.end(), angle,
                                            [](const Peak& p, double a) { return p.angle < a; });
        const auto n = peaks_.size();
        const auto i = static_cast<std::size_t>(right - peaks_.begin());
        std::optional<std::size_t> best;
        for (const std::size_t k : {(i + n - 1) % n, i % n}) {
            const double off = std::abs(difference(peaks_[k].angle, angle));
            if (off <= tolerance) {
                tolerance = off;
                best = k;
            }
        }
        return best;
    }

    static constexpr double shortest_gap_ = 20 * pi / 180;  // between the scale's end and its beginning
    const std::vector<Peak>& peaks_;
};

/// The rule of the lines, without those that it does not explain.
void fit_rule(TickRun& run) {
    for (int round = 0; round < 3; ++round) {
        RuleFit(run.ticks).solve(run);
        std::vector<double> off;
        for (const Tick& t : run.ticks)
            off.push_back(std::abs(t.angle - run.angle_at(t.place)));
        run.spread = std::max(1.4826 * middle_of(off), 0.02 * pi / 180);
        const double limit = std::min(std::max(3.5 * run.spread, 0.05 * run.step), 0.25 * run.step);
        const auto before = run.ticks.size();
        std::erase_if(run.ticks,
                      [&](const Tick& t) { return std::abs(t.angle - run.angle_at(t.place)) > limit; });
        if (run.ticks.size() < 6 || run.ticks.size() == before) break;
    }
}

/// What speaks for a run: lines that stand where they should, weak ones less; and against it: empty places,
/// lines between, lines beyond, unevenness.
double judge(TickRun& run, const std::vector<Peak>& peaks) {
    std::vector<double> strength;
    for (const Tick& t : run.ticks)
        strength.push_back(t.strength);
    std::sort(strength.begin(), strength.end());
    const double strong = strength[strength.size() * 4 / 5];
    double hits = 0;
    for (const Tick& t : run.ticks)
        hits += std::min(1.0, t.strength / (0.45 * strong));
    const double first = run.ticks.front().angle;
    const double covered = run.ticks.back().angle - first;
    double between = 0;
    double beyond = 0;
    for (const Peak& p : peaks) {
        if (p.strength < 0.5 * strong) continue;
        const double along = wrapped(p.angle - first + 0.5 * run.step) - 0.5 * run.step;
        if (along > covered + 0.5 * run.step) {
            beyond += 1;
            continue;
        }
        const bool is_ours = std::any_of(run.ticks.begin(), run.ticks.end(), [&](const Tick& t) {
            return std::abs(t.angle - first - along) < 1e-6;
        });
        if (!is_ours) between += 1;
    }
    run.strays = static_cast<int>(between);
    const double misses = run.span() + 1 - double(run.ticks.size());
    const double even = std::exp(-std::pow(run.spread / (0.06 * run.step), 2));
    return std::max(0.0, hits - misses - 0.8 * between - 0.5 * beyond) * even *
           std::min(1.0, covered / (240 * pi / 180));
}

/// The best run among these lines, if it beats a score.
std::optional<TickRun> best_run(const std::vector<Peak>& peaks, double to_beat) {
    std::optional<TickRun> best;
    const std::size_t n = peaks.size();
    if (double(n) <= to_beat) return best;
    const Follower follower(peaks);
    std::vector<std::array<std::size_t, 3>> tried;
    std::vector<std::pair<std::size_t, int>> found;
    for (std::size_t i = 0; i < n; i += (n > 60 ? 5 : n > 30 ? 3 : 1))
        for (const std::size_t ahead : {std::size_t{1}, std::size_t{2}}) {
            const double step = wrapped(peaks[(i + ahead) % n].angle - peaks[i].angle);
            if (step < 1.1 * pi / 180 || step > 46 * pi / 180) continue;
            found.assign({{i, 0}});
            follower.follow(i, step, 1, found);
            follower.follow(i, step, -1, found);
            std::sort(found.begin(), found.end(), [](auto& l, auto& r) { return l.second < r.second; });
            const int places = found.back().second - found.front().second + 1;
            if (found.size() < 6 || 2.0 * double(found.size()) - places <= to_beat) continue;
            const std::array<std::size_t, 3> key{found.front().first, found.back().first, found.size()};
            if (std::find(tried.begin(), tried.end(), key) != tried.end()) continue;
            tried.push_back(key);

            TickRun run;
            double angle = peaks[found.front().first].angle;
            double last = angle;
            for (const auto& [peak, place] : found) {
                angle += Follower::difference(peaks[peak].angle, last);
                last = peaks[peak].angle;
                run.ticks.push_back({angle, 0, 0, peaks[peak].strength, place - found.front().second});
            }
            const double covered = run.ticks.back().angle - run.ticks.front().angle;
            if (covered < shortest_span || covered > longest_span) continue;
            fit_rule(run);
            if (run.ticks.size() < 6 || run.step <= 0) continue;
            run.score = judge(run, peaks);
            if (run.score > to_beat) {
                to_beat = run.score;
                best = run;
            }
        }
    return best;
}

/// How far each line reaches along its radius.
void measure_lengths(TickRun& run, LineLikeness& likeness, double way) {
    for (Tick& t : run.ticks) {
        const auto strength_at = [&](int row) {
            double most = 0;
            const int middle = static_cast<int>(std::lround(t.angle / column_width));
            for (int d = -2; d <= 2; ++d) {
                const int x = ((middle + d) % columns + columns) % columns;
                most = std::max(most, way * likeness.row(row)[x]);
            }
            return most;
        };
        const int seed =
            std::clamp(static_cast<int>(std::lround(run.radius * rows_per_radius)), 3, likeness.rows() - 4);
        const double here = (strength_at(seed - 1) + strength_at(seed) + strength_at(seed + 1)) / 3;
        const auto walk = [&](int step) {
            int row = seed;
            int weak = 0;
            int end = seed;
            while (row + step > 0 && row + step < likeness.rows() && weak < 2) {
                row += step;
                if (strength_at(row) > 0.45 * here) {
                    end = row;
                    weak = 0;
                } else {
                    ++weak;
                }
            }
            return (end + 0.5 * step) / rows_per_radius;
        };
        t.outer = walk(1);
        t.inner = walk(-1);
    }
}

}  // namespace

double TickRun::angle_at(double place) const {
    // The harmonics belong to the angle in the frame, which is what is asked for: two steps are plenty.
    const double even = start + step * place;
    double angle = even;
    for (int i = 0; i < 3; ++i)
        angle = even + shift.y * std::cos(angle) - shift.x * std::sin(angle) + cos2 * std::cos(2 * angle) +
                sin2 * std::sin(2 * angle);
    return angle;
}

std::optional<TickRun> find_ticks(const cv::Mat& grey, const DialFrame& frame, const TickSearch& search) {
    const double radius_max = search.radius_max + 0.12;
    const int rows = static_cast<int>(radius_max * rows_per_radius) + 1;
    // Bands in the order of how much they show, so that most of the others need no look.
    struct Band {
        double way = 1;
        int top = 0;
        std::vector<float> profile;
        double energy = 0;
    };
    constexpr int height = 4;
    const int first = static_cast<int>(search.radius_min * rows_per_radius);
    const int last = static_cast<int>(search.radius_max * rows_per_radius);
    LineLikeness likeness(grey, frame, rows, first);
    std::vector<Band> bands;
    for (const double way : {1.0, -1.0})
        for (int top = first; top + height <= last; top += 3) {
            Band band{way, top, std::vector<float>(columns, 0.0F), 0};
            for (int y = top; y < top + height; ++y) {
                const float* row = likeness.row(y);
                for (int x = 0; x < columns; ++x)
                    band.profile[static_cast<std::size_t>(x)] += static_cast<float>(way / height) * row[x];
            }
            for (const float value : band.profile)
                band.energy += std::sqrt(std::max(0.0F, value));
            bands.push_back(std::move(band));
        }
    // Where a band holds no lines its profile is noise; most frames have such bands.
    std::vector<double> unrest;
    for (const Band& band : bands) {
        std::vector<double> size;
        for (std::size_t x = 0; x < band.profile.size(); x += 4)
            size.push_back(std::abs(band.profile[x]));
        unrest.push_back(middle_of(std::move(size)));
    }
    std::sort(unrest.begin(), unrest.end());
    const double least = std::max(1.0, 3.0 * 1.4826 * unrest[unrest.size() / 5]);
    std::sort(bands.begin(), bands.end(), [](const Band& l, const Band& r) { return l.energy > r.energy; });

    std::optional<TickRun> best;
    double best_way = 0;
    for (const Band& band : bands) {
        auto peaks = peaks_of(band.profile, least);
        if (peaks.size() < 6) continue;
        // Beside each line its own contrast makes a weaker one of the other kind; those are no scale.
        std::vector<float> other(columns);
        std::transform(band.profile.begin(), band.profile.end(), other.begin(),
                       [](float v) { return std::max(0.0F, -v); });
        const double weak =
            std::min(1.0, typical_strength(peaks) / std::max(1e-9, typical_strength(peaks_of(other, least))));
        even_out(peaks);
        const double to_beat = best ? best->score : 3.0;
        auto run = best_run(peaks, to_beat / (weak * weak));
        if (!run) continue;
        run->score *= weak * weak;
        best = std::move(run);
        best->radius = (band.top + 0.5 * (height - 1)) / rows_per_radius;
        best_way = band.way;
    }
    if (!best) return best;
    measure_lengths(*best, likeness, best_way);
    std::vector<double> strength;
    for (const Tick& t : best->ticks)
        strength.push_back(t.strength);
    const double typical = middle_of(strength);
    for (Tick& t : best->ticks)
        t.strength /= typical;
    return best;
}

}  // namespace lapwing::vision
