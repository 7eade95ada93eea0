// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// The one amber action of a screen. `text`, clicked(). `yields`: another one has the screen now. `roomFor`: the longest
// text it comes to, whose room it keeps, so that nothing jumps when its words change.
Pressable {
    id: control

    property bool yields: false
    property string roomFor

    targetKind: "primary"
    horizontalPadding: Theme.isCompact(Window.width, Window.height) ? Theme.space : 2 * Theme.space
    fill: yields ? Theme.key : Theme.act
    fillPressed: yields ? Theme.keyPressed : Theme.actPressed
    outlineColor: yields ? "transparent" : Theme.actOutline

    inside: Item {
        implicitWidth: Math.max(words.implicitWidth, room.implicitWidth)
        implicitHeight: Math.max(words.implicitHeight, room.implicitHeight)

        component Words: LText {
            role: "button"
            silent: true
            font.pixelSize: Theme.frameSize(20, Theme.isCrowded(control.Window.width, control.Window.height))
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
        }

        Words {
            id: words

            anchors.fill: parent
            text: control.text
            color: control.yields ? Theme.ink : Theme.actInk
        }

        Words {
            id: room

            width: parent.width
            opacity: 0
            text: control.roomFor
        }
    }
}
