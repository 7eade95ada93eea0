// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/odds/chain.h"

/// What is kept through a move that divides a leak anew. A wet reading, by what the oil did: how well it
/// sealed the rings, or how much of it stayed in the chamber. The leak in all of a cylinder's other states,
/// by what was touched between them.
namespace lapwing::odds {

Chain::Wet Chain::wet(std::size_t cylinder) const {
    const auto& read = model_.evidence().cylinders[cylinder].wet;
    if (!read) return {};
    const auto all = leaks(cylinder);
    const auto& own = model_.cylinders()[cylinder];
    LeftOpen& open = left_open_[cylinder];
    if (open.z != z_[own.oil_seals]) open = {z_[own.oil_seals], model_.left_open(z_, own, read->seal)};
    const double less = all.cranking_rings_m2 * (1.0 - open.share);
    return {less, all.cranking_m2 - less, all.cranking_rings_m2};
}

Chain::Kept Chain::kept(std::size_t cylinder) const {
    Kept out{wet(cylinder), {}};
    const auto& own = model_.cylinders()[cylinder];
    if (own.earlier.empty()) return out;
    out.sums[0] = sum(own);
    for (std::size_t i = 0; i < own.earlier.size(); ++i)
        out.sums[i + 1] = sum(own.earlier[i]);
    return out;
}

Chain::Amount Chain::sum(const EngineModel::State& state) const {
    Amount out;
    for (const PathPlace& path : state.all) {
        out.standing += m2_[path.area];
        out.cranking += m2_[path.cranking];
    }
    return out;
}

std::optional<double> Chain::keep(std::size_t cylinder, const Kept& before, bool wet_is_kept) {
    double log_prior = 0.0;
    const auto& own = model_.cylinders()[cylinder];
    if (!own.earlier.empty() && uniform() < 0.5) {
        // The newest first: what makes up in one state is a part of older ones.
        for (std::size_t i = 0; i <= own.earlier.size(); ++i) {
            const auto more = keep_sum(i == 0 ? own : own.earlier[i - 1], before.sums[i]);
            if (!more) return std::nullopt;
            log_prior += *more;
        }
    }
    if (wet_is_kept) return log_prior;
    const auto oil = keep_wet(cylinder, before.wet);
    return oil ? std::optional(log_prior + *oil) : std::nullopt;
}

/// A part that another state does not have makes up for what the others pass more or less. A shear: by m2 it
/// keeps volume.
std::optional<double> Chain::keep_sum(const EngineModel::State& state, const Amount& before) {
    const Amount now = sum(state);
    const Amount more{before.standing - now.standing, before.cranking - now.cranking};
    constexpr double rounding = 1e-9;
    if (state.apart.empty() || (std::abs(more.standing) <= rounding * before.standing &&
                                std::abs(more.cranking) <= rounding * before.cranking))
        return 0.0;
    const PathPlace& part = state.apart[one_of(state.apart.size())];
    const Weighed old = weigh_now(part);
    const Weighed made_up =
        weigh(part, {old.amount.standing + more.standing, old.amount.cranking + more.cranking});
    if (!old.possible || !made_up.possible) return std::nullopt;
    put(part, made_up);
    return made_up.both() - old.both();
}

std::optional<double> Chain::keep_wet(std::size_t cylinder, const Wet& before) {
    const auto& read = model_.evidence().cylinders[cylinder].wet;
    if (!read) return 0.0;
    const auto& own = model_.cylinders()[cylinder];
    const double old_seals = z_[own.oil_seals];
    if (read->seal == 1.0 && uniform() < 0.4) {
        const double rings = wet(cylinder).rings;
        const double left = 1.0 - before.less / rings;
        if (!(left > 0.0 && left < 1.0)) return std::nullopt;
        const double z = model_.z_of_fresh_oil(left);
        const double old_slope = before.rings * model_.fresh_oil_leaves(old_seals).slope;
        const double slope = rings * model_.fresh_oil_leaves(z).slope;
        set(own.oil_seals, z);
        return std::log(old_slope / slope) - 0.5 * (z * z - old_seals * old_seals);
    }
    if (uniform() < 0.5) set(own.oil_seals, normal());
    const double put_in = read->oil_put_in_m3;
    const auto reads = [&](const CrankSurface::Slice::AlongOil& line, const EngineModel::Share& kept) {
        auto point = line.at(put_in * kept.value);
        point.slope *= put_in * kept.slope;
        return point;
    };
    const double old_kept = z_[own.oil_kept];
    const CrankSurface::Slice& slice = shared_.slices[read->hose];
    BeforeOil& known = before_oil_[cylinder];
    if (known.leak_m2 != before.leak || known.slice_at != shared_.slice_at)
        known = {before.leak, shared_.slice_at, slice.along_oil(before.leak)};
    const auto kept_before = model_.oil_kept(old_kept);
    const auto old = reads(known.line, kept_before);
    const auto line = slice.along_oil(wet(cylinder).leak);
    double low = least_kept_z;
    double high = most_kept_z;
    if (!(old.slope > 0.0 && reads(line, least_kept_).value < old.value &&
          reads(line, most_kept_).value > old.value))
        return std::nullopt;
    double z = std::clamp(old_kept, low, high);
    auto now = reads(line, z == old_kept ? kept_before : model_.oil_kept(z));
    for (int turn = 0; turn < 60; ++turn) {
        (now.value > old.value ? high : low) = z;
        double next = now.slope > 0.0 ? z - (now.value - old.value) / now.slope : low;
        if (!(next > low && next < high)) next = 0.5 * (low + high);
        const bool close = std::abs(next - z) < 1e-9;
        z = next;
        now = reads(line, model_.oil_kept(z));
        if (close) break;
    }
    if (!(now.slope > 0.0)) return std::nullopt;
    set(own.oil_kept, z);
    return std::log(old.slope / now.slope) - 0.5 * (z * z - old_kept * old_kept);
}

}  // namespace lapwing::odds
