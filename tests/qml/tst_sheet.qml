// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Components
import Lapwing.Theme

// On the smallest screen, in the largest text.
TestCase {
    id: test

    name: "Sheet"
    when: windowShown
    width: 320
    height: 568
    visible: true

    WordMetrics {
        id: metrics
    }

    Sheet {
        id: sheet
    }

    function cleanup() {
        sheet.close();
        tryCompare(sheet, "visible", false);
        Theme.textScale = 1;
    }

    function test_no_word_of_the_title_breaks_in_its_middle_data() {
        return [
            {
                tag: "Añadir un comprobador"
            },
            {
                tag: "¿Qué manómetro?"
            },
            {
                tag: "Welche Druckverlustprüfung?"
            }
        ];
    }

    function test_no_word_of_the_title_breaks_in_its_middle(data) {
        Theme.textScale = 2;
        sheet.title = data.tag;
        sheet.open();
        tryCompare(sheet, "opened", true);
        const title = findChild(sheet.frame, "sheetTitle");
        verify(metrics.widest(data.tag, Theme.titleSize) > title.width);
        // Either whole, or broken where the word may be.
        verify(title.text.includes("\u00ad") || metrics.widest(data.tag, title.font.pixelSize) <= title.width);
        verify(title.font.pixelSize >= Theme.bodySize);
    }
}
