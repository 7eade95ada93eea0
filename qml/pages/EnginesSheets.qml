// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.ViewModels

// What the list of engines opens on top of itself.
Item {
    id: extras

    required property AppContext app
    required property EngineListModel engines
    required property EngineStarter starter

    signal go(name: string, args: var)

    function chooseEngine() {
        sheets.show(whichEngine);
    }

    function addEngine() {
        sheets.show(newEngine);
    }

    function more() {
        sheets.show(moreSheet);
    }

    function openFile() {
        bringIn.openFile();
    }

    function openDemo() {
        bringIn.openDemo();
    }

    BringInFlow {
        id: bringIn

        app: extras.app
        onGo: (name, args) => extras.go(name, args)
    }

    SheetLoader {
        id: sheets
    }

    Component {
        id: whichEngine

        WhichEngineSheet {
            engines: extras.engines
            onChosen: engineId => extras.starter.openSession(engineId)
            onAdd: extras.addEngine()
        }
    }

    Component {
        id: newEngine

        NewEngineSheet {
            starter: extras.starter
        }
    }

    Component {
        id: moreSheet

        EnginesMoreSheet {
            lastSession: extras.engines.onlySession()
            undoable: extras.engines.lastStep()
            onUndo: extras.app.undo(undoable.step)
            redoable: extras.engines.lastUndone()
            onRedo: extras.app.redo(redoable.step)
            offersSession: extras.engines.total > 0
            onNewSession: extras.chooseEngine()
            onGo: (name, args) => extras.go(name, args)
            onAddEngine: extras.addEngine()
            onOpenFile: extras.openFile()
            onDemo: extras.openDemo()
        }
    }
}
