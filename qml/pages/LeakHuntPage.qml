// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Where the air comes out of one cylinder, and how loud.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId
    property int cylinder: 0

    readonly property bool ownUndo: true
    readonly property bool keepsAwake: true
    readonly property bool wholeWidth: true

    // Exits without an answer yet.
    readonly property var unheard: Array.from(viewModel.exits).filter(exit => exit.loudness === "")

    signal go(name: string, args: var)

    // The air is on: what is heard first.
    firstStop: exits.count > 0 ? exits.itemAt(0) : null

    corner: UndoCorner {
        app: page.app
        roomKept: !page.headFolds
    }

    // The cylinder first: large text cuts the end off.
    title: qsTr("Cylinder %1, leak hunt").arg(viewModel.cylinder)
    subtitle: viewModel.heldLine
    explained: viewModel.explained
    onExplain: derivation.show(viewModel.derivation())

    LeakHuntModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
        Component.onCompleted: if (page.cylinder > 0)
            cylinder = page.cylinder
    }

    ScrollColumn {
        anchors.fill: parent

        Flow {
            width: parent.width
            spacing: Theme.space
            visible: viewModel.cylinders.length > 1

            Repeater {
                model: viewModel.cylinders

                Chip {
                    required property var modelData

                    objectName: "cylinder_" + modelData.number
                    text: modelData.listened ? modelData.number + " ✓" : String(modelData.number)
                    Accessible.name: modelData.listened ? qsTr("Cylinder %1, listened").arg(modelData.number) : qsTr("Cylinder %1").arg(modelData.number)
                    checked: modelData.chosen
                    onClicked: viewModel.cylinder = modelData.number
                }
            }
        }

        ListRow {
            objectName: "method"
            width: parent.width
            text: qsTr("Listening by")
            figure: Array.from(viewModel.methods).find(method => method.value === viewModel.method)?.text ?? ""
            onClicked: sheets.show(methods)
        }

        Repeater {
            id: exits

            model: viewModel.exits

            ExitPanel {
                required property var modelData

                objectName: "exit_" + modelData.key + (modelData.neighbour > 0 ? "_" + modelData.neighbour : "")
                width: parent.width
                exit: modelData
                loudnesses: viewModel.loudnesses
                sessionId: page.sessionId
                cylinder: viewModel.cylinder
                onHeard: loudness => {
                    page.app.tick();
                    viewModel.note(modelData.key, modelData.neighbour, loudness);
                }
                onGo: (name, args) => page.go(name, args)
            }
        }

        SideButton {
            objectName: "nothingElse"
            width: parent.width
            visible: page.unheard.length > 0 && page.unheard.length < viewModel.exits.length
            text: qsTr("Listened: nothing anywhere else")
            onClicked: {
                page.app.tick();
                page.unheard.forEach(exit => viewModel.note(exit.key, exit.neighbour, "nothing"));
            }
        }

        // Below the exits: nothing may move under a thumb that is noting them.
        Repeater {
            model: viewModel.questions

            ErrorCard {
                required property var modelData

                width: parent.width
                heading: qsTr("A question first")
                message: modelData.text
                action: modelData.action
                onActed: page.go(modelData.page, {
                    sessionId: page.sessionId,
                    cylinder: viewModel.cylinder
                })
            }
        }

        StakedPanel {
            width: parent.width
            visible: viewModel.canStake
            cautions: viewModel.stakingCautions
            staked: viewModel.staked
            onHowTo: page.go("HowToCard", {
                card: "staking"
            })
            onMarked: after => viewModel.staked = after
        }

        SideButton {
            objectName: "howTo"
            width: parent.width
            text: qsTr("How to")
            onClicked: page.go("HowToCard", {
                card: "listening"
            })
        }

        SideButton {
            objectName: "wipe"
            width: parent.width
            text: qsTr("Wipe the glass")
            onClicked: page.go("Wipe", {})
        }

        Repeater {
            model: viewModel.cautions

            Caution {
                required property string modelData

                width: parent.width
                text: modelData
                read: true
            }
        }
    }

    Explainer {
        id: derivation
    }

    SheetLoader {
        id: sheets

        // Inside a sheet its own property of the same name would hide the page's id.
        readonly property LeakHuntModel hunt: viewModel
    }

    Component {
        id: methods

        ChoiceSheet {
            title: qsTr("Listening by")
            options: sheets.hunt.methods
            current: sheets.hunt.method
            onChosen: value => sheets.hunt.method = value
        }
    }

    actions: [
        IconWord {
            objectName: "clearances"
            visible: viewModel.canStake
            symbol: "gauge"
            text: qsTr("Clearances")
            onClicked: page.go("Clearances", {
                sessionId: page.sessionId,
                cylinder: viewModel.cylinder
            })
        },
        BigButton {
            objectName: "done"
            text: viewModel.doneText
            onClicked: {
                if (viewModel.nextCylinder > 0)
                    page.go("Pad", {
                        sessionId: page.sessionId,
                        test: "leak-down",
                        cylinder: viewModel.nextCylinder
                    });
                else
                    page.back();
            }
        }
    ]
}
