// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// What went wrong: what, where and what to do, and a button when there is something to press.
Panel {
    id: card

    property string heading
    property string message
    property string action
    property string second

    signal acted
    signal secondActed

    Accessible.role: Accessible.AlertMessage
    about: heading === "" ? message : heading + ". " + message

    Column {
        width: parent.width
        spacing: Theme.space

        Row {
            width: parent.width
            spacing: Theme.gap

            StateMark {
                id: mark

                state: "fault"
                silent: true
            }

            Column {
                width: parent.width - mark.width - Theme.gap
                spacing: 4

                LText {
                    width: parent.width
                    visible: text !== ""
                    role: "heading"
                    text: card.heading
                }

                LText {
                    width: parent.width
                    text: card.message
                }
            }
        }

        SideButton {
            objectName: "action"
            width: parent.width
            visible: text !== ""
            text: card.action
            onClicked: card.acted()
        }

        SideButton {
            objectName: "second"
            width: parent.width
            visible: text !== ""
            text: card.second
            onClicked: card.secondActed()
        }
    }
}
