// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// The buttons under the thumb, in one line: pictures with words keep their width, the others share the rest.
// The last one (the amber one) gets a line of its own when the words grow too long. Left-hand mode and
// right-to-left languages each turn the order round.
// Placed by hand and not by bindings: the height that a button wants follows from the width that it gets here.
Item {
    id: bar

    property real spacing: Theme.space
    readonly property bool turned: Theme.leftHand !== Theme.rightToLeft
    property var watched: []
    property bool ready: false
    property bool placing: false
    property bool stale: false
    // Pictures' words break too, where that keeps all in one line.
    property bool pressed: false

    // Words may break into two lines, but not more, and no word in its middle: about what that takes.
    function leastWidth(item: var): real {
        const text = item.roomFor || item.text || "";
        if (!text.includes(" ") || !item.stretch && !pressed)
            return item.implicitWidth;
        const around = item.leftPadding + item.rightPadding;
        const longest = Math.max(...text.split(" ").map(word => word.length)) / text.length;
        return around + Math.min(1, Math.max(0.6, 1.1 * longest)) * (item.implicitWidth - around);
    }

    function needed(items: var): real {
        return items.reduce((sum, item) => sum + leastWidth(item), 0) + spacing * (items.length - 1);
    }

    function plan(): var {
        const items = [];
        for (let i = 0; i < children.length; ++i)
            if (children[i].visible && children[i].implicitWidth > 0)
                items.push(children[i]);
        if (items.length < 2)
            return items.length ? [items] : [];
        pressed = false;
        if (needed(items) <= width)
            return [items];
        pressed = true;
        if (needed(items) <= width)
            return [items];
        pressed = false;
        return [items.slice(0, -1), items.slice(-1)];
    }

    function placeAcross(line: var) {
        const room = width - spacing * (line.length - 1);
        const wide = line.filter(item => item.stretch);
        const fixed = line.filter(item => !item.stretch);
        const taken = wide.length ? fixed.reduce((sum, item) => sum + leastWidth(item), 0) : 0;
        const share = wide.length ? (room - taken) / wide.length : 0;
        // Equal shares, unless a long word would break in one of them.
        const even = wide.every(item => leastWidth(item) <= share);
        const spare = even ? 0 : (room - taken - wide.reduce((sum, item) => sum + leastWidth(item), 0)) / wide.length;
        let x = 0;
        for (const item of line) {
            item.width = !wide.length ? room / line.length : !item.stretch ? leastWidth(item) : even ? share : leastWidth(item) + spare;
            item.x = turned ? width - x - item.width : x;
            x += item.width + spacing;
        }
    }

    function place() {
        stale = true;
        if (!ready || !visible || placing)
            return;
        placing = true;
        // Words that break make their button higher at once, which asks for another round.
        for (let round = 0; stale && round < 3; ++round) {
            stale = false;
            let y = 0;
            for (const line of plan()) {
                placeAcross(line);
                const height = Math.max(...line.map(item => item.implicitHeight));
                for (const item of line) {
                    item.y = y;
                    item.height = height;
                }
                y += height + spacing;
            }
            implicitHeight = Math.max(0, y - spacing);
        }
        placing = false;
    }

    function changes(item: Item): var {
        return [item.implicitWidthChanged, item.implicitHeightChanged, item.visibleChanged];
    }

    function watch() {
        for (let i = 0; i < children.length; ++i) {
            const item = children[i];
            if (watched.includes(item))
                continue;
            changes(item).forEach(change => change.connect(place));
            watched.push(item);
        }
        place();
    }

    onChildrenChanged: if (ready)
        watch()
    onSpacingChanged: place()
    onTurnedChanged: place()
    onWidthChanged: place()
    onVisibleChanged: place()
    Component.onCompleted: {
        ready = true;
        watch();
    }
    // Buttons that go with their page still change, when nothing here can answer any more.
    Component.onDestruction: watched.forEach(item => {
        if (item)
            changes(item).forEach(change => change.disconnect(place));
    })
}
