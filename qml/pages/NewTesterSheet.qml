// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// The least that a new tester takes; the rest of its card can wait.
Sheet {
    id: sheet

    required property TesterListModel testers
    property string kind: "compression gauge"
    property string name
    property string lastFigure
    property string unit: testers.units[0].value
    property string problem

    function keep() {
        problem = testers.add(kind, name, lastFigure, unit);
        if (problem === "")
            close();
        else
            reveal(hint);
    }

    title: qsTr("Add a tester")

    ChoiceRow {
        objectName: "kind"
        width: parent.width
        label: qsTr("Kind")
        options: sheet.testers.kinds
        current: sheet.kind
        onChosen: value => sheet.kind = value
    }

    TextRow {
        objectName: "name"
        width: parent.width
        label: qsTr("Name")
        text: sheet.name
        placeholder: qsTr("As you call it in the shop")
        onEdited: text => sheet.name = text
    }

    NumberRow {
        id: scaleRow

        objectName: "scale"
        width: parent.width
        label: qsTr("Last figure on the dial")
        text: sheet.lastFigure
        unit: Array.from(sheet.testers.units).find(option => option.value === sheet.unit).text
        onEdited: text => sheet.lastFigure = text

        Connections {
            target: scaleRow.field

            function onAccepted() {
                sheet.keep();
            }
        }
    }

    ChoiceRow {
        objectName: "unit"
        width: parent.width
        label: qsTr("Unit on the dial")
        options: sheet.testers.units
        current: sheet.unit
        onChosen: value => sheet.unit = value
    }

    FieldHint {
        id: hint

        width: parent.width
        problem: sheet.problem
    }

    actions: BigButton {
        objectName: "keep"
        text: qsTr("Add it")
        onClicked: sheet.keep()
    }
}
