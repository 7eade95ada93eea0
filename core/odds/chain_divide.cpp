// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/odds/chain.h"

/// Moves that say otherwise which path a cylinder's air takes and leave alone what pressures tell: the leak
/// in all, standing and cranking, and the wet reading. Only exits and the prior judge them, so that they may
/// be large. Densities are by m2 of every area that is free once the sums are given.
namespace lapwing::odds {

EngineModel::Leaks Chain::leaks(std::size_t cylinder) const {
    EngineModel::Leaks out;
    const auto& paths = model_.cylinders()[cylinder].all;
    for (std::size_t i = 0; i < paths.size(); ++i) {
        out.path_m2[i] = m2_[paths[i].area];
        out.standing_m2 += m2_[paths[i].area];
        out.cranking_m2 += m2_[paths[i].cranking];
    }
    out.rings_m2 = m2_[paths[0].area];
    out.cranking_rings_m2 = m2_[paths[0].cranking];
    return out;
}

void Chain::refresh(const PathPlace& path) {
    m2_[path.area] = std::exp(model_.log_area(z_, path));
    m2_[path.cranking] = m2_[path.area] * std::exp(model_.static_to_cranking() * z_[path.cranking]);
}

Chain::Weighed Chain::weigh(const PathPlace& path, const Amount& amount) const {
    Weighed out{amount};
    if (!(amount.standing > 0.0 && amount.cranking > 0.0)) return out;
    const AreaMap& map = model_.maps()[path.map];
    const double area = std::log(amount.standing);
    if (area <= map.least() || area >= map.most()) return out;
    const double cranking = std::log(amount.cranking);
    const double z = (cranking - area) / model_.static_to_cranking();
    out.standing = map.log_density(map.z(area)) - area;
    out.cranking = -0.5 * z * z - cranking;
    out.possible = true;
    return out;
}

double Chain::drawn_standing(const PathPlace& path) {
    return std::exp(model_.maps()[path.map].log_area(normal()));
}

double Chain::drawn_cranking(double standing) {
    return standing * std::exp(model_.static_to_cranking() * normal());
}

void Chain::put(const PathPlace& path, const Amount& amount) {
    const double area = std::log(amount.standing);
    set(path.area, model_.maps()[path.map].z(area));
    set(path.cranking, (std::log(amount.cranking) - area) / model_.static_to_cranking());
}

/// A little or a lot from one path to another.
void Chain::divide(std::size_t cylinder) {
    const auto paths = own_paths(one_state(cylinder));
    if (paths.size() < 2) return;
    const std::size_t i = one_of(paths.size());
    std::size_t j = one_of(paths.size() - 1);
    if (j >= i) ++j;
    const Amount one = amount(paths[i]);
    const Amount two = amount(paths[j]);
    constexpr std::array strides{0.3, 1.0, 2.5};
    const double stride = strides[one_of(strides.size())];
    const double step = stride * normal();
    const auto divided = [](double a, double b, double by) {
        const double odds = a / b * std::exp(by);
        const double all = a + b;
        return std::pair(all * odds / (1.0 + odds), all / (1.0 + odds));
    };
    const auto [standing_one, standing_two] = divided(one.standing, two.standing, step);
    const auto [cranking_one, cranking_two] =
        divided(one.cranking, two.cranking, step + 0.3 * std::min(stride, 1.0) * normal());
    const Weighed old_one = weigh(paths[i], one);
    const Weighed old_two = weigh(paths[j], two);
    const Weighed new_one = weigh(paths[i], {standing_one, cranking_one});
    const Weighed new_two = weigh(paths[j], {standing_two, cranking_two});
    if (!old_one.possible || !old_two.possible || !new_one.possible || !new_two.possible) return;
    // Even steps in log odds are even in the logarithms of both areas.
    const auto logs = [](const Weighed& of) {
        return of.both() + std::log(of.amount.standing) + std::log(of.amount.cranking);
    };
    const Kept before = kept(cylinder);
    put(paths[i], new_one.amount);
    put(paths[j], new_two.amount);
    const auto more = keep(cylinder, before);
    if (!more) return take_back();
    judge(logs(new_one) + logs(new_two) - logs(old_one) - logs(old_two) + *more, std::span(&cylinder, 1));
}

/// One of two paths is drawn anew from the prior, the other takes what is left.
void Chain::redivide(std::size_t cylinder) {
    const auto paths = own_paths(one_state(cylinder));
    if (paths.size() < 2) return;
    // Rings have the most to give.
    const std::size_t i = uniform() < 0.6 ? 0 : one_of(paths.size());
    std::size_t j = one_of(paths.size() - 1);
    if (j >= i) ++j;
    const Weighed old_one = weigh(paths[i], amount(paths[i]));
    const Weighed old_two = weigh(paths[j], amount(paths[j]));
    const double standing = old_one.amount.standing + old_two.amount.standing;
    const double cranking = old_one.amount.cranking + old_two.amount.cranking;
    const bool first = uniform() < 0.5;
    const double drawn = drawn_standing(paths[first ? i : j]);
    Amount one{first ? drawn : standing - drawn, 0.0};
    Amount two{standing - one.standing, 0.0};
    if (!(one.standing > 0.0 && two.standing > 0.0)) return;
    // The smaller one is what it pleases while cranking, too.
    Amount& smaller = one.standing < two.standing ? one : two;
    smaller.cranking = drawn_cranking(smaller.standing);
    (one.standing < two.standing ? two : one).cranking = cranking - smaller.cranking;
    const Weighed new_one = weigh(paths[i], one);
    const Weighed new_two = weigh(paths[j], two);
    if (!old_one.possible || !old_two.possible || !new_one.possible || !new_two.possible) return;
    const auto over_proposal = [](const Weighed& a, const Weighed& b) {
        const Weighed& less = a.amount.standing < b.amount.standing ? a : b;
        return a.both() + b.both() - std::log(std::exp(a.standing) + std::exp(b.standing)) - less.cranking;
    };
    const Kept before = kept(cylinder);
    put(paths[i], one);
    put(paths[j], two);
    const auto more = keep(cylinder, before);
    if (!more) return take_back();
    judge(over_proposal(new_one, new_two) - over_proposal(old_one, old_two) + *more, std::span(&cylinder, 1));
}

/// Two paths exchange places, one of them the largest, which it is afterwards as well.
void Chain::exchange(std::size_t cylinder) {
    const auto paths = own_paths(one_state(cylinder));
    if (paths.size() < 2) return;
    std::size_t i = 0;
    for (std::size_t path = 1; path < paths.size(); ++path)
        if (m2_[paths[path].area] > m2_[paths[i].area]) i = path;
    std::size_t j = one_of(paths.size() - 1);
    if (j >= i) ++j;
    const Weighed old_one = weigh(paths[i], amount(paths[i]));
    const Weighed old_two = weigh(paths[j], amount(paths[j]));
    const Weighed new_one = weigh(paths[i], old_two.amount);
    const Weighed new_two = weigh(paths[j], old_one.amount);
    if (!old_one.possible || !old_two.possible || !new_one.possible || !new_two.possible) return;
    const Kept before = kept(cylinder);
    put(paths[i], new_one.amount);
    put(paths[j], new_two.amount);
    const auto more = keep(cylinder, before);
    if (!more) return take_back();
    judge(new_one.both() + new_two.both() - old_one.both() - old_two.both() + *more, std::span(&cylinder, 1));
}

}  // namespace lapwing::odds
