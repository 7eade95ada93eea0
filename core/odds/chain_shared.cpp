// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/odds/chain.h"

/// What all cylinders share moves in long strides only when the cylinders follow: with a higher compression
/// ratio, say, each must leak a little more to read what it reads.
namespace lapwing::odds {

double Chain::usual_reading(std::size_t cylinder, const EngineModel::SharedState& at) const {
    const CylinderEvidence& read = model_.evidence().cylinders[cylinder];
    const CrankEvidence& like = read.dry ? *read.dry : *read.wet;
    const double final_pa = at.slices[like.hose].final_pa(cranking_[cylinder].leak, 0.0);
    const auto& gauge = at.gauges[like.gauge];
    return std::log(
        std::max(final_pa * at.level * (1.0 + like.gain * gauge.gain) + like.offset_pa * gauge.offset, 1.0));
}

double Chain::usual_held(std::size_t cylinder, const EngineModel::SharedState& at) const {
    const LeakEvidence& like = model_.evidence().cylinders[cylinder].leaks.back();
    EngineModel::Leaks leaks;
    leaks.standing_m2 = standing_[cylinder].leak;
    return model_.held(z_, at, model_.cylinders()[cylinder], leaks, like).shown_pa / like.set_pa;
}

namespace {

/// By how much each path's logarithm follows what is read, so that the least is asked of all of them together
/// and of the scatter of the reading. `slope`: of what is read, by the logarithm of the leak; `spread`: of a
/// path's logarithm.
std::vector<double> followed(double slope, double noise, double spread, const std::vector<double>& shares) {
    double squares = 0.0;
    for (const double share : shares)
        squares += share * share;
    const double variance = slope * slope * spread * spread * squares;
    std::vector<double> out;
    for (const double share : shares)
        out.push_back(-slope * spread * spread * share / (variance + noise * noise));
    return out;
}

}  // namespace

void Chain::learn_to_follow() {
    if (watched_count_ < 100.0) return;
    std::ranges::fill(usual_, Usual{});
    for (std::size_t c = 0; c < standing_.size(); ++c) {
        const CylinderEvidence& read = model_.evidence().cylinders[c];
        const std::size_t paths = model_.cylinders()[c].all.size();
        std::vector<double> standing, cranking;
        for (std::size_t path = 0; path < paths; ++path) {
            standing.push_back(watched_[c][path].sum / watched_count_);
            cranking.push_back(watched_[c][path].cranking / watched_count_);
        }
        constexpr double apart = 0.1;
        if (model_.has_cranking_model() && (read.dry || read.wet)) {
            const double leak = std::exp(watched_log_cranking_[c] / watched_count_);
            const CrankEvidence& like = read.dry ? *read.dry : *read.wet;
            const auto& slice = shared_.slices[like.hose];
            const double more = slice.final_pa(leak * std::exp(apart), 0.0);
            const double less = slice.final_pa(leak / std::exp(apart), 0.0);
            if (more > 0.0 && less > more)
                cranking_[c] = {leak,
                                followed(0.5 * std::log(more / less) / apart, model_.cylinder_spread(like),
                                         model_.static_to_cranking(), cranking)};
        }
        if (!read.leaks.empty()) {
            const double leak = std::exp(watched_log_leak_[c] / watched_count_);
            const auto held = [&](double factor) {
                EngineModel::Leaks leaks;
                leaks.standing_m2 = leak * factor;
                return model_.held(z_, shared_, model_.cylinders()[c], leaks, read.leaks.back());
            };
            const double set = read.leaks.back().set_pa;
            const double slope =
                0.5 * (held(std::exp(apart)).shown_pa - held(std::exp(-apart)).shown_pa) / apart / set;
            constexpr double spread = 0.6;  // about that of any path's area
            if (slope < 0.0)
                standing_[c] = {leak, followed(slope, held(1.0).noise_pa / set, spread, standing)};
        }
    }
}

std::optional<double> Chain::follow() {
    propose();
    double log_prior = 0.0;
    const auto turn = [&](const PathPlace& path, double more, double turned) {
        if (more != 0.0) {
            const AreaMap& map = model_.maps()[path.map];
            const double old = z_[path.area];
            const double area = map.log_area(old) + more;
            if (area <= map.least() || area >= map.most()) return false;
            const double now = map.z(area);
            set(path.area, now);
            log_prior += map.log_density(now) - map.log_density(old);
        }
        const double old = z_[path.cranking];
        const double now = old + (turned - more) / model_.static_to_cranking();
        set(path.cranking, now);
        log_prior += 0.5 * (old * old - now * now);
        return true;
    };
    joint_turns_.assign(model_.joints().size(), {});
    for (std::size_t c = 0; c < standing_.size(); ++c) {
        const bool standing = standing_[c].leak > 0.0;
        const bool cranking = cranking_[c].leak > 0.0;
        Usual& now = usual_[c];
        if (cranking && !now.reading) now.reading = usual_reading(c, shared_);
        if (standing && !now.held) now.held = usual_held(c, shared_);
        const double held = standing ? usual_held(c, proposed_) - *now.held : 0.0;
        const double rise = cranking ? usual_reading(c, proposed_) - *now.reading : 0.0;
        const auto& place = model_.cylinders()[c];
        for (std::size_t path = 0; path < place.all.size(); ++path) {
            const double more = standing ? standing_[c].by_path[path] * held : 0.0;
            const double turned = cranking ? cranking_[c].by_path[path] * rise : 0.0;
            if (path < place.own.size()) {
                if (!turn(place.own[path], more, turned)) return std::nullopt;
                continue;
            }
            // A joint follows what either side asks for, half and half.
            auto& joint = joint_turns_[model_.evidence().cylinders[c].joints[path - place.own.size()]];
            joint.first += 0.5 * more;
            joint.second += 0.5 * turned;
        }
    }
    for (std::size_t j = 0; j < joint_turns_.size(); ++j)
        if (!turn(model_.joints()[j], joint_turns_[j].first, joint_turns_[j].second)) return std::nullopt;
    return log_prior;
}

/// Every hole is a little larger, and the restrictors with them: pressures tell nothing of that. Who listens
/// hears a little less well, then, and while cranking all pass what they did.
void Chain::rescale() {
    // Areas and cranking leaks hold it back more than a restrictor that nobody noted.
    double doubt = 0.08;
    const auto& testers = model_.evidence().leak_testers;
    for (const LeakTester& tester : testers)
        if (tester.restrictor_doubt > 0.0) doubt = std::min(doubt, tester.restrictor_doubt);
    const double more = doubt * normal();
    double log_prior = 0.0;
    const auto move = [&](std::size_t place, double by) {
        const double old = z_[place];
        set(place, old + by);
        log_prior += 0.5 * (old * old - z_[place] * z_[place]);
    };
    for (std::size_t i = 0; i < testers.size(); ++i)
        if (testers[i].restrictor_doubt > 0.0)
            move(model_.restrictor_of(i), more / testers[i].restrictor_doubt);
    move(Shared::listener, -more / model_.listener_spread());
    for (const PathPlace* path : all_paths_) {
        const AreaMap& map = model_.maps()[path->map];
        const double old = z_[path->area];
        const double area = map.log_area(old) + more;
        if (area <= map.least() || area >= map.most()) return take_back();
        const double now = map.z(area);
        set(path->area, now);
        log_prior += map.log_density(now) - map.log_density(old);
        move(path->cranking, -more / model_.static_to_cranking());
    }
    judge_all(log_prior);
}

/// With the air of a tester that failed its check: a path is drawn anew, and the air makes up for it, so that
/// as much of it is heard. While cranking it passes as much more or less, or what it did.
void Chain::reopen_heard() {
    if (heard_failed_.empty()) return;
    constexpr int times = 4;
    for (int time = 0; time < times; ++time) {
        const auto& [tester, cylinder] = heard_failed_[one_of(heard_failed_.size())];
        const PathPlace& path = model_.cylinders()[cylinder].own[one_path(cylinder)];
        const double before = model_.log_area(z_, path);
        set(path.area, normal());
        const double more = model_.log_area(z_, path) - before;
        double log_prior = 0.0;
        const auto move = [&](std::size_t place, double by) {
            const double old = z_[place];
            set(place, old + by);
            log_prior += 0.5 * (old * old - z_[place] * z_[place]);
        };
        move(model_.restrictor_of(tester), -more / model_.evidence().leak_testers[tester].air_doubt);
        if (uniform() < 0.5) move(path.cranking, -more / model_.static_to_cranking());
        judge_all(log_prior);
    }
}

}  // namespace lapwing::odds
