// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One cylinder on the layout picture: touched(), or dragged and dropped(x, y) with its middle there.
Pressable {
    id: cell

    property int number: 1
    property string name
    property bool held: false
    property real homeX: 0
    property real homeY: 0

    signal touched
    signal dropped(x: real, y: real)

    x: homeX
    y: homeY
    z: drag.active ? 1 : 0
    text: name === "" ? qsTr("Cylinder %1").arg(number) : qsTr("Cylinder %1, %2").arg(number).arg(name)
    fill: held || drag.active ? Theme.chosen : Theme.key
    outlineColor: held || drag.active ? Theme.info : "transparent"
    padding: 4
    horizontalPadding: 4
    onClicked: touched()

    inside: Item {
        Column {
            width: parent.width
            anchors.verticalCenter: parent.verticalCenter

            LText {
                width: parent.width
                role: "numeral"
                silent: true
                text: cell.number
                horizontalAlignment: Text.AlignHCenter
                font.pixelSize: Math.min(Theme.numeralSize, cell.width * 0.42)
                wrapMode: Text.NoWrap
            }

            LText {
                width: parent.width
                visible: text !== ""
                role: "label"
                silent: true
                text: cell.name
                horizontalAlignment: Text.AlignHCenter
                maximumLineCount: 1
                elide: Text.ElideRight
            }
        }
    }

    DragHandler {
        id: drag

        onActiveChanged: {
            if (active)
                return;
            const x = cell.x + cell.width / 2;
            const y = cell.y + cell.height / 2;
            cell.x = Qt.binding(() => cell.homeX);
            cell.y = Qt.binding(() => cell.homeY);
            cell.dropped(x, y);
        }
    }
}
