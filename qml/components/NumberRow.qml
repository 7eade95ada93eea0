// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A labelled figure with its unit. The text goes out as typed; nothing is parsed here. With `unitChoices` true the
// unit is a button: unitTapped().
Column {
    id: row

    property string label
    property string text
    property string unit
    property string placeholder
    property string hint
    property string problem
    property bool unitChoices: false
    property alias readOnly: field.readOnly
    readonly property alias field: field

    signal edited(string text)
    signal finished(string text)
    signal unitTapped

    spacing: Theme.space / 2
    onTextChanged: if (field.text !== text)
        field.text = text

    LText {
        width: parent.width
        visible: text !== ""
        role: "label"
        text: row.label
    }

    Item {
        width: parent.width
        height: field.implicitHeight

        FieldBox {
            id: field

            property string targetKind: "secondary"

            objectName: "field"
            anchors.fill: parent
            trailingRoom: row.unitChoices ? unitButton.width : unitWord.width + 6
            placeholderText: row.placeholder
            questioned: row.problem !== ""
            font.bold: true
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            Accessible.name: row.unit === "" ? row.label : row.label + ", " + row.unit
            Accessible.description: row.problem !== "" ? row.problem : row.hint
            onTextEdited: row.edited(text)
            onEditingFinished: row.finished(text)
            Component.onCompleted: text = row.text
        }

        LText {
            id: unitWord

            visible: !row.unitChoices
            silent: true
            text: row.unit
            color: Theme.quietInk
            wrapMode: Text.NoWrap
            anchors.right: parent.right
            anchors.rightMargin: 14
            anchors.verticalCenter: parent.verticalCenter
        }

        Pressable {
            id: unitButton

            objectName: "unit"
            visible: row.unitChoices
            text: row.unit
            fill: "transparent"
            horizontalPadding: Theme.gap
            anchors.right: parent.right
            height: parent.height
            Accessible.name: qsTr("Unit: %1").arg(row.unit)
            onClicked: row.unitTapped()

            inside: LText {
                silent: true
                text: row.unit
                font.underline: true
                verticalAlignment: Text.AlignVCenter
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.NoWrap
            }
        }
    }

    FieldHint {
        width: parent.width
        hint: row.hint
        problem: row.problem
    }
}
