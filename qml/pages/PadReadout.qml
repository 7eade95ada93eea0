// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What stands over the digits: the rail of cylinders, the row of fields, the huge figure and what it would mean.
Item {
    id: readout

    required property PadModel model
    property bool tight: false
    property bool lying: false

    readonly property bool beside: tight || lying
    // Whole lines that find room between the figure and the digits, "more" counted as one.
    readonly property int linesFitting: Math.floor((height - figure.y - 124 * Theme.textScale) / (56 * Theme.textScale))

    signal derivationAsked(int line)
    signal moreAsked

    CylinderRail {
        id: rail

        objectName: "rail"
        visible: readout.model.cylinders.length > 1
        height: visible ? implicitHeight : 0
        width: parent.width
        cylinders: readout.model.cylinders
        current: readout.model.currentIndex
        tileHeight: readout.beside ? Theme.minorTarget : rowCount > 1 ? Theme.primaryTarget : 112
        onChosen: index => readout.model.choose(index)
    }

    FieldTabs {
        id: tabs

        width: parent.width
        anchors.top: rail.bottom
        anchors.topMargin: rail.visible ? Theme.space : 0
        fields: readout.model.fields
        current: readout.model.field
        onChosen: key => readout.model.focusField(key)
        onStepped: (key, by) => readout.model.step(key, by)
    }

    ReadoutField {
        id: figure

        objectName: "readout"
        width: readout.beside && readout.model.lines.length > 0 ? parent.width * 0.56 : parent.width
        anchors.top: tabs.bottom
        anchors.topMargin: Theme.space / 2
        caption: readout.tight ? "" : readout.model.caption
        value: readout.model.typed
        placeholder: readout.model.placeholder
        unit: readout.model.unit
        caret: true
        lines: readout.beside ? [] : readout.model.lines
        linesShown: readout.model.lines.length <= readout.linesFitting ? readout.model.lines.length : Math.max(0, readout.linesFitting - 1)
        onLineTapped: line => readout.derivationAsked(line)
    }

    // On small screens the first line stands beside the figure; a touch opens all of them.
    InfoLine {
        objectName: "besideLine"
        visible: readout.beside && readout.model.lines.length > 0
        anchors.left: figure.right
        anchors.right: parent.right
        anchors.verticalCenter: figure.verticalCenter
        readonly property var first: readout.model.lines[0] ?? {}
        mark: first.mark ?? ""
        symbol: first.symbol ?? ""
        figure: first.figure ?? ""
        text: first.text ?? ""
        onClicked: lines.active = true
    }

    Loader {
        id: lines

        active: false
        sourceComponent: LinesSheet {
            lines: readout.model.lines
            onLineTapped: line => readout.derivationAsked(line)
            onClosed: lines.active = false
            Component.onCompleted: open()
        }
    }
}
