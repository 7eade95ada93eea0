// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// A list that folds: what, which figure, where from.
Column {
    id: list

    property string heading
    property string text
    property var items: []
    property bool opened: false

    spacing: Theme.space / 2

    ListRow {
        width: parent.width
        objectName: "open"
        text: list.heading
        detail: list.text
        figure: list.items.length
        forward: false
        onClicked: list.opened = !list.opened
        Accessible.description: list.opened ? qsTr("Touch to fold") : qsTr("Touch to read it all")
    }

    Repeater {
        model: list.opened ? list.items : []

        Panel {
            id: line

            required property var modelData

            width: list.width

            Column {
                width: parent.width
                spacing: 2

                PairLine {
                    width: parent.width
                    name: line.modelData.text
                    value: line.modelData.figure
                }

                LText {
                    width: parent.width
                    visible: text !== ""
                    role: "label"
                    text: line.modelData.source
                }
            }
        }
    }
}
