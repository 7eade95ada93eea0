// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// One cylinder of the rail: numeral, name, state mark, and its bore where there is room.
Pressable {
    id: tile

    required property var cylinder
    property bool selected: false

    readonly property string numeral: cylinder.numeral ?? String(cylinder.number)
    readonly property string cylinderState: cylinder.state ?? "none"
    readonly property bool wide: width >= 110
    readonly property bool tall: height >= 100
    readonly property bool low: height < 70

    padding: tall ? 10 : 4
    horizontalPadding: wide ? 12 : 4
    fill: selected ? Theme.chosen : Theme.panel
    outlineColor: selected ? Theme.info : Theme.hairline
    text: qsTr("Cylinder %1").arg(numeral) + (cylinder.name ? ", " + cylinder.name : "") + ", " + States.word(cylinderState)
    Accessible.role: Accessible.PageTab
    Accessible.selected: selected

    inside: Item {
        BoreGlyph {
            id: bore

            visible: tile.wide || tile.tall
            width: visible ? (tile.tall && tile.wide ? 40 : 24) : 0
            height: tile.wide ? parent.height : Math.min(parent.height - words.height, 72)
            x: tile.wide ? (tile.mirrored ? parent.width - width : 0) : (parent.width - width) / 2
            anchors.bottom: parent.bottom
            measured: tile.cylinder.measured ?? false
            state: tile.cylinderState
            value: tile.cylinder.value ?? NaN
            limit: tile.cylinder.limit ?? NaN
            low: tile.cylinder.low ?? NaN
            high: tile.cylinder.high ?? NaN
            u: tile.cylinder.u ?? NaN
        }

        Column {
            id: words

            x: tile.wide ? (tile.mirrored ? 0 : bore.width + Theme.gap) : 0
            width: tile.wide ? parent.width - bore.width - Theme.gap : parent.width
            y: tile.wide ? (parent.height - height) / 2 : 0
            spacing: tile.tall ? 2 : 0

            Row {
                x: tile.wide ? 0 : (parent.width - width) / 2
                spacing: tile.width < 60 ? 2 : 6

                LText {
                    id: numeral

                    silent: true
                    role: "numeral"
                    text: tile.numeral
                    wrapMode: Text.NoWrap
                    font.pixelSize: Math.min(Theme.numeralSize, (tile.height - 8) * 0.6, tile.width * 0.5)
                }

                StateMark {
                    visible: !(tile.wide && tile.tall)
                    state: tile.cylinderState
                    silent: true
                    size: Math.min(20, tile.width * 0.28)
                    anchors.verticalCenter: parent.verticalCenter
                }
            }

            LText {
                width: parent.width
                visible: tile.wide && text !== "" && !tile.low
                role: "label"
                silent: true
                text: tile.cylinder.name ?? ""
                maximumLineCount: 1
                elide: Text.ElideRight
            }

            StateMark {
                visible: tile.wide && tile.tall
                state: tile.cylinderState
                silent: true
            }
        }
    }
}
