// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// How far: "3 of 6", with a dot each up to eight.
Row {
    id: progress

    required property int done
    required property int total

    spacing: Theme.space
    Accessible.role: Accessible.ProgressBar
    Accessible.name: words.text
    Accessible.ignored: Theme.isBehind(progress)

    Row {
        visible: progress.total <= 8
        spacing: 5
        anchors.verticalCenter: parent.verticalCenter

        Repeater {
            model: progress.total <= 8 ? progress.total : 0

            Rectangle {
                required property int index

                width: 10
                height: 10
                radius: 5
                color: index < progress.done ? Theme.ink : "transparent"
                border.width: 1.5
                border.color: Theme.ink
            }
        }
    }

    LText {
        id: words

        role: "label"
        silent: true
        text: qsTr("%1 of %2").arg(progress.done).arg(progress.total)
        anchors.verticalCenter: parent.verticalCenter
    }
}
