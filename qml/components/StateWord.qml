// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A state as its shape and a word. `text` replaces the usual word.
Row {
    id: row

    required property string state
    property string text: States.word(state)

    spacing: Theme.space

    StateMark {
        state: row.state
        silent: true
        anchors.verticalCenter: parent.verticalCenter
    }

    LText {
        text: row.text
        width: Math.min(implicitWidth, row.width > 0 ? row.width - 22 - row.spacing : implicitWidth)
        anchors.verticalCenter: parent.verticalCenter
    }
}
