// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A second action beside or above the amber one. `text`, clicked(); `chosen` draws the ring of a choice.
Pressable {
    id: control

    property bool chosen: false

    fill: chosen ? Theme.chosen : Theme.key
    outlineColor: chosen ? Theme.info : "transparent"

    inside: LText {
        silent: true
        text: control.text
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
}
