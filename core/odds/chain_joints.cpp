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
    trade(path, touched_);
    reopen(joint);
    for (int i = 0; i < 8; ++i)
        shift(joint);
}

/// A joint passes more or less, and one path of either cylinder makes up for it: a little or a lot, perhaps
/// while cranking only, all that one of the two did, or what comes of one of the three being drawn anew.
void Chain::shift(std::size_t joint) {
    const auto& [first, second] = model_.evidence().joints[joint];
    const std::array parts{&model_.joints()[joint], &model_.cylinders()[first].own[one_path(first)],
                           &model_.cylinders()[second].own[one_path(second)]};
    std::array<Weighed, 3> old;
    std::array<Amount, 3> next;
    for (std::size_t i = 0; i < 3; ++i)
        old[i] = weigh_now(*parts[i]);
    const auto make_up = [&](double Amount::*of) {
        for (const std::size_t side : {1U, 2U})
            next[side].*of = old[0].amount.*of + old[side].amount.*of - next[0].*of;
    };
    const double kind = uniform();
    const bool cranking_only = kind < 0.15;
    const bool by_steps = kind < 0.5;
    const bool drawn_anew = kind >= 0.6;
    if (by_steps) {
        constexpr std::array strides{0.1, 0.35, 1.2};
        const double stride = strides[one_of(strides.size())];
        const double step = cranking_only ? 0.0 : stride * normal();
        const double more = (cranking_only ? stride : 0.3 * std::min(stride, 1.0)) * normal();
        next[0].standing = old[0].amount.standing * std::exp(step);
        next[0].cranking = old[0].amount.cranking * std::exp(step + more);
    } else if (!drawn_anew) {
        next[0] = old[1 + one_of(2)].amount;
    } else {
        const std::size_t which = one_of(3);
        const double drawn = drawn_standing(*parts[which]);
        next[0].standing = which == 0 ? drawn : old[0].amount.standing + old[which].amount.standing - drawn;
    }
    make_up(&Amount::standing);
    if (std::ranges::any_of(next, [](const Amount& one) { return !(one.standing > 0.0); })) return;
    const auto smallest = [](const auto& of, auto standing) {
        return static_cast<std::size_t>(std::ranges::min_element(of, {}, standing) - of.begin());
    };
    if (drawn_anew) {
        // The smallest is what it pleases while cranking, too.
        const std::size_t free = smallest(next, &Amount::standing);
        const double drawn = drawn_cranking(next[free].standing);
        next[0].cranking = free == 0 ? drawn : old[0].amount.cranking + old[free].amount.cranking - drawn;
    }
    make_up(&Amount::cranking);
    std::array<Weighed, 3> now;
    for (std::size_t i = 0; i < 3; ++i) {
        now[i] = weigh(*parts[i], next[i]);
        if (!old[i].possible || !now[i].possible) return;
    }
    const auto over_proposal = [&](const std::array<Weighed, 3>& at) {
        double out = at[0].both() + at[1].both() + at[2].both();
        // Even steps in the logarithms of the joint's areas.
        if (by_steps) out += std::log(at[0].amount.standing) + std::log(at[0].amount.cranking);
        if (!drawn_anew) return out;
        const double most = std::max({at[0].standing, at[1].standing, at[2].standing});
        double either = 0.0;
        for (const Weighed& one : at)
            either += std::exp(one.standing - most);
        const auto free = smallest(at, [](const Weighed& one) { return one.amount.standing; });
        return out - most - std::log(either) - at[free].cranking;
    };
    const std::array before{kept(first), kept(second)};
    for (std::size_t i = 0; i < 3; ++i)
        put(*parts[i], now[i]);
    const auto one = keep(first, before[0]);
    const auto two = one ? keep(second, before[1]) : std::nullopt;
    if (!two) return take_back();
    touched_.assign({first, second});
    judge(over_proposal(now) - over_proposal(old) + *one + *two, touched_, true);
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
    const Weighed old_hole = weigh_now(hole);
    for (std::size_t s = 0; s < 2; ++s) {
        Side& side = sides[s];
        const auto& own = model_.cylinders()[cylinders[s]].own;
        side.rings = &own[0];
        side.old_rings = weigh_now(own[0]);
        side.standing = old_hole.amount.standing + side.old_rings.amount.standing;
        side.cranking = old_hole.amount.cranking + side.old_rings.amount.cranking;
        // Mostly one of the first two, the valves of a four-stroke: they have the most to give.
        const std::size_t other =
            uniform() < 0.7 ? one_of(std::min<std::size_t>(own.size(), 3)) : one_of(own.size());
        if (other > 0) {
            side.other = &own[other];
            side.old_other = weigh_now(own[other]);
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
    put(hole, hole_after);
    for (std::size_t s = 0; s < 2; ++s) {
        put(*sides[s].rings, sides[s].new_rings);
        if (sides[s].other) put(*sides[s].other, sides[s].new_other);
    }
    double kept_prior = 0.0;
    for (std::size_t s = 0; s < 2; ++s) {
        const auto more = keep(cylinders[s], before[s]);
        if (!more) return take_back();
        kept_prior += *more;
    }
    touched_.assign({first, second});
    judge(log_prior + kept_prior, touched_, true);
}

}  // namespace lapwing::odds
