// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/odds/engine_model.h"

/// A cylinder's evidence for a proposed move, no further than there is hope for it. What is not worked out
/// yet counts with the most that it can be worth.
namespace lapwing::odds {
namespace {

/// Of log_normal(read - p, noise(p)) for any prediction p, where noise(p) is the root of `least` squared and
/// of a share `slope` of p squared. Below what was read the noise falls by no more than the slope: with x
/// noises from it the density is under that at x = 0 by x^2 / 2 and over it by -ln(1 - slope x), in sum at
/// most slope^2.
double most_of_normal(double read, double least, double slope) {
    constexpr double steepest = 0.1;
    constexpr double far = 10.0;  // where x^2 / 2 outweighs any noise that is left
    const double noise = std::hypot(least, slope * read);
    if (!(least > 0.0 && slope <= steepest && std::log(noise / least) < far))
        return std::numeric_limits<double>::infinity();
    return slope * slope - std::log(noise);
}

}  // namespace

double EngineModel::Thresholds::most(std::size_t word) const {
    double chance = 1.0;
    if (word > 0 && word < odds.size()) {
        // Half way between two thresholds.
        const double apart = std::sqrt(odds[word] / odds[word - 1]);
        chance = std::max(0.0, (apart - 1.0) / (apart + 1.0));
    }
    return (1.0 - slip) * chance + 0.25 * slip;
}

double EngineModel::most_of(const CrankEvidence& read) const {
    // A needle that never left its stop is worth a chance, at most 1.
    double out = 0.0;
    if (read.final_pa > read.noise_pa)
        out += most_of_normal(read.final_pa, std::hypot(read.noise_pa, read.apart_pa),
                              std::hypot(scatter_ / std::sqrt(read.repeats), surface_error_));
    if (read.first_pa && *read.first_pa > read.noise_pa)
        out += most_of_normal(*read.first_pa, read.noise_pa, first_spread_);
    return out;
}

EngineModel::Most EngineModel::most_of(const StateReadings& read) const {
    Most out;
    if (!surfaces_.empty() && read.dry) out.dry = most_of(*read.dry);
    if (!surfaces_.empty() && read.wet) out.wet = most_of(*read.wet);
    out.exits_left.assign(read.exits.size() + 1, 1.0);
    for (std::size_t i = read.exits.size(); i-- > 0;)
        out.exits_left[i] =
            out.exits_left[i + 1] * thresholds_[static_cast<std::size_t>(read.exits[i].by)].most(
                                        static_cast<std::size_t>(read.exits[i].loudness));
    out.exits = std::log(out.exits_left.front());
    out.all = out.dry + out.wet + out.exits;
    for (const LeakEvidence& leak : read.leaks)
        if (leak.held_pa < leak.set_pa - leak.half_step_pa)
            out.all +=
                leak.noise_pa > 0.0 ? -std::log(leak.noise_pa) : std::numeric_limits<double>::infinity();
    return out;
}

std::optional<double> EngineModel::cylinder_likelihood(std::span<const double> z, std::span<const double> m2,
                                                       const SharedState& at, std::size_t cylinder,
                                                       Fate& fate, double others, bool exits_first) const {
    const CylinderEvidence& read = evidence_.cylinders[cylinder];
    const Cylinder& own = cylinders_[cylinder];
    const auto& most = most_[cylinder];
    double out = 0.0;
    for (std::size_t i = 1; i < most.size(); ++i)
        others += most[i].all;
    for (std::size_t i = 0; i < most.size(); ++i) {
        const State& state = i == 0 ? own : own.earlier[i - 1];
        const StateReadings& then = i == 0 ? static_cast<const StateReadings&>(read) : read.earlier[i - 1];
        if (i > 0) others -= most[i].all;
        const auto likelihood =
            hopeful_likelihood(z, at, state, then, most[i], leaks_of(m2, state), fate, others, exits_first);
        if (!likelihood) return std::nullopt;
        others += *likelihood;
        out = i == 0 ? *likelihood : out + *likelihood;
    }
    return out;
}

std::optional<double> EngineModel::hopeful_likelihood(std::span<const double> z, const SharedState& at,
                                                      const State& state, const StateReadings& read,
                                                      const Most& most, const Leaks& leaks, Fate& fate,
                                                      double others, bool exits_first) const {
    std::array<double, 4> held_logs{};
    if (read.leaks.size() > held_logs.size()) return state_likelihood(z, at, state, read, leaks);
    double dry = most.dry;
    double wet = most.wet;
    double exits = most.exits;
    LastLog logarithm;
    for (std::size_t i = 0; i < read.leaks.size(); ++i) {
        held_logs[i] = likelihood_held(held(z, at, state, leaks, read.leaks[i], logarithm), read.leaks[i]);
        others += held_logs[i];
    }
    if (!read.leaks.empty() && fate.hopeless(others + dry + wet + exits)) return std::nullopt;
    const auto cranking_leaves_hope = [&] {
        if (surfaces_.empty() || !(read.dry || read.wet)) return true;
        const double level_now = level(z, at, state);
        if (read.dry) {
            dry = likelihood_cranking(reading(z, at, state, leaks, *read.dry, level_now), at, *read.dry);
            if (fate.hopeless(others + dry + wet + exits)) return false;
        }
        if (!read.wet) return true;
        wet = likelihood_cranking(reading(z, at, state, leaks, *read.wet, level_now), at, *read.wet);
        return !fate.hopeless(others + dry + wet + exits);
    };
    const auto exits_leave_hope = [&] {
        if (read.exits.empty()) return true;
        const double rest = others + dry + wet;
        double least = fate.least_factor(rest);
        double chance = 1.0;  // a slip keeps every factor well above nothing
        const ExitEvidence* last = nullptr;
        Heard common;
        for (std::size_t i = 0; i < read.exits.size(); ++i) {
            const ExitEvidence& exit = read.exits[i];
            if (!last || last->curve != exit.curve || last->seal != exit.seal)
                common = heard(z, at, state, leaks, exit, logarithm);
            last = &exit;
            chance *= thresholds_[static_cast<std::size_t>(exit.by)].chance(
                odds_heard(at, state, leaks, exit, common), static_cast<std::size_t>(exit.loudness));
            const double at_most = chance * most.exits_left[i + 1];
            if (at_most < least && fate.hopeless_below(at_most, rest, least)) return false;
        }
        exits = std::log(chance);
        return true;
    };
    if (exits_first ? !(exits_leave_hope() && cranking_leaves_hope())
                    : !(cranking_leaves_hope() && exits_leave_hope()))
        return std::nullopt;
    // Summed up in the order of state_likelihood: to the last bit the same.
    double out = 0.0;
    if (!surfaces_.empty() && read.dry) out += dry;
    if (!surfaces_.empty() && read.wet) out += wet;
    for (std::size_t i = 0; i < read.leaks.size(); ++i)
        out += held_logs[i];
    return read.exits.empty() ? out : out + exits;
}

}  // namespace lapwing::odds
