// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The cautions of a place, written out once a session before the danger begins. Once the last was in sight one touch
// frees the page; they stay readable under More.
Item {
    id: gate

    required property AppContext app
    required property string sessionId
    required property string place
    required property var cautions

    // What is to be known with the cautions; may be empty.
    property string known

    // There is nothing to read, or it was read.
    signal passed

    readonly property string key: "cautions/" + sessionId + "/" + place

    // What was put away unread is shown again the next time.
    function close(read: bool) {
        if (read)
            app.keepDraft(key, "read");
        loader.active = false;
        passed();
    }

    Loader {
        id: loader

        active: false
        sourceComponent: Sheet {
            id: warning

            // All of it was in sight, once everything had its lines and its place.
            property bool placed: false
            property bool read: false

            function look() {
                if (placed && atEnd)
                    read = true;
            }

            title: qsTr("Before you start")
            onOpened: placing.start()
            onAtEndChanged: look()
            onClosed: gate.close(read)
            Component.onCompleted: open()

            Timer {
                id: placing

                interval: 100
                onTriggered: {
                    warning.placed = true;
                    warning.look();
                }
            }

            LText {
                objectName: "known"
                width: parent.width
                visible: text !== ""
                role: "figure"
                text: gate.known
            }

            Repeater {
                model: gate.cautions

                Caution {
                    required property string modelData

                    width: parent.width
                    text: modelData
                }
            }

            LText {
                width: parent.width
                role: "label"
                text: qsTr("The engine's manual, local rules and licensed practice come before this app.")
            }

            actions: BigButton {
                objectName: "understood"
                focus: true
                answersReturn: true
                text: warning.read || !warning.placed ? qsTr("Understood") : qsTr("Read on")
                onClicked: {
                    if (warning.read)
                        warning.close();
                    else
                        warning.readOn();
                }
            }
        }
    }

    Component.onCompleted: {
        loader.active = cautions.length > 0 && app.draft(key) === "";
        if (!loader.active)
            Qt.callLater(passed);
    }
}
