// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// The line under a field: a problem with its mark, else a quiet hint, else nothing.
Item {
    id: line

    property string hint
    property string problem

    visible: hint !== "" || problem !== ""
    implicitHeight: visible ? words.height : 0

    StateMark {
        id: mark

        visible: line.problem !== ""
        state: "fault"
        silent: true
        anchors.left: parent.left
        anchors.verticalCenter: parent.verticalCenter
    }

    LText {
        id: words

        role: "label"
        text: line.problem !== "" ? line.problem : line.hint
        color: line.problem !== "" ? Theme.ink : Theme.quietInk
        anchors.left: parent.left
        anchors.leftMargin: mark.visible ? mark.width + Theme.space : 0
        anchors.right: parent.right
    }
}
