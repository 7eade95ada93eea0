// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Components

// A long word of large text on a small screen.
TestCase {
    id: test

    name: "WordBreaks"
    when: windowShown
    width: 700
    height: 400
    visible: true

    property string said: "Die Zylinderkopfdichtung ist gut"

    LText {
        id: one

        width: 200
        font.pixelSize: 36
        text: test.said
    }

    function init() {
        one.width = 200;
        one.font.pixelSize = 36;
        one.wrapMode = Text.Wrap;
        said = "Die Zylinderkopfdichtung ist gut";
    }

    function test_a_word_wider_than_its_line_is_broken_where_it_may_be() {
        compare(one.text, "Die Zylinder\u00adkopf\u00addichtung ist gut");
        compare(one.lineCount, 5);  // Die / Zylinder- / kopf- / dichtung / ist gut
        verify(one.contentWidth <= one.width);
    }

    function test_what_is_read_out_has_no_hyphens() {
        compare(one.Accessible.name, "Die Zylinderkopfdichtung ist gut");
    }

    function test_a_word_that_fits_stays_whole() {
        one.width = 600;
        compare(one.text, "Die Zylinderkopfdichtung ist gut");
        one.width = 200;
        verify(one.text.includes("\u00ad"));
        one.font.pixelSize = 14;
        compare(one.text, "Die Zylinderkopfdichtung ist gut");
    }

    function test_the_binding_stays() {
        verify(one.text.includes("\u00ad"));
        said = "Druckverlustprüfung?";
        compare(one.text, "Druck\u00adverlust\u00adprüfung?");
        said = "Kurz";
        compare(one.text, "Kurz");
    }

    function test_one_line_is_not_broken() {
        one.wrapMode = Text.NoWrap;
        said = "Kurbelgehäuse des Zylinders";
        compare(one.text, "Kurbelgehäuse des Zylinders");
    }

    function test_a_number_stays_with_its_unit() {
        said = "21 N ± 6 at the end of a bar";
        compare(one.text, "21\u00a0N ±\u00a06 at the end of a bar");
        said = "Cylinder 1 leaks 38 % ± 13, at 6.1 bar and 250 rpm in 2 hours";
        compare(one.text, "Cylinder 1 leaks 38\u00a0% ±\u00a013, at 6.1\u00a0bar and 250\u00a0rpm in 2 hours");
        compare(one.Accessible.name, said);
    }

    function test_a_word_that_nobody_knows_is_left_to_the_text() {
        said = "Abcdefghijklmnopqrst";
        compare(one.text, "Abcdefghijklmnopqrst");
    }
}
