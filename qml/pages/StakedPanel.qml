// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Staking a valve, with its cautions where the danger is, and the mark that what follows is a new state of it.
Panel {
    id: panel

    required property var cautions
    required property bool staked

    signal howTo
    signal marked(after: bool)

    about: heading.text

    Column {
        width: parent.width
        spacing: Theme.space

        LText {
            id: heading

            width: parent.width
            role: "heading"
            text: qsTr("Staked a valve?")
        }

        LText {
            width: parent.width
            text: qsTr("Carbon under a valve can leak like a burnt one. A light tap on its stem can seat it again; then test once more. What you note now counts as a new state of the valve.")
        }

        Repeater {
            model: panel.cautions

            Caution {
                required property string modelData

                width: parent.width
                text: modelData
            }
        }

        SideButton {
            objectName: "howToStake"
            width: parent.width
            text: qsTr("How to")
            onClicked: panel.howTo()
        }

        SwitchRow {
            width: parent.width
            text: qsTr("After staking")
            checked: panel.staked
            onToggled: panel.marked(checked)
        }
    }
}
