// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

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
    touched_.clear();
    touch(whole_engine, path);
    judge(0.0, touched_);
    divert(joint);
    widen(joint);
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

/// One hole in a joint or two faults, one at each side: the joint's air goes to a path of either cylinder,
/// what they leak in all is kept. The move is its own way back: (J, A, B) to (A, J, J + B - A), areas in m2.
void Chain::divert(std::size_t joint) {
    const PathPlace& hole = model_.joints()[joint];
    const auto& [first, second] = model_.evidence().joints[joint];
    const bool turned = uniform() < 0.5;
    const auto& own_one = model_.cylinders()[turned ? second : first].own;
    const auto& own_two = model_.cylinders()[turned ? first : second].own;
    const PathPlace& one = own_one[one_of(own_one.size())];
    const PathPlace& two = own_two[one_of(own_two.size())];
    const auto& map_hole = model_.maps()[hole.map];
    const auto& map_one = model_.maps()[one.map];
    const auto& map_two = model_.maps()[two.map];
    const double j = map_hole.log_area(z_[hole.area]);
    const double a = map_one.log_area(z_[one.area]);
    const double b = map_two.log_area(z_[two.area]);
    const double left = std::exp(j) + std::exp(b) - std::exp(a);
    if (!(left > 0.0)) return;
    const double new_b = std::log(left);
    if (a <= map_hole.least() || a >= map_hole.most() || j <= map_one.least() || j >= map_one.most() ||
        new_b <= map_two.least() || new_b >= map_two.most())
        return;
    const double z_hole = map_hole.z(a);
    const double z_one = map_one.z(j);
    const double z_two = map_two.z(new_b);
    // Densities are of logarithms, the move keeps volume in the areas themselves: b - new_b makes up for it.
    const double log_prior = map_hole.log_density(z_hole) + map_one.log_density(z_one) +
                             map_two.log_density(z_two) - map_hole.log_density(z_[hole.area]) -
                             map_one.log_density(z_[one.area]) - map_two.log_density(z_[two.area]) + b -
                             new_b;
    set(hole.area, z_hole);
    set(one.area, z_one);
    set(two.area, z_two);
    const double cranking = z_[hole.cranking];
    set(hole.cranking, z_[one.cranking]);
    set(one.cranking, cranking);
    if (uniform() < 0.5) set(two.cranking, normal());
    touched_.assign({first, second});
    judge(log_prior, touched_);
}

}  // namespace lapwing::odds
