// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// What stands before a line: a state mark, else a picture, else nothing, and then it takes no room.
Item {
    id: lead

    property string mark
    property string symbol
    property real size: 22
    property real gap: Theme.space
    property color color: Theme.ink

    visible: mark !== "" || symbol !== ""
    width: visible ? size + gap : 0
    height: size

    StateMark {
        visible: lead.mark !== ""
        state: lead.mark
        size: lead.size
        silent: true
        anchors.left: parent.left
        anchors.leftMargin: (lead.size - size) / 2
        anchors.verticalCenter: parent.verticalCenter
    }

    Symbol {
        visible: lead.mark === "" && lead.symbol !== ""
        name: lead.symbol
        size: lead.size
        color: lead.color
        anchors.left: parent.left
    }
}
