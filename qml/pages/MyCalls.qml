// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Calls that were committed before the findings were shown, and other causes named since: `calls` is a list of {text, detail}.
Panel {
    id: panel

    required property var calls

    visible: calls.length > 0

    Column {
        width: parent.width
        spacing: Theme.space

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("Calls")
        }

        Repeater {
            model: panel.calls

            Column {
                id: call

                required property var modelData

                width: parent.width

                LText {
                    width: parent.width
                    role: "figure"
                    text: call.modelData.text
                }

                LText {
                    width: parent.width
                    role: "label"
                    text: call.modelData.detail
                }
            }
        }
    }
}
