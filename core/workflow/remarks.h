// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/workflow/command.h"

namespace lapwing::workflow {

// Notes, photos and voice notes, and lines of the plan: added, or standing in for the one with the same id.
// Nil ids and zero times are filled in.

Intent save_note(Note note);  ///< "note.keep"; args: kind
Intent remove_note(NoteId id);

/// Commits "my call", a note for each cause, before anyone has seen the findings ("note.call"; args: how
/// many). A committed call stands: save_note and remove_note refuse to touch it ("note.call_stands").
Intent commit_calls(std::vector<Note> calls);

/// "attachment.keep"; args: kind. Its bytes must lie in the library's folder already (Desk::files).
Intent save_attachment(Attachment attachment);
/// What the needle reader made of a photo. Undone with the photo when it was taken just before.
Intent note_needle(Attachment attachment);
Intent remove_attachment(AttachmentId id);

Intent save_plan_line(PlanLine line);  ///< "plan.keep"; args: option
Intent remove_plan_line(PlanLineId id);

}  // namespace lapwing::workflow
