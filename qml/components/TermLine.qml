// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A bold term and what is said of it below. A screen reader says both in one.
Column {
    id: line

    required property string term
    required property string text

    Accessible.role: Accessible.StaticText
    Accessible.name: line.term + ": " + line.text
    Accessible.ignored: Theme.isBehind(line)

    LText {
        width: parent.width
        role: "figure"
        silent: true
        text: line.term
    }

    LText {
        width: parent.width
        silent: true
        text: line.text
    }
}
