// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QVariantList>

#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// Every number that the app assumes, in groups: those behind the odds, the other sets that the odds are held
/// against, and those of findings and calculators.
class AssumptionsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(int version READ version NOTIFY refreshed)
    Q_PROPERTY(QVariantList groups READ groups NOTIFY refreshed)

public:
    using QObject::QObject;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    /// Of the numbers behind the odds; it stands in every report.
    [[nodiscard]] int version() const { return version_; }
    /// {heading, text, items}; each item is {text, figure, source}.
    [[nodiscard]] QVariantList groups() const { return groups_; }

signals:
    void appChanged();
    void refreshed();

private:
    void refresh();

    AppContext* app_ = nullptr;
    int version_ = 0;
    QVariantList groups_;
};

}  // namespace lapwing
