// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// More than six cylinders: a strip that keeps the current one in the middle, and "5 of 16". A touch anywhere
// opens all of them.
Item {
    id: strip

    property var cylinders: []
    property int current: 0

    signal opened

    ListView {
        id: list

        objectName: "strip"
        width: parent.width
        height: strip.height - words.height - 4
        orientation: ListView.Horizontal
        spacing: Theme.space
        clip: true
        model: strip.cylinders
        currentIndex: strip.current
        highlightRangeMode: ListView.ApplyRange
        preferredHighlightBegin: (width - 84) / 2
        preferredHighlightEnd: (width + 84) / 2
        highlightMoveDuration: Theme.motion
        boundsBehavior: Flickable.StopAtBounds

        delegate: CylinderTile {
            required property var modelData
            required property int index

            objectName: "cylinder_" + index
            cylinder: modelData
            selected: index === strip.current
            width: 84
            height: list.height
            onClicked: strip.opened()
        }
    }

    LText {
        id: words

        role: "label"
        text: qsTr("%1 of %2").arg(strip.current + 1).arg(strip.cylinders.length)
        anchors.top: list.bottom
        anchors.topMargin: 4
        anchors.horizontalCenter: parent.horizontalCenter
    }
}
