// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>

namespace lapwing::print {

/// The PDF with the language of its text (BCP 47, "de") and the wish that a viewer show its title, not its
/// file's name, in its catalogue: what a screen reader needs, and what QPdfWriter has no word for. Appended
/// as an update (ISO 32000-1, 7.5.6); a file whose catalogue isn't found comes back as it was.
QByteArray in_language(QByteArray pdf, const QByteArray& language);

}  // namespace lapwing::print
