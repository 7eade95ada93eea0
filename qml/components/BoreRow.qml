// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick

// The bores of an engine in one line, for cards and tiles. `cylinders` as in CylinderRail. The engine stands as it
// stands, in every language; the line of them has its place as its surroundings want it. One that is `earlier`, from a
// visit before the newest, is narrow and pale.
Item {
    id: line

    property var cylinders: []
    property real boreWidth: 22
    property real boreHeight: 56

    implicitWidth: row.width
    implicitHeight: row.height

    Row {
        id: row

        spacing: 6
        LayoutMirroring.enabled: false

        Repeater {
            model: line.cylinders

            BoreGlyph {
                required property var modelData

                readonly property bool earlier: modelData.earlier ?? false

                width: line.boreWidth * (earlier ? 0.6 : 1)
                height: line.boreHeight
                opacity: earlier ? 0.6 : 1
                measured: modelData.measured ?? false
                state: modelData.state ?? "none"
                value: modelData.value ?? NaN
                limit: modelData.limit ?? NaN
                low: modelData.low ?? NaN
                high: modelData.high ?? NaN
                u: modelData.u ?? NaN
            }
        }
    }
}
