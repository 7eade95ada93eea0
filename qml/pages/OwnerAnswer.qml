// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What the owner says to the plan, with its day. A second touch on the answer takes it back.
Column {
    id: part

    required property PlanModel plan

    spacing: Theme.space / 2

    ChoiceRow {
        objectName: "answer"
        width: parent.width
        label: qsTr("What the owner says")
        options: [
            {
                value: "yes",
                text: qsTr("Yes")
            },
            {
                value: "no",
                text: qsTr("No")
            },
            {
                value: "later",
                text: qsTr("Later")
            }
        ]
        current: part.plan ? part.plan.answer : ""
        onChosen: value => part.plan.setAnswer(value === part.plan.answer ? "none" : value)
    }

    LText {
        width: parent.width
        visible: text !== ""
        role: "label"
        text: part.plan ? part.plan.answeredAt : ""
    }
}
