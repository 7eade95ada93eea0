// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/word_kinds.h"

namespace lapwing::findings {

/// What a step of Prepare is called on this engine: a diesel has no spark plugs to take out.
inline Word word_of(PrepareStep step, const Engine& engine) {
    Word word = word_of(step);
    const bool names_plugs = step == PrepareStep::all_plugs_out || step == PrepareStep::plug_wells_blown_out;
    if (names_plugs && engine.fuel == Fuel::diesel) word.code += ", diesel";
    return word;
}

}  // namespace lapwing::findings
