// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One line of a form: what it is, what stands there, and where that comes from. Name and value stand side by
// side when both fit, else below each other.
Pressable {
    id: row

    property string label
    property string value
    property string detail

    readonly property bool fits: name.implicitWidth + figure.implicitWidth + Theme.gap <= availableWidth - end.width

    text: label
    fill: Theme.panel
    outlineColor: Theme.hairline
    padding: Theme.gap
    horizontalPadding: 14
    Accessible.name: label + ", " + (value === "" ? qsTr("not given") : value) + (detail === "" ? "" : ", " + detail)

    inside: Item {
        implicitHeight: words.height
        implicitWidth: 200

        Column {
            id: words

            width: parent.width - end.width
            anchors.left: parent.left
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2

            Flow {
                width: parent.width

                LText {
                    id: name

                    silent: true
                    text: row.label
                    color: Theme.quietInk
                    width: row.fits ? words.width - figure.width : words.width
                }

                LText {
                    id: figure

                    silent: true
                    role: "figure"
                    text: row.value
                    visible: text !== ""
                    width: row.fits ? implicitWidth : words.width
                }
            }

            LText {
                width: parent.width
                visible: text !== ""
                silent: true
                role: "label"
                text: row.detail
            }
        }

        Item {
            id: end

            width: 22 + Theme.space
            height: 22
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter

            Symbol {
                name: "forward"
                size: 22
                anchors.right: parent.right
                rotation: row.mirrored ? 180 : 0
            }
        }
    }
}
