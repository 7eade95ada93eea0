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

    signal go(name: string, args: var)

    corner: UndoCorner {
        app: page.app
    }

    title: qsTr("Leak hunt, cylinder %1").arg(model.cylinder)
    subtitle: model.heldLine

    LeakHuntModel {
        id: model

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
            visible: model.cylinders.length > 1

            Repeater {
                model: model.cylinders

                Chip {
                    required property var modelData

                    objectName: "cylinder_" + modelData.number
                    text: modelData.listened ? modelData.number + " ✓" : String(modelData.number)
                    Accessible.name: modelData.listened ? qsTr("Cylinder %1, listened").arg(modelData.number) : qsTr("Cylinder %1").arg(modelData.number)
                    checked: modelData.chosen
                    onClicked: model.cylinder = modelData.number
                }
            }
        }

        Repeater {
            model: model.questions

            ErrorCard {
                required property string modelData

                width: parent.width
                heading: qsTr("A question first")
                message: modelData
                action: qsTr("Next TDC")
                onActed: page.go("NextTdc", {
                    sessionId: page.sessionId,
                    cylinder: model.cylinder
                })
            }
        }

        ChoiceRow {
            width: parent.width
            label: qsTr("Listening by")
            options: model.methods
            current: model.method
            onChosen: value => model.method = value
        }

        Repeater {
            model: model.exits

            Panel {
                id: exit

                required property var modelData

                objectName: "exit_" + modelData.key + (modelData.neighbour > 0 ? "_" + modelData.neighbour : "")
                width: parent.width

                Column {
                    width: parent.width
                    spacing: Theme.space

                    LText {
                        width: parent.width
                        role: "heading"
                        text: exit.modelData.name
                    }

                    LText {
                        width: parent.width
                        role: "label"
                        text: exit.modelData.by === "" ? exit.modelData.hint : qsTr("by %1").arg(exit.modelData.by)
                    }

                    ChoiceRow {
                        width: parent.width
                        options: model.loudnesses
                        current: exit.modelData.loudness
                        onChosen: value => {
                            page.app.tick();
                            model.note(exit.modelData.key, exit.modelData.neighbour, value);
                        }
                    }
                }
            }
        }

        Panel {
            width: parent.width
            visible: model.canStake

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("Staked a valve?")
                }

                LText {
                    width: parent.width
                    text: qsTr("Carbon under a valve can leak like a burnt one. A light tap on its stem can seat it again; then test once more. What you note now counts as a new state of the valve.")
                }

                Repeater {
                    model: model.stakingCautions

                    Caution {
                        required property string modelData

                        width: parent.width
                        text: modelData
                    }
                }

                SwitchRow {
                    width: parent.width
                    text: qsTr("After staking")
                    checked: model.staked
                    onToggled: model.staked = checked
                }
            }
        }

        Repeater {
            model: model.cautions

            Caution {
                required property string modelData

                width: parent.width
                text: modelData
                read: true
            }
        }
    }

    actions: [
        IconWord {
            objectName: "clearances"
            visible: model.canStake
            symbol: "gauge"
            text: qsTr("Clearances")
            onClicked: page.go("Clearances", {
                sessionId: page.sessionId,
                cylinder: model.cylinder
            })
        },
        BigButton {
            objectName: "done"
            text: model.doneText
            onClicked: {
                if (model.nextCylinder > 0)
                    page.go("Pad", {
                        sessionId: page.sessionId,
                        test: "leak-down",
                        cylinder: model.nextCylinder
                    });
                else
                    page.back();
            }
        }
    ]
}
