// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A line to tick: `text`, a quiet `detail`, `checked`, toggled().
Pressable {
    id: control

    property string detail

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
        implicitHeight: Math.max(box.height, words.height)
        implicitWidth: 200

        Rectangle {
            id: box

            width: 28
            height: 28
            radius: 6
            color: control.checked ? Theme.ink : "transparent"
            border.width: Theme.outline
            border.color: Theme.ink
            anchors.left: parent.left
            anchors.verticalCenter: parent.verticalCenter

            Symbol {
                visible: control.checked
                name: "check"
                size: 22
                color: Theme.ground
                anchors.centerIn: parent
            }
        }

        RowWords {
            id: words

            text: control.text
            detail: control.detail
            anchors.left: box.right
            anchors.leftMargin: Theme.gap
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
        }
    }
}
