// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A row that leads somewhere: `text`, a quiet `detail` under it, a `figure` at the end, an optional state mark.
Pressable {
    id: control

    property string detail
    property string figure
    property string symbol
    property string mark
    property bool forward: true
    property bool ticked: false
    // Large words on a small screen have the figure below them.
    readonly property bool stacked: figure !== "" && width < 22 * Theme.bodySize && Theme.textScale > 1.3

    fill: Theme.panel
    outlineColor: ticked ? Theme.info : Theme.hairline
    padding: Theme.gap
    horizontalPadding: 14
    Accessible.name: States.sentence([text, figure, detail, mark === "" ? "" : States.word(mark)])

    WordMetrics {
        id: metrics
    }

    inside: Item {
        implicitHeight: Math.max(words.height, end.height)
        implicitWidth: 200

        LeadMark {
            id: picture

            mark: control.mark
            symbol: control.symbol
            size: 28
            gap: Theme.gap
            anchors.left: parent.left
            anchors.verticalCenter: parent.verticalCenter
        }

        Column {
            id: words

            anchors.left: picture.right
            anchors.right: end.left
            anchors.rightMargin: Theme.space
            anchors.verticalCenter: parent.verticalCenter

            LText {
                width: parent.width
                role: control.detail !== "" ? "figure" : "body"
                silent: true
                text: control.text
                font.pixelSize: metrics.fitting(control.text, Theme.bodySize, words.width)
            }

            LText {
                width: parent.width
                visible: text !== ""
                role: "label"
                silent: true
                text: control.detail
            }

            LText {
                width: parent.width
                visible: control.stacked
                role: "figure"
                silent: true
                text: control.figure
            }
        }

        Row {
            id: end

            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            spacing: Theme.space

            LText {
                silent: true
                role: "figure"
                text: control.stacked ? "" : control.figure
                visible: text !== ""
                anchors.verticalCenter: parent.verticalCenter
                width: Math.min(implicitWidth, control.width / 2.2)
                horizontalAlignment: Text.AlignRight
            }

            Symbol {
                visible: control.forward || control.ticked
                name: control.ticked ? "check" : "forward"
                size: 22
                rotation: control.mirrored && !control.ticked ? 180 : 0
                anchors.verticalCenter: parent.verticalCenter
            }
        }
    }
}
