// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <vector>

#include "core/findings/case.h"
#include "core/odds/evidence.h"

/// What evidence_of is put together from. Internal to this room.
namespace lapwing::odds {

/// What the clearances that a visit recorded say of each of the cylinder's paths: a factor on its odds.
std::vector<double> clearance_odds(const findings::Case& visit, const CylinderEvidence& cylinder,
                                   const Assumptions& assumptions);

/// A final reading on a compression gauge (null: not known) with its errors; written to `step_pa`.
CrankEvidence crank_evidence(const Tester* tester, double final_pa, double step_pa,
                             const findings::Reference& reference);

/// A held pressure on a leak-down tester (null: not known) with its errors.
LeakEvidence leak_evidence(const Tester* tester, double set_pa, double held_pa, double step_pa,
                           const findings::Reference& reference);

/// The place of one among others; where it is not yet, it becomes the last.
template <class What>
std::size_t place_among(std::vector<What>& all, const What& wanted) {
    auto known = std::ranges::find(all, wanted);
    if (known == all.end()) known = all.insert(known, wanted);
    return static_cast<std::size_t>(known - all.begin());
}

struct SourceContext {
    const Engine& engine;
    const findings::Reference& reference;
    const Assumptions& assumptions;
    const Evidence& so_far;  ///< its joints, and the cylinders before the one at hand
};

/// Where the air at an exit of the cylinder at hand comes from; empty where the exit tells nothing.
std::vector<Source> exit_sources(const SourceContext& context, const CylinderEvidence& cylinder, Exit exit,
                                 std::optional<int> neighbour);

}  // namespace lapwing::odds
