// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// One line of a form in the shape that its kind has. edit(): it wants its sheet.
Loader {
    id: line

    required property CardForm form
    required property string key

    readonly property int revision: form ? form.revision : 0
    readonly property var field: revision > 0 ? form.field(key) : ({})
    readonly property string kind: field.kind ?? ""
    // Something was written on its sheet and not kept.
    readonly property bool halfWritten: revision > 0 && form.draft(key) !== ""
    readonly property string origin: {
        switch (field.origin) {
        case "manual":
            return qsTr("manual");
        case "measured":
            return qsTr("measured");
        case "guessed":
            return qsTr("guessed");
        default:
            return "";
        }
    }

    signal edit

    sourceComponent: kind === "toggle" ? toggle : kind === "action" ? action : row

    Component {
        id: row

        FormRow {
            objectName: "line_" + line.key
            width: line.width
            label: line.field.label ?? ""
            value: line.field.shown ?? ""
            detail: [line.halfWritten ? qsTr("written, not kept yet") : "", line.origin, line.field.originNote].filter(part => part).join(", ")
            onClicked: line.edit()
        }
    }

    Component {
        id: toggle

        SwitchRow {
            objectName: "line_" + line.key
            width: line.width
            text: line.field.label ?? ""
            checked: (line.field.chosen ?? []).includes("on")
            onClicked: line.form.enter(line.key, {
                chosen: checked ? ["on"] : []
            })
        }
    }

    Component {
        id: action

        SideButton {
            objectName: "line_" + line.key
            width: line.width
            text: line.field.label ?? ""
            onClicked: line.form.enter(line.key, {})
        }
    }
}
