// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Shapes
import Lapwing.Theme

// A danger, where it is, written out. Once `read` it folds to its `brief` line, which stays; a touch opens and folds
// it again. acknowledged() comes with the first folding.
Rectangle {
    id: card

    property string heading: qsTr("Caution")
    required property string text
    property string brief: text.split(/[.:]/)[0]
    property bool read: false
    property bool folded: read

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

    Shape {
        id: triangle

        x: card.LayoutMirroring.enabled ? card.width - 14 - width : 14
        y: Theme.gap
        width: 24
        height: 24

        ShapePath {
            strokeColor: Theme.fault
            strokeWidth: 2.5
            joinStyle: ShapePath.RoundJoin
            capStyle: ShapePath.RoundCap
            fillColor: "transparent"

            PathSvg {
                path: "M12 2.5 L23 21.5 H1 Z M12 9 V14.5 M12 18 V18.3"
            }
        }
    }

    Column {
        id: column

        anchors.left: parent.left
        anchors.leftMargin: 14 + 24 + Theme.gap
        anchors.right: fold.left
        anchors.rightMargin: Theme.space
        y: Math.max(Theme.gap, (card.height - height) / 2)
        spacing: 4

        LText {
            width: parent.width
            role: "figure"
            silent: true
            text: card.folded ? card.heading + ": " + card.brief : card.heading
        }

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
