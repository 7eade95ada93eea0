// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One self-check of a tester: how it is done, what was seen, and how it ended.
Sheet {
    id: sheet

    required property TesterCardForm card
    required property var check

    property var typed: ({})
    property string problem
    readonly property var says: card.checkSays(check.kind, typed)

    function type(key: string, text: string) {
        typed = Object.assign({}, typed, {
            [key]: text
        });
        problem = "";
    }

    function keep(passed: bool) {
        problem = card.keepCheck(check.kind, passed, typed);
        if (problem === "")
            close();
    }

    function label(key: string): string {
        if (key === "hole")
            return qsTr("Drilled hole");
        if (check.kind === "against a reference")
            return key === "set" ? qsTr("The reference shows") : qsTr("This gauge shows");
        return key === "set" ? qsTr("Set pressure") : qsTr("The gauge shows");
    }

    title: check.title

    LText {
        width: parent.width
        text: sheet.check.instruction
    }

    LText {
        width: parent.width
        role: "label"
        text: qsTr("Last time: %1").arg(sheet.check.last)
    }

    Repeater {
        model: sheet.check.asks

        NumberRow {
            required property string modelData

            objectName: modelData
            width: parent.width
            label: sheet.label(modelData)
            unit: modelData === "hole" ? "mm" : sheet.card.unit
            text: sheet.typed[modelData] ?? ""
            onEdited: text => sheet.type(modelData, text)
        }
    }

    Panel {
        width: parent.width
        visible: sheet.says.text !== undefined

        StateMark {
            id: mark

            state: sheet.says.passes ?? true ? "good" : "fault"
        }

        LText {
            objectName: "says"
            anchors.left: mark.right
            anchors.leftMargin: Theme.gap
            anchors.right: parent.right
            text: sheet.says.text ?? ""
        }
    }

    TextRow {
        objectName: "note"
        width: parent.width
        label: qsTr("Note")
        text: sheet.typed.note ?? ""
        onEdited: text => sheet.type("note", text)
    }

    FieldHint {
        width: parent.width
        problem: sheet.problem
    }

    actions: [
        SideButton {
            objectName: "failed"
            targetKind: "primary"
            text: qsTr("Failed")
            onClicked: sheet.keep(false)
        },
        BigButton {
            objectName: "passed"
            text: qsTr("Passed")
            onClicked: sheet.keep(true)
        }
    ]
}
