// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Components

// What is touched stays under the finger while the column above it grows.
TestCase {
    id: test

    property real growth: 0

    name: "ScrollColumn"
    when: windowShown
    width: 300
    height: 300
    visible: true

    ScrollColumn {
        id: scroll

        anchors.fill: parent

        Rectangle {
            width: parent.width
            height: 400 + test.growth
        }

        Rectangle {
            id: touched

            width: parent.width
            height: 60
        }

        Rectangle {
            width: parent.width
            height: 400 + test.growth
        }
    }

    function init() {
        growth = 0;
        scroll.pinned = null;
        tryVerify(() => scroll.contentHeight > 800 && scroll.contentHeight < 900);
        scroll.contentY = 300;
    }

    function at(): real {
        return touched.mapToItem(scroll, 0, 0).y;
    }

    function test_a_pinned_item_stays_where_it_stands() {
        const before = at();
        scroll.pin(touched);
        growth = 200;
        tryVerify(() => scroll.contentHeight > 1200);
        compare(at(), before);
        growth = 50;
        compare(at(), before);
    }

    function test_without_a_pin_it_is_carried_away() {
        const before = at();
        growth = 200;
        tryVerify(() => scroll.contentHeight > 1200);
        compare(at(), before + 200);
    }

    // It can't stand lower than the column reaches.
    function test_the_columns_end_comes_first() {
        scroll.contentY = scroll.contentHeight - scroll.height;
        scroll.pin(touched);
        growth = -300;
        tryVerify(() => scroll.contentHeight < 500);
        verify(scroll.contentY <= Math.max(0, scroll.contentHeight - scroll.height));
        verify(scroll.contentY >= 0);
    }
}
