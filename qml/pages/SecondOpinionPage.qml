// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// A session as a mentor reads it: nothing that was measured can be changed here, and anything can be remarked on.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId

    signal go(name: string, args: var)

    function write(thing: var, note: var) {
        sheets.thing = thing;
        sheets.note = note;
        sheets.show(noteSheet);
    }

    title: qsTr("Second opinion")
    subtitle: viewModel.engineName + " · " + viewModel.visitLine

    SecondOpinionModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
        onNoteKept: (id, speak) => {
            if (speak)
                page.go("VoiceNote", {
                    sessionId: page.sessionId,
                    to: "note",
                    record: id
                });
        }
    }

    SoundModel {
        id: player

        app: page.app
    }

    // What is proposed, and what others say, would give the findings away.
    MyCallGate {
        id: gate

        anchors.fill: parent
        app: page.app
        sessionId: page.sessionId
    }

    ScrollColumn {
        anchors.fill: parent
        visible: !gate.closed

        SessionGone {
            width: parent.width
            visible: !viewModel.found
        }

        Panel {
            width: parent.width
            visible: viewModel.first.length > 0

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("Look at these first")
                }

                FindingLines {
                    objectName: "first"
                    width: parent.width
                    lines: viewModel.first
                }
            }
        }

        Repeater {
            model: viewModel.sections.length

            OpinionSection {
                required property int index

                width: parent.width
                section: viewModel.sections[index]
                sound: player
                onAdd: thing => page.write(thing, {})
                onChange: (thing, note) => page.write(thing, note)
                onRemoved: noteId => viewModel.removeNote(noteId)
                onOpened: photo => {
                    sheets.photo = photo;
                    sheets.show(pictureSheet);
                }
            }
        }

        ListRow {
            objectName: "session"
            width: parent.width
            text: qsTr("The session itself")
            detail: qsTr("To test and record here")
            onClicked: page.go("Session", {
                sessionId: page.sessionId
            })
        }

        LText {
            width: parent.width
            role: "label"
            text: qsTr("What was measured can't be changed on this page. Your remarks go back with the session file.")
        }
    }

    SheetLoader {
        id: sheets

        // Inside a sheet its own properties of the same name would hide the page's.
        readonly property AppContext pageApp: page.app
        readonly property SecondOpinionModel pageModel: viewModel
        property var thing: ({})
        property var note: ({})
        property var photo: ({})
    }

    Component {
        id: noteSheet

        NoteSheet {
            app: sheets.pageApp
            model: sheets.pageModel
            thing: sheets.thing
            note: sheets.note
        }
    }

    Component {
        id: pictureSheet

        PictureSheet {
            photo: sheets.photo
        }
    }

    actions: [
        CommitCall {
            gate: gate
        },
        BigButton {
            objectName: "sendBack"
            visible: !gate.closed
            text: qsTr("Send back")
            onClicked: page.go("HandOver", {
                engineId: viewModel.engineId,
                sessionId: page.sessionId,
                sendingBack: true
            })
        }
    ]
}
