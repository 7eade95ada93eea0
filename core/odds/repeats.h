// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>

#include "core/findings/case.h"
#include "core/odds/evidence.h"

/// What repeats of one test are worth together. Internal to this room.
namespace lapwing::odds {

/// Of one field that all of them have; of what was typed the coarsest step.
double mean(const std::vector<const Reading*>& readings, std::optional<TypedPressure> Reading::*field);
double coarsest(const std::vector<const Reading*>& readings, std::optional<TypedPressure> Reading::*field);

/// What repeats are read through: hoses of another volume set them apart by themselves.
using Through = std::function<std::size_t(const Reading*)>;

/// What repeats that lie further apart than readings usually do add to the doubt of their mean, standard. Up
/// to twice the usual scatter is chance: about one pair in twenty is so far apart.
double further_apart(const std::vector<const Reading*>& readings,
                     std::optional<TypedPressure> Reading::*field, double usual_pa,
                     const Through& through = {});

/// Shares of the repeats that were not read through `own`, by what they were read through.
std::vector<std::pair<std::size_t, double>> other_shares(const std::vector<const Reading*>& readings,
                                                         std::size_t own, const Through& through);

/// Each repeat has its gauge's errors: those of other gauges than the last one's are this mean's alone.
void widen_by_other_gauges(const findings::Case& state, const std::vector<const Reading*>& readings,
                           double step_pa, CrankEvidence& mean);

}  // namespace lapwing::odds
