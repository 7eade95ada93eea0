// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/case.h"
#include "core/findings/pad.h"

/// Internal to this room.
namespace lapwing::findings {

/// What a dry or wet reading is to be held against. `model` may be null.
/// @param typed null while nothing is typed
void add_cranking_facts(const Case& at, const PadEntry& entry, const Cranking* typed, const Gauge* dial,
                        const ModelFacts* model, std::vector<Remark>& facts);

}  // namespace lapwing::findings
