// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One engine of the list: name, last session, its bores (or how many are in which state), tags.
Panel {
    id: tile

    property string name
    property string last
    property string tags
    property string retest
    property var bores: []
    property string boreLine
    property string boreState: "none"

    clickable: true
    text: Array.from([name, last, retest, boreLine === "" ? States.word(boreState) : boreLine, tags]).filter(part => part !== "").join(", ")

    Column {
        width: parent.width
        spacing: Theme.space

        Column {
            width: parent.width
            spacing: 2

            LText {
                width: parent.width
                role: "heading"
                silent: true
                text: tile.name
            }

            LText {
                width: parent.width
                silent: true
                text: tile.last
            }

            LText {
                width: parent.width
                visible: text !== ""
                silent: true
                text: tile.retest
            }
        }

        Item {
            width: parent.width
            height: tile.boreLine === "" ? bores.height : line.height

            BoreRow {
                id: bores

                visible: tile.boreLine === ""
                height: boreHeight
                boreHeight: 44
                cylinders: tile.bores
                LayoutMirroring.enabled: false
                LayoutMirroring.childrenInherit: true
            }

            StateMark {
                state: tile.boreState
                silent: true
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
            }

            LText {
                id: line

                visible: tile.boreLine !== ""
                silent: true
                role: "figure"
                text: tile.boreLine
                width: parent.width - 22 - Theme.space
            }
        }

        LText {
            width: parent.width
            visible: text !== ""
            role: "label"
            silent: true
            text: tile.tags
        }
    }
}
