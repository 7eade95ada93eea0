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
    // What was kept for it, where there is anything.
    readonly property string figure: cylinder.figure ?? ""
    readonly property bool wide: width >= 110
    readonly property bool tall: height >= 100
    // The mark stands under the name when there is room, else beside the numeral.
    readonly property bool markUnder: wide && tall && Theme.textScale <= 1.3

    targetKind: height < Theme.secondaryTarget && Theme.isCompact(Window.width, Window.height) ? "minor" : "secondary"
    padding: tall ? 10 : 4
    horizontalPadding: wide ? 12 : 4
    fill: selected ? Theme.chosen : Theme.panel
    outlineColor: selected ? Theme.info : Theme.hairline
    text: States.sentence([qsTr("Cylinder %1").arg(numeral), cylinder.name ?? "", figure, States.word(cylinderState)])
    Accessible.role: Accessible.PageTab
    Accessible.selected: selected

    inside: Item {
        id: room

        BoreGlyph {
            id: bore

            visible: tile.wide || tile.tall
            width: !visible ? 0 : tile.wide && tile.tall ? 40 : 24
            height: tile.wide ? room.height : Math.min(room.height - words.height - 4, 72)
            x: tile.wide ? 0 : (room.width - width) / 2
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

            readonly property real markRoom: tile.markUnder ? 0 : beside.width + line.spacing
            readonly property real numeralSize: Math.min(Theme.numeralSize, room.height * (tile.tall ? 0.4 : 0.6), (width - markRoom) / (0.65 * tile.numeral.length))

            x: tile.wide ? bore.width + Theme.gap : 0
            y: tile.wide || !tile.tall ? (room.height - height) / 2 : 0
            width: room.width - x
            spacing: tile.markUnder ? 2 : 0

            Row {
                id: line

                x: tile.wide ? 0 : (words.width - width) / 2
                spacing: tile.width < 70 ? 2 : 6

                LText {
                    silent: true
                    role: "numeral"
                    text: tile.numeral
                    wrapMode: Text.NoWrap
                    font.pixelSize: Math.max(12, words.numeralSize)
                }

                StateMark {
                    id: beside

                    visible: !tile.markUnder
                    state: tile.cylinderState
                    silent: true
                    size: Math.min(Theme.markSize, tile.width * 0.24)
                    anchors.verticalCenter: parent.verticalCenter
                }

                LText {
                    // Where it has no line of its own.
                    visible: tile.wide && !tile.tall && text !== "" && line.x + beside.x + beside.width + line.spacing + implicitWidth <= words.width
                    role: "label"
                    silent: true
                    text: tile.figure
                    color: Theme.ink
                    wrapMode: Text.NoWrap
                    anchors.verticalCenter: parent.verticalCenter
                }
            }

            LText {
                width: parent.width
                visible: tile.wide && tile.height >= 70 * Theme.textScale && text !== ""
                role: "label"
                silent: true
                text: tile.figure !== "" ? tile.figure : tile.cylinder.name ?? ""
                color: tile.figure !== "" ? Theme.ink : Theme.quietInk
                maximumLineCount: 1
                elide: Text.ElideRight
            }

            StateMark {
                visible: tile.markUnder
                state: tile.cylinderState
                silent: true
            }
        }
    }
}
