// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/engine_model.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace lapwing::odds {
namespace {

double logit(double share) {
    return std::log(share / (1.0 - share));
}
double logistic(double x) {
    return 1.0 / (1.0 + std::exp(-x));
}
double log_below(double z) {
    return std::log(std::max(0.5 * std::erfc(-z / 1.4142135623730951), 1e-300));
}
/// Log density of a normal number, without its constant.
double log_normal(double off, double spread) {
    const double z = off / spread;
    return -0.5 * z * z - std::log(spread);
}

}  // namespace

EngineModel::EngineModel(const Evidence& evidence, const Assumptions& assumptions,
                         std::vector<const CrankSurface*> surfaces)
    : evidence_(evidence), assumptions_(assumptions), surfaces_(std::move(surfaces)) {
    const auto& at = assumptions;
    static_to_cranking_ = at.at("static-to-cranking");
    level_doubt_ = at.at(evidence.compare_only ? "compare-only-doubt" : "level-doubt");
    cylinder_doubt_ = at.at("cylinder-doubt");
    scatter_ = at.at("reading-scatter");
    first_scatter_ = at.at("first-scatter");
    surface_error_ = at.at("surface-error");
    first_spread_ = std::hypot(first_scatter_, surface_error_);
    leak_repeat_ = at.at("leak-repeat");
    listener_ = at.at("listener");
    hearing_ = at.at("hearing");
    cross_talk_ = at.at("cross-talk");
    masking_ = at.at("masking");
    masking_from_ = at.at("masking-from");
    kept_mean_ = logit(at.at("oil-kept"));
    kept_spread_ = at.at("oil-kept-spread");
    seals_mean_ = logit(at.at("oil-seals"));
    seals_spread_ = at.at("oil-seals-spread");
    constexpr std::array methods{"ear", "hose", "soapy-water", "bubbles", "hand"};  // as ListenedBy
    constexpr double litres_a_minute = 60e3;
    for (std::size_t method = 0; method < methods.size(); ++method) {
        const std::string name(methods[method]);
        auto& thresholds = thresholds_[method];
        thresholds.by_ear = name != "soapy-water" && name != "bubbles";
        thresholds.slip = at.at(thresholds.by_ear ? "slip" : "slip-seen");
        constexpr std::array levels{"-faint", "-clear", "-strong"};
        for (std::size_t word = 0; word < levels.size(); ++word)
            thresholds.odds[word] = std::pow(at.at(name + levels[word]) * litres_a_minute, 1.0 / hearing_);
    }
    gauge_errors_ = {gauge_offset, leak_offset - gauge_offset, shared_count};
    leak_errors_ = {leak_offset, listener - leak_offset, gauge_errors_.end(evidence.gauges)};
    size_ = shared_end_ = leak_errors_.end(evidence.leak_testers.size());
    for (const LeakCurve& curve : evidence.curves)
        curves_.emplace_back(curve);
    for (const CylinderEvidence& from : evidence.cylinders) {
        Cylinder cylinder;
        cylinder.cylinder = cylinders_.size();
        cylinder.first = size_;
        for (std::size_t i = 0; i < from.paths.size(); ++i)
            cylinder.own.push_back(
                add_path(area_prior(at, from.paths[i], evidence.bore_m, from.fault_odds[i])));
        cylinder.level = size_++;
        cylinder.oil_kept = size_++;
        cylinder.oil_seals = size_++;
        cylinder.all = cylinder.own;
        add_earlier(from, cylinder);
        cylinder.last = size_;
        cylinders_.push_back(std::move(cylinder));
    }
    const AreaPrior joint = area_prior(at, findings::Path::next_cylinder, evidence.bore_m);
    for (const auto& sides : evidence.joints) {
        joints_.push_back(add_path(joint));
        for (const std::size_t side : {sides.first, sides.second}) {
            cylinders_[side].all.push_back(joints_.back());
            for (State& state : cylinders_[side].earlier)
                state.all.push_back(joints_.back());
        }
    }
    for (const CylinderEvidence& from : evidence.cylinders) {
        most_.push_back({most_of(from)});
        for (const EarlierState& then : from.earlier)
            most_.back().push_back(most_of(then));
        most_likely_.push_back(0.0);
        for (const Most& most : most_.back())
            most_likely_.back() += most.all;
    }
    if (!cylinders_.empty())
        for (const PathPlace& path : cylinders_.front().all)
            sound_leak_m2_ += std::exp(prior(path).sound_mean);
}

std::size_t EngineModel::add_map(const AreaPrior& wanted) {
    const auto known = std::ranges::find(priors_, wanted);
    const auto place = static_cast<std::size_t>(known - priors_.begin());
    if (known == priors_.end()) {
        priors_.push_back(wanted);
        maps_.emplace_back(wanted);
    }
    return place;
}

PathPlace EngineModel::add_path(const AreaPrior& prior) {
    PathPlace out;
    out.area = size_++;
    out.cranking = size_++;
    out.map = add_map(prior);
    return out;
}

/// A part that was touched is another one, and nothing ties the two but what all parts have in common.
void EngineModel::add_earlier(const CylinderEvidence& from, Cylinder& cylinder) {
    for (std::size_t i = 0; i < from.earlier.size(); ++i) {
        const EarlierState& read = from.earlier[i];
        State state = i == 0 ? static_cast<const State&>(cylinder) : cylinder.earlier.back();
        state.apart.clear();
        for (std::size_t path = 0; path < read.same.size(); ++path) {
            if (read.same[path]) continue;
            if (i == 0) cylinder.apart.push_back(cylinder.all[path]);
            state.all[path] =
                add_path(area_prior(assumptions_, from.paths[path], evidence_.bore_m, read.fault_odds[path]));
            state.apart.push_back(state.all[path]);
        }
        if (read.wet) state.oil_kept = size_++;
        if (!read.same.front()) state.oil_seals = size_++;
        cylinder.earlier.push_back(std::move(state));
    }
}

bool EngineModel::slice_is_of(std::span<const double> z, const SharedState& at) const {
    return at.slice_at == CrankDoubts{z[Shared::ratio], z[closing], z[heat], z[speed]};
}

void EngineModel::shared(std::span<const double> z, SharedState& out) const {
    if (!surfaces_.empty() && !slice_is_of(z, out)) {
        out.slice_at = {z[Shared::ratio], z[closing], z[heat], z[speed]};
        out.slices.resize(surfaces_.size());
        for (std::size_t i = 0; i < surfaces_.size(); ++i)
            surfaces_[i]->slice(*out.slice_at, out.slices[i]);
    }
    out.level = std::exp(level_doubt_ * z[Shared::level]);
    out.gauges.resize(evidence_.gauges);
    for (std::size_t i = 0; i < out.gauges.size(); ++i) {
        const std::size_t at = gauge_errors_.of(i);
        out.gauges[i] = {z[at], z[at + 1]};
    }
    out.leak_testers.resize(evidence_.leak_testers.size());
    for (std::size_t i = 0; i < out.leak_testers.size(); ++i) {
        const LeakTester& tester = evidence_.leak_testers[i];
        const std::size_t at = leak_errors_.of(i);
        out.leak_testers[i] = {z[at], z[at + 1], z[at + 2], tester.restrictor_doubt * z[at + 3],
                               tester.air_doubt * z[at + 3]};
    }
    out.listener = listener_ * z[listener];
}

double EngineModel::engine_likelihood(const SharedState& at) const {
    double out = 0.0;
    if (surfaces_.empty() || evidence_.levels.empty()) return out;
    const double sound = at.slices.front().final_pa(sound_leak_m2_, 0.0) * at.level;
    for (const LevelEvidence& known : evidence_.levels)
        out += log_normal(std::log(known.final_pa / std::max(sound, 1.0)), known.spread);
    return out;
}

EngineModel::Leaks EngineModel::leaks(std::span<const double> z, const State& state) const {
    Leaks out;
    const auto& paths = state.all;
    for (std::size_t i = 0; i < paths.size(); ++i) {
        const double area = std::exp(log_area(z, paths[i]));
        const double cranking = area * std::exp(static_to_cranking_ * z[paths[i].cranking]);
        out.path_m2[i] = area;
        out.standing_m2 += area;
        out.cranking_m2 += cranking;
        if (i == 0) {
            out.rings_m2 = area;
            out.cranking_rings_m2 = cranking;
        }
    }
    return out;
}

EngineModel::Leaks EngineModel::leaks_of(std::span<const double> m2, const State& state) {
    Leaks out;
    const auto& paths = state.all;
    for (std::size_t i = 0; i < paths.size(); ++i) {
        out.path_m2[i] = m2[paths[i].area];
        out.standing_m2 += m2[paths[i].area];
        out.cranking_m2 += m2[paths[i].cranking];
    }
    out.rings_m2 = m2[paths[0].area];
    out.cranking_rings_m2 = m2[paths[0].cranking];
    return out;
}

double EngineModel::left_open(std::span<const double> z, const State& state, OilSeal seal) const {
    if (seal == 0.0) return 1.0;
    const double fresh = logistic(seals_mean_ + seals_spread_ * z[state.oil_seals]);
    return seal == 1.0 ? fresh : std::pow(fresh, seal);
}

EngineModel::Share EngineModel::oil_kept(double z) const {
    const double share = logistic(kept_mean_ + kept_spread_ * z);
    return {share, kept_spread_ * share * (1.0 - share)};
}

EngineModel::Share EngineModel::fresh_oil_leaves(double z) const {
    const double share = logistic(seals_mean_ + seals_spread_ * z);
    return {share, seals_spread_ * share * (1.0 - share)};
}

double EngineModel::z_of_fresh_oil(double share) const {
    return (logit(share) - seals_mean_) / seals_spread_;
}

double EngineModel::level(std::span<const double> z, const SharedState& at, const State& state) const {
    return at.level * std::exp(cylinder_doubt_ * z[state.level]);
}

CrankSurface::Pair EngineModel::reading(std::span<const double> z, const SharedState& at, const State& state,
                                        const Leaks& leaks, const CrankEvidence& like, double level) const {
    const double leak = leaks.cranking_m2 - leaks.cranking_rings_m2 * (1.0 - left_open(z, state, like.seal));
    const double oil = like.oil_put_in_m3 > 0.0
                           ? like.oil_put_in_m3 * logistic(kept_mean_ + kept_spread_ * z[state.oil_kept])
                           : 0.0;
    const auto& gauge = at.gauges[like.gauge];
    const double shown = level * (1.0 + like.gain * gauge.gain);
    const double offset = like.offset_pa * gauge.offset;
    const auto pair = through_hoses(at, like, leak, oil);
    return {like.first_pa ? pair.first_pa * shown + offset : 0.0, pair.final_pa * shown + offset};
}

CrankSurface::Pair EngineModel::through_hoses(const SharedState& at, const CrankEvidence& like,
                                              double leak_m2, double oil_m3) {
    const auto through = [&](std::size_t hose) {
        const auto& slice = at.slices[hose];
        return like.first_pa ? slice.at(leak_m2, oil_m3)
                             : CrankSurface::Pair{0.0, slice.final_pa(leak_m2, oil_m3)};
    };
    CrankSurface::Pair out = through(like.hose);
    if (like.other_hoses.empty()) return out;
    const CrankSurface::Pair own = out;
    for (const auto& [hose, share] : like.other_hoses) {
        const CrankSurface::Pair other = through(hose);
        out.first_pa += share * (other.first_pa - own.first_pa);
        out.final_pa += share * (other.final_pa - own.final_pa);
    }
    return out;
}

double EngineModel::crank_noise_pa(double final_pa, const CrankEvidence& like) const {
    const double scatter = scatter_ * final_pa;
    const double surface = surface_error_ * final_pa;
    return std::sqrt(like.noise_pa * like.noise_pa + like.apart_pa * like.apart_pa +
                     scatter * scatter / like.repeats + surface * surface);
}

double EngineModel::cylinder_spread(const CrankEvidence& like) const {
    return std::hypot(cylinder_doubt_, crank_noise_pa(like.final_pa, like) / std::max(like.final_pa, 1.0));
}

double EngineModel::likelihood_cranking(const CrankSurface::Pair& predicted, const SharedState&,
                                        const CrankEvidence& read) const {
    const double noise = crank_noise_pa(predicted.final_pa, read);
    // A needle that never left its stop says no more than that.
    double out = read.final_pa <= read.noise_pa ? log_below(-predicted.final_pa / noise)
                                                : log_normal(read.final_pa - predicted.final_pa, noise);
    if (read.first_pa) {
        const double first_noise = std::hypot(read.noise_pa, first_spread_ * predicted.first_pa);
        out += *read.first_pa <= read.noise_pa ? log_below(-predicted.first_pa / first_noise)
                                               : log_normal(*read.first_pa - predicted.first_pa, first_noise);
    }
    return out;
}

EngineModel::Held EngineModel::held(std::span<const double> z, const SharedState& at, const State& state,
                                    const Leaks& leaks, const LeakEvidence& like, LastLog& logarithm) const {
    const HeldCurve& curve = curves_[like.curve];
    const double leak = leaks.standing_m2 - leaks.rings_m2 * (1.0 - left_open(z, state, like.seal));
    const auto& tester = at.leak_testers[evidence_.curves[like.curve].tester];
    const auto point = curve.at(logarithm(leak) - curve.log_restrictor() - tester.log_restrictor);
    const double held = point.held_share * like.set_pa;
    Held out;
    if (like.one_gauge) {
        // The gain of one gauge cancels, its offset in part; droop grows with the flow.
        out.shown_pa = held * (1.0 + like.set_spread * tester.set * (1.0 - point.held_share)) +
                       like.offset_pa * tester.offset * (1.0 - point.held_share);
    } else {
        out.shown_pa = held * (1.0 + like.set_spread * tester.set + like.gain * tester.gain) +
                       like.offset_pa * tester.offset;
    }
    const double settle = point.slope * like.set_pa * leak_repeat_;
    out.noise_pa = std::sqrt(like.noise_pa * like.noise_pa + settle * settle / like.repeats);
    return out;
}

double EngineModel::likelihood_held(const Held& predicted, const LeakEvidence& read) const {
    const double full = read.set_pa - read.half_step_pa;
    if (read.held_pa >= full) return log_below((predicted.shown_pa - full) / predicted.noise_pa);
    return log_normal(read.held_pa - predicted.shown_pa, predicted.noise_pa);
}

EngineModel::Heard EngineModel::heard(std::span<const double> z, const SharedState& at, const State& state,
                                      const Leaks& leaks, const ExitEvidence& exit,
                                      LastLog& logarithm) const {
    Heard out;
    out.open = left_open(z, state, exit.seal);
    out.leak_m2 = leaks.standing_m2 - leaks.rings_m2 * (1.0 - out.open);
    const HeldCurve& curve = curves_[exit.curve];
    const auto& tester = at.leak_testers[evidence_.curves[exit.curve].tester];
    out.point = curve.at(logarithm(out.leak_m2) - curve.log_restrictor() - tester.log_restrictor);
    out.point.log_flow += tester.log_air;
    out.loudest_m2 = leaks.path_m2[0] * out.open;
    for (std::size_t i = 1; i < state.all.size(); ++i)
        out.loudest_m2 = std::max(out.loudest_m2, leaks.path_m2[i]);
    return out;
}

std::array<double, 4> EngineModel::loudness(std::span<const double> z, const SharedState& at,
                                            const State& state, const Leaks& leaks,
                                            const ExitEvidence& exit) const {
    LastLog logarithm;
    const double odds = odds_heard(at, state, leaks, exit, heard(z, at, state, leaks, exit, logarithm));
    const Thresholds& thresholds = thresholds_[static_cast<std::size_t>(exit.by)];
    std::array<double, 4> out{};
    for (std::size_t word = 0; word < out.size(); ++word)
        out[word] = thresholds.chance(odds, word);
    return out;
}

double EngineModel::Thresholds::chance(double heard, std::size_t word) const {
    const auto at_least = [&](std::size_t level) { return 1.0 / (1.0 + odds[level] / heard); };
    const double over = word == 0 ? 1.0 : at_least(word - 1);
    const double chance = word < odds.size() ? over - at_least(word) : over;
    return (1.0 - slip) * chance + 0.25 * slip;
}

double EngineModel::odds_heard(const SharedState& at, const State& state, const Leaks& leaks,
                               const ExitEvidence& exit, const Heard& heard) const {
    const auto& joints = evidence_.cylinders[state.cylinder].joints;
    const std::size_t own = state.all.size() - joints.size();
    double here = 0.0;
    for (const Source& source : exit.sources) {
        std::size_t place = source.place;
        if (source.joint)
            place = own + static_cast<std::size_t>(std::ranges::find(joints, source.place) - joints.begin());
        here += source.share * leaks.path_m2[place] * (place == 0 ? heard.open : 1.0);
    }
    const Thresholds& thresholds = thresholds_[static_cast<std::size_t>(exit.by)];
    double loud = 0.0;
    if (thresholds.by_ear) {
        here += cross_talk_ * heard.leak_m2;
        const double log_here = std::log(here);
        // Most exits are not masked: no logarithm for them.
        const double lead = heard.loudest_m2 > masking_from_ * here
                                ? std::log(heard.loudest_m2 / masking_from_) - log_here
                                : 0.0;
        loud = log_here + heard.point.log_flow + at.listener - masking_ * lead;
    } else {
        loud = std::log(std::max(here, 1e-15)) + heard.point.log_flow;
    }
    return std::exp(std::min(loud / hearing_, 300.0));
}

double EngineModel::cylinder_likelihood(std::span<const double> z, const SharedState& at,
                                        std::size_t cylinder, const Leaks& leaks_now) const {
    const CylinderEvidence& read = evidence_.cylinders[cylinder];
    const Cylinder& own = cylinders_[cylinder];
    double out = state_likelihood(z, at, own, read, leaks_now);
    for (std::size_t i = 0; i < own.earlier.size(); ++i)
        out += state_likelihood(z, at, own.earlier[i], read.earlier[i], leaks(z, own.earlier[i]));
    return out;
}

double EngineModel::state_likelihood(std::span<const double> z, const SharedState& at, const State& state,
                                     const StateReadings& read, const Leaks& leaks) const {
    double out = 0.0;
    if (!surfaces_.empty() && (read.dry || read.wet)) {
        const double level_now = level(z, at, state);
        for (const auto* one : {&read.dry, &read.wet})
            if (*one) out += likelihood_cranking(reading(z, at, state, leaks, **one, level_now), at, **one);
    }
    LastLog logarithm;
    for (const LeakEvidence& leak : read.leaks)
        out += likelihood_held(held(z, at, state, leaks, leak, logarithm), leak);
    if (read.exits.empty()) return out;
    double chance = 1.0;  // a slip keeps every factor well above nothing
    const ExitEvidence* last = nullptr;
    Heard common;
    for (const ExitEvidence& exit : read.exits) {
        if (!last || last->curve != exit.curve || last->seal != exit.seal)
            common = heard(z, at, state, leaks, exit, logarithm);
        last = &exit;
        chance *= thresholds_[static_cast<std::size_t>(exit.by)].chance(
            odds_heard(at, state, leaks, exit, common), static_cast<std::size_t>(exit.loudness));
    }
    return out + std::log(chance);
}

}  // namespace lapwing::odds
