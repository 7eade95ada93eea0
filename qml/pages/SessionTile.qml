// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// A tile of SessionModel, and below it what was measured: a touch on the figures asks where they come from and doesn't
// open the test.
Column {
    id: test

    required property var tile

    signal opened
    signal figuresAsked

    spacing: Theme.space

    Tile {
        objectName: "tile_" + test.tile.key
        width: parent.width
        title: test.tile.title
        detail: test.tile.text
        state: ["visit", "exits", "plan"].includes(test.tile.key) ? "" : test.tile.state
        cylinders: test.tile.bores
        onClicked: test.opened()
    }

    InfoLine {
        objectName: "figures_" + test.tile.key
        visible: text !== ""
        width: parent.width
        symbol: "gauge"
        text: test.tile.figures ?? ""
        onClicked: test.figuresAsked()
    }
}
