// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/command.h"

namespace lapwing::workflow {

// Notes, photos and voice notes, and lines of the plan: added, or standing in for the one with the same id.
// Nil ids and zero times are filled in.

Intent save_note(Note note);  ///< "note.keep"; args: kind
Intent remove_note(NoteId id);

/// "attachment.keep"; args: kind. Its bytes must lie in the library's folder already (Desk::files).
Intent save_attachment(Attachment attachment);
Intent remove_attachment(AttachmentId id);

Intent save_plan_line(PlanLine line);  ///< "plan.keep"; args: option
Intent remove_plan_line(PlanLineId id);

}  // namespace lapwing::workflow
