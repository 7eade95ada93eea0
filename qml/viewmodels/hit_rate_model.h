// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>
#include <QQmlParserStatus>
#include <memory>

#include "core/compare/proof.h"
#include "core/workflow/background.h"
#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// How many predictions of plans held, over all engines of the library. Worked out off the UI thread, again
/// when something was committed.
class HitRateModel : public QObject, public QQmlParserStatus {
    Q_OBJECT
    Q_INTERFACES(QQmlParserStatus)
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    /// One sentence; empty until it is known.
    Q_PROPERTY(QString text READ text NOTIFY refreshed)

public:
    using QObject::QObject;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] QString text() const;

    void classBegin() override {}
    void componentComplete() override;

signals:
    void appChanged();
    void refreshed();

private:
    void think();

    AppContext* app_ = nullptr;
    std::optional<compare::HitRate> rate_;
    std::unique_ptr<workflow::Background> thinker_;
};

}  // namespace lapwing
