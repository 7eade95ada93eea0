// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One cylinder's readings over the visits, newest first, with its mark in the drawing.
Panel {
    id: lines

    required property var modelData

    objectName: "history_" + modelData.number

    Column {
        id: body

        width: parent.width
        spacing: Theme.space

        Item {
            width: parent.width
            height: name.height

            HistoryMark {
                id: mark

                width: Theme.markSize
                height: Theme.markSize
                line: lines.modelData.line
                ink: Theme.ink
                anchors.left: parent.left
                anchors.verticalCenter: parent.verticalCenter
            }

            LText {
                id: name

                anchors.left: mark.right
                anchors.leftMargin: Theme.space
                anchors.right: parent.right
                role: "heading"
                text: lines.modelData.name === "" ? qsTr("Cylinder %1").arg(lines.modelData.number) : qsTr("Cylinder %1, %2").arg(lines.modelData.number).arg(lines.modelData.name)
            }
        }

        LText {
            width: parent.width
            visible: text !== ""
            text: lines.modelData.trend
        }

        Repeater {
            model: lines.modelData.points

            Column {
                id: point

                required property var modelData

                width: body.width

                PairLine {
                    width: parent.width
                    name: point.modelData.text
                    value: point.modelData.figure
                }

                LText {
                    width: parent.width
                    visible: text !== ""
                    role: "label"
                    text: point.modelData.detail
                }
            }
        }
    }
}
