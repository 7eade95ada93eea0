// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Capture
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Records a voice note for one thing, and plays those that are there.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId
    property string to
    property string record
    property int cylinder: 0
    // What a photo of it usually shows: of no use here, handed on with the rest.
    property string kind
    property string test

    readonly property bool keepsAwake: true

    signal go(name: string, args: var)

    title: qsTr("Voice note")
    subtitle: note.place

    VoiceNoteModel {
        id: note

        app: page.app
        sessionId: page.sessionId
        to: page.to
        record: page.record
        cylinder: page.cylinder
    }

    EvidenceModel {
        id: evidence

        app: page.app
        sessionId: page.sessionId
        to: page.to
        record: page.record
        cylinder: page.cylinder
    }

    ScrollColumn {
        anchors.fill: parent

        CaptureTrouble {
            width: parent.width
            capture: note
            heading: qsTr("Nothing is recorded")
            onAgain: note.start()
        }

        Panel {
            width: parent.width
            selected: note.state === "recording"

            Column {
                width: parent.width
                spacing: Theme.gap

                LText {
                    objectName: "length"
                    width: parent.width
                    role: "readout"
                    text: note.lengthText
                    horizontalAlignment: Text.AlignHCenter
                }

                LevelMeter {
                    width: parent.width
                    level: note.level
                }

                LText {
                    objectName: "recordState"
                    width: parent.width
                    horizontalAlignment: Text.AlignHCenter
                    text: note.state === "recording" ? qsTr("Recording. Leaving this page keeps what was said.") : note.state === "keeping" ? qsTr("Keeping it ...") : note.state === "kept" ? qsTr("✓ Kept") : qsTr("Say what you hear, see and smell.")
                }
            }
        }

        EvidenceList {
            width: parent.width
            model: evidence
            only: "voice note"
        }
    }

    actions: RecordButton {
        objectName: "record"
        note: note
    }
}
