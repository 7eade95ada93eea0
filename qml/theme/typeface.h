// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>

#include "qml/fonts/typeface.h"

namespace lapwing::theme {

/// The app's typeface for QML; the system's own where it could not be loaded.
class Typeface : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString family READ family CONSTANT)

public:
    QString family() const { return fonts::typeface(); }
};

}  // namespace lapwing::theme
