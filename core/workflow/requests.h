// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/workflow/command.h"

namespace lapwing::workflow {

// The open requests of this engine that a record carries out once it stands in its visit, ticked.
Result<std::vector<Note>> ticked_by(const Now& now, Visit visit, const Reading& reading);
Result<std::vector<Note>> ticked_by(const Now& now, Visit visit, const ExitNote& note);
Result<std::vector<Note>> ticked_by(const Now& now, Visit visit, const Clearance& clearance);

/// The open requests of any engine that the newest check of this tester carries out, ticked.
Result<std::vector<Note>> ticked_by_check(const Now& now, const Tester& tester);

/// Ticks in the same step, so that Undo opens the requests again. Leaves alone what failed.
template <class Ticked>
Result<Command> with_ticks(Result<Command> command, const Ticked& ticked) {
    if (!command) return command;
    const Result<std::vector<Note>> requests = ticked();
    if (!requests) return tl::unexpected(requests.error());
    for (const Note& request : *requests)
        command->edits.emplace_back(Put{request});
    return command;
}

/// The ticked requests of this engine that `visit` carries out with `reading` in it, and that nothing does
/// without it: open again.
Result<std::vector<Note>> opened_without(const Now& now, const Visit& visit, const Reading& reading);

}  // namespace lapwing::workflow
