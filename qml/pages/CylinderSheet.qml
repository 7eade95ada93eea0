// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// Number, name and bank of one cylinder.
Sheet {
    id: sheet

    required property EngineCardForm card
    required property int index

    property string number
    property string name
    property int bank: 0
    property string problem

    function keep() {
        problem = card.changeCylinder(index, number, name, bank);
        if (problem === "")
            close();
    }

    title: qsTr("Cylinder")
    Component.onCompleted: {
        const cylinder = card.cylinders[index];
        number = String(cylinder.number);
        name = cylinder.name;
        bank = cylinder.bank;
    }

    NumberRow {
        objectName: "number"
        width: parent.width
        label: qsTr("Number")
        text: sheet.number
        hint: qsTr("As the engine's maker counts it, 1 to 99.")
        problem: sheet.problem
        onEdited: text => sheet.number = text
    }

    TextRow {
        objectName: "name"
        width: parent.width
        label: qsTr("Name")
        text: sheet.name
        placeholder: qsTr("front, rear, left ...")
        onEdited: text => sheet.name = text
    }

    ChoiceRow {
        objectName: "bank"
        width: parent.width
        visible: sheet.card.banked
        label: qsTr("Bank")
        options: [
            {
                value: 0,
                text: qsTr("first")
            },
            {
                value: 1,
                text: qsTr("second")
            }
        ]
        current: sheet.bank
        onChosen: value => sheet.bank = value
    }

    actions: BigButton {
        objectName: "keep"
        text: qsTr("Keep")
        onClicked: sheet.keep()
    }
}
