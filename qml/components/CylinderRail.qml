// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// The cylinders as big numerals. `cylinders` is a list of {number, name, numeral, state, value, limit, low, high,
// u, measured, row, column}; row and column place it as the engine does. Up to six stand as in the engine; more
// become a strip with the current one in the middle, where a touch opens them all as a grid. chosen(index).
Item {
    id: rail

    property var cylinders: []
    property int current: 0
    property real tileHeight: Theme.isCompact(Window.width, Window.height) ? Theme.secondaryTarget : rowCount > 1 ? Theme.primaryTarget : 128

    // All in one line, where there is no room for the engine's own rows.
    property bool flat: false
    // The strip without its "5 of 16".
    property bool bare: false

    readonly property int count: cylinders.length
    readonly property int rowCount: flat ? 1 : cylinders.reduce((most, cylinder) => Math.max(most, (cylinder.row ?? 0) + 1), 1)
    readonly property int columnCount: flat ? count : cylinders.reduce((most, cylinder, i) => Math.max(most, (cylinder.column ?? i) + 1), 1)
    readonly property real tileWidth: (width - Theme.space * (columnCount - 1)) / Math.max(1, columnCount)
    readonly property bool strip: count > 6 || width > 0 && tileWidth < Theme.minorTarget

    signal chosen(int index)

    // The engine stands as it stands, in every language.
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true

    implicitHeight: strip && bare ? tileHeight : strip ? Math.min(tileHeight, 96) + 4 + Math.ceil(stripWords.height) + 1 : rowCount * (tileHeight + Theme.space) - Theme.space

    FontMetrics {
        id: stripWords

        font.family: Theme.family
        font.pixelSize: Theme.labelSize
    }

    Repeater {
        // By count: the tiles stay when only what they show changes.
        model: rail.strip ? 0 : rail.cylinders.length

        CylinderTile {
            required property int index

            objectName: "cylinder_" + index
            cylinder: rail.cylinders[index] ?? {}
            selected: index === rail.current
            width: rail.tileWidth
            height: rail.tileHeight
            x: (rail.flat ? index : cylinder.column ?? index) * (width + Theme.space)
            y: (rail.flat ? 0 : cylinder.row ?? 0) * (height + Theme.space)
            onClicked: rail.chosen(index)
        }
    }

    // A Repeater of one is a Loader that may reach out of its component.
    Repeater {
        model: rail.strip ? 1 : 0

        CylinderStrip {
            anchors.fill: rail
            cylinders: rail.cylinders
            current: rail.current
            bare: rail.bare
            onOpened: gridSheet.createObject(rail)
        }
    }

    Component {
        id: gridSheet

        CylinderGridSheet {
            cylinders: rail.cylinders
            current: rail.current
            columnCount: rail.columnCount
            onChosen: index => rail.chosen(index)
            onClosed: destroy()
            Component.onCompleted: open()
        }
    }
}
