// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Templates as T
import Lapwing.Theme
import Lapwing.ViewModels

// The stack of pages, the list beside it on wide screens, and the messages over them. Pages ask to go somewhere by
// name; only this file knows where pages lie. The place is kept, so that the app reopens where it was.
FocusScope {
    id: shell

    required property AppContext app
    required property var pages

    readonly property bool wide: Theme.isWide(width)
    // On a phone lying down a pad of digits needs the list's room.
    readonly property bool listBeside: wide && !(height < 640 && (stack.currentItem?.wholeWidth ?? false))
    readonly property alias depth: stack.depth
    readonly property bool locked: wiping.item?.visible ?? false
    // While a test goes on the hands are on the engine and touch nothing here.
    readonly property bool keepsAwake: stack.currentItem?.keepsAwake ?? false
    readonly property alias currentPage: stack.currentItem
    property var places: []
    // A page on the way to somewhere else: once it is done with, nobody comes back to it.
    readonly property string passing: "BringIn"
    // What these show may be gone tomorrow: the app does not reopen on them.
    readonly property var unkept: ["BringIn", "Backup"]

    // A sheet that closes hands the keyboard back to the window, not to the page under it.
    readonly property Item focused: Window.activeFocusItem

    // Who goes about by keyboard finds the focus in the page that opens, and on the way back where it was. A page of
    // digits has the keys itself and says when they were not its own.
    readonly property bool byKeys: (focused?.visualFocus ?? false) || (stack.currentItem?.typedByKeys ?? false)
    property bool entering: false
    property Item cameFrom: null

    // The list stands where reading begins.
    LayoutMirroring.enabled: Theme.rightToLeft
    LayoutMirroring.childrenInherit: true

    FocusTrail {
        id: trail
    }

    signal told(text: string)

    onFocusedChanged: {
        if (focused && focused !== Window.contentItem && !pagesShown().some(one => one === focused))
            trail.note(focused, pagesShown());
        settled.restart();
    }
    onKeepsAwakeChanged: app.keepAwake(keepsAwake)

    // After the change that took the focus away is through.
    Timer {
        id: settled

        interval: 0
        onTriggered: shell.focusPage()
    }

    // The first page of a phone lies in a loader.
    function pagesShown(): var {
        return [stack.currentItem?.item ?? stack.currentItem, side.item];
    }

    function focusPage() {
        const onPage = pagesShown().some(one => one === focused);
        if (focused && focused !== Window.contentItem && !onPage)
            return;
        const goesOn = trail.end(pagesShown());
        if (!onPage)
            stack.currentItem?.forceActiveFocus();
        if (entering)
            enter();
        else if (!stack.covered)
            ring(goesOn);
    }

    // Not into a page of digits, which takes the keys itself, and not under a sheet: that one has them until it closes.
    function enter() {
        entering = stack.covered;
        const page = stack.currentItem;
        if (!entering && !page?.keyed)
            ring((page?.firstStop ?? page)?.nextItemInFocusChain());
    }

    function ring(item: Item) {
        if (item)
            item.forceActiveFocus(Qt.TabFocusReason);
    }

    function comeBack() {
        if (stack.depth > 1 || !listBeside)
            ring(stack.currentItem);
        else if (cameFrom?.visible)
            ring(cameFrom);
        else
            ring(side.item?.nextItemInFocusChain());
    }

    function url(name: string): string {
        return "qrc:/qml/Lapwing/Pages/" + name + "Page.qml";
    }

    function properties(args: var): var {
        return Object.assign({}, args, {
            app: shell.app
        });
    }

    function go(name: string, args: var) {
        // A page asks for it as for a place to go to, but it lies over everything and is no place to come back to.
        if (name === "Wipe") {
            wiping.active = true;
            wiping.item?.lock();
            return;
        }
        if (name === "Engines") {
            showTag(args.tag);
            return;
        }
        const keys = entering || byKeys;
        messages.item?.pageChanges();
        // From one cylinder's exits to the next cylinder's pad and so on: one pad and one hunt, not a tower of them.
        if (places.length > 0 && places[places.length - 1].name === passing)
            unwind(places.length - 1);
        const last = places.length - 1;
        for (let at = last; at >= 0; --at) {
            if (places[at].name !== name || name === "EngineCard")
                continue;
            unwind(at);
            break;
        }
        places = places.concat([{
                name: name,
                args: args
            }]);
        if (!stack.push(url(name), properties(args))) {
            places = places.slice(0, -1);
            tell(qsTr("This page can't be opened. Close Lapwing and start it again; if that doesn't help, install it anew. Nothing that was kept is lost."));
        }
        keepPlace();
        entering = false;
        if (keys)
            enter();
    }

    // The list of engines is no page to stack: it stands beside the page, or under all of them.
    function showTag(tag: string) {
        if (!wide)
            home();
        (wide ? side.item : stack.currentItem?.item)?.showTag(tag);
    }

    // Several pages, the last one on top: the page that asks may be gone after the first. Without any, home.
    function goOn(places: var) {
        if (Array.from(places).length === 0)
            home();
        for (const place of Array.from(places))
            go(place.name, place.args);
    }

    function unwind(to: int) {
        while (places.length > to) {
            stack.pop(T.StackView.Immediate);
            places = places.slice(0, -1);
        }
    }

    function leave() {
        if (stack.depth < 2)
            return;
        const keys = byKeys;
        messages.item?.pageChanges();
        places = places.slice(0, -1);
        stack.pop();
        keepPlace();
        if (keys)
            comeBack();
    }

    function home() {
        unwind(0);
        keepPlace();
    }

    function keepPlace() {
        app.keepDraft("place", JSON.stringify(places.filter(place => !unkept.includes(place.name))));
    }

    function reopen() {
        let kept = [];
        try {
            kept = JSON.parse(app.draft("place") || "[]");
        } catch (error) {
            return;
        }
        if (!Array.isArray(kept) || kept.length === 0)
            return;
        places = kept.filter(place => pages.includes(place?.name));
        if (places.length < kept.length)
            keepPlace();
        // Only the last page is built now; the ones under it when someone goes back to them.
        const items = [];
        places.forEach(place => items.push(url(place.name), properties(place.args)));
        if (items.length > 0)
            stack.push(items, T.StackView.Immediate);
    }

    // Every page again, with the texts of another language; the place stays.
    function buildAnew() {
        messages.item?.hide();
        stack.clear(T.StackView.Immediate);
        stack.push(firstPage, {}, T.StackView.Immediate);
        side.setUp();
        reopen();
    }

    // Named nowhere as a type: that alone would have its file read with the first page.
    function spokenMessages(): var {
        messages.active = true;
        return messages.item;
    }

    function tell(text: string) {
        told(text);
        spokenMessages().say(text, -1, "");
    }

    Loader {
        id: side

        active: shell.wide
        anchors.left: parent.left
        visible: shell.listBeside
        width: shell.listBeside ? Math.min(400, shell.width * 0.4) : 0
        height: parent.height
        source: active ? shell.url("Engines") : ""

        function setUp() {
            if (active)
                setSource(shell.url("Engines"), shell.properties({}));
        }

        onActiveChanged: setUp()
        Component.onCompleted: setUp()
    }

    // The page beside the list has the one amber action.
    Binding {
        target: side.item
        property: "beside"
        value: stack.depth > 1
        when: side.item
    }

    Binding {
        target: side.item
        property: "openPlace"
        value: shell.places.filter(place => place.args?.engineId || place.args?.sessionId).pop() ?? null
        when: side.item
    }

    Connections {
        target: side.item
        ignoreUnknownSignals: true

        function onGo(name: string, args: var) {
            if (name !== "Wipe") {
                shell.entering = shell.byKeys;
                shell.cameFrom = shell.byKeys ? shell.focused : null;
                shell.unwind(0);
            }
            shell.go(name, args);
        }
    }

    T.StackView {
        id: stack

        readonly property bool covered: T.Overlay.overlay?.visible ?? false

        onCoveredChanged: Theme.sheets = covered ? T.Overlay.overlay : null

        objectName: "stack"
        anchors.left: side.right
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        focus: true
        clip: true

        initialItem: Component {
            id: firstPage

            Loader {
                // The first page is plain, or an empty right pane when the list stands beside it.
                Component.onCompleted: load()

                function load() {
                    setSource(shell.wide ? "EmptyPane.qml" : shell.url("Engines"), shell.wide ? {} : shell.properties({}));
                }

                Connections {
                    target: shell

                    function onWideChanged() {
                        load();
                    }
                }

                Connections {
                    target: item
                    ignoreUnknownSignals: true

                    function onGo(name: string, args: var) {
                        shell.go(name, args);
                    }
                }
            }
        }

        pushEnter: Transition {
            NumberAnimation {
                property: "x"
                from: Theme.rightToLeft ? -40 : 40
                to: 0
                duration: Theme.motion
                easing.type: Easing.OutCubic
            }
        }
        popEnter: Transition {
            NumberAnimation {
                property: "x"
                from: Theme.rightToLeft ? 40 : -40
                to: 0
                duration: Theme.motion
                easing.type: Easing.OutCubic
            }
        }
        onCurrentItemChanged: {
            // What lies over a page from its beginning, a caution above all, has the keys until it is read.
            if (!covered)
                currentItem?.forceActiveFocus();
            // An Undo of the page before must not be mistaken for one of the steps here.
            if (currentItem?.ownUndo && messages.item?.offer === "undo")
                messages.item.hide();
        }
        Component.onCompleted: shell.reopen()
    }

    Connections {
        target: stack.currentItem
        ignoreUnknownSignals: true

        function onGo(name: string, args: var) {
            shell.go(name, args);
        }

        function onGoOn(places: var) {
            shell.goOn(places);
        }

        function onBack() {
            shell.leave();
        }
    }

    Connections {
        target: shell.app

        // Pages where steps follow each other quickly show Undo in their own corner.
        function onStepDone(text: string, step: double) {
            if (!stack.currentItem?.ownUndo)
                shell.spokenMessages().say(text, step, "undo");
            else if (messages.item?.offer === "redo")
                messages.item.hide();
        }

        function onStepUndone(text: string, step: double) {
            shell.spokenMessages().say(text, step, "redo");
        }

        function onTold(text: string) {
            shell.tell(text);
        }

        function onLanguageChanged() {
            shell.buildAnew();
        }

        function onOpenRequested(file: string) {
            shell.go(file.endsWith(".lapwing-backup") ? "Backup" : "BringIn", {
                file: file
            });
        }
    }

    Loader {
        id: wiping

        active: false
        source: "WipeLock.qml"
    }

    // Read with the first message, not with the first page.
    Loader {
        id: messages

        // Over the page's title: the lines, keys and cylinders that one works on stay in sight.
        readonly property var page: stack.currentItem?.item ?? stack.currentItem
        readonly property real before: page?.titleLeft ?? Theme.space
        readonly property real behind: page?.titleRight ?? Theme.space

        anchors.left: stack.left
        anchors.leftMargin: before
        anchors.right: parent.right
        anchors.rightMargin: behind
        y: Theme.space / 2
        z: 10
        active: false
        source: "Messages.qml"
    }

    Connections {
        target: messages.item
        ignoreUnknownSignals: true

        function onUndoStep(step: double) {
            shell.app.undo(step);
        }

        function onRedoStep(step: double) {
            shell.app.redo(step);
        }
    }
}
