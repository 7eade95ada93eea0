// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// The bores of an EngineTile, if they are few enough to be told apart, and its state's mark.
Item {
    id: pictures

    property EngineTile tile: null

    BoreRow {
        id: bores

        anchors.left: parent.left
        anchors.bottom: parent.bottom
        visible: pictures.tile?.boreLine === ""
        boreHeight: 44
        cylinders: visible ? pictures.tile.bores : []
    }

    // What a triangle from the last visit but one is: it is no verdict on the newest.
    LText {
        id: whence

        visible: text !== ""
        silent: true
        role: "label"
        text: pictures.tile?.boreEarlier ? qsTr("earlier") : (pictures.tile?.paleWord ?? "") !== "" ? qsTr("pale: earlier") : ""
        width: Math.max(0, mark.x - bores.width - 2 * Theme.space)
        horizontalAlignment: Text.AlignRight
        maximumLineCount: 2
        elide: Text.ElideRight
        anchors.right: mark.left
        anchors.rightMargin: Theme.space
        anchors.verticalCenter: parent.verticalCenter
    }

    StateMark {
        id: mark

        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        state: pictures.tile?.boreState ?? "none"
        silent: true
    }
}
