// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick

// One of many: `options` is a list of {value, text, detail?}. chosen(value) and the sheet closes.
Sheet {
    id: sheet

    property var options: []
    property var current

    signal chosen(var value)

    Repeater {
        model: sheet.options

        ListRow {
            required property var modelData

            width: parent.width
            objectName: "option_" + modelData.value
            text: modelData.text
            detail: modelData.detail ?? ""
            forward: false
            ticked: modelData.value === sheet.current
            onClicked: {
                sheet.chosen(modelData.value);
                sheet.close();
            }
        }
    }
}
