// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A flat card around whatever is put into it (children take `width: parent.width`). `selected` draws the
// ring; `clickable` makes the whole card a button that speaks `text`. `about` is read out on the way in, where cards
// have buttons of the same words.
Rectangle {
    id: panel

    default property alias content: holder.data
    property bool selected: false
    property bool clickable: false
    property string text
    property string about
    property real padding: 14

    signal clicked

    Accessible.role: Accessible.Grouping
    Accessible.name: about
    Accessible.ignored: about === "" || Theme.isBehind(panel)

    implicitWidth: holder.childrenRect.width + 2 * padding
    implicitHeight: Math.max(clickable ? Theme.primaryTarget : 0, holder.childrenRect.height + 2 * padding)
    radius: Theme.corner
    color: selected ? Theme.chosen : Theme.panel
    border.width: selected ? Theme.outline : 1
    border.color: selected ? Theme.info : Theme.hairline

    Pressable {
        visible: panel.clickable
        anchors.fill: parent
        targetKind: "primary"
        text: panel.text
        fill: "transparent"
        onClicked: panel.clicked()
    }

    Item {
        id: holder

        x: panel.padding
        y: panel.clickable ? Math.max(panel.padding, (panel.height - childrenRect.height) / 2) : panel.padding
        width: panel.width - 2 * panel.padding
        height: childrenRect.height
    }
}
