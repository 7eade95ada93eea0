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
    property string setPressure
    property string hole
    property string holeUnit: testers.holeUnits[0].value
    property string problem
    // The row that it speaks of; null: the whole sheet.
    property Item meant: null

    function keep() {
        const nameless = name.trim() === "";
        if (nameless)
            problem = qsTr("Give it a name: readings say by it which tester they were taken with.");
        else if (lastFigure.trim() === "")
            problem = qsTr("Type the last figure on the dial: how fine the gauge reads hangs on it.");
        else
            problem = testers.add(kind, name, lastFigure, unit, setPressure, hole, holeUnit);
        if (problem === "")
            return close();
        const number = row => Number(row.text.trim().replace(",", "."));
        const wrong = [scaleRow, setRow, holeRow].find(row => row.visible && isNaN(number(row)));
        const over = setRow.visible && number(setRow) > number(scaleRow) ? setRow : null;
        meant = nameless ? nameRow : lastFigure.trim() === "" ? scaleRow : wrong ?? over;
        if (meant)
            meant.field.forceActiveFocus();
        reveal(meant ?? hint);
    }

    function problemAt(row: Item): string {
        return meant === row ? problem : "";
    }

    title: qsTr("Add a tester")
    unfinished: (name + lastFigure + setPressure + hole).trim() !== ""

    ChoiceRow {
        objectName: "kind"
        width: parent.width
        label: qsTr("Kind")
        options: sheet.testers.kinds
        current: sheet.kind
        onChosen: value => sheet.kind = value
    }

    TextRow {
        id: nameRow

        objectName: "name"
        width: parent.width
        label: qsTr("Name")
        text: sheet.name
        placeholder: qsTr("As you call it in the shop")
        problem: sheet.problemAt(nameRow)
        onEdited: text => {
            sheet.name = text;
            sheet.problem = "";
        }
    }

    NumberRow {
        id: scaleRow

        objectName: "scale"
        width: parent.width
        label: qsTr("Last figure on the dial")
        text: sheet.lastFigure
        problem: sheet.problemAt(scaleRow)
        unit: Array.from(sheet.testers.units).find(option => option.value === sheet.unit).text
        onEdited: text => {
            sheet.lastFigure = text;
            sheet.problem = "";
        }

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

    // What every reading is converted by. Who does not know it yet leaves it blank.
    NumberRow {
        id: setRow

        objectName: "setPressure"
        width: parent.width
        visible: sheet.kind !== "compression gauge"
        label: qsTr("Set pressure")
        hint: qsTr("What it is usually set to with the outlet blocked.")
        text: sheet.setPressure
        unit: scaleRow.unit
        problem: sheet.problemAt(setRow)
        onEdited: text => {
            sheet.setPressure = text;
            sheet.problem = "";
        }
    }

    NumberRow {
        id: holeRow

        objectName: "hole"
        width: parent.width
        visible: sheet.kind === "leak-down tester"
        label: qsTr("Restrictor diameter")
        hint: qsTr("Often 1 mm. Leave it blank if you don't know it; readings are converted by it.")
        text: sheet.hole
        unit: Array.from(sheet.testers.holeUnits).find(option => option.value === sheet.holeUnit).text
        unitChoices: true
        problem: sheet.problemAt(holeRow)
        onEdited: text => {
            sheet.hole = text;
            sheet.problem = "";
        }
        onUnitTapped: {
            const symbols = Array.from(sheet.testers.holeUnits).map(option => option.value);
            sheet.holeUnit = symbols[(symbols.indexOf(sheet.holeUnit) + 1) % symbols.length];
        }
    }

    FieldHint {
        id: hint

        width: parent.width
        problem: sheet.meant ? "" : sheet.problem
    }

    actions: BigButton {
        objectName: "keep"
        text: qsTr("Add it")
        onClicked: sheet.keep()
    }
}
