// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The cautions of a place, written out once a session before the danger begins. One touch, and the page is free;
// they stay readable under More.
Item {
    id: gate

    required property AppContext app
    required property string sessionId
    required property string place
    required property var cautions

    readonly property string key: "cautions/" + sessionId + "/" + place

    function close() {
        app.keepDraft(key, "read");
        loader.active = false;
    }

    Loader {
        id: loader

        active: false
        sourceComponent: Sheet {
            id: warning

            title: qsTr("Before you start")
            onClosed: gate.close()
            Component.onCompleted: open()

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
                text: qsTr("Understood")
                onClicked: warning.close()
            }
        }
    }

    Component.onCompleted: loader.active = cautions.length > 0 && app.draft(key) === ""
}
