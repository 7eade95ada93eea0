// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>

#include "platform/api/appearance.h"
#include "qml/viewmodels/app_settings.h"

namespace lapwing {

/// How the app looks now: what the person chose in Settings over what the system says.
class LookModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(bool dark READ dark NOTIFY changed)
    Q_PROPERTY(double textScale READ textScale NOTIFY changed)
    Q_PROPERTY(bool reducedMotion READ reducedMotion NOTIFY changed)

public:
    LookModel(platform::Appearance& appearance, AppSettings& settings, QObject* parent = nullptr);

    [[nodiscard]] bool dark() const;
    /// System text size times the size of Settings, 1.0 to 2.0.
    [[nodiscard]] double textScale() const;
    [[nodiscard]] bool reducedMotion() const;

signals:
    void changed();

private:
    platform::Appearance& appearance_;
    AppSettings& settings_;
};

}  // namespace lapwing
