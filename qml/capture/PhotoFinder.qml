// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Capture
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What the camera sees, with a ring to fill; a tap focuses there.
Item {
    id: finder

    required property PhotoModel photo

    Rectangle {
        anchors.fill: parent
        color: Theme.panel
        radius: Theme.corner
    }

    Viewfinder {
        id: view

        objectName: "viewfinder"
        anchors.fill: parent
        photo: finder.photo
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("What the camera sees")
        Accessible.ignored: Theme.isBehind(view)

        TapHandler {
            enabled: finder.photo.canFocus
            onTapped: point => finder.photo.focusAt((point.position.x - view.picture.x) / view.picture.width, (point.position.y - view.picture.y) / view.picture.height)
        }
    }

    // The dial fills it: then the needle is large enough to be read.
    Rectangle {
        readonly property real side: Math.min(view.picture.width, view.picture.height)

        visible: side > 0 && finder.photo.kind === "gauge"
        anchors.centerIn: view
        width: 0.86 * side
        height: width
        radius: width / 2
        color: "transparent"
        border.width: 3
        border.color: Theme.info
    }

    LText {
        anchors.centerIn: parent
        visible: view.picture.width === 0
        text: finder.photo.state === "looking" ? qsTr("Waiting for the camera ...") : ""
    }
}
