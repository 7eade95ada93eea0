// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/card_form.h"

namespace lapwing {

CardForm::CardForm(QObject* parent) : FormModel(parent) {
    connect(this, &FormModel::reset, this, [this] {
        ++revision_;
        emit revised();
    });
}

void CardForm::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    emit appChanged();
}

void CardForm::setRecordId(const QString& id) {
    if (record_id_ == id) return;
    record_id_ = id;
    emit recordIdChanged();
    reload();
}

void CardForm::componentComplete() {
    complete_ = true;
    connect(app_, &AppContext::changed, this, [this](const workflow::Change& change) {
        if (under_way_ == 0 && concerns(change)) reload();
    });
    connect(app_, &AppContext::formatChanged, this, [this] {
        if (found_) refresh();
    });
    reload();
}

void CardForm::reload() {
    if (!complete_) return;
    found_ = read();
    if (found_)
        refresh();
    else
        show({});
}

void CardForm::store(workflow::Intent intent) {
    ++under_way_;
    app_->run(std::move(intent), this, [this](const Result<workflow::Step>&) {
        if (--under_way_ == 0) reload();
    });
    refresh();
}

void CardForm::remove() {
    if (auto intent = removal())
        app_->run(std::move(*intent), this, [this](const Result<workflow::Step>& step) {
            if (step) emit removed();
        });
}

QString CardForm::sentence(const Error& error) const {
    return format().text(error);
}

QStringList CardForm::sections() const {
    QStringList names;
    for (int row = 0; row < count(); ++row) {
        const QString name = data(index(row), SectionRole).toString();
        if (!names.contains(name)) names << name;
    }
    return names;
}

QStringList CardForm::keysOf(const QString& section) const {
    QStringList keys;
    for (int row = 0; row < count(); ++row)
        if (data(index(row), SectionRole).toString() == section) keys << data(index(row), KeyRole).toString();
    return keys;
}

QString CardForm::summaryOf(const QString& section) const {
    QStringList parts;
    for (int row = 0; row < count(); ++row) {
        if (data(index(row), SectionRole).toString() != section) continue;
        const QString shown = data(index(row), ShownRole).toString().simplified();
        if (shown.isEmpty()) continue;
        parts << data(index(row), LabelRole).toString() + QStringLiteral(": ") + shown;
    }
    return parts.join(QStringLiteral(" · "));
}

void CardForm::keepDraft(const QString& key, const QString& text) {
    const bool before = !draft(key).isEmpty();
    app_->keepDraft(draftRoom() + QLatin1Char('/') + key, text);
    // Its line says that something was written and not kept.
    if (before != text.isEmpty()) return;
    ++revision_;
    emit revised();
}

QString CardForm::draft(const QString& key) const {
    return app_->draft(draftRoom() + QLatin1Char('/') + key);
}

}  // namespace lapwing
