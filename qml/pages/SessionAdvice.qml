// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// What is worth doing next in a session and why, and what makes its readings worth less.
Column {
    id: advice

    required property string reason
    required property var circumstances

    signal howTo
    signal explain(from: int)

    visible: reason !== "" || circumstances.length > 0
    spacing: Theme.space

    Panel {
        width: parent.width
        visible: advice.reason !== ""
        selected: true

        Column {
            width: parent.width
            spacing: 4

            LText {
                width: parent.width
                role: "heading"
                text: qsTr("Worth doing next")
            }

            LText {
                width: parent.width
                text: advice.reason
            }

            SideButton {
                objectName: "howToNext"
                width: parent.width
                text: qsTr("How to")
                onClicked: advice.howTo()
            }
        }
    }

    Panel {
        width: parent.width
        visible: advice.circumstances.length > 0

        Column {
            width: parent.width
            spacing: 4

            LText {
                width: parent.width
                role: "heading"
                text: qsTr("Keep in mind")
            }

            FindingLines {
                objectName: "circumstances"
                width: parent.width
                lines: advice.circumstances
                onExplain: from => advice.explain(from)
            }
        }
    }
}
