// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// A session file before anything is brought in. Without `file` it is the demo.
AppPage {
    id: page

    required property AppContext app
    property string file

    signal go(name: string, args: var)

    title: qsTr("Before it is brought in")
    subtitle: viewModel.heading

    BringInModel {
        id: viewModel

        app: page.app
        onBroughtIn: (engineId, newEngine, sessionId) => page.leaveFor(engineId, newEngine, sessionId)
        Component.onCompleted: page.file === "" ? openDemo() : open(page.file)
    }

    function leaveFor(engineId: string, newEngine: bool, sessionId: string) {
        if (engineId === "")
            page.back();
        else if (!newEngine)
            page.go("News", {
                engineId: engineId
            });
        else if (sessionId !== "")
            page.go("SecondOpinion", {
                sessionId: sessionId
            });
        else
            page.go("EngineCard", {
                engineId: engineId
            });
    }

    ScrollColumn {
        anchors.fill: parent

        LText {
            objectName: "working"
            width: parent.width
            visible: viewModel.busy
            text: qsTr("Reading and checking it …")
        }

        ErrorCard {
            objectName: "refused"
            width: parent.width
            visible: message !== ""
            heading: qsTr("This file can't be brought in")
            message: viewModel.refusal
        }

        Repeater {
            model: viewModel.refusedSignature

            SignaturePanel {
                required property var modelData

                width: parent.width
                signature: modelData
            }
        }

        Repeater {
            model: viewModel.files

            BringInFile {
                required property var modelData
                required property int index

                width: parent.width
                file: modelData
                // The demo is nobody's.
                signatureShown: page.file !== ""
                onNamed: name => viewModel.nameKey(index, name)
            }
        }

        SwitchRow {
            objectName: "bringBack"
            width: parent.width
            visible: viewModel.leavesOut
            text: qsTr("Bring back what was taken out here")
            detail: qsTr("Records that you deleted and the file still has")
            checked: viewModel.bringBack
            onClicked: viewModel.bringBack = checked
        }

        LText {
            width: parent.width
            visible: viewModel.possible
            role: "label"
            text: qsTr("Bringing it in takes nothing away. Undo takes it back as one step.")
        }
    }

    actions: [
        SideButton {
            objectName: "dont"
            text: viewModel.possible ? qsTr("Don't") : qsTr("Back")
            onClicked: page.back()
        },
        BigButton {
            objectName: "bringIn"
            visible: viewModel.possible
            enabled: !viewModel.busy
            text: viewModel.altered ? qsTr("Bring it in all the same") : qsTr("Bring it in")
            onClicked: viewModel.bringIn()
        }
    ]
}
