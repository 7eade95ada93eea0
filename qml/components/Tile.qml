// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A wide tile: bores or nothing at the start, `title` and `detail`, a state mark at the end. `cylinders` as in
// CylinderRail; the page leaves it empty above six cylinders and says it in `detail`.
Panel {
    id: tile

    property string title
    property string detail
    property string state
    property var cylinders: []

    clickable: true
    text: States.sentence([title, detail, state === "" ? "" : States.word(state)])

    Item {
        id: inside

        // A word that doesn't fit beside the bores stands above them: no word is broken in two.
        readonly property real beside: width - mark.width - Theme.space - (bores.visible ? bores.width + words.anchors.leftMargin : 0)
        readonly property bool above: bores.visible && metrics.widest(tile.title, Theme.headingSize) > beside
        // Where not even a line of its own is wide enough, it gets smaller.
        readonly property int titleSize: metrics.fitting(tile.title, Theme.headingSize, above ? width - mark.width - Theme.space : beside)

        width: parent.width
        height: (above ? over.height + 4 : 0) + Math.max(bores.height, words.height)

        WordMetrics {
            id: metrics
        }

        LText {
            id: over

            visible: inside.above
            anchors.left: parent.left
            anchors.right: mark.left
            anchors.rightMargin: Theme.space
            role: "heading"
            silent: true
            text: tile.title
            font.pixelSize: inside.titleSize
        }

        BoreRow {
            id: bores

            cylinders: tile.cylinders
            visible: tile.cylinders.length > 0
            height: visible ? boreHeight : 0
            anchors.left: parent.left
            anchors.verticalCenter: words.verticalCenter
        }

        Column {
            id: words

            anchors.left: bores.visible ? bores.right : parent.left
            anchors.leftMargin: bores.visible ? 14 : 0
            anchors.right: mark.left
            anchors.rightMargin: Theme.space
            anchors.verticalCenter: parent.verticalCenter
            anchors.verticalCenterOffset: inside.above ? (over.height + 4) / 2 : 0
            spacing: 2

            LText {
                width: parent.width
                visible: !inside.above
                role: "heading"
                silent: true
                text: tile.title
                font.pixelSize: inside.titleSize
            }

            LText {
                width: parent.width
                visible: text !== ""
                silent: true
                text: tile.detail
                font.pixelSize: metrics.fitting(tile.detail, Theme.textSize(15), inside.beside)
            }
        }

        StateMark {
            id: mark

            visible: tile.state !== ""
            width: visible ? size : 0
            state: tile.state
            silent: true
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
        }
    }
}
