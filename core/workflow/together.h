// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/command.h"

namespace lapwing::workflow {

/// Several intents as one step of that name: done and undone together. All of one kind: either all keep the
/// lineage that their records come with or none.
Intent together(std::string name, std::vector<std::string> args, std::vector<Intent> all);

}  // namespace lapwing::workflow
