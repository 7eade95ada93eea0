// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QVariant>

#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// Whose keys are known here: people named by the person, and this library's own key.
class KnownKeysModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(QVariantList keys READ keys NOTIFY refreshed)
    Q_PROPERTY(QVariantMap forgotten READ forgotten NOTIFY refreshed)
    Q_PROPERTY(QString own READ own NOTIFY refreshed)
    Q_PROPERTY(bool copied READ copied NOTIFY refreshed)

public:
    using QObject::QObject;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    /// {key, name, fingerprint, since}, by name.
    [[nodiscard]] QVariantList keys() const { return keys_; }
    /// The key that was forgotten last, as it stood in the list; empty when there is nothing to take back.
    [[nodiscard]] QVariantMap forgotten() const { return forgotten_; }
    /// Fingerprint of this library's own key; empty before its first session file.
    [[nodiscard]] QString own() const;
    [[nodiscard]] bool copied() const { return copied_; }

    /// A name without letters changes nothing: forgetting has its own touch.
    Q_INVOKABLE void rename(const QString& key, const QString& name);
    /// From then on the key is an unknown one again.
    Q_INVOKABLE void forget(const QString& key);
    Q_INVOKABLE void undoForget();
    /// The own fingerprint into the clipboard.
    Q_INVOKABLE void copyOwn();

signals:
    void appChanged();
    void refreshed();

private:
    void read();
    void store(const QString& key, const QString& name, std::optional<Timestamp> since = {});

    AppContext* app_ = nullptr;
    QVariantList keys_;
    QVariantMap forgotten_;
    std::optional<Timestamp> forgotten_since_;
    bool copied_ = false;
};

}  // namespace lapwing
