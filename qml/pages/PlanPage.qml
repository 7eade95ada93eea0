// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What is to be done: the lines in the order of work, what they come to, what is proposed, the owner's answer and
// the retest.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId

    signal go(name: string, args: var)

    function change(line: string) {
        page.go("PlanLine", {
            lineId: line
        });
    }

    title: qsTr("Plan")
    firstStop: cards.count > 0 ? cards.itemAt(0) : null
    subtitle: viewModel.engineName + " · " + viewModel.visitLine

    PlanModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
        onAdded: line => page.change(line)
    }

    EngineStarter {
        id: starter

        app: page.app
        onSessionOpened: sessionId => page.go("Session", {
                sessionId: sessionId
            })
    }

    // What is proposed, and what others say, would give the findings away.
    MyCallGate {
        id: gate

        anchors.fill: parent
        app: page.app
        sessionId: page.sessionId
    }

    ScrollColumn {
        id: column

        anchors.fill: parent
        visible: !gate.closed
        spacing: Theme.gap

        SessionGone {
            width: parent.width
            visible: !viewModel.found
        }

        LText {
            width: parent.width
            visible: viewModel.lines.length === 0
            text: viewModel.proposing || viewModel.proposals.length > 0 ? qsTr("Nothing is planned yet. Take over what is proposed, or write a line of your own.") : qsTr("Nothing is planned, and the findings propose nothing.")
        }

        Repeater {
            id: cards

            model: viewModel.lines

            PlanCard {
                required property var modelData
                required property int index

                objectName: "plan_" + index
                width: parent.width
                line: modelData
                onTicked: done => viewModel.tick(modelData.id, done)
                onMoved: up => viewModel.move(modelData.id, up)
                onChange: page.change(modelData.id)
                onExplain: steps => derivation.show(steps)
            }
        }

        ListRow {
            objectName: "beforeAfter"
            width: parent.width
            visible: viewModel.retestedIn !== ""
            text: qsTr("Before and after")
            detail: qsTr("What the work changed, cylinder by cylinder")
            onClicked: page.go("Changes", {
                engineId: viewModel.engineId,
                beforeId: page.sessionId,
                afterId: viewModel.retestedIn
            })
        }

        Panel {
            width: parent.width
            visible: viewModel.totals.length > 0

            Column {
                width: parent.width
                spacing: Theme.space / 2

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("Comes to")
                }

                Repeater {
                    model: viewModel.totals

                    PairLine {
                        required property var modelData

                        width: parent.width
                        name: modelData.name
                        value: modelData.value
                    }
                }
            }
        }

        ProposalList {
            objectName: "proposals"
            width: parent.width
            proposals: viewModel.proposals
            proposing: viewModel.proposing
            onTaken: index => viewModel.takeOver(index)
            onExplain: steps => derivation.show(steps)
        }

        CautionFold {
            width: parent.width
            app: page.app
            place: page.sessionId + "/plan"
            cautions: viewModel.cautions
            inSight: !gate.closed && column.contentY <= y + height && column.contentY + column.height >= y + height
        }

        OwnerAnswer {
            width: parent.width
            plan: viewModel
        }

        ListRow {
            objectName: "retest"
            width: parent.width
            text: qsTr("Retest")
            detail: viewModel.retest === "" ? qsTr("No day is planned") : qsTr("Planned for %1").arg(viewModel.retest)
            onClicked: sheets.show(retestSheet)
        }
    }

    actions: [
        IconWord {
            objectName: "handOver"
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
        IconWord {
            objectName: "addLineToo"
            visible: !gate.closed && viewModel.testAgain !== ""
            symbol: "plus"
            text: qsTr("Add a line")
            onClicked: viewModel.addLine()
        },
        // Ticked work is proved by testing again: that comes next.
        BigButton {
            objectName: viewModel.testAgain === "" ? "addLine" : "testAgain"
            visible: !gate.closed
            enabled: viewModel.found
            text: viewModel.testAgain === "" ? qsTr("Add a line") : qsTr("Test again")
            onClicked: {
                if (viewModel.testAgain === "here")
                    page.go("Session", {
                        sessionId: page.sessionId
                    });
                else if (viewModel.testAgain === "later")
                    starter.openSession(viewModel.engineId);
                else
                    viewModel.addLine();
            }
        }
    ]

    SheetLoader {
        id: sheets
    }

    Explainer {
        id: derivation
    }

    Component {
        id: retestSheet

        RetestSheet {
            plan: viewModel
        }
    }
}
