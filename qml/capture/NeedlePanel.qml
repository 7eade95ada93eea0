// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What the photo reads, against what was typed; and the needle to set by hand.
Panel {
    id: panel

    required property NeedleModel needle
    // What is typed on the pad that the photo was taken from, and not kept yet: "4.6 bar".
    property string pending

    visible: needle.state !== ""

    Column {
        width: parent.width
        spacing: Theme.space

        LText {
            objectName: "reads"
            width: parent.width
            visible: text !== ""
            role: "heading"
            text: panel.needle.line
        }

        LText {
            objectName: "pending"
            width: parent.width
            visible: panel.pending !== "" && panel.needle.state === "read"
            text: qsTr("The pad shows %1, not kept yet. Where the two differ, Keep asks which one holds.").arg(panel.pending)
        }

        LText {
            objectName: "needleWhy"
            width: parent.width
            visible: text !== ""
            text: panel.needle.why
        }

        ChoiceRow {
            objectName: "settle"
            width: parent.width
            visible: panel.needle.differs || panel.needle.settled !== ""
            label: qsTr("They differ. What holds?")
            options: panel.needle.choices
            current: panel.needle.settled
            onChosen: value => panel.needle.settle(value)
        }

        Repeater {
            model: panel.needle.offers

            SideButton {
                required property var modelData

                objectName: "keepAsReading_" + modelData.value
                width: parent.width
                text: modelData.text
                onClicked: panel.needle.keepAsReading(modelData.value)
            }
        }

        SideButton {
            objectName: "readAgain"
            width: parent.width
            visible: text !== ""
            text: panel.needle.again
            onClicked: panel.needle.readAgain()
        }

        LText {
            width: parent.width
            visible: panel.needle.adjustable
            role: "label"
            text: qsTr("Needle not quite right? Drag the bar: the finger stays off the needle.")
        }

        Row {
            width: parent.width
            visible: panel.needle.adjustable
            spacing: Theme.space

            StepKey {
                id: back

                objectName: "needleBack"
                symbol: "minus"
                text: qsTr("Needle back half a degree")
                onClicked: panel.needle.turn(-0.5)
            }

            Rectangle {
                objectName: "needleHandle"
                width: parent.width - 2 * (back.width + Theme.space)
                height: back.height
                radius: Theme.corner
                color: Theme.key

                Symbol {
                    anchors.centerIn: parent
                    name: "swap"
                }

                DragHandler {
                    property real last: 0

                    target: null
                    yAxis.enabled: false
                    onActiveChanged: last = 0
                    // A quarter of a degree for each dp: finer than an eye, and a whole scale in two sweeps.
                    onTranslationChanged: if (active) {
                        panel.needle.turn((translation.x - last) / 4);
                        last = translation.x;
                    }
                }
            }

            StepKey {
                objectName: "needleOn"
                symbol: "plus"
                text: qsTr("Needle on half a degree")
                onClicked: panel.needle.turn(0.5)
            }
        }
    }
}
