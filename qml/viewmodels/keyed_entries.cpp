// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/keyed_entries.h"

#include <algorithm>

namespace lapwing {

bool KeyedEntry::blank() const {
    return !redo && std::all_of(text.begin(), text.end(), [](const QString& t) { return t.isEmpty(); });
}

const KeyedEntry& KeyedEntries::at(const QString& place) const {
    static const KeyedEntry nothing;
    const auto at = entries_.find(place);
    return at == entries_.end() ? nothing : at->second;
}

KeyedEntry& KeyedEntries::open(const QString& place, const std::function<Uuid()>& make_id) {
    auto& entry = entries_[place];
    if (entry.id.is_nil()) entry.id = make_id();
    return entry;
}

QJsonObject KeyedEntries::json() const {
    QJsonObject all;
    for (const auto& [place, entry] : entries_) {
        if (entry.blank()) continue;
        QJsonObject text;
        for (auto field = entry.text.begin(); field != entry.text.end(); ++field)
            if (!field.value().isEmpty()) text[field.key()] = field.value();
        QJsonObject one{
            {"id", QString::fromStdString(entry.id.text())}, {"plain", entry.plain}, {"text", text}};
        if (entry.redo) one["redo"] = QString::fromStdString(entry.redo->text());
        all[place] = one;
    }
    return all;
}

void KeyedEntries::read(const QJsonObject& json, const std::function<bool(const Uuid&)>& spent) {
    for (auto at = json.begin(); at != json.end(); ++at) {
        const auto one = at.value().toObject();
        const auto id = Uuid::parse(one["id"].toString().toStdString());
        if (!id || spent(*id)) continue;
        KeyedEntry entry;
        entry.id = *id;
        entry.plain = one["plain"].toBool();
        entry.redo = Uuid::parse(one["redo"].toString().toStdString());
        const auto text = one["text"].toObject();
        for (auto field = text.begin(); field != text.end(); ++field)
            entry.text[field.key()] = field.value().toString();
        entries_[at.key()] = std::move(entry);
    }
}

}  // namespace lapwing
