// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components

// The bores of an EngineTile, if they are few enough to be told apart, and its state's mark.
Item {
    id: pictures

    property EngineTile tile: null

    BoreRow {
        anchors.left: parent.left
        anchors.bottom: parent.bottom
        visible: pictures.tile?.boreLine === ""
        boreHeight: 44
        cylinders: visible ? pictures.tile.bores : []
    }

    StateMark {
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        state: pictures.tile?.boreState ?? "none"
        silent: true
    }
}
