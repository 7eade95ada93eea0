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

    readonly property var answers: [{
            "value": "done",
            "text": qsTr("Done")
        }, {
            "value": "not done",
            "text": qsTr("Not done")
        }, {
            "value": "not needed",
            "text": qsTr("No need")
        }]

    signal go(name: string, args: var)

    corner: UndoCorner {
        app: page.app
        roomKept: !page.headFolds
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

        property bool moved: false

        anchors.fill: parent
        onMovementStarted: moved = true
        clip: true
        spacing: Theme.space
        // The cautions come a moment after the list, above it.
        onHeaderItemChanged: positionViewAtBeginning()
        // The list is short; keeping every line avoids jumps when one is marked.
        cacheBuffer: 10000
        model: viewModel.steps.length

        header: Column {
            width: list.width
            onHeightChanged: if (!list.moved)
                list.positionViewAtBeginning()
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
                model: Array.from(viewModel.cautions).filter(caution => !caution.apart)

                Caution {
                    required property var modelData

                    width: parent.width
                    text: modelData.text
                }
            }
        }

        // What this engine's card gives no reason for.
        footer: Column {
            width: list.width
            topPadding: Theme.space

            Repeater {
                model: Array.from(viewModel.cautions).filter(caution => caution.apart)

                Caution {
                    required property var modelData

                    width: parent.width
                    text: modelData.text
                    read: true
                }
            }
        }

        delegate: Column {
            id: step

            required property int index
            readonly property var entry: viewModel.steps[index] ?? {}
            // What was answered at an earlier look is a line; nothing folds under the thumb that answers.
            property bool folded: false

            readonly property bool asksHeat: entry.key === "temperature noted"

            objectName: "step_" + index
            width: list.width
            Component.onCompleted: folded = (entry.state ?? "open") !== "open"

            ListRow {
                objectName: "unfold"
                width: parent.width
                visible: step.folded
                text: step.entry.name ?? ""
                figure: page.answers.find(answer => answer.value === step.entry.state)?.text ?? ""
                forward: false
                onClicked: step.folded = false
            }

            Panel {
                width: parent.width
                visible: !step.folded
                about: step.entry.name ?? ""

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
                        objectName: "heat"
                        width: parent.width
                        visible: step.asksHeat
                        current: viewModel.heat
                        options: step.asksHeat ? viewModel.heats : []
                        onChosen: value => viewModel.noteHeat(value)
                    }

                    ChoiceRow {
                        width: parent.width
                        current: step.entry.state ?? "open"
                        // That it is noted, the note says.
                        options: page.answers.filter(answer => answer.value !== "done" || !step.asksHeat)
                        onChosen: value => viewModel.mark(step.entry.key, value === step.entry.state ? "open" : value)
                    }
                }
            }
        }
    }

    actions: [
        SideButton {
            objectName: "restDone"
            // Always there: the way back must not make room for it under a thumb.
            enabled: viewModel.restToSay
            text: qsTr("Rest is done")
            onClicked: viewModel.restIsDone()
        },
        BigButton {
            objectName: "done"
            text: qsTr("Back to the session")
            onClicked: page.back()
        }
    ]
}
