// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The sheet that one line of a form is typed in. What was refused stays typed with the reason under it; what was
// typed and not kept is there again the next time.
Sheet {
    id: sheet

    required property CardForm form
    required property string key

    property var field: ({})
    property string kind
    property string typed
    property string unit
    property var chosen: []
    property string origin
    property string originNote
    property string problem

    function load() {
        field = form.field(key);
        const draft = form.draft(key);
        typed = draft !== "" ? draft : field.text;
        unit = field.unit;
        chosen = field.chosen;
        origin = field.origin;
        originNote = field.originNote;
        kind = field.kind;
    }

    function type(text: string) {
        typed = text;
        problem = "";
        form.keepDraft(key, text === field.text ? "" : text);
    }

    function keep() {
        problem = form.enter(key, {
            text: typed,
            unit: unit,
            chosen: chosen,
            origin: origin,
            originNote: originNote
        });
        if (problem !== "")
            return;
        form.keepDraft(key, "");
        close();
    }

    title: field.label ?? ""
    Component.onCompleted: load()

    FormSheetEntry {
        width: parent.width
        sheet: sheet
    }

    ChoiceRow {
        objectName: "units"
        width: parent.width
        visible: options.length > 1
        label: qsTr("Unit")
        options: (sheet.field.units ?? []).map((symbol, i) => ({
                    value: symbol,
                    text: sheet.field.unitNames[i]
                }))
        current: sheet.unit
        onChosen: value => sheet.unit = value
    }

    ChoiceRow {
        objectName: "origins"
        width: parent.width
        visible: sheet.field.hasOrigin ?? false
        label: qsTr("Where it comes from")
        options: [
            {
                value: "manual",
                text: qsTr("manual")
            },
            {
                value: "measured",
                text: qsTr("measured")
            },
            {
                value: "guessed",
                text: qsTr("guessed")
            }
        ]
        current: sheet.origin
        onChosen: value => sheet.origin = sheet.origin === value ? "unknown" : value
    }

    TextRow {
        objectName: "originNote"
        width: parent.width
        visible: sheet.field.hasOrigin ?? false
        label: qsTr("Page, or how it was measured")
        text: sheet.originNote
        onEdited: text => sheet.originNote = text
    }

    actions: BigButton {
        objectName: "keep"
        visible: sheet.kind !== "choice"
        text: qsTr("Keep")
        onClicked: sheet.keep()
    }
}
