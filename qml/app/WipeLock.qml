// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Templates as T
import Lapwing.Components
import Lapwing.Theme

// While the glass is wiped no touch and no key counts. It ends by itself, and by nothing else: a rag must not end it.
T.Popup {
    id: wiping

    property int left: 0

    function lock() {
        left = 10;
        open();
    }

    parent: T.Overlay.overlay
    width: parent ? parent.width : 0
    height: parent ? parent.height : 0
    padding: Theme.gap
    modal: true
    focus: true
    closePolicy: T.Popup.NoAutoClose

    background: Rectangle {
        color: Theme.ground
    }

    contentItem: FocusScope {
        focus: true
        LayoutMirroring.enabled: Theme.rightToLeft
        LayoutMirroring.childrenInherit: true
        Accessible.role: Accessible.AlertMessage
        Accessible.name: words.text + " " + again.text
        Keys.onPressed: event => event.accepted = true

        Column {
            width: parent.width
            anchors.verticalCenter: parent.verticalCenter
            spacing: Theme.gap

            LText {
                id: words

                objectName: "wiping"
                width: parent.width
                role: "title"
                silent: true
                text: qsTr("Wipe the glass")
                horizontalAlignment: Text.AlignHCenter
            }

            LText {
                width: parent.width
                role: "readout"
                silent: true
                text: wiping.left
                horizontalAlignment: Text.AlignHCenter
            }

            LText {
                id: again

                width: parent.width
                silent: true
                text: qsTr("Touches count again in %n second(s).", "", wiping.left)
                horizontalAlignment: Text.AlignHCenter
            }
        }
    }

    Timer {
        interval: 1000
        repeat: true
        running: wiping.visible
        onTriggered: {
            --wiping.left;
            if (wiping.left <= 0)
                wiping.close();
        }
    }
}
