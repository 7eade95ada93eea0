// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// One of a few words side by side: `options` is a list of {value, text}. The words share the width evenly and
// break into more lines when they do not fit. `label` stands above.
Column {
    id: row

    property string label
    property var options: []
    property var current
    // Where several can be chosen: all that are.
    property var currents: null
    property string targetKind: "secondary"

    readonly property real widest: Math.max(Theme.secondaryTarget, options.reduce((most, option) => Math.max(most, metrics.advanceWidth(option.text)), 0) / 100 * Theme.bodySize + 2 * Theme.space + 4)
    readonly property int perLine: {
        const fit = Math.max(1, Math.min(options.length, Math.floor((width + Theme.space) / (widest + Theme.space))));
        return Math.ceil(options.length / Math.max(1, Math.ceil(options.length / fit)));
    }

    signal chosen(var value)

    spacing: Theme.space / 2

    Accessible.role: Accessible.Grouping
    Accessible.name: label
    Accessible.ignored: label === "" || Theme.isBehind(row)

    WordMetrics {
        id: metrics
    }

    LText {
        width: parent.width
        visible: text !== ""
        role: "label"
        text: row.label
    }

    Grid {
        width: parent.width
        columns: Math.max(1, row.perLine)
        spacing: Theme.space

        Repeater {
            model: row.options

            Chip {
                required property var modelData

                objectName: "choice_" + modelData.value
                targetKind: row.targetKind
                width: (row.width - Theme.space * (row.perLine - 1)) / row.perLine
                text: modelData.text
                textSize: metrics.fitting(text, Theme.bodySize, availableWidth)
                checked: row.currents ? row.currents.includes(modelData.value) : modelData.value === row.current
                onClicked: row.chosen(modelData.value)
            }
        }
    }
}
