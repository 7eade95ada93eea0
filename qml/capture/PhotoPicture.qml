// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// A kept photo, with scale and needle drawn on it where they were found.
Rectangle {
    id: frame

    required property PhotoModel photo
    required property NeedleModel needle

    radius: Theme.corner
    color: Theme.panel

    Image {
        id: picture

        objectName: "picture"
        anchors.fill: parent
        source: frame.photo.file
        sourceSize.width: 1024
        sourceSize.height: 1024
        fillMode: Image.PreserveAspectFit
        asynchronous: true
        Accessible.role: Accessible.Graphic
        Accessible.name: frame.photo.photoPlace
        Accessible.ignored: Theme.isBehind(picture)
    }

    Item {
        anchors.centerIn: picture
        width: picture.paintedWidth
        height: picture.paintedHeight
        clip: true

        Repeater {
            model: [
                {
                    line: frame.needle.ring,
                    color: Theme.info,
                    thickness: 5
                },
                {
                    line: frame.needle.needle,
                    color: Theme.act,
                    thickness: 7
                }
            ]

            LineDrawing {
                required property var modelData

                anchors.fill: parent
                grid: 1000
                line: modelData.line
                color: modelData.color
                thickness: modelData.thickness
            }
        }
    }

    LText {
        anchors.centerIn: parent
        width: parent.width - 2 * Theme.gap
        horizontalAlignment: Text.AlignHCenter
        visible: frame.photo.photoId !== "" && frame.photo.file === ""
        text: qsTr("The file of this photo is missing from the library. Settings, Storage says what can be done.")
    }
}
