// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What to see to before the tests, each with its reason. What is left out is recorded and shown with the readings.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId

    readonly property bool ownUndo: true

    signal go(name: string, args: var)

    corner: UndoCorner {
        app: page.app
    }

    title: qsTr("Prepare")
    subtitle: viewModel.engineName + " · " + viewModel.progress

    PrepareModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
    }

    ListView {
        id: list

        anchors.fill: parent
        clip: true
        spacing: Theme.space
        // The list is short; keeping every line avoids jumps when one is marked.
        cacheBuffer: 10000
        model: viewModel.steps.length

        header: Column {
            width: list.width
            spacing: Theme.space
            bottomPadding: Theme.space

            SideButton {
                objectName: "howTo"
                width: parent.width
                text: qsTr("How to")
                onClicked: page.go("HowToCard", {
                    card: "prepare"
                })
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

        delegate: Panel {
            id: step

            required property int index
            readonly property var entry: viewModel.steps[index] ?? {}

            objectName: "step_" + index
            width: list.width

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: step.entry.name ?? ""
                }

                LText {
                    width: parent.width
                    text: step.entry.reason ?? ""
                }

                LText {
                    width: parent.width
                    visible: step.entry.state === "not done" && text !== ""
                    role: "label"
                    text: step.entry.ifNotDone ?? ""
                }

                ChoiceRow {
                    width: parent.width
                    current: step.entry.state ?? "open"
                    options: [{
                            "value": "done",
                            "text": qsTr("Done")
                        }, {
                            "value": "not done",
                            "text": qsTr("Not done")
                        }, {
                            "value": "not needed",
                            "text": qsTr("No need")
                        }]
                    onChosen: value => viewModel.mark(step.entry.key, value === step.entry.state ? "open" : value)
                }
            }
        }
    }

    actions: BigButton {
        objectName: "done"
        text: qsTr("Back to the session")
        onClicked: page.back()
    }
}
