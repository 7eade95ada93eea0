// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components

// A bore with its figure below: one side of a change. `bore` as in CylinderRail.
Column {
    id: side

    required property var bore
    property string figure
    property real boreWidth: 34

    spacing: 4

    BoreGlyph {
        anchors.horizontalCenter: parent.horizontalCenter
        width: side.boreWidth
        height: 76
        measured: side.bore.measured
        state: side.bore.state
        value: side.bore.value
        u: side.bore.u
        limit: side.bore.limit
        low: side.bore.low
        high: side.bore.high
    }

    LText {
        width: parent.width
        silent: true
        role: "label"
        horizontalAlignment: Text.AlignHCenter
        text: side.figure
    }
}
