// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QVariant>

#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// What Settings lists beside the switches, which are AppSettings' own.
class SettingsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(QVariantList pressureUnits READ pressureUnits CONSTANT)
    Q_PROPERTY(QVariantList limits READ limits NOTIFY refreshed)
    Q_PROPERTY(QVariantList licences READ licences CONSTANT)
    Q_PROPERTY(QString version READ version CONSTANT)
    Q_PROPERTY(bool hapticsOffered READ hapticsOffered NOTIFY appChanged)
    Q_PROPERTY(QString folder READ folder NOTIFY appChanged)

public:
    using QObject::QObject;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] static QVariantList pressureUnits();  ///< {value, text}
    /// {text, figure, source}: numbers that a mechanic may want to look at.
    [[nodiscard]] QVariantList limits() const;
    /// {name, licence, holders} of everything that the app is made of.
    [[nodiscard]] static QVariantList licences();
    /// Who holds it, and the licence's own words, in the language that they are law in.
    [[nodiscard]] Q_INVOKABLE static QString licenceText(const QString& name);
    [[nodiscard]] static QString version();
    [[nodiscard]] bool hapticsOffered() const;
    [[nodiscard]] QString folder() const;  ///< where the library lies

signals:
    void appChanged();
    void refreshed();

private:
    AppContext* app_ = nullptr;
};

}  // namespace lapwing
