// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick

// The chevron at the top of a page and of a sheet.
Pressable {
    id: control

    property string symbol: "back"

    objectName: "back"
    text: symbol === "close" ? qsTr("Close") : qsTr("Back")
    padding: 0
    horizontalPadding: 0
    fill: "transparent"

    inside: Item {
        Symbol {
            name: control.symbol
            anchors.centerIn: parent
            rotation: control.symbol === "back" && control.mirrored ? 180 : 0
        }
    }
}
