// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/known_keys_model.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QPointer>
#include <algorithm>

#include "core/workflow/hand_over.h"

namespace lapwing {

void KnownKeysModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    connect(app_, &AppContext::formatChanged, this, &KnownKeysModel::read);
    emit appChanged();
    read();
}

void KnownKeysModel::read() {
    keys_.clear();
    for (const auto& one : app_->desk().named_keys())
        keys_ << QVariantMap{{"key", QString::fromStdString(one.public_key)},
                             {"name", QString::fromStdString(one.name)},
                             {"fingerprint", QString::fromStdString(exchange::fingerprint(one.public_key))},
                             {"since", one.since ? app_->format().shortDate(*one.since) : QString()}};
    emit refreshed();
}

QString KnownKeysModel::own() const {
    return app_ ? QString::fromStdString(workflow::own_fingerprint(app_->desk())) : QString();
}

void KnownKeysModel::store(const QString& key, const QString& name, std::optional<Timestamp> since) {
    const auto done = [self = QPointer<KnownKeysModel>(this), app = app_](const Status& stored) {
        QMetaObject::invokeMethod(
            app,
            [self, app, stored] {
                if (!stored) app->tell(stored.error());
                if (self) self->read();
            },
            Qt::QueuedConnection);
    };
    app_->desk().name_key(key.toStdString(), name.toStdString(), done, since);
}

void KnownKeysModel::rename(const QString& key, const QString& name) {
    if (!name.trimmed().isEmpty()) store(key, name.trimmed());
}

void KnownKeysModel::forget(const QString& key) {
    const auto named = app_->desk().named_keys();
    const auto one = std::ranges::find(named, key.toStdString(), &store::Queries::NamedKey::public_key);
    if (one == named.end()) return;
    for (const auto& item : keys_)
        if (item.toMap()["key"].toString() == key) forgotten_ = item.toMap();
    forgotten_since_ = one->since;
    store(key, {});
}

void KnownKeysModel::undoForget() {
    if (forgotten_.isEmpty()) return;
    store(forgotten_["key"].toString(), forgotten_["name"].toString(), forgotten_since_);
    forgotten_.clear();
}

void KnownKeysModel::copyOwn() {
    if (own().isEmpty()) return;
    QGuiApplication::clipboard()->setText(own());
    copied_ = true;
    emit refreshed();
}

}  // namespace lapwing
