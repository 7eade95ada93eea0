// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme
import Lapwing.Components

// The colour and pattern of a leak path, filling its rectangle: "rings" plain, "intake" dots, "exhaust" slant
// lines, "gasket" cross lines, "next_cylinder" upright and "coolant" level ones, "other" rings.
Rectangle {
    id: swatch

    required property string path

    implicitWidth: 24
    implicitHeight: 24
    radius: 6
    color: Theme.pathColor(path)
    border.width: 1
    border.color: Theme.inkOnPath

    PatternDrawing {
        visible: swatch.path !== "rings" && swatch.width > 4
        anchors.fill: parent
        anchors.margins: 2
        path: swatch.path
        color: Theme.inkOnPath
    }
}
