// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Capture
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

    corner: UndoCorner {
        app: page.app
    }

    title: qsTr("Leak hunt, cylinder %1").arg(viewModel.cylinder)
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
            model: viewModel.exits

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

                    // The hint keeps its lines once there is an answer: the buttons below must not jump under the thumb.
                    Item {
                        width: parent.width
                        height: Math.max(hint.height, by.height)

                        LText {
                            id: hint

                            width: parent.width
                            role: "label"
                            visible: exit.modelData.by === ""
                            text: exit.modelData.hint
                        }

                        LText {
                            id: by

                            width: parent.width
                            role: "label"
                            visible: !hint.visible
                            text: exit.modelData.by === "" ? "" : qsTr("by %1").arg(exit.modelData.by)
                        }
                    }

                    ChoiceRow {
                        width: parent.width
                        options: viewModel.loudnesses
                        current: exit.modelData.loudness
                        onChosen: value => {
                            page.app.tick();
                            viewModel.note(exit.modelData.key, exit.modelData.neighbour, value);
                        }
                    }

                    // With the air on every line counts: where nothing comes out there is nothing to show.
                    EvidenceButtons {
                        visible: !["", "nothing"].includes(exit.modelData.loudness) || photos + voices > 0
                        width: parent.width
                        photos: exit.modelData.photos
                        voices: exit.modelData.voices
                        tie: ({
                                sessionId: page.sessionId,
                                to: exit.modelData.record === "" ? "cylinder" : "exit",
                                record: exit.modelData.record,
                                cylinder: viewModel.cylinder,
                                kind: "exit"
                            })
                        onGo: (name, args) => page.go(name, args)
                    }
                }
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

        Panel {
            width: parent.width
            visible: viewModel.canStake

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
                    model: viewModel.stakingCautions

                    Caution {
                        required property string modelData

                        width: parent.width
                        text: modelData
                    }
                }

                SideButton {
                    objectName: "howToStake"
                    width: parent.width
                    text: qsTr("How to")
                    onClicked: page.go("HowToCard", {
                        card: "staking"
                    })
                }

                SwitchRow {
                    width: parent.width
                    text: qsTr("After staking")
                    checked: viewModel.staked
                    onToggled: viewModel.staked = checked
                }
            }
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
