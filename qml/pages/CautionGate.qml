// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The cautions of a place, written out once a session before the danger begins. Once the last was in sight one touch
// frees the page; they stay readable under More. Who puts them away goes back: nothing was started.
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
    // They were put away without "Understood".
    signal turnedBack

    readonly property string key: "cautions/" + sessionId + "/" + place

    // What was put away is shown again the next time.
    function close(understood: bool) {
        loader.active = false;
        if (!understood)
            return turnedBack();
        app.keepDraft(key, "read");
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
            property bool understood: false

            function look() {
                if (placed && atEnd)
                    read = true;
            }

            title: qsTr("Before you start")
            // A touch beside it is a slip: it neither starts nor goes back.
            unfinished: true
            onOpened: placing.start()
            onAtEndChanged: look()
            onClosed: gate.close(understood)
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
                    if (!warning.read)
                        return warning.readOn();
                    warning.understood = true;
                    warning.close();
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
