// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme
import Lapwing.Components
import "symbols.js" as Symbols

// A line picture, drawn in ink. The word beside or under it speaks for it.
LineDrawing {
    id: symbol

    required property string name
    property real size: 28

    implicitWidth: size
    implicitHeight: size
    width: size
    height: size
    grid: 24
    color: Theme.ink
    line: Symbols.path(name)
}
