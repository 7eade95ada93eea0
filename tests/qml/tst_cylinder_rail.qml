// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Theme
import Lapwing.Components

TestCase {
    id: test

    property int picked: -1

    name: "CylinderRail"
    when: windowShown
    width: 412
    height: 800
    visible: true

    Component {
        id: railComponent

        CylinderRail {
            width: 388
            height: implicitHeight
            onChosen: index => test.picked = index
        }
    }

    function engine(count: int, rows: int): var {
        const columns = Math.ceil(count / rows);
        const cylinders = [];
        for (let i = 0; i < count; ++i)
            cylinders.push({
                    "number": i + 1,
                    "numeral": String(i + 1),
                    "name": "",
                    "state": "none",
                    "measured": false,
                    "row": Math.floor(i / columns),
                    "column": i % columns
                });
        return cylinders;
    }

    function make(count: int, rows: int, current: int): var {
        picked = -1;
        return createTemporaryObject(railComponent, test, {
                "cylinders": engine(count, rows),
                "current": current
            });
    }

    function tile(rail: var, index: int): var {
        const found = findChild(rail, "cylinder_" + index);
        verify(found, "cylinder " + (index + 1) + " is shown");
        return found;
    }

    function test_one_cylinder_fills_the_rail() {
        const rail = make(1, 1, 0);
        compare(tile(rail, 0).width, rail.width);
    }

    function test_a_tap_chooses() {
        const rail = make(2, 1, 0);
        mouseClick(tile(rail, 1));
        compare(picked, 1);
    }

    function test_a_vee_stands_in_two_banks() {
        const rail = make(6, 2, 0);
        compare(tile(rail, 0).y, tile(rail, 2).y);
        compare(tile(rail, 3).x, tile(rail, 0).x);
        verify(tile(rail, 3).y >= tile(rail, 0).y + Theme.primaryTarget + Theme.space);
    }

    function test_six_in_a_row_are_targets_still() {
        const rail = make(6, 1, 0);
        for (let i = 0; i < 6; ++i) {
            verify(tile(rail, i).height >= Theme.primaryTarget);
            verify(tile(rail, i).width >= 48, tile(rail, i).width);
        }
    }

    function test_sixteen_keep_the_current_one_in_the_middle_data() {
        return [{
                "tag": "first",
                "current": 0
            }, {
                "tag": "fifth",
                "current": 4
            }, {
                "tag": "last",
                "current": 15
            }];
    }

    function test_sixteen_keep_the_current_one_in_the_middle(data) {
        const rail = make(16, 2, data.current);
        waitForRendering(rail);
        tryVerify(() => Math.abs(tile(rail, data.current).mapToItem(rail, 42, 0).x - rail.width / 2) < 2);
    }

    function test_sixteen_follow_the_current_one() {
        const rail = make(16, 2, 0);
        waitForRendering(rail);
        rail.current = 8;
        tryVerify(() => findChild(rail, "cylinder_8"));
        tryVerify(() => Math.abs(tile(rail, 8).mapToItem(rail, 42, 0).x - rail.width / 2) < 2);
    }

    function test_a_new_reading_leaves_the_strip_where_it_is() {
        const rail = make(16, 2, 8);
        waitForRendering(rail);
        tryVerify(() => findChild(rail, "cylinder_8"));
        const before = tile(rail, 8);
        const cylinders = engine(16, 2);
        cylinders[8].state = "fault";
        rail.cylinders = cylinders;
        compare(tile(rail, 8), before);
        compare(before.cylinderState, "fault");
        tryVerify(() => Math.abs(before.mapToItem(rail, 42, 0).x - rail.width / 2) < 2);
    }

    function test_a_tap_on_the_strip_opens_all_of_them() {
        const rail = make(16, 2, 4);
        waitForRendering(rail);
        tryVerify(() => Math.abs(tile(rail, 4).mapToItem(rail, 42, 0).x - rail.width / 2) < 2);
        mouseClick(tile(rail, 4));
        compare(picked, -1);
        const top = rail.Window.window.contentItem;
        tryVerify(() => findChild(top, "cell_15"));
        const cell = findChild(top, "cell_12");
        verify(cell.width >= 64 && cell.height >= 64);
        waitForRendering(cell);
        wait(Theme.motion + 50);
        mouseClick(cell);
        compare(picked, 12);
        tryVerify(() => !findChild(top, "cell_12"));
    }
}
