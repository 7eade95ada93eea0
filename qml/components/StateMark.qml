// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme
import Lapwing.Components

// The shape of a state: "good" a filled disc, "borderline" a half disc, "fault" an open triangle and "none" a
// dashed ring; "unjudged", what was measured and has nothing to be held against, a whole ring. "waiting", what was measured and is not to be judged yet, has none.
LineDrawing {
    id: mark

    required property string state
    property real size: Theme.markSize
    property bool silent: false

    implicitWidth: size
    implicitHeight: size
    width: size
    height: size
    grid: 24
    thickness: 2.5
    color: Theme.stateColor(state)
    dashes: state === "none" ? [1.35, 1.1] : []
    line: state === "waiting" ? "" : state === "fault" ? "M 12 3 L 22 20.5 L 2 20.5 Z" : "O 12 12 9.5"
    area: state === "good" ? "O 12 12 9.5" : state === "borderline" ? "M 12 2.5 A 12 12 9.5 90 180 Z" : ""

    Accessible.role: Accessible.Graphic
    Accessible.name: States.word(state)
    Accessible.ignored: silent || Theme.isBehind(mark)
}
