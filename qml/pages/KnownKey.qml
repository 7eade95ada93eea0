// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// A person by their key: `known` as KnownKeysModel lists it; renamed(name), forgotten().
Panel {
    id: panel

    required property var known

    signal renamed(name: string)
    signal forgotten

    Column {
        width: parent.width
        spacing: Theme.space

        TextRow {
            id: name

            objectName: "name"
            width: parent.width
            label: qsTr("Name")
            text: panel.known.name
            maximumLength: 80
        }

        LText {
            objectName: "fingerprint"
            width: parent.width
            role: "figure"
            text: panel.known.fingerprint
        }

        LText {
            width: parent.width
            visible: panel.known.since !== ""
            role: "label"
            text: qsTr("Known since %1").arg(panel.known.since)
        }

        Flow {
            width: parent.width
            spacing: Theme.space

            SideButton {
                objectName: "rename"
                // Always there, so that nothing moves under the thumb.
                enabled: name.field.text.trim() !== "" && name.field.text.trim() !== panel.known.name
                text: qsTr("Rename")
                onClicked: panel.renamed(name.field.text)
            }

            SideButton {
                objectName: "forget"
                text: qsTr("Forget")
                onClicked: panel.forgotten()
            }
        }
    }
}
