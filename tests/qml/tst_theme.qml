// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Theme

TestCase {
    name: "Theme"
    when: windowShown
    width: 300
    height: 100
    visible: true

    // Relative luminance and contrast ratio as in WCAG 2.1 (W3C Recommendation), "relative luminance" and
    // "contrast ratio".
    function luminance(c: color): real {
        const linear = x => x <= 0.03928 ? x / 12.92 : Math.pow((x + 0.055) / 1.055, 2.4);
        return 0.2126 * linear(c.r) + 0.7152 * linear(c.g) + 0.0722 * linear(c.b);
    }

    function contrast(a: color, b: color): real {
        const la = luminance(a), lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    function verifyContrast(front: color, back: color, what: string) {
        const ratio = contrast(front, back);
        verify(ratio >= 7, `${what}: ${ratio.toFixed(2)} in the ${Theme.dark ? "workshop" : "daylight"} look`);
    }

    function test_contrast_formula() {
        // WCAG 2.1: black on white is 21:1, a colour on itself 1:1.
        compare(contrast(Qt.rgba(0, 0, 0, 1), Qt.rgba(1, 1, 1, 1)).toFixed(3), "21.000");
        compare(contrast(Qt.rgba(0.5, 0.5, 0.5, 1), Qt.rgba(0.5, 0.5, 0.5, 1)), 1);
    }

    function test_contrast_data() {
        return [{
                "tag": "workshop",
                "dark": true
            }, {
                "tag": "daylight",
                "dark": false
            }];
    }

    function test_contrast(data) {
        Theme.dark = data.dark;
        for (const back of ["ground", "panel", "key", "keyPressed", "chosen"])
            for (const front of ["ink", "quietInk"])
                verifyContrast(Theme[front], Theme[back], front + " on " + back);
        for (const back of ["ground", "panel", "chosen"])
            for (const front of ["good", "borderline", "fault", "info"])
                verifyContrast(Theme[front], Theme[back], front + " on " + back);
        verifyContrast(Theme.actInk, Theme.act, "actInk on act");
        verifyContrast(Theme.actInk, Theme.actPressed, "actInk on actPressed");
        for (const path of ["rings", "intake", "exhaust", "gasket", "other"])
            verifyContrast(Theme.inkOnPath, Theme.pathColor(path), "inkOnPath on " + path);
    }

    function cleanup() {
        Theme.dark = true;
        Theme.textScale = 1;
        Theme.bigKeys = false;
        Theme.reducedMotion = false;
    }

    function test_text_follows_the_system_up_to_200_percent() {
        const plain = Theme.bodySize;
        Theme.textScale = 2;
        compare(Theme.bodySize, 2 * plain);
        Theme.textScale = 3;
        compare(Theme.bodySize, 2 * plain);
    }

    function test_reduced_motion_means_none() {
        compare(Theme.motion, 150);
        Theme.reducedMotion = true;
        compare(Theme.motion, 0);
    }

    function test_pad_keys() {
        compare(Theme.padKeyHeight(412, 915), 76);
        compare(Theme.padKeyHeight(320, 568), 56);
        compare(Theme.padKeyHeight(915, 412), 56);
        Theme.bigKeys = true;
        compare(Theme.padKeyHeight(412, 915), 120);
    }

    FontMetrics {
        id: regular

        font.family: Theme.family
        font.pixelSize: 100
    }

    FontMetrics {
        id: bold

        font.family: Theme.family
        font.pixelSize: 100
        font.bold: true
    }

    // A B612 Mono on the system must not be taken for B612, and every digit must be as wide as the next.
    function test_our_own_b612_is_drawn() {
        for (const metrics of [regular, bold]) {
            compare(Qt.fontFamilies().includes(Theme.family), true);
            verify(metrics.advanceWidth("i") < 0.6 * metrics.advanceWidth("m"));
            for (const digit of "123456789")
                compare(metrics.advanceWidth(digit), metrics.advanceWidth("0"));
        }
    }

    Text {
        id: sample

        width: 200
        height: 60
        text: "Hum"
        font.family: Theme.family
        font.pixelSize: 40
    }

    function inkOf(item: Item): int {
        const picture = grabImage(item);
        let dark = 0;
        for (let y = 0; y < item.height; ++y)
            for (let x = 0; x < item.width; ++x)
                if (picture.red(x, y) < 128)
                    ++dark;
        return dark;
    }

    // Both weights of B612 are equally wide; only their ink differs.
    function test_bold_is_the_bold_face() {
        sample.font.bold = false;
        const plain = inkOf(sample);
        sample.font.bold = true;
        verify(plain > 100, "the sample is drawn");
        verify(inkOf(sample) > 1.2 * plain);
    }
}
