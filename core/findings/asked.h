// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/findings/findings.h"
#include "core/model/visit.h"

namespace lapwing::findings {

/// Whether `visit`, in which a "please test this" was written or a later one, has what it asks for: of that
/// cylinder, or of every cylinder where none was named; staking of one cylinder will do, and a check of the
/// tester named, or of any that the visit was worked with. In the session of the request only what came
/// after it counts. False for one that asks for nothing in particular.
bool has_what_was_asked(const Note& request, std::optional<int> cylinder, const Engine& engine,
                        const Visit& visit, const std::vector<Tester>& testers);

/// What is done to answer such a check, or to do that test.
Action action_of(AskedCheck check);
Action action_of(TestKind test);

/// Whether that tester is the one that a request is about: named by it, or one of this session's.
bool is_about(const Note& request, const Session& session, TesterId tester);

}  // namespace lapwing::findings
