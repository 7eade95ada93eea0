// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Calls that were committed before the findings were shown, each beside the finding, and other causes named since:
// `calls` as FindingsModel has them.
Panel {
    id: panel

    required property var calls

    visible: calls.length > 0

    component Call: Column {
        required property var modelData

        LText {
            width: parent.width
            role: "figure"
            text: parent.modelData.text
        }

        LText {
            width: parent.width
            role: "label"
            text: parent.modelData.detail
        }
    }

    Column {
        width: parent.width
        spacing: Theme.gap

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("Calls and findings")
        }

        Repeater {
            model: panel.calls

            Column {
                id: cylinder

                required property var modelData
                readonly property bool aside: width > 26 * Theme.textSize(16) && (modelData.finding ?? "") !== ""
                readonly property bool compared: modelData.same !== undefined

                objectName: "called_" + modelData.number
                width: parent.width
                spacing: Theme.space / 2

                LText {
                    width: parent.width
                    visible: cylinder.modelData.number > 0
                    role: "heading"
                    text: cylinder.compared ? cylinder.modelData.same ? qsTr("Cylinder %1: same").arg(cylinder.modelData.number) : qsTr("Cylinder %1: different").arg(cylinder.modelData.number) : qsTr("Cylinder %1").arg(cylinder.modelData.number)
                }

                Grid {
                    width: parent.width
                    columns: cylinder.aside ? 2 : 1
                    columnSpacing: Theme.gap
                    rowSpacing: Theme.space / 2

                    Column {
                        width: cylinder.aside ? (parent.width - Theme.gap) / 2 : parent.width

                        LText {
                            width: parent.width
                            visible: cylinder.modelData.number > 0
                            role: "label"
                            text: qsTr("Called")
                        }

                        Repeater {
                            model: cylinder.modelData.calls

                            Call {
                                width: parent?.width ?? 0
                            }
                        }
                    }

                    Column {
                        width: cylinder.aside ? (parent.width - Theme.gap) / 2 : parent.width
                        visible: (cylinder.modelData.finding ?? "") !== ""

                        LText {
                            width: parent.width
                            role: "label"
                            text: qsTr("Findings")
                        }

                        LText {
                            width: parent.width
                            text: cylinder.modelData.finding ?? ""
                        }
                    }
                }
            }
        }
    }
}
