// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A setting that is on or off: `text`, a quiet `detail`, `checked`, toggled(). The state is a position, a shape
// and a word.
Pressable {
    id: control

    property string detail
    // Large text on a small phone: the switch stands below its words.
    readonly property bool stacked: width < 15 * Theme.bodySize

    checkable: true
    fill: Theme.panel
    outlineColor: Theme.hairline
    padding: Theme.gap
    horizontalPadding: 14
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: checked
    Accessible.description: detail

    inside: Item {
        id: row

        implicitHeight: control.stacked ? words.height + Theme.space + Math.max(track.height, word.implicitHeight) : Math.max(track.height, words.height)
        implicitWidth: 240

        RowWords {
            id: words

            text: control.text
            detail: control.detail
            y: control.stacked ? 0 : (row.height - height) / 2
            width: control.stacked ? row.width : row.width - track.width - word.implicitWidth - 2 * Theme.space
            anchors.left: parent.left
        }

        LText {
            id: word

            role: "label"
            silent: true
            text: control.checked ? qsTr("on") : qsTr("off")
            anchors.right: track.left
            anchors.rightMargin: Theme.space
            anchors.verticalCenter: track.verticalCenter
        }

        Rectangle {
            id: track

            width: 52
            height: 30
            radius: 15
            color: control.checked ? Theme.ink : "transparent"
            border.width: Theme.outline
            border.color: Theme.ink
            y: control.stacked ? row.height - Math.max(height, word.implicitHeight) / 2 - height / 2 : (row.height - height) / 2
            anchors.right: parent.right

            Rectangle {
                width: 20
                height: 20
                radius: 10
                y: 5
                x: control.checked !== control.mirrored ? 27 : 5
                color: control.checked ? Theme.ground : Theme.ink
            }
        }
    }
}
