// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QJsonObject>
#include <QString>
#include <functional>
#include <map>
#include <optional>

#include "core/base/uuid.h"

namespace lapwing {

/// What is typed at one place of a pad (a cylinder, a valve) and not kept yet.
struct KeyedEntry {
    QHash<QString, QString> text;  ///< raw digits with at most one decimal point, by field
    bool plain = false;            ///< the decimal point that the app placed was taken away
    Uuid id;                       ///< that the record will get
    std::optional<Uuid> redo;      ///< the reading that this one replaces
    bool next_replaces = false;    ///< the next digit begins anew; not in the draft

    [[nodiscard]] QString typed(const QString& field) const { return text.value(field); }
    /// Nothing that would be missed.
    [[nodiscard]] bool blank() const;
};

/// The entries of a whole pad by place, and the form in which they outlive the process. An entry carries the
/// id that its record will get, so that one whose record was committed is known to be spent.
class KeyedEntries {
public:
    /// What stands at that place; an empty entry when nothing does.
    [[nodiscard]] const KeyedEntry& at(const QString& place) const;
    [[nodiscard]] bool has(const QString& place) const { return entries_.contains(place); }
    /// The same to write to; a new entry gets its id from `make_id`.
    KeyedEntry& open(const QString& place, const std::function<Uuid()>& make_id);
    void put(const QString& place, KeyedEntry entry) { entries_[place] = std::move(entry); }
    void drop(const QString& place) { entries_.erase(place); }

    /// {"place": {"id", "plain", "text": {field: digits}, "redo"}}, blank entries left out.
    [[nodiscard]] QJsonObject json() const;
    /// Leaves out what is spent or damaged.
    void read(const QJsonObject& json, const std::function<bool(const Uuid&)>& spent);

private:
    std::map<QString, KeyedEntry> entries_;
};

}  // namespace lapwing
