// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// What a calculator says: the result large with its uncertainty, what follows from it below, or the sentence that
// says what is missing. A touch on a figure asks where it comes from.
Panel {
    id: panel

    required property var results
    property string problem

    readonly property var main: results.length > 0 ? results[0] : null

    signal explain(int from)

    selected: main !== null

    Column {
        width: parent.width
        spacing: Theme.space

        LText {
            objectName: "problem"
            width: parent.width
            visible: panel.main === null
            text: panel.problem
        }

        Pressable {
            id: large

            objectName: "mainResult"
            width: parent.width
            visible: panel.main !== null
            fill: "transparent"
            horizontalPadding: 0
            text: panel.main ? panel.main.name + ": " + panel.main.value + " " + panel.main.doubt : ""
            enabled: panel.main !== null && panel.main.from >= 0
            Accessible.description: enabled ? qsTr("Where does this come from?") : ""
            onClicked: panel.explain(panel.main.from)

            inside: Item {
                implicitHeight: words.height
                implicitWidth: 200

                Column {
                    id: words

                    width: parent.width
                    anchors.verticalCenter: parent.verticalCenter

                    LText {
                        width: parent.width
                        silent: true
                        color: Theme.quietInk
                        text: panel.main?.name ?? ""
                    }

                    Flow {
                        width: parent.width
                        spacing: Theme.space

                        LText {
                            id: value

                            objectName: "mainValue"
                            silent: true
                            role: "readout"
                            text: panel.main?.value ?? ""
                            width: Math.min(implicitWidth, words.width)
                            // A range is two readouts long: it shrinks rather than breaks in a figure.
                            font.pixelSize: Math.max(Theme.numeralSize, Math.min(roleSize, roleSize * words.width / Math.max(1, measure.advanceWidth)))

                            TextMetrics {
                                id: measure

                                font.family: Theme.family
                                font.bold: true
                                font.pixelSize: Theme.readoutSize
                                text: panel.main?.value ?? ""
                            }
                        }

                        LText {
                            silent: true
                            role: "heading"
                            // On the line of the figure, while it stands beside it.
                            topPadding: y > 0 ? 0 : value.baselineOffset * (1 - font.pixelSize / value.font.pixelSize)
                            text: panel.main?.doubt ?? ""
                            visible: text !== ""
                        }
                    }
                }
            }
        }

        FindingLines {
            width: parent.width
            visible: lines.length > 0
            lines: panel.results.slice(1).map(line => ({
                            figure: line.value + (line.doubt === "" ? "" : " " + line.doubt),
                            text: line.name,
                            from: line.from
                        }))
            onExplain: from => panel.explain(from)
        }
    }
}
