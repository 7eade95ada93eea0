// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// Which engine a new session is for: the ones worked on last, and a search through all.
Sheet {
    id: sheet

    required property EngineListModel engines
    property string words

    signal chosen(engineId: string)
    signal add

    title: qsTr("New session on which engine?")

    TextRow {
        objectName: "which"
        width: parent.width
        visible: sheet.engines.total > 6
        placeholder: qsTr("Search name, tags, description")
        onEdited: text => sheet.words = text
    }

    Repeater {
        model: sheet.engines.choices(sheet.words, 12)

        ListRow {
            required property var modelData

            objectName: "engine_" + modelData.value
            width: parent.width
            text: modelData.text
            detail: modelData.detail
            onClicked: {
                sheet.close();
                sheet.chosen(modelData.value);
            }
        }
    }

    ListRow {
        objectName: "addEngine"
        width: parent.width
        symbol: "plus"
        text: qsTr("Add an engine")
        onClicked: sheet.add()
    }
}
