// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Capture
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// A reading, an exit, a finding ... as a mentor sees it: its photos beside it, its voice notes and the remarks on it.
// `thing` as SecondOpinionModel lists it.
Panel {
    id: panel

    required property var thing
    required property SoundModel sound

    signal add
    signal change(note: var)
    signal removed(noteId: string)
    signal opened(photo: var)

    objectName: "thing_" + thing.key
    about: [thing.title, thing.text, thing.detail].filter(part => part).join(", ")

    Column {
        id: column

        width: parent.width
        spacing: Theme.space

        Item {
            id: head

            // Large text on a small phone: words that had to share their line would break in their middle.
            readonly property bool below: width - adder.width - Theme.space < 9 * Theme.bodySize

            width: parent.width
            height: below ? words.height + Theme.space + adder.height : Math.max(words.height, adder.height)

            Column {
                id: words

                y: head.below ? 0 : (head.height - height) / 2
                width: head.below ? head.width : head.width - adder.width - Theme.space
                anchors.left: parent.left
                spacing: 2

                LText {
                    width: parent.width
                    role: "figure"
                    text: panel.thing.title
                }

                LText {
                    width: parent.width
                    visible: text !== ""
                    text: panel.thing.text
                    font.strikeout: panel.thing.replaced
                }

                LText {
                    width: parent.width
                    visible: text !== ""
                    role: "label"
                    text: panel.thing.detail
                }
            }

            IconWord {
                id: adder

                objectName: "addNote"
                anchors.right: parent.right
                y: head.below ? head.height - height : (head.height - height) / 2
                width: implicitWidth
                symbol: "pencil"
                text: qsTr("Note")
                Accessible.name: qsTr("Note on %1").arg(panel.thing.title)
                onClicked: panel.add()
            }
        }

        Repeater {
            model: panel.thing.photos

            PhotoRow {
                required property var modelData
                required property int index

                objectName: "photo_" + index
                width: column.width
                item: modelData
                onClicked: panel.opened(modelData)
            }
        }

        Repeater {
            model: panel.thing.voices

            VoiceRow {
                required property var modelData
                required property int index

                objectName: "voice_" + index
                number: index + 1
                width: column.width
                item: modelData
                sound: panel.sound
                removable: false
            }
        }

        Repeater {
            model: panel.thing.notes

            OpinionNote {
                required property var modelData
                required property int index

                objectName: "note_" + index
                width: column.width
                note: modelData
                sound: panel.sound
                onChange: panel.change(modelData)
                onRemoved: panel.removed(modelData.id)
            }
        }
    }
}
