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
    // Another way out than the answers; empty: there is none.
    property string way

    signal wayTaken

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

    // False when it was refused: `problem` says why.
    function store(): bool {
        problem = form.enter(key, {
            text: typed,
            unit: unit,
            chosen: chosen,
            origin: origin,
            originNote: originNote
        });
        if (problem === "")
            form.keepDraft(key, "");
        return problem === "";
    }

    function keep() {
        if (store())
            close();
    }

    function isTyped(line: var): bool {
        return line.kind === "quantity" || line.kind === "number" || line.kind === "text";
    }

    // The next line of the section that is typed, for who fills in a whole card.
    function keyAfter(): string {
        for (const name of form.sections) {
            const keys = Array.from(form.keysOf(name));
            const at = keys.indexOf(key);
            if (at >= 0)
                return keys.slice(at + 1).find(other => isTyped(form.field(other))) ?? "";
        }
        return "";
    }

    function keepAndGoOn() {
        const next = nextKey;
        if (!store())
            return;
        key = next;
        load();
        entry.startOver();
    }

    readonly property string nextKey: isTyped(field) ? keyAfter() : ""
    readonly property var nextField: nextKey !== "" ? form.field(nextKey) : ({})

    title: field.label ?? ""
    Component.onCompleted: load()

    FormSheetEntry {
        id: entry

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

    SideButton {
        objectName: "way"
        width: parent.width
        visible: sheet.way !== ""
        text: sheet.way
        onClicked: {
            sheet.close();
            sheet.wayTaken();
        }
    }

    actions: [
        SideButton {
            objectName: "keepNext"
            visible: sheet.nextKey !== ""
            text: qsTr("Keep, then %1").arg(sheet.nextField.label ?? "")
            onClicked: sheet.keepAndGoOn()
        },
        BigButton {
            objectName: "keep"
            visible: sheet.kind !== "choice"
            text: qsTr("Keep")
            onClicked: sheet.keep()
        }
    ]
}
