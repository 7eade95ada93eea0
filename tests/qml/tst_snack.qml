// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Components

TestCase {
    name: "Snack"
    when: windowShown
    width: 400
    height: 200
    visible: true

    Snack {
        id: snack

        width: 388
    }

    SignalSpy {
        id: undone

        target: snack
        signalName: "undo"
    }

    SignalSpy {
        id: again

        target: snack
        signalName: "redo"
    }

    SignalSpy {
        id: gone

        target: snack
        signalName: "gone"
    }

    function init() {
        snack.hide();
        snack.stay = 8000;
        undone.clear();
        again.clear();
        gone.clear();
    }

    function test_undo_is_told_once_and_the_snack_goes() {
        snack.show("Cylinder 2 kept: 7.7 bar", "undo");
        verify(snack.visible);
        mouseClick(findChild(snack, "undo"));
        compare(undone.count, 1);
        compare(gone.count, 1);
        verify(!snack.visible);
    }

    function test_what_was_undone_can_be_done_again() {
        snack.show("Undone: Cylinder 2 kept", "redo");
        verify(!findChild(snack, "undo"));
        mouseClick(findChild(snack, "redo"));
        compare(again.count, 1);
        compare(undone.count, 0);
        verify(!snack.visible);
    }

    function test_words_keep_their_room_where_the_button_takes_half_the_line() {
        snack.width = 150;
        snack.show("Cylinder 2 kept: 7.7 bar", "undo");
        verify(snack.stacked);
        const button = findChild(snack, "undo");
        const words = Array.from(snack.children).find(item => item.text?.startsWith("Cylinder 2 kept"));
        verify(words.width > 0.8 * snack.width);
        verify(words.y + words.height <= button.y);
        verify(button.y + button.height <= snack.height);
        snack.width = 388;
        verify(!snack.stacked);
    }

    function test_a_touch_or_a_swipe_puts_it_away() {
        snack.show("Cylinder 2 kept: 7.7 bar", "undo");
        mouseClick(snack, 20, snack.height / 2);
        verify(!snack.visible);
        snack.show("Cylinder 2 kept: 7.7 bar", "undo");
        mousePress(snack, 20, snack.height / 2);
        mouseMove(snack, 20, snack.height / 2 + 40);
        mouseMove(snack, 20, snack.height / 2 + 120);
        mouseRelease(snack, 20, snack.height / 2 + 120);
        verify(!snack.visible);
        compare(undone.count, 0);
    }

    function test_without_undo_there_is_no_button() {
        snack.show("Copied", "");
        verify(!findChild(snack, "undo").visible);
    }

    function test_it_stays_eight_seconds() {
        compare(snack.stay, 8000);
        snack.stay = 100;
        snack.show("Copied", "");
        tryCompare(snack, "visible", false, 1000);
        compare(gone.count, 1);
    }

    function test_the_next_message_replaces_and_starts_anew() {
        snack.stay = 300;
        snack.show("one", "undo");
        wait(200);
        snack.show("two", "undo");
        wait(200);
        verify(snack.visible);
        compare(snack.message, "two");
    }
}
