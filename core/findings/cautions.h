// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string_view>
#include <vector>

#include "core/findings/reference.h"
#include "core/model/engine.h"

namespace lapwing::findings {

/// The cautions of a place on this engine, in the order of the file: those that stand there on every engine
/// ("dry"), and those for engines of its fuel ("dry, diesel"). None of an aircraft on an engine whose card
/// doesn't say that it is one's, none of coolant on one cooled by air.
std::vector<const Caution*> cautions_for(const Reference& reference, std::string_view place,
                                         const Engine& engine);

/// Whether the engine's card says of itself, in the languages that the app speaks, that it is an aircraft's:
/// there is no field for it.
bool says_aircraft(const Engine& engine);

/// Whether a line of the plan means that a valve is staked, in the languages that the app speaks: its words
/// are somebody's own, also where the app proposed them.
bool says_staking(std::string_view work);

}  // namespace lapwing::findings
