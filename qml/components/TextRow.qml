// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A labelled line of text. edited(text) with every key, finished(text) when the field is left. `problem` is a
// question or a fault shown under the field; `hint` stands there otherwise.
Column {
    id: row

    property string label
    property string text
    property string placeholder
    property string hint
    property string problem
    property alias inputMethodHints: field.inputMethodHints
    property alias readOnly: field.readOnly
    property alias maximumLength: field.maximumLength
    readonly property alias field: field

    signal edited(string text)
    signal finished(string text)

    spacing: Theme.space / 2
    onTextChanged: if (field.text !== text)
        field.text = text

    LText {
        width: parent.width
        visible: text !== ""
        role: "label"
        text: row.label
    }

    FieldBox {
        id: field

        property string targetKind: "secondary"

        objectName: "field"
        width: parent.width
        placeholderText: row.placeholder
        questioned: row.problem !== ""
        Accessible.name: row.label
        Accessible.description: row.problem !== "" ? row.problem : row.hint
        onTextEdited: row.edited(text)
        onEditingFinished: row.finished(text)
        Component.onCompleted: text = row.text
    }

    FieldHint {
        width: parent.width
        hint: row.hint
        problem: row.problem
    }
}
