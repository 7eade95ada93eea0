// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// The row of fields of a cranking test: `fields` is a list of {key, label, value, stepper?}. A touch moves the focus:
// chosen(key); a field with `stepper` has - and +: stepped(key, by).
Flow {
    id: tabs

    property var fields: []
    property string current

    // Where every dp counts.
    property bool low: false

    readonly property real stepWidth: Theme.minorTarget
    readonly property int withoutStepper: fields.filter(field => !field.stepper).length
    readonly property real besideStepper: (width - spacing * (fields.length - 1) - stepperWidth * (fields.length - withoutStepper)) / Math.max(1, withoutStepper)
    readonly property bool narrow: withoutStepper < fields.length && besideStepper < Theme.minorTarget * Math.max(1, Theme.textScale * 0.9)
    // The stepper gets a line of its own when it would leave the others too little; where there is no room for a line
    // either, it is a field like the others: its digits come from the pad.
    readonly property bool stepless: narrow && low && (width - spacing * (fields.length - 1)) / fields.length >= Theme.minorTarget
    readonly property bool broken: narrow && !stepless
    readonly property int plain: stepless ? fields.length : withoutStepper
    readonly property real plainWidth: stepless ? (width - spacing * (fields.length - 1)) / fields.length : besideStepper
    readonly property real stepperWidth: 2 * (stepWidth + spacing) + 72 * Theme.textScale

    signal chosen(string key)
    signal stepped(string key, int by)

    spacing: Theme.space

    Repeater {
        // By count: the tabs stay when only what they show changes.
        model: tabs.fields.length

        Row {
            id: tab

            required property int index
            readonly property var modelData: tabs.fields[index] ?? {}
            readonly property bool stepper: !tabs.stepless && (modelData.stepper ?? false)
            readonly property real fullWidth: tabs.broken ? (stepper ? tabs.width : (tabs.width - tabs.spacing * (tabs.plain - 1)) / tabs.plain) : stepper ? tabs.stepperWidth : tabs.plainWidth

            spacing: tabs.spacing

            StepKey {
                visible: tab.stepper
                objectName: "minus_" + tab.modelData.key
                width: tabs.stepWidth
                height: middle.height
                symbol: "minus"
                text: qsTr("%1: one less").arg(tab.modelData.label)
                onClicked: tabs.stepped(tab.modelData.key, -1)
            }

            Pressable {
                id: middle

                objectName: "tab_" + tab.modelData.key
                width: tab.fullWidth - (tab.stepper ? 2 * (tabs.stepWidth + tabs.spacing) : 0)
                targetKind: tabs.low ? "minor" : "secondary"
                horizontalPadding: 2
                padding: 4
                text: tab.modelData.label + " " + (tab.modelData.value ?? "")
                fill: tab.modelData.key === tabs.current ? Theme.chosen : Theme.panel
                outlineColor: tab.modelData.key === tabs.current ? Theme.info : Theme.hairline
                Accessible.role: Accessible.PageTab
                Accessible.selected: tab.modelData.key === tabs.current
                onClicked: tabs.chosen(tab.modelData.key)

                inside: Column {
                    LText {
                        width: parent.width
                        role: "label"
                        silent: true
                        text: tab.modelData.label ?? ""
                        horizontalAlignment: Text.AlignHCenter
                        wrapMode: Text.NoWrap
                        fontSizeMode: Text.HorizontalFit
                        minimumPixelSize: 12
                        elide: Text.ElideRight
                    }

                    LText {
                        width: parent.width
                        role: tabs.low ? "label" : "heading"
                        font.bold: true
                        color: Theme.ink
                        silent: true
                        text: tab.modelData.value ? tab.modelData.value : "–"
                        horizontalAlignment: Text.AlignHCenter
                        fontSizeMode: Text.HorizontalFit
                        minimumPixelSize: 12
                        wrapMode: Text.NoWrap
                    }
                }
            }

            StepKey {
                visible: tab.stepper
                objectName: "plus_" + tab.modelData.key
                width: tabs.stepWidth
                height: middle.height
                symbol: "plus"
                text: qsTr("%1: one more").arg(tab.modelData.label)
                onClicked: tabs.stepped(tab.modelData.key, 1)
            }
        }
    }
}
