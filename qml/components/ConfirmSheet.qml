// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// Asks before something big goes. `text` says what goes with it; the amber button leaves it alone; confirmed().
Sheet {
    id: sheet

    property string text
    property string doIt
    property string leaveIt: qsTr("Leave it")

    signal confirmed

    // It comes up where the finger just was: the second touch of a double tap must not answer it.
    property bool read: false

    onOpened: reading.restart()
    onClosed: read = false

    Timer {
        id: reading

        interval: 600
        onTriggered: sheet.read = true
    }

    LText {
        width: parent.width
        text: sheet.text
    }

    SideButton {
        objectName: "confirm"
        width: parent.width
        enabled: sheet.read
        text: sheet.doIt
        onClicked: {
            sheet.close();
            sheet.confirmed();
        }
    }

    actions: BigButton {
        objectName: "leaveIt"
        text: sheet.leaveIt
        onClicked: sheet.close()
    }
}
