// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// What findings and odds give reason for, each taken into the plan with one touch.
Column {
    id: list

    required property var proposals
    required property bool proposing

    signal taken(int index)
    signal explain(steps: var)

    visible: proposing || proposals.length > 0
    spacing: Theme.space

    LText {
        width: parent.width
        role: "heading"
        text: qsTr("Proposed")
    }

    LText {
        objectName: "working"
        width: parent.width
        visible: list.proposing
        text: qsTr("Working it out …")
    }

    LText {
        width: parent.width
        visible: !list.proposing
        role: "label"
        text: qsTr("From the findings; quick fixes and \"run it, then test again\" come before taking things apart.")
    }

    Repeater {
        model: list.proposals

        Panel {
            id: proposal

            required property var modelData
            required property int index

            objectName: "proposal_" + index
            width: list.width

            Column {
                width: parent.width
                spacing: Theme.space / 2

                LText {
                    width: parent.width
                    role: "figure"
                    text: proposal.modelData.work
                }

                LText {
                    width: parent.width
                    role: "label"
                    text: proposal.modelData.title
                }

                LText {
                    width: parent.width
                    text: proposal.modelData.reason
                }

                InfoLine {
                    objectName: "expected"
                    width: parent.width
                    visible: text !== ""
                    text: proposal.modelData.expected
                    explained: proposal.modelData.from.length > 0
                    onClicked: list.explain(proposal.modelData.from)
                }

                ListRow {
                    objectName: "take"
                    width: parent.width
                    symbol: "plus"
                    text: qsTr("Take into the plan")
                    forward: false
                    onClicked: list.taken(proposal.index)
                }
            }
        }
    }
}
