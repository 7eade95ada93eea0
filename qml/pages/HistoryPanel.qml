// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Every cylinder over the visits: what came back since a repair, one test's drawing, the same as a list.
Column {
    id: panel

    required property AppContext app
    required property string engineId

    property int picked: 0
    property bool listed: false

    visible: history.any || history.emptyNote !== ""
    spacing: Theme.space

    HistoryModel {
        id: history

        app: panel.app
        engineId: panel.engineId
    }

    LText {
        width: parent.width
        role: "heading"
        text: qsTr("History")
    }

    Panel {
        objectName: "historyEmpty"
        width: parent.width
        visible: history.emptyNote !== ""

        LText {
            width: parent.width
            text: history.emptyNote
        }
    }

    Repeater {
        model: history.sinceRepair

        Panel {
            id: since

            required property var modelData

            objectName: "sinceRepair_" + modelData.number
            width: panel.width

            Column {
                width: parent.width
                spacing: Theme.space / 2

                LText {
                    width: parent.width
                    role: "figure"
                    text: since.modelData.text
                }

                Repeater {
                    model: since.modelData.evidence

                    LText {
                        required property string modelData

                        width: parent.width
                        text: modelData
                    }
                }
            }
        }
    }

    ChoiceRow {
        width: parent.width
        visible: history.tests.length > 1
        options: history.tests
        current: history.test
        onChosen: value => history.test = value
    }

    ChoiceRow {
        width: parent.width
        visible: history.cylinders.length > 2
        label: qsTr("Cylinder")
        options: history.picks
        current: panel.picked
        onChosen: value => panel.picked = value
    }

    ChoiceRow {
        objectName: "historyAxis"
        width: parent.width
        visible: history.axes.length > 1
        options: history.axes
        current: history.axis
        onChosen: value => history.axis = value
    }

    Panel {
        width: parent.width
        visible: history.any
        padding: Theme.space

        HistoryDrawing {
            id: drawing

            objectName: "historyDrawing"
            width: parent.width
            height: Math.max(200, Math.min(320, width * 0.6)) + 2 * (Theme.labelSize - 14)
            plot: history.plot
            picked: panel.picked
            ink: Theme.ink
            quiet: Theme.quietInk
            paper: Theme.panel
            family: Theme.family
            textSize: Math.min(Theme.labelSize, 22)

            Accessible.role: Accessible.Graphic
            Accessible.name: history.spoken
            Accessible.ignored: Theme.isBehind(drawing)
        }
    }

    LText {
        width: parent.width
        visible: history.any
        role: "label"
        text: qsTr("The number at a line's end is its cylinder; a whisker is the doubt, scatter from one day to the next included. A line breaks where a repair lies between. All readings as the newest visit's tester would show them.")
    }

    LText {
        objectName: "historyAxisNote"
        width: parent.width
        visible: text !== ""
        role: "label"
        text: history.axisNote
    }

    SideButton {
        objectName: "historyList"
        width: parent.width
        visible: history.any
        text: panel.listed ? qsTr("Hide the figures") : qsTr("Show the figures")
        onClicked: panel.listed = !panel.listed
    }

    Repeater {
        model: panel.listed ? history.cylinders : []

        HistoryLines {
            width: panel.width
        }
    }

    FindingLines {
        width: parent.width
        visible: panel.listed && lines.length > 0
        lines: history.reasons
    }
}
