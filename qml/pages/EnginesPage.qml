// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// All engines, the one worked on last first. The first page of the app: its sheets are made when they are wanted.
AppPage {
    id: page

    required property AppContext app

    readonly property bool empty: engines.total === 0
    // Words first, then the pictures and what is not looked at at once.
    property bool drawn: false

    signal go(name: string, args: var)

    function openSession() {
        const only = engines.onlyEngine();
        if (only !== "")
            starter.openSession(only);
        else
            sheets.show(whichEngine);
    }

    title: qsTr("Engines")
    subtitle: search.active && engines.filter !== "" ? qsTr("%1 of %2").arg(engines.count).arg(engines.total) : ""
    backVisible: false

    Connections {
        target: page.drawn ? null : page.Window.window

        function onFrameSwapped() {
            page.drawn = true;
        }
    }

    EngineListModel {
        id: engines

        app: page.app
    }

    EngineStarter {
        id: starter

        app: page.app
        onEngineAdded: engineId => page.go("EngineCard", {
                engineId: engineId
            })
        onSessionOpened: sessionId => page.go("Session", {
                sessionId: sessionId
            })
    }

    Loader {
        id: search

        active: engines.total > 3 && page.drawn
        width: parent.width
        height: engines.total > 3 ? Math.max(Theme.secondaryTarget + Theme.space, implicitHeight) : 0
        sourceComponent: Item {
            implicitHeight: box.implicitHeight + Theme.space

            FieldBox {
                id: box

                property string targetKind: "secondary"

                objectName: "search"
                width: parent.width
                placeholderText: qsTr("Search name, tags, description")
                Accessible.name: placeholderText
                inputMethodHints: Qt.ImhNoPredictiveText
                onTextEdited: engines.filter = text
            }
        }
    }

    ListView {
        id: list

        objectName: "engines"
        anchors.top: search.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        clip: true
        spacing: Theme.space
        reuseItems: true
        boundsBehavior: Flickable.StopAtBounds
        model: engines

        delegate: EngineTile {
            required property string engineId

            required name
            required last
            required tags
            required retest
            required bores
            required boreLine
            required boreState

            objectName: "engine_" + engineId
            drawn: page.drawn
            width: ListView.view.width
            onClicked: page.go("EngineCard", {
                engineId: engineId
            })
        }
    }

    Loader {
        active: page.empty
        anchors.fill: parent
        sourceComponent: EnginesEmpty {
            onOpenFile: page.bringIn("openFile")
            onDemo: page.bringIn("openDemo")
        }
    }

    LText {
        visible: !page.empty && engines.count === 0
        width: parent.width
        anchors.top: search.bottom
        anchors.topMargin: Theme.gap
        text: qsTr("No engine fits this search. Fewer letters find more.")
        horizontalAlignment: Text.AlignHCenter
    }

    function bringIn(what: string) {
        carrier.active = true;
        carrier.start(what);
    }

    Loader {
        id: carrier

        function start(what: string) {
            const bringIn = item as BringInFlow;
            if (what === "openDemo")
                bringIn.openDemo();
            else
                bringIn.openFile();
        }

        active: false
        sourceComponent: BringInFlow {
            app: page.app
            onBroughtIn: engineId => {
                if (engineId !== "")
                    page.go("EngineCard", {
                        engineId: engineId
                    });
            }
        }
    }

    // Inside a sheet its own property of the same name would hide the page's id.
    SheetLoader {
        id: sheets

        readonly property EngineListModel pageEngines: engines
        readonly property EngineStarter pageStarter: starter
    }

    Component {
        id: whichEngine

        WhichEngineSheet {
            engines: sheets.pageEngines
            onChosen: engineId => starter.openSession(engineId)
            onAdd: sheets.show(newEngine)
        }
    }

    Component {
        id: newEngine

        NewEngineSheet {
            starter: sheets.pageStarter
        }
    }

    Component {
        id: more

        EnginesMoreSheet {
            onGo: (name, args) => page.go(name, args)
            onAddEngine: sheets.show(newEngine)
            onOpenFile: page.bringIn("openFile")
            onDemo: page.bringIn("openDemo")
        }
    }

    actions: [
        IconWord {
            objectName: "testers"
            symbol: "gauge"
            text: qsTr("Testers")
            onClicked: page.go("Testers", {})
        },
        IconWord {
            objectName: "more"
            symbol: "more"
            text: qsTr("More")
            onClicked: sheets.show(more)
        },
        BigButton {
            objectName: page.empty ? "addEngine" : "newSession"
            text: page.empty ? qsTr("Add an engine") : qsTr("New session")
            onClicked: {
                if (page.empty)
                    sheets.show(newEngine);
                else
                    page.openSession();
            }
        }
    ]
}
