// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What the readings say: a plain sentence a cylinder, where it leaks, then the figures, and how each was made; and
// what to do next.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId

    signal go(name: string, args: var)

    title: qsTr("Findings")
    subtitle: viewModel.engineName + " · " + viewModel.visitLine

    FindingsModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
    }

    MyCallGate {
        id: gate

        anchors.fill: parent
        app: page.app
        sessionId: page.sessionId
    }

    ScrollColumn {
        id: scroll

        anchors.fill: parent
        visible: !gate.closed

        MyCalls {
            width: parent.width
            calls: viewModel.calls
        }

        LText {
            objectName: "working"
            width: parent.width
            visible: !viewModel.ready
            text: qsTr("Working it out …")
        }

        FindingsGlance {
            id: glance

            width: parent.width
            headline: viewModel.headline
            cylinders: viewModel.cylinders
            onPicked: index => scroll.show(panels.itemAt(index))
        }

        Repeater {
            id: panels

            model: viewModel.cylinders

            CylinderFindingsPanel {
                required property var modelData

                objectName: "findings_" + modelData.number
                width: parent.width
                findings: modelData
                oddsState: viewModel.oddsState
                onExplain: from => derivation.show(viewModel.derivation(from))
            }
        }

        Panel {
            width: parent.width
            visible: viewModel.ready

            Column {
                width: parent.width
                spacing: Theme.space / 2

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("Engine as a whole")
                }

                LText {
                    width: parent.width
                    visible: !glance.visible
                    text: viewModel.headline
                }

                FindingLines {
                    width: parent.width
                    lines: viewModel.engineLines
                    onExplain: from => derivation.show(viewModel.derivation(from))
                }
            }
        }

        Panel {
            width: parent.width
            visible: viewModel.weakenedBy.length + viewModel.testersMissing.length > 0

            Column {
                width: parent.width
                spacing: Theme.space / 2

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("What makes these readings worth less")
                }

                Repeater {
                    model: viewModel.testersMissing

                    ListRow {
                        required property var modelData

                        objectName: "nameTester_" + modelData.line
                        width: parent.width
                        symbol: "gauge"
                        text: modelData.text
                        detail: qsTr("Name it")
                        onClicked: page.go("Visit", {
                            sessionId: page.sessionId,
                            line: modelData.line
                        })
                    }
                }

                FindingLines {
                    width: parent.width
                    lines: viewModel.weakenedBy
                    onExplain: from => derivation.show(viewModel.derivation(from))
                }
            }
        }

        ErrorCard {
            width: parent.width
            visible: viewModel.oddsState === "failed"
            heading: qsTr("Where it leaks could not be worked out")
            message: viewModel.oddsTrouble
        }

        StepList {
            objectName: "nextSteps"
            width: parent.width
            heading: qsTr("Worth doing next")
            steps: viewModel.nextSteps
            onGo: (name, args) => page.go(name, args)
        }

        StepList {
            objectName: "settling"
            width: parent.width
            heading: qsTr("What would settle it")
            steps: viewModel.settling
            onGo: (name, args) => page.go(name, args)
        }

        Panel {
            width: parent.width
            visible: viewModel.oddsRestOn.length > 0

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("What the odds rest on")
                }

                Repeater {
                    model: viewModel.oddsRestOn

                    LText {
                        required property string modelData

                        width: parent.width
                        text: modelData
                    }
                }
            }
        }

        LText {
            width: parent.width
            role: "label"
            text: qsTr("Odds, rules of thumb and arithmetic, not a strip-down. Touch a figure to see where it comes from.")
        }

        SideButton {
            objectName: "howTo"
            width: parent.width
            text: qsTr("How to")
            onClicked: page.go("HowToCard", {
                card: "findings"
            })
        }
    }

    actions: [
        IconWord {
            objectName: "handOver"
            // While the call is made the thumb's place is its own.
            visible: !gate.closed
            symbol: "share"
            text: qsTr("Hand over")
            onClicked: page.go("HandOver", {
                engineId: viewModel.engineId,
                sessionId: page.sessionId
            })
        },
        CommitCall {
            gate: gate
        },
        BigButton {
            objectName: "next"
            // It would give away what the call is to be made of.
            visible: !gate.closed
            text: viewModel.nextText
            onClicked: page.go(viewModel.nextPage, viewModel.nextArgs)
        }
    ]

    Explainer {
        id: derivation
    }
}
