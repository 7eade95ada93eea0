// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme
import Lapwing.Components
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
    border.width: 1
    border.color: Theme.inkOnPath

    LineDrawing {
        visible: swatch.path !== "rings"
        anchors.fill: parent
        anchors.margins: 2
        color: swatch.path === "intake" ? "#8014181B" : "#5A14181B"
        thickness: 1.2
        line: swatch.path === "intake" ? "" : Patterns.lines(swatch.path, width, height)
        area: swatch.path === "intake" ? Patterns.lines(swatch.path, width, height) : ""
    }
}
