// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/keyed_model.h"

#include <QJsonDocument>
#include <tuple>
#include <utility>

#include "qml/viewmodels/cylinder_order.h"

namespace lapwing {
namespace {

constexpr int most_digits = 7;

}  // namespace

int KeyedModel::currentIndex() const {
    return index_of(engine(), cylinder_);
}

bool KeyedModel::takes(int cylinder) const {
    return find_cylinder(engine(), cylinder) != nullptr;
}

QString KeyedModel::localized(QString digits) const {
    return digits.replace(QLatin1Char('.'), format().locale().decimalPoint());
}

QString KeyedModel::typed() const {
    return localized(entry().typed(field_));
}

KeyedEntry& KeyedModel::entry() {
    return entries_.open(place(), [this] { return Uuid::make(app()->desk().clock()); });
}

void KeyedModel::press(const QString& character) {
    QString& text = entry().text[field_];
    if (std::exchange(entry().next_replaces, false)) text.clear();
    const bool mark = character == QLatin1String(".") || character == QLatin1String(",");
    if (mark && (text.contains(QLatin1Char('.')) || !decimals())) return;
    if (!mark && text.size() >= most_digits) return;
    text += mark ? QStringLiteral(".") : character;
    changed();
}

void KeyedModel::backspace() {
    QString& text = entry().text[field_];
    entry().next_replaces = false;
    text.chop(1);
    if (text.isEmpty()) entry().plain = false;
    changed();
}

void KeyedModel::clear() {
    entry().text.remove(field_);
    entry().plain = false;
    changed();
}

void KeyedModel::focusField(const QString& key) {
    field_ = key;
    changed();
}

void KeyedModel::choose(int index) {
    if (index >= 0 && index < static_cast<int>(engine().cylinders.size()))
        chooseCylinder(engine().cylinders[static_cast<std::size_t>(index)].number);
}

void KeyedModel::chooseCylinder(int number) {
    if (!takes(number)) return;
    moveTo(number);
    saveDraft();
}

void KeyedModel::moveTo(int cylinder) {
    cylinder_ = cylinder;
    field_ = mainField();
    buildRail();
    edited();
}

void KeyedModel::edited() {
    judge();
    emit entryChanged();
}

void KeyedModel::changed() {
    edited();
    saveDraft();
}

void KeyedModel::buildRail() {
    // A Keep comes by here several times; the tiles hear of it only when they change.
    auto now = rail();
    if (std::tie(now, cylinder_) == std::tie(rail_, shown_cylinder_)) return;
    rail_ = std::move(now);
    shown_cylinder_ = cylinder_;
    emit railChanged();
}

void KeyedModel::refresh() {
    if (!found()) return;
    if (!draft_read_) {
        draft_read_ = true;
        const auto draft = QJsonDocument::fromJson(app()->draft(draftKey()).toUtf8()).object();
        entries_.read(draft["entries"].toObject(), [this](const Uuid& id) { return recorded(id); });
        readDraft(draft);
    }
    // A cylinder can be taken off the engine card while the pad is open.
    if (!takes(cylinder_)) cylinder_ = numbers_in_order(engine()).front();
    if (field_.isEmpty()) field_ = mainField();
    // Taken back since.
    if (!last_kept_.isEmpty() && !recorded(last_kept_id_)) {
        last_kept_.clear();
        emit lastKeptChanged();
    }
    buildRail();
    edited();
}

void KeyedModel::writeDraft(QJsonObject& draft) const {
    draft["cylinder"] = cylinder_;
    draft["field"] = field_;
}

void KeyedModel::readDraft(const QJsonObject& draft) {
    cylinder_ = draft["cylinder"].toInt();
    field_ = draft["field"].toString();
}

void KeyedModel::saveDraft() {
    QJsonObject draft{{"entries", entries_.json()}};
    writeDraft(draft);
    app()->keepDraft(draftKey(), QString::fromUtf8(QJsonDocument(draft).toJson(QJsonDocument::Compact)));
}

void KeyedModel::store(workflow::Intent intent, const QString& said, std::function<void()> then) {
    const int here = cylinder_;
    const QString from = place();
    const KeyedEntry typed = entry();
    entries_.drop(from);
    ++on_their_way_[here];
    app()->run(std::move(intent), this,
               [this, here, from, typed, said, then = std::move(then)](const Result<workflow::Step>& result) {
                   if (--on_their_way_[here] == 0) on_their_way_.erase(here);
                   if (!result) {
                       entries_.put(from, typed);
                       goTo(from);
                       return;
                   }
                   saveDraft();
                   last_kept_ = said;
                   last_kept_id_ = typed.id;
                   emit lastKeptChanged();
                   buildRail();
                   emit kept(here);
                   if (then) then();
               });
}

}  // namespace lapwing
