// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Components

TestCase {
    id: test

    name: "SplitBar"
    when: windowShown
    width: 420
    height: 200
    visible: true

    Component {
        id: bar

        SplitBar {
            width: 404
        }
    }

    function filled(item) {
        const found = [];
        const search = one => {
            if (one.objectName === "sure")
                found.push(one);
            for (let i = 0; i < one.children.length; ++i)
                search(one.children[i]);
        };
        search(item);
        return found;
    }

    // The larger share is the longer part, however little of it is sure.
    function test_parts_are_as_long_as_their_shares_and_filled_as_far_as_sure() {
        const made = createTemporaryObject(bar, test, {
            "shares": [{
                    "path": "exhaust",
                    "name": "exhaust",
                    "share": 0.75,
                    "sure": 0.02
                }, {
                    "path": "rings",
                    "name": "rings",
                    "share": 0.25,
                    "sure": 0.2
                }]
        });
        waitForRendering(made);
        const parts = filled(made);
        compare(parts.length, 2);
        // 404 less one gap of 2 is 402, by hand.
        verify(Math.abs(parts[0].parent.width - 301) <= 1, parts[0].parent.width);
        verify(Math.abs(parts[1].parent.width - 100) <= 1, parts[1].parent.width);
        verify(Math.abs(parts[0].width - 8) <= 1, parts[0].width);
        verify(Math.abs(parts[1].width - 80) <= 1, parts[1].width);
    }

    function test_what_nobody_doubts_is_full() {
        const made = createTemporaryObject(bar, test, {
            "shares": [{
                    "path": "rings",
                    "name": "rings",
                    "share": 0.5
                }]
        });
        waitForRendering(made);
        const part = filled(made)[0];
        compare(part.width, part.parent.width);
    }
}
