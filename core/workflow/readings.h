// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/command.h"

namespace lapwing::workflow {

/// Keeps a new reading ("reading.keep"; args: test, cylinder). A nil id and a zero time are filled in; a
/// tester left out is taken from the session. `oiled` is set here, whatever the caller says: oil stays on the
/// rings, so a wet reading is fresh, and after any wet reading of the cylinder in this session later dry and
/// leak-down readings are marked before; otherwise no. Requests for this test that stand in this session or
/// an earlier one of the engine and are carried out with it are ticked. Photos of the gauge that wait for
/// this reading (see waiting_photos) are tied to it. Refused: a session or cylinder that isn't there, a
/// reading that can't exist (model's checked).
Intent keep_reading(Reading reading);

/// Redo: keeps `reading` in place of `replaced`, which stays in the history ("reading.redo"). Session, test
/// and cylinder are those of the replaced one.
Intent redo_reading(ReadingId replaced, Reading reading);

/// Takes a reading out for good, undo apart ("reading.remove"). Refused while a later reading replaces it.
Intent remove_reading(ReadingId id);

}  // namespace lapwing::workflow
