// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// The one amber action of a screen. `text`, clicked().
Pressable {
    id: control

    targetKind: "primary"
    fill: Theme.act
    fillPressed: Theme.actPressed
    outlineColor: Theme.actOutline

    inside: LText {
        role: "button"
        silent: true
        text: control.text
        color: Theme.actInk
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
}
