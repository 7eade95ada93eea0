// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick

// Where in a page the keyboard stood, by the names of what it stood in. A list that is made anew, with a line ticked or
// one proposal fewer, takes the focus away with it: it goes on at what stands there now.
QtObject {
    id: trail

    // From the page inwards; empty where nobody goes about by keyboard.
    property var names: []
    property Item page: null

    function note(item, pages) {
        const within = pages.find(one => contains(one, item));
        // A sheet that lies over the page gives back what it took.
        if (!within)
            return;
        names = [];
        page = within;
        if (!(item.visualFocus ?? false))
            return;
        const way = [];
        for (let up = item; up && up !== within; up = up.parent)
            if (up.objectName !== "")
                way.unshift(up.objectName);
        names = way;
    }

    function find(item, name) {
        for (const child of Array.from(item.children)) {
            if (!child.visible)
                continue;
            const found = child.objectName === name ? child : find(child, name);
            if (found)
                return found;
        }
        return null;
    }

    function takesKeys(item) {
        return item.visible && item.enabled && item.activeFocusOnTab;
    }

    function contains(item, inner) {
        for (let up = inner; item && up; up = up.parent)
            if (up === item)
                return true;
        return false;
    }

    // What stands there now, or next to it; where the page begins when nothing is left of what it stood in. Null where
    // nobody goes about by keyboard.
    function end(pages) {
        const within = page;
        if (!pages.some(one => one === within) || names.length === 0)
            return null;
        let deepest = within;
        for (const name of names) {
            const next = find(deepest, name);
            if (!next)
                break;
            deepest = next;
        }
        if (deepest === within)
            deepest = within.firstStop ?? within;
        if (takesKeys(deepest))
            return deepest;
        const first = deepest.nextItemInFocusChain();
        return first && contains(within, first) ? first : null;
    }
}
