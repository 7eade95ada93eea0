// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Capture
import Lapwing.Components
import Lapwing.Theme

// One exit of a cylinder: what to do to hear it, how loud it is, and what shows it. heard(loudness).
Panel {
    id: panel

    // {key, neighbour, name, hint, loudness, by, record, photos, voices}
    required property var exit
    required property var loudnesses
    required property string sessionId
    required property int cylinder

    signal heard(loudness: string)
    signal go(name: string, args: var)

    about: exit.name

    Column {
        width: parent.width
        spacing: Theme.space

        LText {
            width: parent.width
            role: "heading"
            text: panel.exit.name
        }

        // The hint keeps its lines once there is an answer: the buttons below must not jump under the thumb.
        Item {
            width: parent.width
            height: Math.max(hint.height, by.height)

            LText {
                id: hint

                width: parent.width
                role: "label"
                visible: panel.exit.by === ""
                text: panel.exit.hint
            }

            LText {
                id: by

                width: parent.width
                role: "label"
                visible: !hint.visible
                text: panel.exit.by === "" ? "" : qsTr("by %1").arg(panel.exit.by)
            }
        }

        ChoiceRow {
            width: parent.width
            options: panel.loudnesses
            current: panel.exit.loudness
            onChosen: value => panel.heard(value)
        }

        // With the air on every line counts: where nothing comes out there is nothing to show.
        EvidenceButtons {
            visible: !["", "nothing"].includes(panel.exit.loudness) || photos + voices > 0
            width: parent.width
            photos: panel.exit.photos
            voices: panel.exit.voices
            tie: ({
                    sessionId: panel.sessionId,
                    to: panel.exit.record === "" ? "cylinder" : "exit",
                    record: panel.exit.record,
                    cylinder: panel.cylinder,
                    kind: "exit"
                })
            onGo: (name, args) => panel.go(name, args)
        }
    }
}
