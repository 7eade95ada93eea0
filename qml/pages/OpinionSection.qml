// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One part of a second opinion, such as all that belongs to a cylinder. `section` as SecondOpinionModel lists it.
Column {
    id: list

    required property var section
    required property SoundModel sound

    signal add(thing: var)
    signal change(thing: var, note: var)
    signal removed(noteId: string)
    signal opened(photo: var)

    spacing: Theme.space
    topPadding: Theme.space

    Row {
        width: parent.width
        spacing: Theme.space

        StateMark {
            id: mark

            visible: list.section.state !== ""
            state: list.section.state === "" ? "none" : list.section.state
            anchors.verticalCenter: parent.verticalCenter
        }

        LText {
            width: parent.width - (mark.visible ? mark.width + Theme.space : 0)
            role: "heading"
            text: list.section.title
        }
    }

    Repeater {
        model: list.section.things.length

        OpinionThing {
            required property int index

            width: list.width
            thing: list.section.things[index]
            sound: list.sound
            onAdd: list.add(thing)
            onChange: note => list.change(thing, note)
            onRemoved: noteId => list.removed(noteId)
            onOpened: photo => list.opened(photo)
        }
    }
}
