// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// What the signs mean, where they are met.
Flow {
    id: legend

    spacing: Theme.gap

    Repeater {
        model: ["good", "borderline", "fault", "unjudged", "none"]

        Row {
            id: sign

            required property string modelData

            spacing: Theme.space

            StateMark {
                id: mark

                state: sign.modelData
                silent: true
                anchors.verticalCenter: parent.verticalCenter
            }

            LText {
                role: "label"
                text: States.word(sign.modelData)
                width: Math.min(implicitWidth, legend.width - mark.width - sign.spacing)
                anchors.verticalCenter: parent.verticalCenter
            }
        }
    }
}
