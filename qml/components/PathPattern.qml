// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Shapes
import Lapwing.Theme
import "patterns.js" as Patterns

// The colour and pattern of a leak path, filling its rectangle: "rings" plain, "intake" dots, "exhaust" slant
// lines, "gasket" cross lines, "other" rings.
Rectangle {
    id: swatch

    required property string path

    implicitWidth: 24
    implicitHeight: 24
    radius: 6
    color: Theme.pathColor(path)
    border.width: Theme.dark ? 0 : 1
    border.color: Theme.inkOnPath
    clip: true

    Shape {
        anchors.fill: parent
        anchors.margins: 2
        ShapePath {
            strokeColor: swatch.path === "intake" ? "transparent" : "#5A14181B"
            strokeWidth: 1.2
            fillColor: swatch.path === "intake" ? "#8014181B" : "transparent"

            PathSvg {
                path: Patterns.lines(swatch.path, swatch.width - 4, swatch.height - 4)
            }
        }
    }
}
