// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One line of the plan: ticked when it is done, with its reasons and costs, and its place in the order of work.
Panel {
    id: card

    required property var line

    signal ticked(bool done)
    signal moved(bool up)
    signal change
    signal explain(steps: var)

    about: line.work

    Column {
        width: parent.width
        spacing: Theme.space

        CheckRow {
            objectName: "done"
            width: parent.width
            text: card.line.work
            detail: [card.line.title, card.line.doneText].filter(part => part !== "").join(" · ")
            checked: card.line.done
            onToggled: card.ticked(checked)
        }

        Repeater {
            model: card.line.details

            LText {
                required property string modelData

                width: parent.width
                text: modelData
            }
        }

        InfoLine {
            objectName: "expected"
            width: parent.width
            // What came of it names the range again: shown twice only where a touch explains it.
            visible: text !== "" && (explained || card.line.proofs.length === 0)
            text: card.line.expected
            explained: card.line.from.length > 0
            onClicked: card.explain(card.line.from)
        }

        FindingLines {
            objectName: "proofs"
            width: parent.width
            visible: lines.length > 0
            lines: card.line.proofs
        }

        Flow {
            width: parent.width
            spacing: Theme.space

            SideButton {
                objectName: "change"
                text: qsTr("Change")
                onClicked: card.change()
            }

            SideButton {
                objectName: "up"
                visible: !card.line.first
                text: qsTr("Up")
                onClicked: card.moved(true)
            }

            SideButton {
                objectName: "down"
                visible: !card.line.last
                text: qsTr("Down")
                onClicked: card.moved(false)
            }
        }
    }
}
