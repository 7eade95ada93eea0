// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/workflow/command.h"

namespace lapwing::workflow {

/// Whether `visit`, in which the test was asked for or a later one, has it: a reading of that cylinder, or of
/// every cylinder where none was named. In the session of the request only what came after it counts.
bool carried_out(const Note& request, std::optional<int> cylinder, const Engine& engine, const Visit& visit);

/// The open requests of this engine that `visit` carries out with `reading` in it, ticked.
Result<std::vector<Note>> ticked_by(const Now& now, Visit visit, const Reading& reading);

}  // namespace lapwing::workflow
