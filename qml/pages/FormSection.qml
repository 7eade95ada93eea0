// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// A section of a form: its name with what stands in it, and its lines once it is opened. edit(key): a line was
// touched.
Column {
    id: section

    required property CardForm form
    required property string name
    property bool opened: false

    // The form goes before its lines do when a page closes.
    readonly property int revision: form ? form.revision : 0
    readonly property var keys: revision > 0 ? form.keysOf(name) : []
    readonly property string summary: revision > 0 ? form.summaryOf(name) : ""

    signal edit(string key)

    spacing: Theme.space

    Pressable {
        id: head

        objectName: "section_" + section.name
        width: parent.width
        text: section.name
        fill: "transparent"
        horizontalPadding: 2
        Accessible.description: section.opened ? qsTr("Touch to fold") : section.summary
        onClicked: section.opened = !section.opened

        inside: Item {
            implicitHeight: words.height
            implicitWidth: 200

            Column {
                id: words

                anchors.left: parent.left
                anchors.right: arrow.left
                anchors.rightMargin: Theme.space
                anchors.verticalCenter: parent.verticalCenter
                spacing: 2

                LText {
                    width: parent.width
                    role: "heading"
                    silent: true
                    text: section.name
                }

                LText {
                    width: parent.width
                    // A taste of what one touch opens; it may be cut.
                    readonly property bool preview: true

                    visible: !section.opened
                    role: "label"
                    silent: true
                    text: section.summary === "" ? qsTr("Nothing yet") : section.summary
                    maximumLineCount: 3
                    elide: Text.ElideRight
                }
            }

            Symbol {
                id: arrow

                name: section.opened ? "up" : "down"
                size: 24
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
            }
        }
    }

    Repeater {
        model: section.opened ? section.keys : []

        FormLine {
            required property string modelData

            width: section.width
            form: section.form
            key: modelData
            onEdit: section.edit(modelData)
        }
    }
}
