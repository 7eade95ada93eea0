// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// All cylinders of a big engine, in its own order, to choose from.
Sheet {
    id: sheet

    property var cylinders: []
    property int current: 0
    property int columnCount: 4

    // As many columns as the engine has, as far as they stay 64 wide.
    readonly property int columns: Math.max(1, Math.min(columnCount, Math.floor((availableWidth + Theme.space) / (64 + Theme.space))))

    signal chosen(int index)

    title: qsTr("Cylinders")

    Grid {
        width: parent.width
        columns: sheet.columns
        spacing: Theme.space

        Repeater {
            model: sheet.cylinders

            CylinderTile {
                required property var modelData
                required property int index

                objectName: "cell_" + index
                cylinder: modelData
                selected: index === sheet.current
                width: (sheet.availableWidth - Theme.space * (sheet.columns - 1)) / sheet.columns
                height: Theme.primaryTarget
                onClicked: {
                    sheet.chosen(index);
                    sheet.close();
                }
            }
        }
    }
}
