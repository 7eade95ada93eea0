// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme
import Lapwing.ViewModels

// A form over one record: sections that fold, lines that open a sheet to type in. `opened` names the sections
// that stand open at first; `allOpened` opens every one.
Column {
    id: list

    required property CardForm form
    property var opened: []
    property bool allOpened: false
    // What the sheet of a line offers beside its answers, by key: "Add a tester".
    property var ways: ({})

    signal wayTaken(key: string)

    function edit(key: string) {
        sheets.key = key;
        sheets.show(editor);
    }

    spacing: Theme.gap

    Repeater {
        model: list.form.sections

        FormSection {
            required property string modelData
            required property int index

            width: list.width
            form: list.form
            name: modelData
            opened: list.allOpened || list.opened.includes(index)
            onEdit: key => list.edit(key)
        }
    }

    SheetLoader {
        id: sheets

        property string key
    }

    Component {
        id: editor

        FormSheet {
            form: list.form
            key: sheets.key
            way: list.ways[sheets.key] ?? ""
            onWayTaken: list.wayTaken(key)
        }
    }
}
