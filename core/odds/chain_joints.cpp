// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <array>
#include <cmath>

#include "core/odds/chain.h"

/// The moves of a joint between two cylinders: whatever it passes, both of them lose.
namespace lapwing::odds {

void Chain::move_joint(std::size_t joint) {
    const PathPlace& path = model_.joints()[joint];
    const bool redrawn = uniform() < 0.3;
    for (const std::size_t place : {path.area, path.cranking}) {
        const double step = redrawn ? 1.0 : 0.5;
        set(place, std::sqrt(1.0 - step * step) * z_[place] + step * normal());
    }
    const auto& [first, second] = model_.evidence().joints[joint];
    touched_.assign({first, second});
    judge(0.0, touched_);
    reopen(joint);
    reopen(joint);
    widen(joint);
}

/// A joint passes a little more or less, and a path of either cylinder makes up for it.
void Chain::widen(std::size_t joint) {
    const PathPlace& hole = model_.joints()[joint];
    const auto& [first, second] = model_.evidence().joints[joint];
    const auto& own_one = model_.cylinders()[first].own;
    const auto& own_two = model_.cylinders()[second].own;
    // Rings have the most to give.
    const bool rings = uniform() < 0.5;
    const PathPlace& one = own_one[rings ? 0 : one_of(own_one.size())];
    const PathPlace& two = own_two[rings ? 0 : one_of(own_two.size())];
    const auto& map_hole = model_.maps()[hole.map];
    const auto& map_one = model_.maps()[one.map];
    const auto& map_two = model_.maps()[two.map];
    const double j = map_hole.log_area(z_[hole.area]);
    const double a = map_one.log_area(z_[one.area]);
    const double b = map_two.log_area(z_[two.area]);
    const double new_j = j + 0.15 * normal();
    const double less = std::exp(j) - std::exp(new_j);
    const double left_a = std::exp(a) + less;
    const double left_b = std::exp(b) + less;
    if (!(left_a > 0.0 && left_b > 0.0)) return;
    const double new_a = std::log(left_a);
    const double new_b = std::log(left_b);
    if (new_j <= map_hole.least() || new_j >= map_hole.most() || new_a <= map_one.least() ||
        new_a >= map_one.most() || new_b <= map_two.least() || new_b >= map_two.most())
        return;
    const double z_hole = map_hole.z(new_j);
    const double z_one = map_one.z(new_a);
    const double z_two = map_two.z(new_b);
    const double log_prior = map_hole.log_density(z_hole) + map_one.log_density(z_one) +
                             map_two.log_density(z_two) - map_hole.log_density(z_[hole.area]) -
                             map_one.log_density(z_[one.area]) - map_two.log_density(z_[two.area]) + a -
                             new_a + b - new_b;
    set(hole.area, z_hole);
    set(one.area, z_one);
    set(two.area, z_two);
    touched_.assign({first, second});
    judge(log_prior, touched_);
}

/// One hole in a joint or faults of its neighbours: what the joint, the rings and perhaps one more path of
/// either cylinder pass is divided anew, either cylinder's sum kept. Drawn from the prior are either all
/// paths but the joint, which takes what they leave, or the joint, and other paths take what it leaves.
void Chain::reopen(std::size_t joint) {
    const PathPlace& hole = model_.joints()[joint];
    const auto& [first, second] = model_.evidence().joints[joint];
    const std::array<std::size_t, 2> cylinders{first, second};
    struct Side {
        const PathPlace* rings = nullptr;
        const PathPlace* other = nullptr;  ///< may be none
        Weighed old_rings, old_other, new_rings, new_other;
        double standing = 0.0, cranking = 0.0;
    };
    std::array<Side, 2> sides;
    const Weighed old_hole = weigh(hole, amount(hole));
    for (std::size_t s = 0; s < 2; ++s) {
        Side& side = sides[s];
        const auto& own = model_.cylinders()[cylinders[s]].own;
        side.rings = &own[0];
        side.old_rings = weigh(own[0], amount(own[0]));
        side.standing = old_hole.amount.standing + side.old_rings.amount.standing;
        side.cranking = old_hole.amount.cranking + side.old_rings.amount.cranking;
        // Mostly one of the first two, the valves of a four-stroke: they have the most to give.
        const std::size_t other =
            uniform() < 0.7 ? one_of(std::min<std::size_t>(own.size(), 3)) : one_of(own.size());
        if (other > 0) {
            side.other = &own[other];
            side.old_other = weigh(own[other], amount(own[other]));
            side.standing += side.old_other.amount.standing;
            side.cranking += side.old_other.amount.cranking;
        }
    }
    // Where the joint takes what is left, that is of the cylinder that passes less.
    const std::size_t less = sides[0].standing < sides[1].standing ? 0 : 1;
    const std::size_t less_cranking = sides[0].cranking < sides[1].cranking ? 0 : 1;
    const bool to_joint = uniform() < 0.5;
    Amount new_hole;
    std::array<Amount, 2> rings{}, others{};
    // One of rings and other path is drawn, the other one takes what is left.
    const auto share_out = [&](std::size_t s) {
        const double standing = sides[s].standing - new_hole.standing;
        if (!sides[s].other) {
            rings[s].standing = standing;
            return;
        }
        const bool by_rings = uniform() < 0.5;
        const double drawn = drawn_standing(by_rings ? *sides[s].rings : *sides[s].other);
        rings[s].standing = by_rings ? drawn : standing - drawn;
        others[s].standing = standing - rings[s].standing;
    };
    const auto share_out_cranking = [&](std::size_t s) {
        const double cranking = sides[s].cranking - new_hole.cranking;
        if (!sides[s].other) {
            rings[s].cranking = cranking;
            return;
        }
        const bool smaller = rings[s].standing < others[s].standing;
        Amount& free = smaller ? rings[s] : others[s];
        free.cranking = drawn_cranking(free.standing);
        (smaller ? others[s] : rings[s]).cranking = cranking - free.cranking;
    };
    const auto draw_side = [&](std::size_t s) {
        rings[s].standing = drawn_standing(*sides[s].rings);
        if (sides[s].other) others[s].standing = drawn_standing(*sides[s].other);
    };
    if (to_joint) {
        draw_side(less);
        new_hole.standing = sides[less].standing - rings[less].standing - others[less].standing;
        if (!(new_hole.standing > 0.0)) return;
        share_out(1 - less);
        rings[less_cranking].cranking = drawn_cranking(rings[less_cranking].standing);
        if (sides[less_cranking].other)
            others[less_cranking].cranking = drawn_cranking(others[less_cranking].standing);
        new_hole.cranking =
            sides[less_cranking].cranking - rings[less_cranking].cranking - others[less_cranking].cranking;
        share_out_cranking(1 - less_cranking);
    } else {
        new_hole.standing = drawn_standing(hole);
        new_hole.cranking = drawn_cranking(new_hole.standing);
        for (std::size_t s = 0; s < 2; ++s) {
            share_out(s);
            share_out_cranking(s);
        }
    }
    const Weighed hole_after = weigh(hole, new_hole);
    bool possible = old_hole.possible && hole_after.possible;
    for (std::size_t s = 0; s < 2; ++s) {
        Side& side = sides[s];
        side.new_rings = weigh(*side.rings, rings[s]);
        possible = possible && side.old_rings.possible && side.new_rings.possible;
        if (!side.other) continue;
        side.new_other = weigh(*side.other, others[s]);
        possible = possible && side.old_other.possible && side.new_other.possible;
    }
    if (!possible) return;
    const auto over_proposal = [&](const Weighed& at_hole, Weighed Side::*ring, Weighed Side::*other) {
        double prior = at_hole.both();
        double to = 0.0;  // logarithms of either way's density
        double from = at_hole.both();
        for (std::size_t s = 0; s < 2; ++s) {
            const Weighed& r = sides[s].*ring;
            prior += r.both();
            if (!sides[s].other) {
                if (s == less) to += r.standing;
                if (s == less_cranking) to += r.cranking;
                continue;
            }
            const Weighed& o = sides[s].*other;
            prior += o.both();
            const double either = std::log(0.5 * (std::exp(r.standing) + std::exp(o.standing)));
            const double smaller = (r.amount.standing < o.amount.standing ? r : o).cranking;
            to += s == less ? r.standing + o.standing : either;
            to += s == less_cranking ? r.cranking + o.cranking : smaller;
            from += either + smaller;
        }
        const double most = std::max(to, from);
        return prior - most - std::log(std::exp(to - most) + std::exp(from - most));
    };
    const double log_prior = over_proposal(hole_after, &Side::new_rings, &Side::new_other) -
                             over_proposal(old_hole, &Side::old_rings, &Side::old_other);
    const std::array before{kept(first), kept(second)};
    put(hole, new_hole);
    for (std::size_t s = 0; s < 2; ++s) {
        put(*sides[s].rings, rings[s]);
        if (sides[s].other) put(*sides[s].other, others[s]);
    }
    double kept_prior = 0.0;
    for (std::size_t s = 0; s < 2; ++s) {
        const auto more = keep(cylinders[s], before[s]);
        if (!more) return take_back();
        kept_prior += *more;
    }
    touched_.assign({first, second});
    judge(log_prior + kept_prior, touched_);
}

}  // namespace lapwing::odds
