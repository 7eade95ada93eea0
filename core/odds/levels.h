// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/findings/case.h"
#include "core/findings/crank_model.h"
#include "core/odds/evidence.h"

/// What is known of how a sound cylinder of this engine reads. Internal to this room.
namespace lapwing::odds {

/// The newest dry reading of the visit, or the newest wet one; null where there is neither.
const Reading* newest_cranking(const findings::Case& at);

/// The maker's range and earlier good visits, each as this visit's tester shows it under this visit's
/// circumstances, with what the way there adds to the doubt. `inputs`: this visit's; `newest`: its newest
/// cranking reading, may be null.
std::vector<LevelEvidence> levels_of(const findings::Case& at, const findings::ModelInputs& inputs,
                                     const Reading* newest, const Assumptions& assumptions);

}  // namespace lapwing::odds
