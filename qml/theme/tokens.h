// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QColor>
#include <QLocale>
#include <QObject>
#include <algorithm>
#include <cmath>

#include "qml/fonts/typeface.h"

namespace lapwing::theme {

/// The tokens of the two looks, for the singleton Theme. Everything on the screen reads some of them, so they
/// stand before the first page does: as bindings in QML they were a fortieth part of the app's start. Lengths
/// and text sizes are in device-independent pixels.
class Tokens : public QObject {
    Q_OBJECT
    QML_ELEMENT

    Q_PROPERTY(bool dark MEMBER dark_ NOTIFY lookChanged)
    /// The system's text size, 1.0 to 2.0.
    Q_PROPERTY(double textScale MEMBER text_scale_ NOTIFY textScaleChanged)
    Q_PROPERTY(bool bigKeys MEMBER big_keys_ NOTIFY bigKeysChanged)
    Q_PROPERTY(bool leftHand MEMBER left_hand_ NOTIFY leftHandChanged)
    Q_PROPERTY(bool reducedMotion MEMBER reduced_motion_ NOTIFY reducedMotionChanged)
    Q_PROPERTY(bool rightToLeft MEMBER right_to_left_ NOTIFY rightToLeftChanged)

    Q_PROPERTY(QColor ground READ ground NOTIFY lookChanged)
    Q_PROPERTY(QColor panel READ panel NOTIFY lookChanged)
    Q_PROPERTY(QColor key READ key NOTIFY lookChanged)
    Q_PROPERTY(QColor keyPressed READ keyPressed NOTIFY lookChanged)
    Q_PROPERTY(QColor hairline READ hairline NOTIFY lookChanged)
    Q_PROPERTY(QColor chosen READ chosen NOTIFY lookChanged)
    Q_PROPERTY(QColor scrim READ scrim CONSTANT)
    Q_PROPERTY(QColor ink READ ink NOTIFY lookChanged)
    Q_PROPERTY(QColor quietInk READ quietInk NOTIFY lookChanged)
    Q_PROPERTY(QColor act READ act CONSTANT)
    Q_PROPERTY(QColor actPressed READ actPressed CONSTANT)
    Q_PROPERTY(QColor actInk READ actInk CONSTANT)
    Q_PROPERTY(QColor actOutline READ actOutline NOTIFY lookChanged)
    Q_PROPERTY(QColor good READ good NOTIFY lookChanged)
    Q_PROPERTY(QColor borderline READ borderline NOTIFY lookChanged)
    Q_PROPERTY(QColor fault READ fault NOTIFY lookChanged)
    Q_PROPERTY(QColor info READ info NOTIFY lookChanged)

    // Leak paths look the same in both looks, and so does the ink on them.
    Q_PROPERTY(QColor rings READ rings CONSTANT)
    Q_PROPERTY(QColor intake READ intake CONSTANT)
    Q_PROPERTY(QColor exhaust READ exhaust CONSTANT)
    Q_PROPERTY(QColor gasket READ gasket CONSTANT)
    Q_PROPERTY(QColor other READ other CONSTANT)
    Q_PROPERTY(QColor inkOnPath READ inkOnPath CONSTANT)

    Q_PROPERTY(int space MEMBER space_ CONSTANT)
    Q_PROPERTY(int gap MEMBER gap_ CONSTANT)
    Q_PROPERTY(int corner MEMBER corner_ CONSTANT)
    Q_PROPERTY(int outline MEMBER outline_ CONSTANT)

    Q_PROPERTY(int primaryTarget MEMBER primary_target_ CONSTANT)
    Q_PROPERTY(int secondaryTarget MEMBER secondary_target_ CONSTANT)
    Q_PROPERTY(int minorTarget MEMBER minor_target_ CONSTANT)
    Q_PROPERTY(int gloveKey MEMBER glove_key_ CONSTANT)

    /// Milliseconds.
    Q_PROPERTY(int motion READ motion NOTIFY reducedMotionChanged)

    Q_PROPERTY(QString family READ family CONSTANT)
    Q_PROPERTY(int titleSize READ titleSize NOTIFY textScaleChanged)
    Q_PROPERTY(int headingSize READ headingSize NOTIFY textScaleChanged)
    Q_PROPERTY(int bodySize READ bodySize NOTIFY textScaleChanged)
    Q_PROPERTY(int labelSize READ labelSize NOTIFY textScaleChanged)
    Q_PROPERTY(int buttonSize READ buttonSize NOTIFY textScaleChanged)
    Q_PROPERTY(int keySize READ keySize NOTIFY textScaleChanged)
    Q_PROPERTY(int numeralSize READ numeralSize NOTIFY textScaleChanged)
    Q_PROPERTY(int readoutSize READ readoutSize NOTIFY textScaleChanged)
    /// No readout may shrink below this to fit, whatever the screen.
    Q_PROPERTY(int readoutFloor MEMBER readout_floor_ CONSTANT)
    /// Marks grow with the text, but not as far.
    Q_PROPERTY(double markSize READ markSize NOTIFY textScaleChanged)

public:
    [[nodiscard]] QColor ground() const { return dark_ ? QColor(0x14181B) : QColor(0xF6F3EA); }
    [[nodiscard]] QColor panel() const { return dark_ ? QColor(0x1F262A) : QColor(0xFFFFFF); }
    [[nodiscard]] QColor key() const { return dark_ ? QColor(0x2A3237) : QColor(0xE6DFCD); }
    [[nodiscard]] QColor keyPressed() const { return dark_ ? QColor(0x353F46) : QColor(0xD2C8AF); }
    [[nodiscard]] QColor hairline() const { return dark_ ? QColor(0x1F262A) : QColor(0xD8D0BC); }
    [[nodiscard]] QColor chosen() const { return dark_ ? QColor(0x1A2731) : QColor(0xEEF5FA); }
    [[nodiscard]] QColor scrim() const { return QColor::fromRgba(0x99000000); }
    [[nodiscard]] QColor ink() const { return dark_ ? QColor(0xF4F1E6) : QColor(0x14181B); }
    [[nodiscard]] QColor quietInk() const { return dark_ ? QColor(0xD8D4C6) : QColor(0x3A382F); }
    [[nodiscard]] QColor act() const { return QColor(0xF2B134); }
    [[nodiscard]] QColor actPressed() const { return QColor(0xD99A1E); }
    [[nodiscard]] QColor actInk() const { return QColor(0x14181B); }
    [[nodiscard]] QColor actOutline() const { return dark_ ? QColor(Qt::transparent) : QColor(0x14181B); }
    [[nodiscard]] QColor good() const { return dark_ ? QColor(0x38D3A6) : QColor(0x00563F); }
    [[nodiscard]] QColor borderline() const { return dark_ ? QColor(0xF5E663) : QColor(0x5E5200); }
    [[nodiscard]] QColor fault() const { return dark_ ? QColor(0xFF9466) : QColor(0x8F2D06); }
    [[nodiscard]] QColor info() const { return dark_ ? QColor(0x7CC4F2) : QColor(0x064C78); }

    [[nodiscard]] QColor rings() const { return QColor(0x7FB8DD); }
    [[nodiscard]] QColor intake() const { return QColor(0xB9A6E8); }
    [[nodiscard]] QColor exhaust() const { return QColor(0xF2A0B5); }
    [[nodiscard]] QColor gasket() const { return QColor(0xCFC7A8); }
    [[nodiscard]] QColor other() const { return QColor(0x9FD8C0); }
    [[nodiscard]] QColor inkOnPath() const { return QColor(0x14181B); }

    [[nodiscard]] int motion() const { return reduced_motion_ ? 0 : 150; }

    [[nodiscard]] QString family() const { return fonts::typeface(); }
    [[nodiscard]] int titleSize() const { return scaled(20); }
    [[nodiscard]] int headingSize() const { return scaled(18); }
    [[nodiscard]] int bodySize() const { return scaled(16); }
    [[nodiscard]] int labelSize() const { return scaled(14); }
    [[nodiscard]] int buttonSize() const { return scaled(20); }
    [[nodiscard]] int keySize() const { return scaled(28); }
    [[nodiscard]] int numeralSize() const { return scaled(36); }
    [[nodiscard]] int readoutSize() const { return std::min(scaled(80), 112); }
    [[nodiscard]] double markSize() const { return 22 * std::clamp(text_scale_, 1.0, 1.5); }

signals:
    void lookChanged();
    void textScaleChanged();
    void bigKeysChanged();
    void leftHandChanged();
    void reducedMotionChanged();
    void rightToLeftChanged();

private:
    [[nodiscard]] int scaled(int size) const {
        return static_cast<int>(std::lround(size * std::clamp(text_scale_, 1.0, 2.0)));
    }

    bool dark_ = true;
    double text_scale_ = 1.0;
    bool big_keys_ = false;
    bool left_hand_ = false;
    bool reduced_motion_ = false;
    bool right_to_left_ = QLocale().textDirection() == Qt::RightToLeft;

    int space_ = 8;
    int gap_ = 12;
    int corner_ = 14;
    int outline_ = 2;
    int primary_target_ = 76;
    int secondary_target_ = 56;
    int minor_target_ = 48;
    int glove_key_ = 120;
    int readout_floor_ = 44;
};

}  // namespace lapwing::theme
