// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <span>

#include "core/record/record.h"
#include "core/store/connection.h"
#include "core/store/summary.h"

namespace lapwing::store {

/// Steps that can be undone; older ones are forgotten.
inline constexpr int steps_kept = 200;

struct Outcome {
    Step step;
    Change change;
};

/// Does the edits in one transaction and writes down every record they touch as it was before and is after.
/// Edits that change nothing (the same record again, the removal of one that isn't there) leave no trace; if
/// none is left the step's number is 0. Fails without changing anything: "store.no_parent" when a record's
/// engine or session isn't there, "store.hangs" when something still hangs on a removed one, and with the
/// storage's own errors.
Result<Outcome> apply(Connection& connection, Step info, std::span<const Edit> edits);

/// Puts back what a step changed. Fails without changing anything: "undo.gone" (forgotten, never there, or
/// undone already), "undo.changed_since", "undo.hangs" when something recorded since would lose its parent.
Result<Outcome> undo(Connection& connection, std::int64_t number);
/// The other way round: "redo.gone", "undo.changed_since", "undo.hangs".
Result<Outcome> redo(Connection& connection, std::int64_t number);

}  // namespace lapwing::store
