// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QList>
#include <QString>
#include <functional>

#include "core/record/record.h"
#include "qml/format/formatter.h"

/// Records in words: what a record is, what it says, and how two versions of it differ.
namespace lapwing::format {

/// What a record that another one names is called ("Red gauge"); empty when nobody knows it.
using NameOf = std::function<QString(const Uuid&)>;

/// What it is: "Dry test, cylinder 2"; an engine, tester or session by its name.
QString title_of(const Formatter& format, const Record& record);
/// What it says in one line, without what title_of says already: "7.7 bar". May be empty.
QString gist_of(const Formatter& format, const Record& record);
/// Both pressures of a leak-down or crankcase reading, as they were typed: "4.6 bar of 5.5 bar"; of a dial in
/// %: "15 % lost of 5.5 bar". Empty for a reading that has none.
QString shown_of_set(const Formatter& format, const Reading& reading);
/// What was typed off the gauge: final reading or held pressure, or the % that its dial shows. Empty for a
/// reading that has none.
QString typed_off_gauge(const Formatter& format, const Reading& reading);
/// What something is tied to, where that can be said without its record: "Cylinder 2".
QString place_of(const Formatter& format, const Tie& tie);

/// One field of a record that two versions give differently. A version that says nothing has an empty text.
struct FieldTexts {
    QString name;
    QString one;
    QString other;
};
/// Ids, lineage and what a newer minor version added are not told.
QList<FieldTexts> differences(const Formatter& format, const Record& one, const Record& other,
                              const NameOf& name_of);
/// Names of fields that have no words of their own, for tests: empty.
QStringList fields_without_words();

}  // namespace lapwing::format
