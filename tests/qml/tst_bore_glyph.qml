// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Theme
import Lapwing.Components

TestCase {
    id: test

    name: "BoreGlyph"
    when: windowShown
    width: 200
    height: 200
    visible: true

    BoreGlyph {
        id: bore

        width: 40
        height: 100
    }

    function init() {
        Theme.dark = true;
        bore.measured = true;
        bore.state = "good";
        bore.value = 0.5;
        bore.limit = 0.25;
        bore.low = 0.6;
        bore.high = 0.9;
        bore.u = 0.1;
    }

    function cleanupTestCase() {
        Theme.dark = true;
    }

    function part(name: string): var {
        return findChild(bore, name);
    }

    function middle(item: var): real {
        return item.y + item.height / 2;
    }

    // The bore's inside runs from `inset` at the top to `inset` above the bottom.
    function heightOf(share: real): real {
        return bore.inset + (bore.height - 2 * bore.inset) * (1 - share);
    }

    function test_piston_stands_at_the_value() {
        fuzzyCompare(middle(part("piston")), heightOf(0.5), 0.01);
        bore.value = 1;
        fuzzyCompare(middle(part("piston")), bore.inset, 0.01);
        bore.value = 0;
        fuzzyCompare(middle(part("piston")), bore.height - bore.inset, 0.01);
    }

    function test_a_value_over_the_range_stays_inside() {
        bore.value = 1.7;
        fuzzyCompare(middle(part("piston")), bore.inset, 0.01);
    }

    function test_notch_band_and_whisker() {
        fuzzyCompare(middle(part("notch0")), heightOf(0.25), 0.01);
        fuzzyCompare(part("band").y, heightOf(0.9), 0.01);
        fuzzyCompare(part("band").y + part("band").height, heightOf(0.6), 0.01);
        fuzzyCompare(part("whisker").y, heightOf(0.6), 0.01);
        fuzzyCompare(part("whisker").y + part("whisker").height, heightOf(0.4), 0.01);
    }

    function test_unmeasured_is_empty() {
        bore.measured = false;
        verify(!part("piston").visible);
        verify(!part("fill").visible);
        verify(!part("whisker").visible);
    }

    function test_what_is_not_known_is_left_out() {
        bore.limit = NaN;
        bore.low = NaN;
        bore.u = NaN;
        compare(part("notch0"), null);
        verify(!part("band").visible);
        verify(!part("whisker").visible);
    }

    function test_piston_line_is_drawn_in_the_state_colour() {
        bore.u = NaN;
        bore.state = "fault";
        const picture = grabImage(bore);
        compare(picture.pixel(20, Math.round(heightOf(0.5))), Theme.fault);
    }

    function test_an_empty_bore_has_a_broken_outline() {
        Theme.dark = false;
        bore.measured = false;
        bore.limit = NaN;
        const picture = grabImage(bore);
        let inked = 0;
        for (let y = 20; y < 80; ++y)
            if (picture.red(1, y) < 128)
                ++inked;
        verify(inked > 20 && inked < 45, inked + " of 60 pixels");
    }
}
