// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// The engine from above: a bore where each cylinder stands. A touch picks one up, a touch on another one swaps
// their places; dragging one onto the other does the same.
Panel {
    id: picture

    property var cylinders: []
    property int held: -1

    readonly property var rows: [...new Set(cylinders.map(cylinder => cylinder.row))].sort((a, b) => a - b)
    readonly property int columns: Math.max(1, ...rows.map(row => cylinders.filter(cylinder => cylinder.row === row).length))
    readonly property real inner: width - 2 * padding
    readonly property real cellHeight: Math.max(64, Theme.numeralSize + Theme.labelSize + 24)
    // On narrow screens a row goes on below rather than have places narrower than a finger.
    readonly property real leastWidth: Math.max(Theme.minorTarget, 1.3 * Theme.numeralSize)
    readonly property int across: Math.max(1, Math.min(columns, Math.floor((inner + Theme.space) / (leastWidth + Theme.space))))
    readonly property int linesOfRow: Math.ceil(columns / across)
    readonly property real cellWidth: Math.min(110, (inner - (across - 1) * Theme.space) / across)

    signal swapped(int a, int b)
    signal edit(int index)

    function touch(index: int) {
        if (cylinders.length === 1) {
            edit(index);
        } else if (held < 0) {
            held = index;
        } else {
            const before = held;
            held = -1;
            if (before !== index)
                swapped(before, index);
        }
    }

    function under(x: real, y: real): int {
        for (let i = 0; i < cells.count; ++i) {
            const cell = cells.itemAt(i);
            if (x >= cell.homeX && x < cell.homeX + cell.width && y >= cell.homeY && y < cell.homeY + cell.height)
                return cell.modelData.index;
        }
        return -1;
    }

    Column {
        width: picture.inner
        spacing: Theme.space

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("Layout")
        }

        Item {
            id: ground

            width: parent.width
            height: picture.rows.length * picture.linesOfRow * (picture.cellHeight + Theme.space) - Theme.space
            LayoutMirroring.enabled: false
            LayoutMirroring.childrenInherit: true

            Repeater {
                id: cells

                model: picture.cylinders

                LayoutCell {
                    required property var modelData

                    readonly property int place: picture.cylinders.filter(other => other.row === modelData.row && (other.column < modelData.column || other.column === modelData.column && other.index < modelData.index)).length

                    objectName: "cell_" + modelData.number
                    homeX: place % picture.across * (picture.cellWidth + Theme.space)
                    homeY: (picture.rows.indexOf(modelData.row) * picture.linesOfRow + Math.floor(place / picture.across)) * (picture.cellHeight + Theme.space)
                    width: picture.cellWidth
                    height: picture.cellHeight
                    number: modelData.number
                    name: modelData.name
                    held: picture.held === modelData.index
                    onTouched: picture.touch(modelData.index)
                    onDropped: (x, y) => {
                        const target = picture.under(x, y);
                        if (target >= 0 && target !== modelData.index)
                            picture.swapped(modelData.index, target);
                    }
                }
            }
        }

        LText {
            width: parent.width
            role: "label"
            visible: picture.cylinders.length > 1 || picture.held >= 0
            text: picture.held < 0 ? qsTr("Touch one to change it, or drag it onto another one to swap their places.") : qsTr("Now touch the one to swap it with.")
        }

        LText {
            objectName: "goesOn"
            width: parent.width
            role: "label"
            visible: picture.linesOfRow > 1
            text: picture.rows.length === 1 ? qsTr("All stand in one row; it goes on in the next line.") : qsTr("Each row takes %1 lines here.").arg(picture.linesOfRow)
        }

        SideButton {
            objectName: "editCylinder"
            width: parent.width
            visible: picture.held >= 0
            text: qsTr("Number and name")
            onClicked: {
                const index = picture.held;
                picture.held = -1;
                picture.edit(index);
            }
        }
    }
}
