// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// The list of engines before there is one.
ScrollColumn {
    id: empty

    signal openFile
    signal demo
    signal restore

    Item {
        width: parent.width
        height: Math.max(Theme.gap, (empty.height - state.height) / 3)
    }

    EmptyState {
        id: state

        width: parent.width
        heading: qsTr("No engine yet")
        text: qsTr("Add the engine in front of you, open a session file that someone sent, or look at two invented engines first.")

        SideButton {
            objectName: "openFile"
            width: parent.width
            text: qsTr("Open a session file")
            onClicked: empty.openFile()
        }

        SideButton {
            objectName: "demo"
            width: parent.width
            text: qsTr("Look at the demo")
            onClicked: empty.demo()
        }

        SideButton {
            objectName: "restoreBackup"
            width: parent.width
            text: qsTr("Restore a backup")
            onClicked: empty.restore()
        }
    }
}
