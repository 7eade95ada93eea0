// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// The least that a new engine takes; the rest of its card can wait.
Sheet {
    id: sheet

    required property EngineStarter starter
    property string name
    property string cylinders
    property string arrangement: "in-line"
    // What most are; the tests, the exits and the cautions hang on them.
    property string cycle: "four-stroke"
    property string fuel: "petrol"
    property string problem
    readonly property bool lacksName: name.trim() === ""
    // On its way to the storage, which may refuse it: what was typed stays until then.
    property bool waiting: false

    function keep() {
        if (waiting)
            return;
        problem = starter.addEngine(name, cylinders, cylinders.trim() === "1" ? "single" : arrangement, cycle, fuel);
        waiting = problem === "";
        if (waiting)
            return;
        // To the field that is meant, with the sentence that says what it lacks under it.
        if (lacksName)
            nameRow.field.forceActiveFocus();
        else
            countRow.field.forceActiveFocus();
        reveal(lacksName ? nameRow : countRow);
    }

    title: qsTr("Add an engine")
    unfinished: name.trim() !== "" || cylinders.trim() !== ""
    onOpened: nameRow.field.forceActiveFocus()

    Connections {
        target: sheet.starter

        function onEngineAdded() {
            sheet.close();
        }

        function onEngineRefused() {
            sheet.waiting = false;
        }
    }

    TextRow {
        id: nameRow

        objectName: "name"
        width: parent.width
        label: qsTr("Name")
        text: sheet.name
        placeholder: qsTr("As you call it in the shop")
        problem: sheet.lacksName ? sheet.problem : ""
        onEdited: text => {
            sheet.name = text;
            sheet.problem = "";
        }

        Connections {
            target: nameRow.field

            function onAccepted() {
                countRow.field.forceActiveFocus();
            }
        }
    }

    NumberRow {
        id: countRow

        objectName: "cylinders"
        width: parent.width
        label: qsTr("Number of cylinders")
        text: sheet.cylinders
        problem: sheet.lacksName ? "" : sheet.problem
        onEdited: text => {
            sheet.cylinders = text;
            sheet.problem = "";
        }

        Connections {
            target: countRow.field

            function onAccepted() {
                sheet.keep();
            }
        }
    }

    ChoiceRow {
        objectName: "cycle"
        width: parent.width
        label: qsTr("Cycle")
        options: sheet.starter.cycles
        current: sheet.cycle
        onChosen: value => sheet.cycle = value
    }

    ChoiceRow {
        objectName: "fuel"
        width: parent.width
        label: qsTr("Fuel")
        options: sheet.starter.fuels
        current: sheet.fuel
        onChosen: value => sheet.fuel = value
    }

    ChoiceRow {
        objectName: "arrangement"
        width: parent.width
        visible: sheet.cylinders.trim() !== "1"
        label: qsTr("Arrangement")
        options: Array.from(sheet.starter.arrangements).filter(option => option.value !== "single")
        current: sheet.arrangement
        onChosen: value => sheet.arrangement = value
    }

    FieldHint {
        width: parent.width
        hint: qsTr("Everything else on the card can wait. A rotary engine is not supported.")
    }

    actions: BigButton {
        objectName: "keep"
        text: qsTr("Add it")
        onClicked: sheet.keep()
    }
}
