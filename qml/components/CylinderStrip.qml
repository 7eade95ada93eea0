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

    readonly property real tileWidth: 84
    readonly property real middle: current * (tileWidth + list.spacing) - (list.width - tileWidth) / 2

    signal opened

    onMiddleChanged: {
        slide.stop();
        if (list.ready)
            slide.start();
        else
            list.contentX = middle;
    }

    NumberAnimation {
        id: slide

        target: list
        property: "contentX"
        to: strip.middle
        duration: Theme.motion
    }

    ListView {
        id: list

        property bool ready: false

        objectName: "strip"
        width: parent.width
        height: parent.height - words.height - 4
        orientation: ListView.Horizontal
        spacing: Theme.space
        leftMargin: (width - strip.tileWidth) / 2
        rightMargin: leftMargin
        clip: true
        model: strip.cylinders
        currentIndex: -1
        boundsBehavior: Flickable.StopAtBounds
        Component.onCompleted: Qt.callLater(() => {
                contentX = strip.middle;
                ready = true;
            })

        delegate: CylinderTile {
            required property var modelData
            required property int index

            objectName: "cylinder_" + index
            cylinder: modelData
            selected: index === strip.current
            width: strip.tileWidth
            height: list.height
            onClicked: strip.opened()
        }
    }

    LText {
        id: words

        role: "label"
        text: qsTr("%1 of %2").arg(strip.current + 1).arg(strip.cylinders.length)
        anchors.bottom: parent.bottom
        anchors.horizontalCenter: parent.horizontalCenter
    }
}
