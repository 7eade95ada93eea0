// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick

// The words of a row: what it is, and a quiet detail under it.
Column {
    id: words

    property string text
    property string detail

    LText {
        width: parent.width
        silent: true
        text: words.text
    }

    LText {
        width: parent.width
        visible: text !== ""
        role: "label"
        silent: true
        text: words.detail
    }
}
