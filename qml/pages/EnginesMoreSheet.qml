// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components

// The routes that are taken now and then. Each row keeps its place whatever else there is to do: a thumb learns it.
Sheet {
    id: sheet

    // What the calculators are filled from: the last session, where there is but one engine.
    property string lastSession

    // There is an engine to open one on.
    property bool offersSession: false

    // What was done last and can still be taken back when its message is gone: {step, text}, or empty.
    property var undoable: ({})
    // What was taken back last, while nothing else was done since.
    property var redoable: ({})

    signal undo
    signal redo
    signal newSession
    signal go(name: string, args: var)
    signal addEngine
    signal openFile
    signal demo

    title: qsTr("More")

    ListRow {
        objectName: "undoLast"
        width: parent.width
        enabled: sheet.undoable.step !== undefined
        symbol: "undo"
        forward: false
        text: qsTr("Undo the last step")
        detail: sheet.undoable.text ?? qsTr("Nothing to take back")
        onClicked: {
            sheet.close();
            sheet.undo();
        }
    }

    ListRow {
        objectName: "redoLast"
        width: parent.width
        enabled: sheet.redoable.step !== undefined
        symbol: "redo"
        forward: false
        text: qsTr("Redo what was undone")
        detail: sheet.redoable.text ?? qsTr("Nothing to do again")
        onClicked: {
            sheet.close();
            sheet.redo();
        }
    }

    ListRow {
        objectName: "newSession"
        width: parent.width
        enabled: sheet.offersSession
        symbol: "pencil"
        text: qsTr("New session")
        onClicked: sheet.newSession()
    }

    ListRow {
        objectName: "addEngine"
        width: parent.width
        symbol: "plus"
        text: qsTr("Add an engine")
        onClicked: sheet.addEngine()
    }

    ListRow {
        objectName: "openFile"
        width: parent.width
        symbol: "open"
        text: qsTr("Open a session file")
        onClicked: {
            sheet.close();
            sheet.openFile();
        }
    }

    ListRow {
        objectName: "demo"
        width: parent.width
        symbol: "play"
        text: qsTr("Look at the demo")
        onClicked: {
            sheet.close();
            sheet.demo();
        }
    }

    ListRow {
        objectName: "howTo"
        width: parent.width
        symbol: "question"
        text: qsTr("How to")
        onClicked: {
            sheet.close();
            sheet.go("HowTo", {});
        }
    }

    ListRow {
        objectName: "calculators"
        width: parent.width
        symbol: "gauge"
        text: qsTr("Calculators")
        onClicked: {
            sheet.close();
            sheet.go("Calculators", {
                sessionId: sheet.lastSession
            });
        }
    }

    ListRow {
        objectName: "wipe"
        width: parent.width
        symbol: "wipe"
        text: qsTr("Wipe the glass")
        detail: qsTr("For 10 seconds no touch counts.")
        forward: false
        onClicked: {
            sheet.close();
            sheet.go("Wipe", {});
        }
    }

    ListRow {
        objectName: "settings"
        width: parent.width
        symbol: "settings"
        text: qsTr("Settings")
        onClicked: {
            sheet.close();
            sheet.go("Settings", {});
        }
    }
}
