// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Templates as T
import Lapwing.Theme

// Where in a voice note one is; the thumb moves it. `at` 0..1, sought(share).
T.Slider {
    id: bar

    property real at: 0

    signal sought(share: real)

    value: at
    from: 0
    to: 1
    implicitHeight: Theme.minorTarget
    onMoved: sought(value)
    // A binding to `at` alone ends with the first touch.
    onAtChanged: if (!pressed)
        value = at

    Accessible.role: Accessible.Slider
    Accessible.name: qsTr("Place in the voice note, %1 %").arg(Math.round(100 * value))
    Accessible.ignored: Theme.isBehind(bar)

    background: Rectangle {
        x: bar.leftPadding
        y: (bar.height - height) / 2
        width: bar.availableWidth
        height: 8
        radius: 4
        color: Theme.key

        Rectangle {
            width: bar.visualPosition * parent.width
            height: parent.height
            radius: parent.radius
            color: Theme.info
        }
    }

    handle: Rectangle {
        x: bar.leftPadding + bar.visualPosition * (bar.availableWidth - width)
        y: (bar.height - height) / 2
        width: 28
        height: 28
        radius: 14
        color: Theme.ink
        border.width: bar.visualFocus ? 3 : 0
        border.color: Theme.info
    }
}
