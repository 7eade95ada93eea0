// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>
#include <QString>

class QSettings;

namespace lapwing {

/// What the person chose in Settings. Kept in one small file beside the library; every change is written at
/// once.
class AppSettings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(QString pressureUnit READ pressureUnit WRITE setPressureUnit NOTIFY unitsChanged)
    Q_PROPERTY(QString clearanceUnit READ clearanceUnit WRITE setClearanceUnit NOTIFY unitsChanged)
    Q_PROPERTY(QString look READ look WRITE setLook NOTIFY lookChanged)
    Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY lookChanged)
    Q_PROPERTY(bool leftHand READ leftHand WRITE setLeftHand NOTIFY handlingChanged)
    Q_PROPERTY(bool bigKeys READ bigKeys WRITE setBigKeys NOTIFY handlingChanged)
    Q_PROPERTY(bool haptics READ haptics WRITE setHaptics NOTIFY handlingChanged)
    Q_PROPERTY(bool volumeKeeps READ volumeKeeps WRITE setVolumeKeeps NOTIFY handlingChanged)
    Q_PROPERTY(QString author READ author WRITE setAuthor NOTIFY authorChanged)
    Q_PROPERTY(bool callFirst READ callFirst WRITE setCallFirst NOTIFY handlingChanged)
    Q_PROPERTY(QString paper READ paper WRITE setPaper NOTIFY unitsChanged)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)

public:
    explicit AppSettings(const QString& file, QObject* parent = nullptr);

    [[nodiscard]] QString pressureUnit() const;   ///< file symbol of a pressure unit; "bar" unless chosen
    [[nodiscard]] QString clearanceUnit() const;  ///< "mm" or "thou"
    [[nodiscard]] QString look() const;           ///< "system", "workshop" or "daylight"
    [[nodiscard]] int textPercent() const;        ///< 100 to 200, on top of the system's own text size
    [[nodiscard]] bool leftHand() const;
    [[nodiscard]] bool bigKeys() const;
    [[nodiscard]] bool haptics() const;
    [[nodiscard]] bool volumeKeeps() const;
    [[nodiscard]] QString author() const;    ///< who writes notes here; empty until asked for
    [[nodiscard]] bool callFirst() const;    ///< "my call" before the findings are shown
    [[nodiscard]] QString paper() const;     ///< "A4" or "Letter"
    [[nodiscard]] QString language() const;  ///< "system", "en", "de" or "es"

    void setPressureUnit(const QString& symbol);
    void setClearanceUnit(const QString& symbol);
    void setLook(const QString& look);
    void setTextPercent(int percent);
    void setLeftHand(bool on);
    void setBigKeys(bool on);
    void setHaptics(bool on);
    void setVolumeKeeps(bool on);
    void setAuthor(const QString& name);
    void setCallFirst(bool on);
    void setPaper(const QString& paper);
    void setLanguage(const QString& language);

signals:
    void unitsChanged();
    void lookChanged();
    void handlingChanged();
    void authorChanged();
    void languageChanged();

private:
    QSettings* file_;
};

}  // namespace lapwing
