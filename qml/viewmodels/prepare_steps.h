// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/reference.h"
#include "core/model/engine.h"

namespace lapwing {

/// Whether a step of Prepare is asked of this engine at all.
inline bool asked_of(const Engine& engine, const findings::PrepareReason& step) {
    if (engine.cycle == StrokeCycle::two && !step.two_stroke) return false;
    if (engine.fuel == Fuel::diesel && !step.diesel) return false;
    return engine.decompressor != Decompressor::none || step.step != PrepareStep::decompressor_off;
}

}  // namespace lapwing
