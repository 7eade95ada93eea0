// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A step or a place in a picture: its number in a disc, and what it says. A screen reader says both in one.
Item {
    id: line

    required property int number
    required property string text

    implicitHeight: Math.max(disc.height, words.height)
    Accessible.role: Accessible.StaticText
    Accessible.name: line.number + ". " + line.text
    Accessible.ignored: Theme.isBehind(line)

    Rectangle {
        id: disc

        // Room for two digits clear of the ring.
        width: Math.round(Theme.textSize(32))
        height: width
        radius: width / 2
        color: "transparent"
        border.color: Theme.ink
        border.width: 2
        anchors.left: parent.left

        LText {
            silent: true
            role: "figure"
            text: line.number
            font.pixelSize: Theme.labelSize
            anchors.centerIn: parent
        }
    }

    LText {
        id: words

        silent: true
        text: line.text
        anchors.left: disc.right
        anchors.leftMargin: Theme.gap
        anchors.right: parent.right
        // One line stands beside the middle of the disc.
        y: lineCount === 1 ? (disc.height - height) / 2 : Math.max(0, (disc.height - Theme.bodySize * 1.25) / 2)
    }
}
