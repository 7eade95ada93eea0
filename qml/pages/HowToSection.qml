// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One part of a How to card: a heading and what stands under it.
Panel {
    id: section

    default property alias parts: lines.data
    property string heading

    LText {
        id: title

        width: parent.width
        role: "heading"
        text: section.heading
    }

    Column {
        id: lines

        width: parent.width
        anchors.top: title.bottom
        anchors.topMargin: Theme.space
        spacing: Theme.gap
    }
}
