// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A picture with its word under it. `symbol` is a name Symbol knows; `text` is the word.
Pressable {
    id: control

    required property string symbol
    property bool chosen: false

    horizontalPadding: Theme.space
    verticalPadding: Theme.space / 2
    stretch: false
    fill: chosen ? Theme.chosen : Theme.key
    outlineColor: chosen ? Theme.info : "transparent"

    inside: Item {
        implicitWidth: Math.max(picture.width, word.implicitWidth)
        implicitHeight: picture.height + 2 + word.implicitHeight

        Symbol {
            id: picture

            name: control.symbol
            anchors.horizontalCenter: parent.horizontalCenter
            y: Math.max(0, (parent.height - parent.implicitHeight) / 2)
        }

        LText {
            id: word

            role: "label"
            silent: true
            text: control.text
            color: Theme.ink
            font.pixelSize: Theme.frameSize(14, Theme.isCrowded(control.Window.width, control.Window.height))
            horizontalAlignment: Text.AlignHCenter
            anchors.top: picture.bottom
            anchors.topMargin: 2
            anchors.left: parent.left
            anchors.right: parent.right
        }
    }
}
