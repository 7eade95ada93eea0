// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Shapes
import Lapwing.Theme
import "symbols.js" as Symbols

// A line picture on a grid of 24 x 24, drawn in ink. The word beside or under it speaks for it.
Item {
    id: symbol

    required property string name
    property color color: Theme.ink
    property real size: 28

    implicitWidth: size
    implicitHeight: size

    Shape {
        width: 24
        height: 24
        scale: symbol.size / 24
        transformOrigin: Item.TopLeft

        ShapePath {
            strokeColor: symbol.color
            strokeWidth: 2
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap
            joinStyle: ShapePath.RoundJoin

            PathSvg {
                path: Symbols.path(symbol.name)
            }
        }
    }
}
