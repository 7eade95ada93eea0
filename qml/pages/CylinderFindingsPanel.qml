// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Findings of one cylinder: sentence, questions, where it leaks, figures, exits, rules of thumb in their own words.
Panel {
    id: panel

    required property var findings
    required property string oddsState

    signal explain(int from)

    Column {
        width: parent.width
        spacing: Theme.space

        Item {
            id: head

            // Beside the number there is too little room for large text on a small phone.
            readonly property bool stacked: width < 15 * Theme.headingSize

            width: parent.width
            height: stacked ? number.height + headline.height : Math.max(number.height, headline.height)

            LText {
                id: number

                role: "numeral"
                text: String(panel.findings.number)
                wrapMode: Text.NoWrap
                anchors.left: parent.left
            }

            StateMark {
                id: mark

                state: panel.findings.state
                anchors.left: number.right
                anchors.leftMargin: Theme.gap
                anchors.verticalCenter: number.verticalCenter
            }

            LText {
                id: headline

                role: "heading"
                text: panel.findings.headline
                y: head.stacked ? number.height : Math.max(0, (number.height - height) / 2)
                anchors.left: head.stacked ? parent.left : mark.right
                anchors.leftMargin: head.stacked ? 0 : Theme.gap
                anchors.right: parent.right
            }
        }

        FindingLines {
            objectName: "sinceRepair"
            width: parent.width
            visible: lines.length > 0
            lines: panel.findings.sinceRepair
        }

        FindingLines {
            width: parent.width
            visible: lines.length > 0
            lines: panel.findings.questions
            onExplain: from => panel.explain(from)
        }

        FindingLines {
            width: parent.width
            visible: lines.length > 0
            lines: panel.findings.contradictions
            onExplain: from => panel.explain(from)
        }

        WhereItLeaks {
            width: parent.width
            oddsState: panel.findings.state === "none" && panel.findings.figures.length === 0 && panel.findings.exits === "" ? "none" : panel.oddsState
            odds: panel.findings.odds
            opened: panel.findings.state !== "good"
            onExplain: index => panel.explain(index)
        }

        LText {
            width: parent.width
            visible: panel.findings.figures.length > 0
            role: "heading"
            text: qsTr("Readings")
        }

        FindingLines {
            width: parent.width
            visible: lines.length > 0
            lines: panel.findings.figures
            onExplain: from => panel.explain(from)
        }

        LText {
            width: parent.width
            visible: panel.findings.exits !== ""
            text: qsTr("Heard: %1").arg(panel.findings.exits)
        }

        LText {
            width: parent.width
            visible: panel.findings.rules.length > 0
            role: "heading"
            text: qsTr("Rules of thumb say")
        }

        FindingLines {
            width: parent.width
            visible: lines.length > 0
            lines: panel.findings.rules
            onExplain: from => panel.explain(from)
        }

        LText {
            width: parent.width
            visible: text !== ""
            text: panel.findings.odds.besideRules ?? ""
        }
    }
}
