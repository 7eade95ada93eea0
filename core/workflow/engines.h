// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/command.h"

namespace lapwing::workflow {

/// Adds an engine ("engine.add") or stands in for the one with the same id ("engine.change"; args: name). A
/// nil id and a zero time are filled in. Refused: an engine that can't exist; a change that takes away a
/// cylinder that something is recorded for.
Intent save_engine(Engine engine);

/// Takes an engine out with all its sessions and what hangs on them, undo apart ("engine.delete"; args: name,
/// number of sessions, number of readings). Files of photos and voice notes stay, so that undo is whole.
Intent remove_engine(EngineId id);

}  // namespace lapwing::workflow
