// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QVariant>

#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// Adds engines and opens sessions on them.
class EngineStarter : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(QVariantList arrangements READ arrangements NOTIFY appChanged)
    Q_PROPERTY(QVariantList cycles READ cycles NOTIFY appChanged)
    Q_PROPERTY(QVariantList fuels READ fuels NOTIFY appChanged)

public:
    using QObject::QObject;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] QVariantList arrangements() const;  ///< {value, text}
    [[nodiscard]] QVariantList cycles() const;        ///< likewise
    [[nodiscard]] QVariantList fuels() const;         ///< likewise

    /// Adds an engine with as little as it takes; `engineAdded` follows once it is stored, `engineRefused`
    /// where it can't be. Empty when it was taken, or what is wrong.
    Q_INVOKABLE QString addEngine(const QString& name, const QString& cylinders, const QString& arrangement,
                                  const QString& cycle = {}, const QString& fuel = {});
    /// Opens a session; `sessionOpened` follows once it is stored.
    Q_INVOKABLE void openSession(const QString& engineId);

signals:
    void appChanged();
    void engineAdded(const QString& engineId);
    void engineRefused();
    void sessionOpened(const QString& sessionId);

private:
    [[nodiscard]] QString titleOfNext(EngineId engine) const;
    [[nodiscard]] std::optional<SessionId> emptySession(EngineId engine) const;

    AppContext* app_ = nullptr;
};

}  // namespace lapwing
