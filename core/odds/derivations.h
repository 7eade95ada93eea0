// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/odds/where_it_leaks.h"

/// "Where does this come from" of the odds.
namespace lapwing::odds {

/// How the odds of a cylinder are made, what of its evidence went in, and under which assumptions.
findings::Derivation shares_from(const findings::CylinderFindings& rules, int assumptions_version);

/// How the reading to expect after a repair is made.
findings::Derivation after_repair_from(int cylinder, const AfterRepair& after);

}  // namespace lapwing::odds
