// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/engine.h"
#include "core/model/session.h"
#include "core/model/tester.h"
#include "core/workflow/sessions.h"
#include "qml/viewmodels/form_lines.h"

namespace lapwing {

/// The lines of the visit's form; `testers` are those of the shop, to choose from.
FormLines<Session> visit_lines(const Session& session, StrokeCycle cycle, const std::vector<Tester>& testers,
                               const format::Formatter& format);

std::optional<TesterId> tester_for(const Session& session, workflow::TesterUse use);
/// The test whose tester differs between two states of a session.
std::optional<workflow::TesterUse> changed_tester(const Session& before, const Session& after);

}  // namespace lapwing
