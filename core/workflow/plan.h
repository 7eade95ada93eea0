// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/command.h"

namespace lapwing::workflow {

// The plan of a session. Changing and removing a line: save_plan_line, remove_plan_line (remarks.h); the
// owner's answer and the retest: sessions.h.

/// Puts a new line where it belongs in the order of work ("plan.add"; args: option): quick fixes first, then
/// what needs a strip-down, then what is left as it is; among its own kind last. A nil id is filled in.
Intent add_plan_line(PlanLine line);

/// Ticks a line as done now, or takes the tick away ("plan.tick"; args: option, "done"
/// or "open").
Intent tick_plan_line(PlanLineId id, bool done);

/// Changes places with the line before (up) or after it ("plan.move"; args: option). Refused at either end.
enum class PlanMove { up, down };
Intent move_plan_line(PlanLineId id, PlanMove move);

}  // namespace lapwing::workflow
