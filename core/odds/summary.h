// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>

#include "core/odds/draws.h"
#include "core/odds/where_it_leaks.h"

/// From draws to what is reported. Internal to this room.
namespace lapwing::odds {

struct Random {
    explicit Random(std::uint64_t seed) : source(seed) {}
    double normal() { return normal_(source); }
    double uniform() { return uniform_(source); }
    boost::random::mt19937_64 source;

private:
    boost::random::normal_distribution<double> normal_;
    boost::random::uniform_01<double> uniform_;
};

/// Shares, chances and what other assumptions would make of them.
CylinderOdds summarise(const EngineModel& model, const Draws& draws, std::size_t cylinder);

/// Whether there are enough effective samples for what is said of a cylinder.
bool enough_draws(const CylinderOdds& of);

/// Readings to expect after each repair; none where the cranking model gives no level.
std::vector<AfterRepair> after_repairs(const EngineModel& model, const Draws& draws, std::size_t cylinder,
                                       bool diesel, Random& random);

/// Tests not made yet, by what they are expected to tell.
std::vector<NextTest> next_tests(const EngineModel& model, const Draws& draws, bool diesel, Random& random);

/// Tests whose reading lies far off everything that the rest allows.
std::vector<findings::Message> misfits(const EngineModel& model, const Draws& draws, std::size_t cylinder);

}  // namespace lapwing::odds
