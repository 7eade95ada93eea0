// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantMap>

#include "core/findings/findings.h"
#include "core/workflow/desk.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// Where a step is done: a page with what it is to be opened with.
struct StepPlace {
    QString page;
    QVariantMap args;
};

/// The page of one session where this is done, at that cylinder if one is named.
StepPlace place_of(findings::Action action, std::optional<int> cylinder, const QString& session_id);
/// The same of a step; a check of a tester opens on that tester's card, if it is there; a test under other
/// conditions opens where these are looked at, and one that was done under them in Before and after.
StepPlace place_of(const findings::NextStep& step, const QString& session_id, const workflow::Desk& desk);

/// The same of a check that somebody asks for; one of a tester that it names opens on that tester's card.
StepPlace place_of(AskedCheck check, const Tie& tie, std::optional<int> cylinder, const QString& session_id);

/// "Leak-down, cylinder 2"
QString step_title(findings::Action action, std::optional<int> cylinder, const format::Formatter& format);
/// "Dry test, new session" where it is asked for under other conditions.
QString step_title(const findings::NextStep& step, const format::Formatter& format);

}  // namespace lapwing
