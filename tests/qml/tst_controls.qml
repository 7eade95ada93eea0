// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Theme
import Lapwing.Components

TestCase {
    id: test

    property var got: []
    readonly property var words: ["nothing", "faint", "clear", "strong"]

    name: "Controls"
    when: windowShown
    width: 412
    height: 900
    visible: true

    Column {
        id: column

        width: 388
        spacing: 8

        ActionBar {
            id: bar

            width: parent.width
            height: implicitHeight

            IconWord {
                id: photo

                symbol: "photo"
                text: "Photo"
                targetKind: "primary"
            }

            BigButton {
                id: keep

                text: "Keep"
                onClicked: test.got.push("keep")
            }
        }

        ChoiceRow {
            id: loudness

            width: parent.width
            options: test.words.map(word => ({
                            "value": word,
                            "text": word
                        }))
            current: "faint"
            onChosen: value => test.got.push(value)
        }

        CheckRow {
            id: check

            width: parent.width
            text: "Throttle wide open"
            onToggled: test.got.push(checked)
        }

        SwitchRow {
            id: onOff

            width: parent.width
            text: "Big keys"
            onToggled: test.got.push(checked)
        }

        NumberRow {
            id: number

            width: parent.width
            label: "Bore"
            unit: "mm"
            text: "84"
            onEdited: text => test.got.push(text)
        }

        FieldTabs {
            id: tabs

            width: parent.width
            current: "final"
            fields: [{
                    "key": "first",
                    "label": "First",
                    "value": ""
                }, {
                    "key": "final",
                    "label": "Final",
                    "value": "9.25"
                }, {
                    "key": "pulls",
                    "label": "Pulls",
                    "value": "6",
                    "stepper": true
                }]
            onChosen: key => test.got.push(key)
            onStepped: (key, by) => test.got.push(key + by)
        }

        Caution {
            id: caution

            width: parent.width
            text: "The engine can turn without warning: nobody near the crank."
            onAcknowledged: test.got.push("read")
        }

        ReadoutField {
            id: readout

            width: parent.width
            value: "3.50"
            unit: "bar"
            linesShown: 1
            lines: [{
                    "mark": "fault",
                    "figure": "36 %",
                    "text": "leakage"
                }, {
                    "symbol": "swap",
                    "figure": "38 %",
                    "text": "on a 7 bar tester"
                }]
            onLineTapped: index => test.got.push(index)
        }
    }

    function init() {
        got = [];
        Theme.leftHand = false;
        Theme.textScale = 1;
        caution.folded = false;
        caution.read = false;
        waitForRendering(column, 500);
    }

    function cleanup() {
        Theme.leftHand = false;
        Theme.textScale = 1;
    }

    // 76, 56 and 48: the least heights of the house, on their own kind of target.
    function verifyTargets(item: var) {
        if (item.visible && item.targetKind !== undefined && item.enabled) {
            const least = {
                "primary": 76,
                "secondary": 56,
                "minor": 48
            }[item.targetKind];
            verify(item.height >= least, `${item} "${item.text}" is ${item.height} high, ${item.targetKind}`);
            verify(item.width >= 48, `${item} "${item.text}" is ${item.width} wide`);
        }
        for (let i = 0; i < item.children.length; ++i)
            verifyTargets(item.children[i]);
    }

    function test_targets_data() {
        return [{
                "tag": "100 %",
                "scale": 1
            }, {
                "tag": "200 %",
                "scale": 2
            }];
    }

    function test_targets(data) {
        Theme.textScale = data.scale;
        waitForRendering(column, 500);
        verifyTargets(column);
    }

    function test_action_bar_turns_for_the_left_hand() {
        verify(keep.x > photo.x);
        compare(keep.x + keep.width, bar.width);
        Theme.leftHand = true;
        verify(keep.x < photo.x);
        compare(keep.x, 0);
    }

    function test_choice() {
        verify(findChild(loudness, "choice_faint").checked);
        mouseClick(findChild(loudness, "choice_strong"));
        compare(got, ["strong"]);
        compare(loudness.current, "faint");
    }

    function test_four_words_stand_in_one_line_on_a_phone() {
        compare(findChild(loudness, "choice_strong").y, findChild(loudness, "choice_nothing").y);
    }

    function test_check_and_switch_by_touch_and_keyboard() {
        mouseClick(check);
        onOff.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        keyClick(Qt.Key_Space);
        compare(got, [true, true, false]);
    }

    function test_number_is_handed_up_as_typed() {
        number.field.forceActiveFocus();
        number.field.selectAll();
        keyClick(Qt.Key_8);
        keyClick(Qt.Key_Comma);
        keyClick(Qt.Key_5);
        compare(got[got.length - 1], "8,5");
        number.text = "86";
        compare(number.field.text, "86");
    }

    function test_field_tabs() {
        mouseClick(findChild(tabs, "tab_first"));
        mouseClick(findChild(tabs, "plus_pulls"));
        mouseClick(findChild(tabs, "minus_pulls"));
        compare(got, ["first", "pulls1", "pulls-1"]);
    }

    function test_caution_folds_to_a_line_that_stays() {
        const open = caution.height;
        mouseClick(caution);
        compare(got, ["read"]);
        tryVerify(() => caution.height < open);
        verify(caution.height >= 56);
        mouseClick(caution);
        tryCompare(caution, "height", open);
    }

    function test_readout_never_shrinks_below_its_floor() {
        readout.value = "1234567890123456";
        verify(findChild(readout, "figure").font.pixelSize >= 44);
        readout.value = "3.50";
        verify(findChild(readout, "figure").font.pixelSize >= 60);
    }

    function test_folded_lines_are_behind_more() {
        mouseClick(findChild(readout, "line_0"));
        compare(got, [0]);
        const more = findChild(readout, "more");
        verify(more.visible);
        mouseClick(more);
        const top = readout.Window.window.contentItem;
        tryVerify(() => findChild(top, "close"));
        wait(Theme.motion + 50);
        keyClick(Qt.Key_Escape);
        tryVerify(() => !findChild(top, "close"));
    }
}
