// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Components
import Lapwing.Theme

// Held against how the text itself breaks.
TestCase {
    name: "WordMetrics"
    when: windowShown
    width: 400
    height: 300
    visible: true

    WordMetrics {
        id: metrics
    }

    LText {
        id: one

        width: 150
        role: "figure"
    }

    function test_a_word_that_would_break_gets_smaller_until_it_fits_data() {
        return [
            {
                tag: "long",
                text: "Druckverlustprüfung",
                lines: 1
            },
            {
                tag: "long and short",
                text: "Die Druckverlustprüfung",
                lines: 2
            }
        ];
    }

    function test_a_word_that_would_break_gets_smaller_until_it_fits(data: var) {
        one.text = data.text;
        one.font.pixelSize = 32;
        verify(one.lineCount > data.lines);
        const size = metrics.fitting(data.text, 32, one.width);
        verify(size < 32);
        one.font.pixelSize = size;
        compare(one.lineCount, data.lines);
    }

    function test_what_fits_keeps_its_size() {
        compare(metrics.fitting("Dry test", 20, 150), 20);
        compare(metrics.fitting("", 20, 150), 20);
        // Before there is a width nothing is known.
        compare(metrics.fitting("Druckverlustprüfung", 20, 0), 20);
    }
}
