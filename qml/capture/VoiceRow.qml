// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One voice note: play, scrub, delete. `item` as EvidenceModel lists it; `sound` plays for the whole page.
Panel {
    id: row

    required property var item
    required property SoundModel sound
    property bool removable: true
    // Its place among those that stand with it: two may be alike in all that is said of them.
    property int number: 1

    readonly property bool mine: sound.current === item.id
    readonly property bool running: mine && sound.playing

    signal removed

    about: number + ". " + item.title + ", " + item.detail

    Column {
        width: parent.width
        spacing: Theme.space

        LText {
            width: parent.width
            role: "heading"
            text: row.mine ? qsTr("%1, %2 of %3").arg(row.item.title).arg(row.sound.atText).arg(row.item.length) : qsTr("%1, %2").arg(row.item.title).arg(row.item.length)
        }

        LText {
            width: parent.width
            role: "label"
            text: row.item.file === "" ? qsTr("%1 · its file is missing").arg(row.item.detail) : row.item.detail
        }

        ScrubBar {
            objectName: "scrub"
            width: parent.width
            visible: row.item.file !== ""
            at: row.mine ? row.sound.share : 0
            onSought: share => row.sound.seek(row.item.id, row.item.seconds, share)
        }

        Row {
            width: parent.width
            spacing: Theme.space

            IconWord {
                objectName: "play"
                visible: row.item.file !== ""
                symbol: row.running ? "stop" : "play"
                text: row.running ? qsTr("Pause") : qsTr("Play")
                onClicked: row.sound.toggle(row.item.id, row.item.seconds)
            }

            IconWord {
                objectName: "remove"
                visible: row.removable
                symbol: "bin"
                text: qsTr("Delete")
                onClicked: row.removed()
            }
        }
    }
}
