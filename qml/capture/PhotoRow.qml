// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One photo in a list: small, with what it shows. `item` as EvidenceModel lists it.
Panel {
    id: row

    required property var item

    readonly property bool lost: item.file === ""

    clickable: true
    text: [item.title, item.detail, item.reading].filter(part => part !== "").join(", ")

    Row {
        width: parent.width
        spacing: Theme.gap

        Rectangle {
            id: frame

            width: 96
            height: 96
            radius: 6
            color: Theme.key

            // Decoded small, and not by the thread that draws.
            Image {
                anchors.fill: parent
                source: row.item.kind === "photo" ? row.item.file : ""
                sourceSize.width: 192
                sourceSize.height: 192
                fillMode: Image.PreserveAspectCrop
                asynchronous: true
                cache: false
            }

            Symbol {
                anchors.centerIn: parent
                visible: row.lost
                name: "question"
            }
        }

        Column {
            width: parent.width - frame.width - Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2

            LText {
                width: parent.width
                role: "heading"
                text: row.item.title
            }

            LText {
                width: parent.width
                visible: text !== ""
                text: row.item.reading
            }

            LText {
                width: parent.width
                role: "label"
                text: row.lost ? qsTr("%1 · its file is missing").arg(row.item.detail) : row.item.detail
            }
        }
    }
}
