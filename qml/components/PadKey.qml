// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// One key of the pad. struck() comes when the finger leaves it again: one that only swipes across strikes nothing. One
// that rests on it strikes too, or held() comes where holding means something else.
Pressable {
    id: control

    required property string face
    property string symbol
    property bool holds: false

    signal struck
    signal held

    targetKind: "secondary"
    padding: 0
    horizontalPadding: 0
    focusPolicy: Qt.TabFocus
    onClicked: struck()
    onPressAndHold: {
        if (holds)
            held();
        else
            struck();
    }

    inside: Item {
        LText {
            anchors.centerIn: parent
            visible: control.symbol === ""
            silent: true
            text: control.face
            font.pixelSize: Math.min(Theme.keySize, control.height * 0.6)
            font.bold: true
        }

        Symbol {
            anchors.centerIn: parent
            name: control.symbol
            size: Math.min(32 * Theme.textScale, control.height * 0.6)
        }
    }
}
