// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// The shares of one cylinder's leak as a bar, and a legend line for each with its interval.
Column {
    id: legend

    required property var shares
    required property string others
    // What that stands for.
    required property string means

    spacing: Theme.space

    SplitBar {
        objectName: "splitBar"
        width: parent.width
        shares: legend.shares
    }

    LText {
        width: parent.width
        role: "label"
        text: qsTr("Share of the leak, with the range that holds it in nine cases of ten. Filled is what is sure of each, the rest is open:")
    }

    Repeater {
        model: legend.shares

        ShareLine {
            required property var modelData

            width: legend.width
            share: modelData
        }
    }

    LText {
        width: parent.width
        visible: text !== ""
        text: legend.others
    }

    LText {
        objectName: "sealsMeans"
        width: parent.width
        visible: text !== ""
        role: "label"
        text: legend.means
    }
}
