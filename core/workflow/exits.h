// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/command.h"

namespace lapwing::workflow {

/// Keeps what was heard at one exit ("exit.keep"; args: cylinder, exit). Listening again at the same exit of
/// the same cylinder under the same tag replaces the note that stood until then; both are kept.
Intent keep_exit(const ExitNote& note);

/// Back to "not listened", undo apart ("exit.remove"). Refused while a later note replaces it.
Intent remove_exit(ExitNoteId id);

}  // namespace lapwing::workflow
