// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariant>

#include "core/model/visit.h"
#include "qml/format/formatter.h"

namespace lapwing {

/// What notes of a second opinion can name, and how they are listed.

/// {value, text}: where this engine can leak.
QVariantList cause_choices(const Engine& engine, const format::Formatter& format);
/// {value, text}: tests that this engine can be given, and checks that can be asked for like them.
QVariantList test_choices(const Engine& engine, const format::Formatter& format);
/// The test or the check that was chosen of these; neither for a note that asks for nothing.
void ask_for(Note& request, const QString& word);
/// {id, kind, heading, text, detail, done, test, cause, mine}: `detail` says when, and by whom if `author`
/// did not write it.
QVariantMap note_item(const Note& note, const QString& author, const format::Formatter& format);
/// "Leak-down, cylinder 2"; the place alone where neither a test nor a check is named.
QString wanted_of(const Note& request, const QString& place, const format::Formatter& format);

}  // namespace lapwing
