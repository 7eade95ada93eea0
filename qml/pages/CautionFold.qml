// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The cautions of a place under one line. They stand open until they were in sight once; then what follows them comes
// up under the thumb, and a touch on the line opens them again.
Column {
    id: fold

    required property AppContext app
    required property string place
    required property var cautions
    // Whether all of it is on the screen.
    property bool inSight: false
    property bool open: false

    // One more caution is news, and opens them again.
    readonly property string key: "cautions/" + place + "/" + cautions.length

    function look() {
        if (cautions.length > 0 && app.draft(key) === "")
            open = true;
    }

    function note() {
        if (open && inSight && cautions.length > 0)
            app.keepDraft(key, "read");
    }

    spacing: Theme.space
    visible: cautions.length > 0
    onKeyChanged: look()
    onInSightChanged: settled.restart()
    onHeightChanged: settled.restart()
    Component.onCompleted: look()

    // Once everything has its place, and for as long as it takes to read more than the first words.
    Timer {
        id: settled

        interval: 3000
        onTriggered: fold.note()
    }

    ListRow {
        objectName: "cautions"
        width: parent.width
        mark: "fault"
        forward: false
        text: qsTr("Cautions before the work: %1").arg(fold.cautions.length)
        detail: fold.open ? qsTr("Touch to fold") : qsTr("Touch to read it all")
        onClicked: fold.open = !fold.open
    }

    Repeater {
        model: fold.open ? fold.cautions : []

        Caution {
            required property string modelData

            width: parent.width
            text: modelData
        }
    }
}
