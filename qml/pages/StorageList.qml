// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What takes up room, and what has lost its file or its entry, with what can be done about each.
Column {
    id: list

    required property AppContext app

    spacing: Theme.space

    StorageModel {
        id: storage

        app: list.app
    }

    Repeater {
        model: storage.used

        PairLine {
            required property var modelData

            width: list.width
            name: modelData.text
            value: modelData.figure
        }
    }

    LText {
        width: parent.width
        visible: storage.lost.length > 0
        text: qsTr("The files of these entries are missing. A backup or a session file that was handed over may still have them: restore it or bring it in.")
    }

    Repeater {
        model: storage.lost

        ErrorCard {
            required property var modelData

            width: list.width
            heading: modelData.text
            message: modelData.detail
            action: qsTr("Delete the entry")
            onActed: storage.deleteLost(modelData.id)
        }
    }

    LText {
        width: parent.width
        visible: storage.strays.length > 0
        text: qsTr("No entry names these files. They stay until you decide.")
    }

    Repeater {
        model: storage.strays

        ErrorCard {
            required property var modelData
            required property int index

            objectName: "stray_" + index
            width: list.width
            heading: modelData.text
            message: modelData.detail
            action: qsTr("Save a copy")
            second: qsTr("Delete the file for good")
            onActed: storage.saveStray(index)
            onSecondActed: storage.deleteStray(index)
        }
    }

    LText {
        width: parent.width
        visible: storage.unkept.length > 0
        text: qsTr("These voice notes were cut off, and their session was deleted meanwhile. Undo of that deletion and a new start of Lapwing keep them.")
    }

    Repeater {
        model: storage.unkept

        ErrorCard {
            required property var modelData
            required property int index

            width: list.width
            heading: modelData.text
            message: modelData.detail
            action: qsTr("Save a copy")
            second: qsTr("Delete it for good")
            onActed: storage.saveUnkept(index)
            onSecondActed: storage.deleteUnkept(index)
        }
    }
}
