// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Steps to do, each a row that leads to its page: `steps` is a list of {title, text, page, args}.
Column {
    id: list

    required property string heading
    required property var steps

    signal go(name: string, args: var)

    visible: steps.length > 0
    spacing: Theme.space

    LText {
        width: parent.width
        role: "heading"
        text: list.heading
    }

    Repeater {
        model: list.steps

        ListRow {
            required property var modelData
            required property int index

            objectName: "step_" + index
            width: list.width
            text: modelData.title
            detail: modelData.text
            onClicked: list.go(modelData.page, modelData.args)
        }
    }
}
