// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>

namespace lapwing::theme {

/// The family name under which the app's own B612 (regular and bold) can be asked for, on screen and in
/// print. Loads the fonts at the first call. Not "B612": see the .cpp file.
QString typeface();

/// `typeface()` for QML.
class Typeface : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString family READ family CONSTANT)

public:
    QString family() const { return typeface(); }
};

}  // namespace lapwing::theme
