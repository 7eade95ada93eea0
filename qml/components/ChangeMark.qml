// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme
import Lapwing.Components

// The shape of a change: two arrowheads up "surely_better", one up "better", a level bar "same", one down
// "worse", two down "surely_worse", a crossed ring "not_comparable", a dashed ring "none".
LineDrawing {
    id: mark

    required property string change
    property real size: Theme.markSize

    readonly property var lines: ({
            surely_better: "M 4 12 L 12 4 L 20 12 M 4 20 L 12 12 L 20 20",
            better: "M 4 16 L 12 8 L 20 16",
            same: "M 3 9 L 21 9 M 3 15 L 21 15",
            worse: "M 4 8 L 12 16 L 20 8",
            surely_worse: "M 4 4 L 12 12 L 20 4 M 4 12 L 12 20 L 20 12",
            not_comparable: "O 12 12 9.5 M 5.5 5.5 L 18.5 18.5"
        })

    implicitWidth: size
    implicitHeight: size
    width: size
    height: size
    grid: 24
    thickness: 2.5
    color: {
        switch (change) {
        case "surely_better":
        case "better":
            return Theme.good;
        case "worse":
        case "surely_worse":
            return Theme.fault;
        default:
            return Theme.quietInk;
        }
    }
    dashes: lines[change] === undefined ? [1.35, 1.1] : []
    line: lines[change] ?? "O 12 12 9.5"
    Accessible.ignored: true
}
