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

void Chain::refresh(const PathPlace& path) {
    m2_[path.area] = std::exp(model_.log_area(z_, path));
    over_standing_[path.cranking] = std::exp(model_.static_to_cranking() * z_[path.cranking]);
    m2_[path.cranking] = m2_[path.area] * over_standing_[path.cranking];
}

Chain::Weighed Chain::weigh(const PathPlace& path, const Amount& amount) const {
    Weighed out{amount};
    if (!(amount.standing > 0.0 && amount.cranking > 0.0)) return out;
    const AreaMap& map = model_.maps()[path.map];
    const double area = std::log(amount.standing);
    if (area <= map.least() || area >= map.most()) return out;
    const double cranking = std::log(amount.cranking);
    const double z = (cranking - area) / model_.static_to_cranking();
    out.standing_z = map.z(area);
    out.cranking_z = z;
    out.standing = map.log_density(out.standing_z) - area;
    out.cranking = -0.5 * z * z - cranking;
    out.possible = true;
    return out;
}

const Chain::Weighed& Chain::weigh_now(const PathPlace& path) {
    Weighed& known = weighed_[path.area];
    const Amount now = amount(path);
    if (known.amount.standing != now.standing || known.amount.cranking != now.cranking)
        known = weigh(path, now);
    return known;
}

double Chain::drawn_standing(const PathPlace& path) {
    return std::exp(model_.maps()[path.map].log_area(normal()));
}

double Chain::drawn_cranking(double standing) {
    return standing * std::exp(model_.static_to_cranking() * normal());
}

void Chain::put(const PathPlace& path, const Weighed& what) {
    set(path.area, what.standing_z);
    set(path.cranking, what.cranking_z);
}

/// Where there is a wet reading and no dry one, the leak past oiled rings is what is read, and mostly kept.
Chain::OilShare Chain::oil_share(std::size_t cylinder, std::size_t one, std::size_t two) {
    const CylinderEvidence& read = model_.evidence().cylinders[cylinder];
    if (read.dry || !read.wet || uniform() < 0.3) return {};
    const double left = model_.left_open(z_, model_.cylinders()[cylinder], read.wet->seal);
    return {one == 0 ? left : 1.0, two == 0 ? left : 1.0, true};
}

/// A little or a lot from one path to another.
void Chain::divide(std::size_t cylinder) {
    const auto paths = own_paths(one_state(cylinder));
    if (paths.size() < 2) return;
    const auto [i, j] = two_paths(cylinder);
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
    const OilShare oil = oil_share(cylinder, i, j);
    const auto [oiled_one, oiled_two] = divided(oil.one * one.cranking, oil.two * two.cranking,
                                                step + 0.3 * std::min(stride, 1.0) * normal());
    const double cranking_one = oiled_one / oil.one;
    const double cranking_two = oiled_two / oil.two;
    const Weighed old_one = weigh_now(paths[i]);
    const Weighed old_two = weigh_now(paths[j]);
    const Weighed new_one = weigh(paths[i], {standing_one, cranking_one});
    const Weighed new_two = weigh(paths[j], {standing_two, cranking_two});
    if (!old_one.possible || !old_two.possible || !new_one.possible || !new_two.possible) return;
    // Even steps in log odds are even in the logarithms of both areas.
    const auto logs = [](const Weighed& of) {
        return of.both() + std::log(of.amount.standing) + std::log(of.amount.cranking);
    };
    const Kept before = kept(cylinder);
    put(paths[i], new_one);
    put(paths[j], new_two);
    const auto more = keep(cylinder, before, oil.kept);
    if (!more) return take_back();
    judge(logs(new_one) + logs(new_two) - logs(old_one) - logs(old_two) + *more, std::span(&cylinder, 1),
          true);
}

/// One of two paths is drawn anew from the prior, the other takes what is left.
void Chain::redivide(std::size_t cylinder) {
    const auto paths = own_paths(one_state(cylinder));
    if (paths.size() < 2) return;
    const auto [i, j] = two_paths(cylinder);
    const Weighed old_one = weigh_now(paths[i]);
    const Weighed old_two = weigh_now(paths[j]);
    const double standing = old_one.amount.standing + old_two.amount.standing;
    const OilShare oil = oil_share(cylinder, i, j);
    const double oiled = oil.one * old_one.amount.cranking + oil.two * old_two.amount.cranking;
    const bool first = uniform() < 0.5;
    const double drawn = drawn_standing(paths[first ? i : j]);
    Amount one{first ? drawn : standing - drawn, 0.0};
    Amount two{standing - one.standing, 0.0};
    if (!(one.standing > 0.0 && two.standing > 0.0)) return;
    // The smaller one is what it pleases while cranking, too.
    if (one.standing < two.standing) {
        one.cranking = drawn_cranking(one.standing);
        two.cranking = (oiled - oil.one * one.cranking) / oil.two;
    } else {
        two.cranking = drawn_cranking(two.standing);
        one.cranking = (oiled - oil.two * two.cranking) / oil.one;
    }
    const Weighed new_one = weigh(paths[i], one);
    const Weighed new_two = weigh(paths[j], two);
    if (!old_one.possible || !old_two.possible || !new_one.possible || !new_two.possible) return;
    const auto over_proposal = [&](const Weighed& a, const Weighed& b) {
        const bool less = a.amount.standing < b.amount.standing;
        // What is drawn by m2 takes up the sum by its weight there.
        return a.both() + b.both() - std::log(std::exp(a.standing) + std::exp(b.standing)) -
               (less ? a : b).cranking + std::log(less ? oil.one : oil.two);
    };
    const Kept before = kept(cylinder);
    put(paths[i], new_one);
    put(paths[j], new_two);
    const auto more = keep(cylinder, before, oil.kept);
    if (!more) return take_back();
    judge(over_proposal(new_one, new_two) - over_proposal(old_one, old_two) + *more, std::span(&cylinder, 1),
          true);
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
    const Weighed old_one = weigh_now(paths[i]);
    const Weighed old_two = weigh_now(paths[j]);
    const OilShare oil = oil_share(cylinder, i, j);
    const Weighed new_one =
        weigh(paths[i], {old_two.amount.standing, old_two.amount.cranking * oil.two / oil.one});
    const Weighed new_two =
        weigh(paths[j], {old_one.amount.standing, old_one.amount.cranking * oil.one / oil.two});
    if (!old_one.possible || !old_two.possible || !new_one.possible || !new_two.possible) return;
    const Kept before = kept(cylinder);
    put(paths[i], new_one);
    put(paths[j], new_two);
    const auto more = keep(cylinder, before, oil.kept);
    if (!more) return take_back();
    judge(new_one.both() + new_two.both() - old_one.both() - old_two.both() + *more, std::span(&cylinder, 1),
          true);
}

}  // namespace lapwing::odds
