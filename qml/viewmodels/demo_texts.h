// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include "core/model/visit.h"

namespace lapwing {

/// The English demo as someone who writes in the app's language would have written it: notes, names and words
/// translated as far as they are (names of engines, clubs and threads stay), measured values untouched.
/// `language` is that language's two letters. Every record gets an id of its own for each language: what was
/// brought in under one language never differs from what is brought in under another. English, and a language
/// without any translation, give the demo itself. The error is that of a dossier that can't be read back.
Result<Dossier> demo_told_in(const QString& language, const Dossier& demo);

/// The texts that are translated, in English (for tests).
QStringList demo_texts();

}  // namespace lapwing
