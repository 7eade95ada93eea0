// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme
import Lapwing.Components

// A legend line of a SplitBar: {path, name, figure, mean, low, high, detail}. The interval is drawn as well as
// written; a share too small to draw has its line of words only.
Item {
    id: line

    required property var share

    implicitHeight: words.height
    Accessible.role: Accessible.StaticText
    Accessible.name: [share.name, share.figure, share.detail].filter(part => part).join(", ")
    Accessible.ignored: Theme.isBehind(line)

    PathPattern {
        id: swatch

        path: line.share.path
        y: Math.max(0, (pair.height - height) / 2)
        anchors.left: parent.left
    }

    Column {
        id: words

        anchors.left: swatch.right
        anchors.leftMargin: Theme.space
        anchors.right: parent.right
        spacing: 2

        PairLine {
            id: pair

            width: parent.width
            name: line.share.name
            value: line.share.figure
            silent: true
        }

        ShareTrack {
            width: parent.width
            height: 12
            visible: line.share.high >= 0.01
            mean: line.share.mean
            low: line.share.low
            high: line.share.high
            color: Theme.ink
            mirrored: Theme.rightToLeft
        }

        LText {
            width: parent.width
            visible: text !== ""
            role: "label"
            silent: true
            text: line.share.detail
        }
    }
}
