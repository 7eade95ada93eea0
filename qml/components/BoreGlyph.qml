// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme
import Lapwing.Components

// A cylinder as an upright bore. All heights are shares of the bore, 0 at the bottom and 1 at the top: the
// piston line at `value`, a notch at the lowest `limit`, a band from `low` to `high`, a whisker of `value` plus
// and minus `u`. NaN leaves a part out. Sizes from 24 x 40 to 60 x 120.
Item {
    id: bore

    property bool measured: true
    property string state: "none"
    property real value: NaN
    property real limit: NaN
    property real low: NaN
    property real high: NaN
    property real u: NaN
    property string text

    readonly property real stroke: width < 32 ? 1.5 : 2
    readonly property real inset: stroke + (width < 32 ? 1 : 2)
    readonly property real span: height - 2 * inset
    readonly property color stateColor: Theme.stateColor(state)

    function yAt(share: real): real {
        return inset + span * (1 - Math.min(1, Math.max(0, share)));
    }

    implicitWidth: 40
    implicitHeight: 80

    Accessible.role: Accessible.Graphic
    Accessible.name: text
    Accessible.ignored: text === "" || Theme.isBehind(bore)

    Rectangle {
        objectName: "band"
        visible: !isNaN(bore.low) && !isNaN(bore.high)
        x: bore.inset
        width: bore.width - 2 * bore.inset
        y: bore.yAt(bore.high)
        height: bore.yAt(bore.low) - y
        radius: 2
        color: Theme.ink
        opacity: 0.22
    }

    Rectangle {
        objectName: "fill"
        visible: bore.measured && !isNaN(bore.value)
        x: bore.inset
        width: bore.width - 2 * bore.inset
        y: bore.yAt(bore.value)
        height: bore.height - bore.inset - y
        radius: 2
        color: bore.stateColor
        opacity: 0.5
    }

    Rectangle {
        visible: bore.measured
        anchors.fill: parent
        radius: bore.width / 6
        color: "transparent"
        border.width: bore.stroke
        border.color: Theme.ink
    }

    LineDrawing {
        visible: !bore.measured
        anchors.fill: parent
        color: Theme.ink
        thickness: bore.stroke
        dashes: [2.4, 2]
        line: `B ${bore.stroke / 2} ${bore.stroke / 2} ${bore.width - bore.stroke} ${bore.height - bore.stroke} ${bore.width / 6}`
    }

    Repeater {
        model: isNaN(bore.limit) ? 0 : 2

        Rectangle {
            required property int index

            objectName: "notch" + index
            width: bore.width / 5
            height: bore.width < 32 ? 2 : 3
            x: index === 0 ? 0 : bore.width - width
            y: bore.yAt(bore.limit) - height / 2
            color: Theme.ink
        }
    }

    Rectangle {
        objectName: "piston"
        visible: bore.measured && !isNaN(bore.value)
        x: bore.stroke / 2
        width: bore.width - bore.stroke
        height: bore.width < 32 ? 3 : 4
        y: bore.yAt(bore.value) - height / 2
        color: bore.stateColor
    }

    Item {
        objectName: "whisker"
        visible: bore.measured && bore.u > 0 && !isNaN(bore.value)
        x: bore.width / 2 - width / 2
        width: bore.width / 4
        y: bore.yAt(bore.value + bore.u)
        height: bore.yAt(bore.value - bore.u) - y

        Rectangle {
            width: bore.stroke
            height: parent.height
            anchors.horizontalCenter: parent.horizontalCenter
            color: Theme.ink
        }

        Rectangle {
            width: parent.width
            height: bore.stroke
            color: Theme.ink
        }

        Rectangle {
            width: parent.width
            height: bore.stroke
            y: parent.height - height
            color: Theme.ink
        }
    }
}
