// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// What is typed or chosen in a FormSheet, by the kind of the line.
Loader {
    id: entry

    // The FormSheet that it stands in. Not typed: the two files would need each other.
    required property var sheet

    onLoaded: startOver()

    // Another line stands in the sheet now.
    function startOver() {
        const field = (item as NumberRow)?.field ?? (item as TextRow)?.field;
        if (!field)
            return;
        select.field = field;
        select.start();
    }

    // A new figure takes the place of the old one.
    Timer {
        id: select

        property FieldBox field

        interval: 0
        onTriggered: {
            field?.forceActiveFocus();
            field?.selectAll();
        }
    }

    readonly property var options: (sheet.field.options ?? []).map((word, i) => ({
                value: word,
                text: sheet.field.optionNames[i]
            }))

    sourceComponent: {
        switch (sheet.kind) {
        case "quantity":
        case "number":
            return number;
        case "choice":
            return choice;
        case "flags":
            return flags;
        case "longText":
            return note;
        case "text":
            return line;
        default:
            return null;
        }
    }

    Component {
        id: number

        NumberRow {
            id: numberRow

            text: entry.sheet.typed
            unit: (entry.sheet.field.unitNames ?? [])[(entry.sheet.field.units ?? []).indexOf(entry.sheet.unit)] ?? ""
            hint: entry.sheet.field.hint ?? ""
            problem: entry.sheet.problem
            onEdited: text => entry.sheet.type(text)

            Connections {
                target: numberRow.field

                function onAccepted() {
                    entry.sheet.keep();
                }
            }
        }
    }

    Component {
        id: line

        TextRow {
            id: textRow

            text: entry.sheet.typed
            hint: entry.sheet.field.hint ?? ""
            problem: entry.sheet.problem
            onEdited: text => entry.sheet.type(text)

            Connections {
                target: textRow.field

                function onAccepted() {
                    entry.sheet.keep();
                }
            }
        }
    }

    Component {
        id: note

        Column {
            spacing: Theme.space / 2

            NoteRow {
                width: parent.width
                text: entry.sheet.typed
                onEdited: text => entry.sheet.type(text)
                Component.onCompleted: {
                    field.forceActiveFocus();
                    field.cursorPosition = field.length;
                }
            }

            FieldHint {
                width: parent.width
                hint: entry.sheet.field.hint ?? ""
                problem: entry.sheet.problem
            }
        }
    }

    Component {
        id: choice

        Column {
            spacing: Theme.space

            FieldHint {
                width: parent.width
                hint: entry.sheet.field.hint ?? ""
                problem: entry.sheet.problem
            }

            Repeater {
                model: entry.options

                ListRow {
                    required property var modelData

                    objectName: "option_" + modelData.value
                    width: parent.width
                    text: modelData.text
                    forward: false
                    ticked: entry.sheet.chosen.includes(modelData.value)
                    onClicked: {
                        entry.sheet.chosen = [modelData.value];
                        entry.sheet.keep();
                    }
                }
            }
        }
    }

    Component {
        id: flags

        Column {
            spacing: Theme.space

            Repeater {
                model: entry.options

                CheckRow {
                    required property var modelData

                    objectName: "option_" + modelData.value
                    width: parent.width
                    text: modelData.text
                    checked: entry.sheet.chosen.includes(modelData.value)
                    onClicked: entry.sheet.chosen = entry.options.map(option => option.value).filter(value => value === modelData.value ? checked : entry.sheet.chosen.includes(value))
                }
            }

            FieldHint {
                width: parent.width
                hint: entry.sheet.field.hint ?? ""
                problem: entry.sheet.problem
            }
        }
    }
}
