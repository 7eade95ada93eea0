// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A name at the start and its value at the end of one line; two lines when they do not fit.
Flow {
    id: pair

    property string name
    property string value
    // Where an item around it speaks the words already.
    property bool silent: false
    // Measured as they are: hyphens come into words that are wider than their line, and would be counted in.
    readonly property bool fits: nameWidth.advanceWidth + valueWidth.advanceWidth + Theme.gap <= width

    TextMetrics {
        id: nameWidth

        font: label.font
        text: pair.name
    }

    TextMetrics {
        id: valueWidth

        font: figure.font
        text: pair.value
    }

    LText {
        id: label

        silent: pair.silent
        text: pair.name
        color: Theme.quietInk
        width: pair.fits ? pair.width - figure.width : pair.width
    }

    LText {
        id: figure

        role: "figure"
        silent: pair.silent
        text: pair.value
        width: pair.fits ? Math.ceil(valueWidth.advanceWidth) + 1 : pair.width
        horizontalAlignment: Text.AlignRight
    }
}
