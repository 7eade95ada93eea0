// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>
#include <QQmlParserStatus>
#include <QString>

#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// What pages about one engine's records have in common: they look again when something in the engine or its
/// sessions was committed, or the units changed.
class EngineBacked : public QObject, public QQmlParserStatus {
    Q_OBJECT
    Q_INTERFACES(QQmlParserStatus)
    QML_ANONYMOUS
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(QString engineId READ engineId WRITE setEngineId NOTIFY engineIdChanged REQUIRED)
    Q_PROPERTY(QString engineName READ engineName NOTIFY refreshed)

public:
    using QObject::QObject;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] QString engineId() const { return QString::fromStdString(engine_.text()); }
    void setEngineId(const QString& id);
    [[nodiscard]] QString engineName() const { return name_; }

    void classBegin() override {}
    void componentComplete() override;

signals:
    void appChanged();
    void engineIdChanged();
    /// Everything shown may have changed.
    void refreshed();

protected:
    /// Called on the UI thread before `refreshed`, with the engine there or gone.
    virtual void refresh() = 0;
    [[nodiscard]] EngineId engine() const { return engine_; }
    void reload();

private:
    AppContext* app_ = nullptr;
    EngineId engine_;
    QString name_;
    bool complete_ = false;
};

}  // namespace lapwing
