// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Capture
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What the pad needs seldom: earlier readings of this cylinder, what came just before, the gauge's unit, cautions.
Sheet {
    id: sheet

    required property PadModel model

    signal howTo
    signal wipe
    signal evidence(name: string)

    title: model.cylinder > 0 ? qsTr("Cylinder %1").arg(model.cylinder) : model.title

    LText {
        width: parent.width
        role: "label"
        text: sheet.model.subtitle
    }

    SideButton {
        objectName: "dropPointHere"
        visible: sheet.model.pointPlaced
        width: parent.width
        text: qsTr("Take the decimal point away again")
        onClicked: {
            sheet.model.dropPoint();
            sheet.close();
        }
    }

    // Of the reading that stands, or of the cylinder while there is none.
    EvidenceButtons {
        width: parent.width
        visible: sheet.model.cylinder > 0
        tie: ({})
        onGo: name => {
            sheet.evidence(name);
            sheet.close();
        }
    }

    LText {
        width: parent.width
        visible: sheet.model.history.length > 0
        role: "heading"
        text: qsTr("Readings so far")
    }

    Repeater {
        model: sheet.model.history

        Panel {
            id: earlier

            required property var modelData
            required property int index

            objectName: "earlier_" + index
            width: parent.width

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "figure"
                    text: earlier.modelData.text
                    font.strikeout: earlier.modelData.replaced
                }

                LText {
                    width: parent.width
                    role: "label"
                    text: earlier.modelData.about
                }

                Row {
                    visible: !earlier.modelData.replaced
                    spacing: Theme.space

                    SideButton {
                        objectName: "redo"
                        visible: !earlier.modelData.asOne
                        text: qsTr("Redo")
                        onClicked: {
                            sheet.model.startRedo(earlier.modelData.id);
                            sheet.close();
                        }
                    }

                    SideButton {
                        objectName: "remove"
                        text: qsTr("Delete")
                        onClicked: sheet.model.remove(earlier.modelData.id)
                    }
                }
            }
        }
    }

    LText {
        width: parent.width
        visible: sheet.model.history.length > 0
        role: "label"
        text: qsTr("A second reading is kept beside the first: both count. Redo puts a new reading in place of this one; the old one stays here.")
    }

    SideButton {
        visible: sheet.model.redoing
        width: parent.width
        text: qsTr("Not redo after all")
        onClicked: {
            sheet.model.cancelRedo();
            sheet.close();
        }
    }

    ChoiceRow {
        width: parent.width
        label: qsTr("What came just before")
        options: sheet.model.tags
        current: sheet.model.tag
        onChosen: value => sheet.model.tag = value
    }

    ChoiceRow {
        width: parent.width
        label: qsTr("What the dial is marked in")
        options: Array.from(sheet.model.pressureUnits).map(unit => ({
                    value: unit,
                    text: unit === "kgf/cm2" ? "kgf/cm²" : unit === "%" ? qsTr("% leakage") : unit
                }))
        current: sheet.model.pressureUnit
        onChosen: value => sheet.model.pressureUnit = value
    }

    SignsLegend {
        width: parent.width
        topPadding: Theme.space
        bottomPadding: Theme.space
    }

    SideButton {
        objectName: "wipe"
        width: parent.width
        text: qsTr("Wipe the glass")
        onClicked: {
            sheet.wipe();
            sheet.close();
        }
    }

    SideButton {
        objectName: "howTo"
        width: parent.width
        text: qsTr("How to")
        onClicked: {
            sheet.howTo();
            sheet.close();
        }
    }

    Repeater {
        model: sheet.model.cautions

        Caution {
            required property string modelData

            width: parent.width
            text: modelData
        }
    }
}
