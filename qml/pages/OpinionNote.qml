// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Capture
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One remark with who wrote it and what was spoken with it. `note` as SecondOpinionModel lists it; change() and
// removed() of one's own.
Rectangle {
    id: card

    required property var note
    required property SoundModel sound

    signal change
    signal removed

    implicitHeight: column.height + 2 * Theme.space
    radius: Theme.corner
    color: Theme.ground
    border.width: 1
    border.color: Theme.hairline

    Column {
        id: column

        x: Theme.gap
        y: Theme.space
        width: card.width - 2 * Theme.gap
        spacing: Theme.space / 2

        LText {
            width: parent.width
            role: "figure"
            text: card.note.done ? qsTr("%1 (done)").arg(card.note.heading) : card.note.heading
        }

        LText {
            width: parent.width
            visible: text !== ""
            text: card.note.text
        }

        LText {
            width: parent.width
            role: "label"
            text: card.note.detail
        }

        Repeater {
            model: card.note.voices

            VoiceRow {
                required property var modelData
                required property int index

                number: index + 1
                width: column.width
                item: modelData
                sound: card.sound
                removable: false
            }
        }

        Flow {
            width: parent.width
            visible: card.note.mine
            spacing: Theme.space

            SideButton {
                objectName: "changeNote"
                text: qsTr("Change")
                onClicked: card.change()
            }

            SideButton {
                objectName: "removeNote"
                text: qsTr("Delete")
                onClicked: card.removed()
            }
        }
    }
}
