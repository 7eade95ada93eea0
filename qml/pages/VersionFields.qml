// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Fields in which two versions of a record differ, side by side, or one under the other where there is no room:
// `fields` is a list of {name, one, other}.
Column {
    id: list

    required property var fields
    property string oneHead: qsTr("Here")
    property string otherHead: qsTr("In the file")

    readonly property bool beside: width >= 240 * Theme.textScale
    readonly property real share: beside ? (width - Theme.gap) / 2 : width

    spacing: Theme.space

    Repeater {
        model: list.fields

        Column {
            id: field

            required property var modelData

            width: list.width
            spacing: 2

            LText {
                width: parent.width
                role: "figure"
                text: field.modelData.name
            }

            Flow {
                width: parent.width
                spacing: list.beside ? Theme.gap : 4

                Column {
                    width: list.share

                    LText {
                        width: parent.width
                        role: "label"
                        text: list.oneHead
                    }

                    LText {
                        width: parent.width
                        text: field.modelData.one === "" ? qsTr("nothing noted") : field.modelData.one
                    }
                }

                Column {
                    width: list.share

                    LText {
                        width: parent.width
                        role: "label"
                        text: list.otherHead
                    }

                    LText {
                        width: parent.width
                        text: field.modelData.other === "" ? qsTr("nothing noted") : field.modelData.other
                    }
                }
            }
        }
    }
}
