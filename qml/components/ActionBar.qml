// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// The buttons under the thumb, in one line: pictures with words keep their width, the others share the rest.
// The last one (the amber one) gets a line of its own when the words grow too long. Left-hand mode and
// right-to-left languages each turn the order round.
Item {
    id: bar

    property real spacing: Theme.space
    readonly property bool turned: Theme.leftHand !== Theme.rightToLeft
    readonly property var lines: plan()
    readonly property var heights: (lines ?? []).map(line => Math.max(0, ...line.map(item => item.implicitHeight)))

    // Words may break into two lines, but not more.
    function leastWidth(item: var): real {
        return item.stretch && item.text.includes(" ") ? 0.7 * item.implicitWidth : item.implicitWidth;
    }

    function plan(): var {
        const items = [];
        for (let i = 0; i < children.length; ++i)
            if (children[i].visible && children[i].implicitWidth > 0)
                items.push(children[i]);
        if (items.length < 2)
            return items.length ? [items] : [];
        const needed = items.reduce((sum, item) => sum + leastWidth(item), 0) + spacing * (items.length - 1);
        return needed <= width ? [items] : [items.slice(0, -1), items.slice(-1)];
    }

    function placeAcross() {
        for (const line of lines) {
            const room = width - spacing * (line.length - 1);
            const wide = line.filter(item => item.stretch);
            const fixed = line.filter(item => !item.stretch);
            const taken = wide.length ? fixed.reduce((sum, item) => sum + item.implicitWidth, 0) : 0;
            const share = wide.length ? (room - taken) / wide.length : 0;
            // Equal shares, unless a long word would break in one of them.
            const even = wide.every(item => leastWidth(item) <= share);
            const spare = even ? 0 : (room - taken - wide.reduce((sum, item) => sum + leastWidth(item), 0)) / wide.length;
            let x = 0;
            for (const item of line) {
                item.width = !wide.length ? room / line.length : !item.stretch ? item.implicitWidth : even ? share : leastWidth(item) + spare;
                item.x = turned ? width - x - item.width : x;
                x += item.width + spacing;
            }
        }
    }

    function placeDown() {
        let y = 0;
        lines.forEach((line, i) => {
                for (const item of line) {
                    item.y = y;
                    item.height = heights[i];
                }
                y += heights[i] + spacing;
            });
    }

    implicitHeight: heights.reduce((sum, height) => sum + height, 0) + spacing * Math.max(0, heights.length - 1)
    onLinesChanged: placeAcross()
    onTurnedChanged: placeAcross()
    onWidthChanged: placeAcross()
    onHeightsChanged: placeDown()
}
