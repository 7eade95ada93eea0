// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// The one amber action of a screen. `text`, clicked(). `yields`: another one has the screen now.
Pressable {
    id: control

    property bool yields: false

    targetKind: "primary"
    horizontalPadding: Theme.isCompact(Window.width, Window.height) ? Theme.space : 2 * Theme.space
    fill: yields ? Theme.key : Theme.act
    fillPressed: yields ? Theme.keyPressed : Theme.actPressed
    outlineColor: yields ? "transparent" : Theme.actOutline

    inside: LText {
        role: "button"
        silent: true
        text: control.text
        color: control.yields ? Theme.ink : Theme.actInk
        font.pixelSize: Theme.frameSize(20, Theme.isCrowded(control.Window.width, control.Window.height))
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
}
