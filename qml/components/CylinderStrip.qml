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

    // Without "5 of 16", where every dp counts.
    property bool bare: false

    readonly property real tileWidth: 84
    readonly property real middle: current * (tileWidth + list.spacing) - (list.width - tileWidth) / 2

    signal opened

    // The strip slides to another cylinder, and simply stands right when the window changes.
    property int shown: -1

    onMiddleChanged: {
        slide.stop();
        slide.to = middle;
        if (shown === current || shown < 0)
            list.contentX = middle;
        else
            slide.start();
        shown = current;
    }

    NumberAnimation {
        id: slide

        target: list
        property: "contentX"
        duration: Theme.motion
    }

    ListView {
        id: list

        objectName: "strip"
        width: parent.width
        height: words.visible ? Math.floor(parent.height - words.height - 4) : parent.height
        orientation: ListView.Horizontal
        spacing: Theme.space
        leftMargin: (width - strip.tileWidth) / 2
        rightMargin: leftMargin
        clip: true
        model: strip.cylinders.length
        currentIndex: -1
        boundsBehavior: Flickable.StopAtBounds
        Component.onCompleted: {
            forceLayout();
            contentX = strip.middle;
        }

        delegate: CylinderTile {
            required property int index

            objectName: "cylinder_" + index
            cylinder: strip.cylinders[index] ?? {}
            selected: index === strip.current
            width: strip.tileWidth
            height: list.height
            onClicked: strip.opened()
        }
    }

    LText {
        id: words

        visible: !strip.bare
        role: "label"
        text: qsTr("%1 of %2").arg(strip.current + 1).arg(strip.cylinders.length)
        anchors.bottom: parent.bottom
        anchors.horizontalCenter: parent.horizontalCenter
    }
}
