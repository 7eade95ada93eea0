// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The pad's surroundings: the rail of cylinders, earlier readings, cautions, and the draft that outlives the
// process.
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/pad_model.h"

namespace lapwing {

void PadModel::refresh() {
    if (!found()) return;
    if (!draft_loaded_) {
        draft_loaded_ = true;
        loadDraft();
    }
    // A cylinder can be taken off the engine card while the pad is open.
    if (test_ != TestKind::crankcase && !find_cylinder(engine(), current_))
        current_ = engine().cylinders.front().number;
    if (field_.isEmpty()) field_ = mainField();
    buildRail();
    edited();
}

void PadModel::buildRail() {
    rail_.clear();
    if (test_ == TestKind::crankcase) {
        emit railChanged();
        return;
    }
    static const findings::Findings none_yet;
    const auto& known = findings() ? *findings() : none_yet;
    for (const auto& cylinder : engine().cylinders) {
        QVariantMap item = cylinder_item(known, engine(), cylinder, test_, format());
        item[QStringLiteral("pending")] = pending_.contains(cylinder.number);
        rail_ << item;
    }
    emit railChanged();
}

QVariantList PadModel::history() const {
    QVariantList list;
    for (const auto& reading : visit().readings) {
        if (reading.test != test_ || reading.cylinder != current_) continue;
        const bool replaced = std::any_of(visit().readings.begin(), visit().readings.end(),
                                          [&](const Reading& other) { return other.replaces == reading.id; });
        QString text;
        if (reading.final) text = format().typed(*reading.final);
        if (reading.held && reading.set)
            text = tr("%1 of %2").arg(format().typed(*reading.held), format().typed(*reading.set));
        if (reading.first) text = tr("%1, first puff %2").arg(text, format().typed(*reading.first));
        if (reading.pulls)
            text = *reading.pulls == 1 ? tr("%1, 1 pull").arg(text)
                                       : tr("%1, %2 pulls").arg(text).arg(*reading.pulls);
        if (reading.oil_volume) text = tr("%1, oil %2").arg(text, format().typed(*reading.oil_volume));
        QString about =
            format().name(reading.tag) + QStringLiteral(" · ") + format().shortDateTime(reading.taken_at);
        if (reading.oiled == Oiled::before) about += QStringLiteral(" · ") + tr("rings oiled before");
        if (replaced) about += QStringLiteral(" · ") + tr("measured again");
        list << QVariantMap{{"id", QString::fromStdString(reading.id.text())},
                            {"text", text},
                            {"about", about},
                            {"replaced", replaced}};
    }
    return list;
}

QStringList PadModel::cautions() const {
    const char* place = test_ == TestKind::wet ? "wet" : test_ == TestKind::dry ? "dry" : "leak-down";
    QStringList texts;
    for (const auto* caution : reference().cautions_at(place))
        texts << format().reference(caution->text);
    return texts;
}

QVariantList PadModel::tags() const {
    QVariantList list;
    for (std::size_t i = 0; i < Words<Tag>::list.size(); ++i) {
        const auto tag = static_cast<Tag>(i);
        list << QVariantMap{{"value", QString::fromUtf8(word(tag).data())}, {"text", format().name(tag)}};
    }
    return list;
}

bool PadModel::refused() const {
    return test_ == TestKind::wet && engine().fuel == Fuel::diesel;
}

// ---- Draft: {"cylinder": 2, "field": "final", "tag": "as found", "entries": {"2": {"id", "plain", "text":
// {...}}}}

QString PadModel::draftKey() const {
    return QStringLiteral("pad/%1/%2").arg(sessionId(), test());
}

void PadModel::saveDraft() {
    QJsonObject entries;
    for (const auto& [number, entry] : entries_) {
        QJsonObject text;
        for (auto it = entry.text.begin(); it != entry.text.end(); ++it)
            if (!it.value().isEmpty()) text[it.key()] = it.value();
        if (text.isEmpty() && !entry.redo) continue;
        QJsonObject object{
            {"id", QString::fromStdString(entry.id.text())}, {"plain", entry.plain}, {"text", text}};
        if (entry.redo) object["redo"] = QString::fromStdString(entry.redo->text());
        entries[QString::number(number)] = object;
    }
    const QJsonObject draft{{"cylinder", current_}, {"field", field_}, {"tag", tag()}, {"entries", entries}};
    app()->keepDraft(draftKey(), QString::fromUtf8(QJsonDocument(draft).toJson(QJsonDocument::Compact)));
}

void PadModel::loadDraft() {
    const auto draft = QJsonDocument::fromJson(app()->draft(draftKey()).toUtf8()).object();
    const int asked_for = current_;
    tag_ = from_word<Tag>(draft["tag"].toString().toStdString()).value_or(Tag::as_found);
    const auto entries = draft["entries"].toObject();
    for (auto it = entries.begin(); it != entries.end(); ++it) {
        const auto object = it.value().toObject();
        const auto id = ReadingId::parse(object["id"].toString().toStdString());
        const bool spent = id && std::any_of(visit().readings.begin(), visit().readings.end(),
                                             [&](const Reading& reading) { return reading.id == *id; });
        if (!id || spent) continue;
        Entry entry;
        entry.id = *id;
        entry.plain = object["plain"].toBool();
        entry.redo = ReadingId::parse(object["redo"].toString().toStdString());
        const auto text = object["text"].toObject();
        for (auto field = text.begin(); field != text.end(); ++field)
            entry.text[field.key()] = field.value().toString();
        entries_[it.key().toInt()] = entry;
    }
    if (test_ == TestKind::crankcase) return;
    if (asked_for != 0 && find_cylinder(engine(), asked_for)) return;
    current_ = draft["cylinder"].toInt();
    field_ = draft["field"].toString();
    if (!find_cylinder(engine(), current_)) {
        field_.clear();
        const auto numbers = order();
        const auto first =
            std::find_if(numbers.begin(), numbers.end(), [&](int number) { return !measured(number); });
        current_ = first == numbers.end() ? numbers.front() : *first;
    } else if (entries_.find(current_) == entries_.end() && measured(current_)) {
        if (const int next = nextOf(current_)) current_ = next;
    }
}

}  // namespace lapwing
