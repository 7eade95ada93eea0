// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme
import Lapwing.Components

// A danger, where it is, written out. Once `read` it folds to its `brief` line, which stays; a touch opens and folds
// it again. acknowledged() comes with the first folding.
Rectangle {
    id: card

    property string heading: qsTr("Caution")
    required property string text
    property string brief: text.split(/[.:]/)[0]
    property bool read: false
    property bool folded: read

    readonly property real besideMark: Theme.markSize + 2 + Theme.gap
    readonly property real besideFold: fold.width + Theme.space

    signal acknowledged

    function turn() {
        folded = !folded;
        if (folded && !read)
            acknowledged();
    }

    implicitHeight: Math.max(Theme.secondaryTarget, column.height + 2 * Theme.gap)
    radius: Theme.corner
    color: Theme.panel
    border.width: Theme.outline
    border.color: Theme.fault

    Pressable {
        anchors.fill: parent
        objectName: "caution"
        fill: "transparent"
        text: card.heading + ". " + (card.folded ? card.brief : card.text)
        Accessible.description: card.folded ? qsTr("Touch to read it all") : qsTr("Touch to fold")
        onClicked: card.turn()
    }

    LineDrawing {
        x: Theme.rightToLeft ? card.width - 14 - width : 14
        y: Theme.gap
        width: Theme.markSize + 2
        height: width
        grid: 24
        color: Theme.fault
        thickness: 2.5
        line: "M 12 2.5 L 23 21.5 L 1 21.5 Z M 12 9.5 L 12 14.5 M 12 18 L 12 18.1"
    }

    WordMetrics {
        id: metrics
    }

    Column {
        id: column

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.margins: 14
        y: Math.max(Theme.gap, (card.height - height) / 2)
        spacing: 4

        LText {
            width: parent.width
            leftPadding: Theme.rightToLeft ? card.besideFold : card.besideMark
            rightPadding: Theme.rightToLeft ? card.besideMark : card.besideFold
            role: "figure"
            silent: true
            text: card.folded ? card.heading + ": " + card.brief : card.heading
            font.pixelSize: metrics.fitting(text, Theme.bodySize, width - leftPadding - rightPadding)
        }

        // Over the whole width: at large text there is no room to spare beside the mark.
        LText {
            width: parent.width
            visible: !card.folded
            silent: true
            text: card.text
        }
    }

    Symbol {
        id: fold

        name: card.folded ? "down" : "up"
        size: 20
        anchors.right: parent.right
        anchors.rightMargin: 14
        anchors.top: parent.top
        anchors.topMargin: Theme.gap + 2
    }
}
