// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/keyed_model.h"

#include <QJsonDocument>
#include <QPointer>
#include <tuple>
#include <utility>

#include "qml/viewmodels/cylinder_order.h"
#include "qml/viewmodels/step_text.h"

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
    const bool other = field_ != key;
    field_ = key;
    if (other) comeBack();
    changed();
}

void KeyedModel::comeBack() {
    if (!std::as_const(*this).entry().typed(field_).isEmpty()) entry().next_replaces = true;
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
    const bool other = cylinder_ != cylinder || field_ != mainField();
    cylinder_ = cylinder;
    field_ = mainField();
    if (other) comeBack();
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
    if (last_kept_stands_ && !last_kept_stands_()) takeBack();
    // A cylinder can be taken off the engine card while the pad is open.
    if (!takes(cylinder_)) cylinder_ = numbers_in_order(engine()).front();
    if (field_.isEmpty()) field_ = mainField();
    buildRail();
    edited();
}

void KeyedModel::undo(qint64 step) {
    app()->desk().undo(
        step, [self = QPointer<KeyedModel>(this), app = app()](const Result<workflow::Step>& result) {
            QMetaObject::invokeMethod(
                app,
                [self, app, result] {
                    if (!result) return app->tell(result.error());
                    if (!self) return;
                    self->last_kept_ = tr("Undone: %1").arg(step_text(*result, app->format()));
                    emit self->lastKeptChanged();
                },
                Qt::QueuedConnection);
        });
}

void KeyedModel::forgetKept() {
    last_kept_.clear();
    last_kept_entry_ = {};
    last_kept_stands_ = {};
    emit lastKeptChanged();
}

/// What was kept last was undone: it stands where it was typed again, to be corrected.
void KeyedModel::takeBack() {
    const QString place = last_kept_place_;
    KeyedEntry typed = last_kept_entry_;
    forgetKept();
    // Something else is typed there meanwhile.
    if (!entries_.at(place).blank()) return;
    typed.id = Uuid::make(app()->desk().clock());
    typed.next_replaces = true;
    entries_.put(place, typed);
    takenBack();
    goTo(place);
    saveDraft();
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
    const Uuid id = entry().id;
    store(std::move(intent), said, std::move(then), [this, id] { return recorded(id); });
}

void KeyedModel::store(workflow::Intent intent, const QString& said, std::function<void()> then,
                       std::function<bool()> stands) {
    const int here = cylinder_;
    const QString from = place();
    const KeyedEntry typed = entry();
    entries_.drop(from);
    ++on_their_way_[here];
    app()->run(std::move(intent), this,
               [this, here, from, typed, said, then = std::move(then),
                stands = std::move(stands)](const Result<workflow::Step>& result) {
                   if (--on_their_way_[here] == 0) on_their_way_.erase(here);
                   if (!result) {
                       // Refused digits are not continued by the next one that is typed.
                       KeyedEntry back = typed;
                       back.next_replaces = true;
                       entries_.put(from, std::move(back));
                       goTo(from);
                       return;
                   }
                   saveDraft();
                   last_kept_ = said;
                   last_kept_entry_ = typed;
                   last_kept_place_ = from;
                   last_kept_stands_ = stands;
                   emit lastKeptChanged();
                   buildRail();
                   emit kept(here);
                   if (then) then();
               });
}

}  // namespace lapwing
