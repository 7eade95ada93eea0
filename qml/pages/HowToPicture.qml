// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Components
import Lapwing.Theme

// A drawn picture with its numbered places named below. Who can't see it hears it described.
Panel {
    id: panel

    required property var picture

    Column {
        width: parent.width
        spacing: Theme.gap

        LText {
            width: parent.width
            role: "heading"
            text: panel.picture.title
        }

        PictureDrawing {
            id: drawing

            objectName: "picture_" + panel.picture.id
            width: Math.min(parent.width, 460)
            height: Math.ceil(width * panel.picture.height / panel.picture.width) + 2
            anchors.horizontalCenter: parent.horizontalCenter
            picture: panel.picture
            ink: Theme.ink
            quiet: Theme.quietInk
            ground: Theme.panel
            solid: Theme.keyPressed
            air: Theme.info
            rings: Theme.rings
            intake: Theme.intake
            exhaust: Theme.exhaust
            gasket: Theme.gasket
            inkOnPath: Theme.inkOnPath
            font.family: Theme.family
            markRadius: 10 * Math.min(1.3, Theme.textScale)
            Accessible.role: Accessible.Graphic
            Accessible.name: panel.picture.title
            Accessible.description: panel.picture.description
            Accessible.ignored: Theme.isBehind(drawing)
        }

        Repeater {
            model: panel.picture.marks

            NumberedLine {
                required property var modelData
                required property int index

                width: parent.width
                number: index + 1
                text: modelData.text
            }
        }
    }
}
