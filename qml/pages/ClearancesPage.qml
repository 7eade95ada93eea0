// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Valve clearances, valve by valve: digits and one touch each.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId
    property int cylinder: 0

    readonly property bool lying: width > height && height < 640
    readonly property bool tight: !lying && height < 700

    // No room for more than the figure itself: its lines scroll with what stands above.
    readonly property bool bare: tight || lying && Theme.textScale > 1.3

    readonly property bool ownUndo: true

    signal go(name: string, args: var)

    corner: UndoCorner {
        app: page.app
    }

    title: qsTr("Clearances")
    subtitle: tight ? "" : viewModel.lastKept !== "" ? viewModel.lastKept : viewModel.engineName
    focus: true

    ClearancesModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
        onFinished: page.back()
        Component.onCompleted: if (page.cylinder > 0)
            choose(Array.from(cylinders).findIndex(item => item.number === page.cylinder))
    }

    Keys.onPressed: event => {
        const volume = event.key === Qt.Key_VolumeUp || event.key === Qt.Key_VolumeDown;
        if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter || volume && page.app.settings.volumeKeeps) {
            if (!event.isAutoRepeat)
                viewModel.keep();
            event.accepted = true;
        } else {
            event.accepted = pad.takeKey(event);
        }
    }
    Component.onCompleted: page.app.keepAwake(true)
    Component.onDestruction: page.app.keepAwake(false)

    ScrollColumn {
        id: above

        anchors.top: parent.top
        anchors.left: parent.left
        anchors.right: page.lying ? pad.left : parent.right
        anchors.rightMargin: page.lying ? Theme.gap : 0
        anchors.bottom: figure.top
        anchors.bottomMargin: Theme.space

        CylinderRail {
            visible: viewModel.cylinders.length > 1
            width: parent.width
            height: visible ? implicitHeight : 0
            cylinders: viewModel.cylinders
            current: viewModel.currentIndex
            tileHeight: page.tight || page.lying ? Theme.minorTarget : Theme.secondaryTarget
            onChosen: index => viewModel.choose(index)
        }

        Flow {
            id: valves

            width: parent.width
            spacing: Theme.space

            Repeater {
                model: viewModel.valves

                SideButton {
                    required property var modelData
                    required property int index

                    objectName: "valve_" + index
                    width: (valves.width - (Math.min(4, viewModel.valves.length) - 1) * Theme.space) / Math.min(4, viewModel.valves.length)
                    chosen: index === viewModel.valveIndex
                    text: modelData.value === "" || page.tight ? modelData.label : modelData.label + "\n" + modelData.value
                    horizontalPadding: 4
                    onClicked: viewModel.chooseValve(index)
                }
            }
        }

        FieldTabs {
            width: parent.width
            fields: viewModel.fields
            current: viewModel.field
            onChosen: key => viewModel.focusField(key)
        }

        Repeater {
            model: page.bare ? viewModel.lines.length : 0

            InfoLine {
                required property int index
                readonly property var line: viewModel.lines[index] ?? {}

                width: parent.width
                mark: line.mark ?? ""
                symbol: line.symbol ?? ""
                figure: line.figure ?? ""
                text: line.text ?? ""
                explained: false
            }
        }
    }

    ReadoutField {
        id: figure

        objectName: "readout"
        anchors.left: above.left
        anchors.right: above.right
        anchors.bottom: page.lying ? parent.bottom : pad.top
        anchors.bottomMargin: page.lying ? buttons.height + 2 * Theme.space : Theme.space
        caption: page.bare ? "" : viewModel.caption
        value: viewModel.typed
        placeholder: viewModel.placeholder
        unit: viewModel.unit
        caret: true
        lines: page.bare ? [] : viewModel.lines
        linesShown: 1
    }

    NumberPad {
        id: pad

        objectName: "pad"
        width: page.lying ? Math.min(parent.width * 0.46, 420) : parent.width
        height: Math.min(4 * keyHeight + 3 * spacing, parent.height - anchors.bottomMargin)
        keyHeight: Theme.padKeyHeight(page.width, page.height)
        anchors.bottom: parent.bottom
        anchors.bottomMargin: page.lying ? Theme.space : 0
        anchors.right: parent.right
        onKey: character => viewModel.press(character)
        onBackspace: viewModel.backspace()
        onCleared: viewModel.clear()
        onHaptic: page.app.tick()
    }

    // Lying down the buttons stand beside the digits, so that the digits get the height.
    ActionBar {
        id: buttons

        parent: page.lying ? page.body : page
        height: implicitHeight
        x: page.lying ? 0 : Theme.gap
        y: page.lying ? page.body.height - Theme.space - height : page.height - Theme.gap - height
        width: page.lying ? above.width : page.width - 2 * Theme.gap

        IconWord {
            objectName: "unit"
            symbol: "swap"
            text: viewModel.unit === "mm" ? qsTr("thou") : qsTr("mm")
            onClicked: viewModel.switchUnit()
        }

        BigButton {
            objectName: "keep"
            text: viewModel.keepText
            onClicked: viewModel.keep()
        }
    }

    // Room for the buttons when they lie under the pad.
    actions: Item {
        visible: !page.lying
        implicitHeight: buttons.implicitHeight
        implicitWidth: 1
    }
}
