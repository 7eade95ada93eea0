// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/workflow/command.h"

namespace lapwing::workflow {

/// Adds a tester ("tester.add") or stands in for the one with the same id ("tester.change"; args: name). A
/// nil id and a zero time are filled in.
Intent save_tester(Tester tester);

/// Notes a self-check of a tester ("tester.check"; args: name, kind of check). A zero time is filled in.
Intent keep_check(TesterId id, const TesterCheck& check);

/// "tester.delete". Refused while a session or reading names it: their figures would lose their meaning.
Intent remove_tester(TesterId id);

}  // namespace lapwing::workflow
