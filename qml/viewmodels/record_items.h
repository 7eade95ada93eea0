// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariant>

#include "core/exchange/whereabouts.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/hand_over.h"
#include "qml/format/record_words.h"

namespace lapwing {

/// Records as pages list them.

/// What the library calls a record that another one names.
format::NameOf names_in(const workflow::Desk& desk, const format::Formatter& format);
/// {name, one, other}: fields in which two versions differ.
QVariantList difference_items(const format::Formatter& format, const Record& one, const Record& other,
                              const format::NameOf& name_of);
/// {title, text}: what a record is and says.
QVariantMap record_item(const format::Formatter& format, const Record& record);
/// {mark, title, text, fingerprint, key, named}: whose signature a file carries and what it is worth; `key`
/// is empty where there is no owner to name.
QVariantMap signature_item(const workflow::SignedBy& by, const exchange::Signature& signature);
/// "A new engine with 2 sessions, 7 readings." and what becomes of the records that are here already.
QString preview_sentence(const workflow::Preview& preview);
/// "Photo of 3 March 2026: Orchard V-twin, As found. Its file is lost.", a line each; the first ones of very
/// many, and how many more there are.
QString gap_lines(const format::Formatter& format, const std::vector<exchange::Gap>& gaps);
/// The photos that tell where they were taken; empty when there are none.
QString whereabouts_lines(const format::Formatter& format, const std::vector<exchange::Whereabouts>& photos);

}  // namespace lapwing
