// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// All engines, the one worked on last first. The first page of the app: what is not seen at once is a file of its own,
// read when it is wanted.
AppPage {
    id: page

    required property AppContext app

    readonly property bool empty: engines.total === 0
    // Another page stands beside the list and has the amber action.
    property bool beside: false
    // Where it lies: {name, args}, args with a session or an engine; null where it is about none.
    property var openPlace: null
    readonly property string openEngine: openPlace?.args.engineId ?? (openPlace ? engines.engineOf(openPlace.args.sessionId) : "")
    // A session of today is gone on with; a second one on a day is the exception, and begins on its engine's card.
    readonly property var today: engines.goOn
    readonly property bool goesOn: today.sessionId !== undefined
    // Words first, then the pictures and what is not looked at at once.
    property bool drawn: false

    signal go(name: string, args: var)

    function openSession() {
        const only = engines.onlyEngine();
        if (only !== "")
            starter.openSession(only);
        else
            sheets().chooseEngine();
    }

    // Named nowhere as a type: that alone would have its file read with this one.
    function sheets(): var {
        if (!later.item)
            later.setSource("EnginesSheets.qml", {
                app: page.app,
                engines: engines,
                starter: starter
            });
        return later.item;
    }

    // From the first engine that fits, wherever the list stood.
    function find(words: string) {
        engines.filter = words;
        list.positionViewAtBeginning();
    }

    // Stands in the search, where it is seen and put away again.
    function showTag(tag: string) {
        // A tile that no longer fits takes its chip away.
        search.byKeys = Window.activeFocusItem?.visualFocus ?? false;
        find(engines.searchForTag(tag));
        search.show();
    }

    onVisibleChanged: if (visible)
        engines.lookAgain()

    title: qsTr("Engines")
    subtitle: search.active && engines.filter !== "" ? qsTr("%1 of %2").arg(engines.count).arg(engines.total) : ""
    backVisible: false

    Connections {
        target: page.drawn ? null : page.Window.window

        function onFrameSwapped() {
            soon.start();
        }
    }

    // A frame later: what was waiting for the first one, a touch above all, goes first.
    Timer {
        id: soon

        interval: 16
        onTriggered: page.drawn = true
    }

    EngineListModel {
        id: engines

        app: page.app
        looking: page.drawn
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

        // Among a few engines there is nothing to look for, until a tag is.
        readonly property bool wanted: engines.total > 3 || engines.filter !== ""
        property bool byKeys: false

        function show() {
            if (engines.filter !== "")
                item?.show(engines.filter, byKeys);
        }

        active: wanted && page.drawn
        width: parent.width
        height: wanted ? Math.max(Theme.secondaryTarget + Theme.space, implicitHeight) : 0
        source: "EnginesSearch.qml"
        onLoaded: show()
    }

    Connections {
        target: search.item
        ignoreUnknownSignals: true

        function onTyped(text: string) {
            page.find(text);
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
        // No engine is the current one: a list that is made anew would go to it, wherever a search had taken it.
        currentIndex: -1
        boundsBehavior: Flickable.DragOverBounds
        boundsMovement: Flickable.StopAtBounds
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
            required boreEarlier

            objectName: "engine_" + engineId
            drawn: page.drawn
            selected: engineId === page.openEngine
            width: ListView.view.width
            // One that waits to be used again is not drawn, and must not be read out either.
            ListView.onPooled: visible = false
            ListView.onReused: visible = true
            onClicked: page.go("EngineCard", {
                engineId: engineId
            })
            onTagged: tag => page.showTag(tag)
        }
    }

    Loader {
        id: inPlace

        active: page.empty
        anchors.fill: parent
        source: "EnginesEmpty.qml"
    }

    Connections {
        target: inPlace.item
        ignoreUnknownSignals: true

        function onOpenFile() {
            page.sheets().openFile();
        }

        function onDemo() {
            page.sheets().openDemo();
        }

        function onRestore() {
            page.go("Backup", {});
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

    Loader {
        id: later
    }

    Connections {
        target: later.item
        ignoreUnknownSignals: true

        function onGo(name: string, args: var) {
            page.go(name, args);
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
            onClicked: page.sheets().more()
        },
        BigButton {
            objectName: page.empty ? "addEngine" : page.goesOn ? "goOn" : "newSession"
            text: page.empty ? qsTr("Add an engine") : page.goesOn ? qsTr("Go on: %1").arg(page.today.name) : qsTr("New session")
            yields: page.beside
            onClicked: {
                if (page.empty)
                    page.sheets().addEngine();
                else if (page.goesOn)
                    page.go("Session", {
                        sessionId: page.today.sessionId
                    });
                else
                    page.openSession();
            }
        }
    ]
}
