// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// How far to turn to the next cylinder, how to tell compression from overlap, and how hard the air will push.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId
    property int cylinder: 0

    readonly property bool keepsAwake: true

    signal go(name: string, args: var)

    title: qsTr("Next TDC")
    subtitle: viewModel.engineName

    NextTdcModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
        Component.onCompleted: if (page.cylinder > 0 && page.cylinder !== from)
            target = page.cylinder
    }

    ScrollColumn {
        anchors.fill: parent

        Panel {
            width: parent.width

            Column {
                width: parent.width
                spacing: 4

                LText {
                    width: parent.width
                    role: "label"
                    text: qsTr("From cylinder %1 to cylinder %2, in the running direction").arg(viewModel.from).arg(viewModel.target)
                }

                LText {
                    objectName: "turn"
                    width: parent.width
                    role: "readout"
                    text: viewModel.turnText
                }

                LText {
                    width: parent.width
                    visible: viewModel.problem !== ""
                    text: viewModel.problem
                }

                SideButton {
                    width: parent.width
                    visible: viewModel.problem !== ""
                    text: qsTr("Open the engine card")
                    onClicked: page.go("EngineCard", {
                        engineId: viewModel.engineId,
                        line: viewModel.missingLine
                    })
                }
            }
        }

        Repeater {
            model: viewModel.choices

            ListRow {
                required property var modelData

                objectName: "tdc_" + modelData.number
                width: parent.width
                text: qsTr("Cylinder %1").arg(modelData.number) + (modelData.name ? ", " + modelData.name : "")
                detail: modelData.here ? "" : qsTr("Touch to go there next")
                figure: modelData.turn
                forward: false
                ticked: modelData.chosen
                onClicked: modelData.here ? undefined : viewModel.target = modelData.number
            }
        }

        Panel {
            width: parent.width

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: viewModel.whichTdc[0] ?? ""
                }

                LText {
                    width: parent.width
                    text: viewModel.whichTdc[1] ?? ""
                }

                LText {
                    width: parent.width
                    text: qsTr("Come up to TDC from before it. If you passed it, turn on until it comes round again. Back half a turn and up again only where the engine's manual allows turning back.")
                }

                SideButton {
                    objectName: "howTo"
                    width: parent.width
                    text: qsTr("How to")
                    onClicked: page.go("HowToCard", {
                        card: "tdc"
                    })
                }
            }
        }

        Panel {
            width: parent.width
            visible: viewModel.torqueLines.length > 0

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("How hard the air turns the crank")
                }

                Repeater {
                    model: viewModel.torqueLines

                    InfoLine {
                        required property var modelData

                        width: parent.width
                        figure: modelData.figure
                        text: modelData.text
                        explained: modelData.from >= 0
                        onClicked: derivation.show(viewModel.derivation(modelData.from))
                    }
                }
            }
        }

        Repeater {
            model: viewModel.cautions

            Caution {
                required property string modelData

                width: parent.width
                text: modelData
            }
        }
    }

    actions: BigButton {
        objectName: "measure"
        // Pressing it says that the crank was turned: the next way is counted from there.
        text: qsTr("Turned: leak-down, cylinder %1").arg(viewModel.target)
        onClicked: {
            const cylinder = viewModel.target;
            viewModel.turned();
            page.go("Pad", {
                sessionId: page.sessionId,
                test: "leak-down",
                cylinder: cylinder
            });
        }
    }

    Explainer {
        id: derivation
    }
}
