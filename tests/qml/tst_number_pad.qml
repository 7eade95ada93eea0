// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Theme
import Lapwing.Components

TestCase {
    id: test

    property string typed
    property int ticks: 0

    name: "NumberPad"
    when: windowShown
    width: 412
    height: 500
    visible: true

    NumberPad {
        id: pad

        width: 388
        height: implicitHeight
        keyHeight: 76
        decimalMark: ","
        onKey: character => test.typed += character
        onBackspace: test.typed = test.typed.slice(0, -1)
        onCleared: test.typed = ""
        onHaptic: test.ticks++
    }

    function init() {
        typed = "";
        ticks = 0;
    }

    function key(name: string): var {
        const found = findChild(pad, "key_" + name);
        verify(found, "the pad has a key " + name);
        return found;
    }

    function tap(name: string) {
        mouseClick(key(name));
    }

    function test_every_key_types_itself() {
        for (const digit of ["7", "8", "9", "4", "5", "6", "1", "2", "3", "0"])
            tap(digit);
        compare(typed, "7894561230");
        compare(ticks, 10);
    }

    function test_decimal_mark_is_the_locales() {
        tap("6");
        tap("mark");
        tap("4");
        compare(typed, "6,4");
    }

    function test_no_decimal_mark_where_none_is_wanted() {
        pad.decimalEnabled = false;
        tap("mark");
        pad.decimalEnabled = true;
        compare(typed, "");
    }

    function test_backspace_takes_one_and_holding_it_clears() {
        tap("1");
        tap("2");
        tap("backspace");
        compare(typed, "1");
        tap("3");
        tap("4");
        mousePress(key("backspace"));
        tryCompare(test, "typed", "", 2000);
        mouseRelease(key("backspace"));
        compare(typed, "");
    }

    function test_a_key_counts_once_when_the_finger_leaves_it() {
        mousePress(key("5"));
        verify(key("5").down);
        compare(typed, "");
        mouseRelease(key("5"));
        compare(typed, "5");
    }

    // As a page is scrolled on the keys by mistake.
    function test_a_swipe_across_the_keys_types_nothing() {
        const from = key("8"), to = key("2");
        mousePress(from);
        for (let step = 1; step <= 4; ++step)
            mouseMove(from, from.width / 2, from.height / 2 + step * (to.y - from.y) / 4);
        mouseRelease(from, from.width / 2, from.height / 2 + to.y - from.y);
        compare(typed, "");
        const touch = touchEvent(pad);
        touch.press(1, key("6"), 20, 20).commit();
        touch.move(1, key("4"), 20, 20).commit();
        touch.release(1, key("4"), 20, 20).commit();
        compare(typed, "");
    }

    function test_a_heavy_thumb_that_rests_on_a_digit_types_it_once() {
        mousePress(key("7"));
        tryCompare(test, "typed", "7", 2000);
        mouseRelease(key("7"));
        compare(typed, "7");
    }

    // A quick second tap arrives as a double click.
    function test_quick_taps_are_not_dropped() {
        for (let i = 0; i < 10; ++i)
            mouseDoubleClickSequence(key("8"));
        compare(typed, "8".repeat(20));
    }

    function test_two_thumbs_overlap() {
        const touch = touchEvent(pad);
        touch.press(1, key("1"), 20, 20).commit();
        touch.press(2, key("9"), 20, 20).commit();
        touch.release(1, key("1"), 20, 20).commit();
        touch.press(1, key("4"), 20, 20).commit();
        touch.release(2, key("9"), 20, 20).commit();
        touch.release(1, key("4"), 20, 20).commit();
        compare(typed, "194");
    }

    function test_two_thumbs_land_in_one_event() {
        const touch = touchEvent(pad);
        touch.press(1, key("7"), 20, 20).press(2, key("3"), 20, 20).commit();
        touch.release(1, key("7"), 20, 20).release(2, key("3"), 20, 20).commit();
        compare(typed.length, 2);
        verify(typed.includes("7") && typed.includes("3"), typed);
    }

    function test_space_and_return_strike_the_focused_key_once() {
        key("6").forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Space);
        compare(typed, "6");
        keyClick(Qt.Key_Return);
        compare(typed, "66");
        compare(ticks, 2);
    }

    function test_keyboard_of_a_desk_data() {
        return [{
                "tag": "digit",
                "event": {
                    "key": Qt.Key_4,
                    "text": "4"
                },
                "taken": true,
                "typed": "4"
            }, {
                "tag": "comma",
                "event": {
                    "key": Qt.Key_Comma,
                    "text": ","
                },
                "taken": true,
                "typed": ","
            }, {
                "tag": "point",
                "event": {
                    "key": Qt.Key_Period,
                    "text": "."
                },
                "taken": true,
                "typed": ","
            }, {
                "tag": "letter",
                "event": {
                    "key": Qt.Key_A,
                    "text": "a"
                },
                "taken": false,
                "typed": ""
            }];
    }

    function test_keyboard_of_a_desk(data) {
        compare(pad.takeKey(data.event), data.taken);
        compare(typed, data.typed);
    }

    function test_keys_are_as_high_as_asked_and_apart() {
        compare(key("7").height, 76);
        compare(key("8").x - key("7").x - key("7").width, Theme.space);
        compare(key("4").y - key("7").y - key("7").height, Theme.space);
    }
}
