// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "core/findings/state.h"
#include "core/model/engine.h"
#include "core/model/reading.h"

namespace lapwing::findings {

/// What a clearance is to its valve: none at all or too small holds the valve open, too large only opens it
/// late.
enum class Fit { none, small, right, large, unknown };

/// What the maker wants of the valves of one side.
const std::optional<Sourced<ClearanceRange>>& wanted_clearance(const Engine& engine, ValveSide side);
/// Of the clearance as it is now: as left, else as found.
Fit fit_of(const Engine& engine, const Clearance& clearance);
Fit fit_of(const TypedLength& clearance, const std::optional<Sourced<ClearanceRange>>& wanted);
State state_of(Fit fit);
/// The valve may be held open: it is adjusted before any verdict on it.
bool too_small(Fit fit);

}  // namespace lapwing::findings
