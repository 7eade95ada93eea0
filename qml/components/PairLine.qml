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
    readonly property bool fits: label.implicitWidth + figure.implicitWidth + Theme.gap <= width

    LText {
        id: label

        silent: pair.silent
        text: pair.name
        color: Theme.quietInk
        width: pair.fits ? pair.width - figure.implicitWidth : pair.width
    }

    LText {
        id: figure

        role: "figure"
        silent: pair.silent
        text: pair.value
        width: pair.fits ? implicitWidth : pair.width
        horizontalAlignment: Text.AlignRight
    }
}
