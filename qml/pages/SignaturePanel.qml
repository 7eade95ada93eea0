// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Whose signature a file carries and what that is worth. `signature` as BringInModel gives it. named(name) when the
// person says whose key it is.
Panel {
    id: panel

    required property var signature
    readonly property bool nameable: signature.key !== ""

    signal named(name: string)

    Column {
        width: parent.width
        spacing: Theme.space

        Row {
            width: parent.width
            spacing: Theme.gap

            StateMark {
                id: mark

                state: panel.signature.mark
                silent: true
            }

            Column {
                width: parent.width - mark.width - Theme.gap
                spacing: 4

                LText {
                    objectName: "signatureTitle"
                    width: parent.width
                    role: "heading"
                    text: panel.signature.title
                }

                LText {
                    width: parent.width
                    text: panel.signature.text
                }
            }
        }

        LText {
            width: parent.width
            visible: panel.signature.fingerprint !== ""
            role: "label"
            text: qsTr("Fingerprint of the key")
        }

        LText {
            objectName: "fingerprint"
            width: parent.width
            visible: text !== ""
            role: "figure"
            text: panel.signature.fingerprint
        }

        TextRow {
            id: name

            objectName: "keyName"
            width: parent.width
            visible: panel.nameable
            label: qsTr("Whose key is it?")
            text: panel.signature.named
            maximumLength: 80
        }

        Loader {
            width: parent.width
            active: panel.nameable && name.field.text.trim() !== panel.signature.named
            visible: active
            sourceComponent: SideButton {
                objectName: "nameKey"
                text: name.field.text.trim() === "" ? qsTr("Forget the name") : qsTr("Name this key")
                onClicked: panel.named(name.field.text)
            }
        }

        LText {
            width: parent.width
            visible: panel.signature.fingerprint !== ""
            role: "label"
            text: qsTr("Unaltered means: since the holder of this key handed it over, no byte was changed. It does not say who that is, that a reading is true, or when it was taken.")
        }
    }
}
