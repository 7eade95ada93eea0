// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Photos and voice notes of one thing, newest first.
Column {
    id: list

    required property EvidenceModel model
    // "photo", "voice note", or "" for both.
    property string only

    readonly property var items: only === "" ? model.items : Array.from(model.items).filter(item => item.kind === only)

    signal opened(photoId: string)

    spacing: Theme.gap

    SoundModel {
        id: player

        app: list.model.app
    }

    Repeater {
        model: list.items.length

        Column {
            id: place

            required property int index
            readonly property var item: list.items[index]

            width: list.width

            PhotoRow {
                objectName: "photo_" + place.index
                width: parent.width
                visible: place.item.kind === "photo"
                item: place.item
                onClicked: list.opened(place.item.id)
            }

            VoiceRow {
                objectName: "voice_" + place.index
                number: place.index + 1
                width: parent.width
                visible: place.item.kind !== "photo"
                item: place.item
                sound: player
                onRemoved: {
                    player.stop();
                    list.model.remove(place.item.id);
                }
            }
        }
    }
}
