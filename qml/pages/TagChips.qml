// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// An engine's tags; a touch on one asks for all engines that have it.
Flow {
    id: chips

    property var tags: []
    // The engine's name, where several stand in a list.
    property string of

    signal chosen(string tag)

    spacing: Theme.space

    Accessible.role: Accessible.Grouping
    Accessible.name: of
    Accessible.ignored: of === "" || Theme.isBehind(chips)

    Repeater {
        model: chips.tags

        Chip {
            required property string modelData

            objectName: "tag_" + modelData
            targetKind: "minor"
            width: Math.min(implicitWidth, chips.width)
            textSize: Theme.textSize(16)
            text: modelData
            Accessible.role: Accessible.Button
            Accessible.checkable: false
            Accessible.description: qsTr("Shows the engines with this tag")
            onClicked: chips.chosen(modelData)
        }
    }
}
