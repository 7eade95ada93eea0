// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Before and after: two visits, cylinder by cylinder, and what can't be compared.
AppPage {
    id: page

    required property AppContext app
    required property string engineId
    property string beforeId
    property string afterId

    signal go(name: string, args: var)

    title: qsTr("Before and after")
    subtitle: changes.engineName

    ChangesModel {
        id: changes

        app: page.app
        engineId: page.engineId
        beforeId: page.beforeId
        afterId: page.afterId
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Theme.gap

        LText {
            objectName: "working"
            width: parent.width
            visible: !changes.ready
            text: qsTr("Working it out …")
        }

        LText {
            width: parent.width
            visible: text !== ""
            text: changes.nothing
        }

        ListRow {
            objectName: "chooseBefore"
            width: parent.width
            visible: changes.beforeId !== ""
            text: changes.beforeText
            detail: qsTr("Before")
            symbol: "pencil"
            forward: false
            onClicked: {
                sheets.side = "before";
                sheets.show(chooser);
            }
        }

        ListRow {
            objectName: "chooseAfter"
            width: parent.width
            visible: changes.afterId !== ""
            text: changes.afterText
            detail: qsTr("After")
            symbol: "pencil"
            forward: false
            onClicked: {
                sheets.side = "after";
                sheets.show(chooser);
            }
        }

        Panel {
            width: parent.width
            visible: changes.reasons.length > 0

            Column {
                width: parent.width
                spacing: Theme.space / 2

                LText {
                    width: parent.width
                    role: "heading"
                    text: changes.comparable ? qsTr("To be compared with care") : qsTr("Not everything can be compared")
                }

                FindingLines {
                    width: parent.width
                    lines: changes.reasons
                }
            }
        }

        Repeater {
            model: changes.cylinders

            Panel {
                id: panel

                required property var modelData

                objectName: "changes_" + modelData.number
                about: heading.text
                width: parent.width

                Column {
                    width: parent.width
                    spacing: Theme.space

                    LText {
                        id: heading

                        width: parent.width
                        role: "heading"
                        text: panel.modelData.name === "" ? qsTr("Cylinder %1").arg(panel.modelData.number) : qsTr("Cylinder %1, %2").arg(panel.modelData.number).arg(panel.modelData.name)
                    }

                    LText {
                        width: parent.width
                        visible: panel.modelData.tests.length === 0
                        text: qsTr("Not measured at either visit.")
                    }

                    Repeater {
                        model: panel.modelData.tests

                        ChangeRow {
                            required property var modelData

                            objectName: "change_" + modelData.test
                            width: parent.width
                            change: modelData
                            onClicked: {
                                sheets.from = modelData.from;
                                sheets.show(derivation);
                            }
                        }
                    }

                    FindingLines {
                        objectName: "proofs"
                        width: parent.width
                        visible: lines.length > 0
                        lines: panel.modelData.proofs
                    }
                }
            }
        }

        LText {
            width: parent.width
            role: "label"
            visible: changes.cylinders.length > 0
            text: qsTr("± is about 95 %. What one gauge is out by at both visits cancels in the difference; what two gauges are out by does not. Touch a difference to see where it comes from.")
        }
    }

    actions: BigButton {
        objectName: "handOver"
        visible: changes.afterId !== ""
        text: qsTr("Hand over")
        onClicked: page.go("HandOver", {
            engineId: page.engineId,
            sessionId: changes.afterSessionId
        })
    }

    SheetLoader {
        id: sheets

        property string side
        property int from: -1
    }

    Component {
        id: chooser

        ChoiceSheet {
            title: sheets.side === "before" ? qsTr("Before") : qsTr("After")
            options: changes.choices
            current: sheets.side === "before" ? changes.beforeId : changes.afterId
            onChosen: value => {
                if (sheets.side === "before")
                    page.beforeId = value;
                else
                    page.afterId = value;
            }
        }
    }

    Component {
        id: derivation

        DerivationSheet {
            steps: changes.derivation(sheets.from)
        }
    }
}
