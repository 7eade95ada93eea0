// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Text in one of the app's sizes. `role`: "title", "heading", "body", "figure" (bold body), "label",
// "button", "numeral" or "readout". Set `silent` where a button around it already speaks the words.
Text {
    id: text

    property string role: "body"
    property bool silent: false

    readonly property int roleSize: {
        switch (role) {
        case "title":
            return Theme.titleSize;
        case "heading":
            return Theme.headingSize;
        case "label":
            return Theme.labelSize;
        case "button":
            return Theme.buttonSize;
        case "numeral":
            return Theme.numeralSize;
        case "readout":
            return Theme.readoutSize;
        default:
            return Theme.bodySize;
        }
    }

    color: role === "label" ? Theme.quietInk : Theme.ink
    font.family: Theme.family
    font.pixelSize: roleSize
    font.bold: role !== "body" && role !== "label"
    wrapMode: Text.Wrap
    // Said, so that it is the page's side and not that of the words: an engine's name may be in other letters.
    horizontalAlignment: Text.AlignLeft
    textFormat: Text.PlainText

    // A word that is wider than its line gets hyphens where it may be broken, and a number stays with its unit;
    // who is read to hears it without.
    onTextChanged: fitWords()
    onWidthChanged: fitWords()
    onFontChanged: fitWords()
    onWrapModeChanged: fitWords()

    // Where a signal brings a text of its own, that would be meant.
    function fitWords() {
        WordBreaks.fit(text);
    }

    Accessible.role: role === "title" || role === "heading" ? Accessible.Heading : Accessible.StaticText
    Accessible.name: text.text.replace(/\u00ad/g, "").replace(/\u00a0|&nbsp;/g, " ")
    Accessible.ignored: silent || text.text === "" || Theme.isBehind(text)
}
