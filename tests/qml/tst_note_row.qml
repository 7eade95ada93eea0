// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Components

// A finger that drags in the box of a note scrolls what the box stands in.
TestCase {
    id: test

    name: "NoteRow"
    when: windowShown
    width: 300
    height: 300
    visible: true

    ScrollColumn {
        id: scroll

        anchors.fill: parent

        Rectangle {
            width: parent.width
            height: 60
        }

        NoteRow {
            id: note

            width: parent.width
            text: "A few words\nin several\nlines"
        }

        Rectangle {
            width: parent.width
            height: 600
        }
    }

    function init() {
        tryVerify(() => scroll.contentHeight > 600);
        scroll.contentY = 0;
        note.field.deselect();
        note.field.forceActiveFocus();
    }

    function test_a_finger_scrolls() {
        // By the window: the box itself moves along.
        const touch = touchEvent(test);
        touch.press(0, test, 40, 120).commit();
        for (let y = 110; y >= 0; y -= 10) {
            touch.move(0, test, 40, y).commit();
            wait(10);
        }
        touch.release(0, test, 40, 0).commit();
        tryVerify(() => scroll.contentY > 20);
        compare(note.field.selectedText, "");
    }

    function test_a_mouse_selects() {
        mouseMove(note.field, 18, 18);
        mousePress(note.field, 20, 20);
        for (let y = 24; y <= 70; y += 6) {
            mouseMove(note.field, 60, y, 10, Qt.LeftButton);
        }
        mouseRelease(note.field, 60, 70);
        verify(note.field.selectedText.length > 0);
    }
}
