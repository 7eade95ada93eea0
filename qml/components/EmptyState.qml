// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// What stands in an empty list: a heading, a sentence, and the buttons that would fill it.
Column {
    id: empty

    default property alias content: buttons.data
    property string heading
    property string text

    spacing: Theme.gap

    LText {
        width: parent.width
        role: "title"
        text: empty.heading
        horizontalAlignment: Text.AlignHCenter
    }

    LText {
        width: parent.width
        visible: text !== ""
        text: empty.text
        horizontalAlignment: Text.AlignHCenter
    }

    Column {
        id: buttons

        width: parent.width
        spacing: Theme.space
    }
}
