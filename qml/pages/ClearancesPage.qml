// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Valve clearances, valve by valve: digits and one touch each.
KeyedPage {
    id: page

    // The valve that a step asks for.
    property string side

    heading: qsTr("Clearances")
    about: viewModel.engineName
    keyed: viewModel

    ClearancesModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
    }

    Component.onCompleted: if (side !== "")
        viewModel.chooseSide(side)

    betweenWord: viewModel.valves[viewModel.valveIndex]?.label ?? ""
    betweenLong: viewModel.valves.length > 2
    betweenShort: viewModel.valves.length <= 2
    between: Flow {
        id: valves

        readonly property int across: Math.min(Theme.textScale > 1.3 ? 2 : 4, viewModel.valves.length)

        spacing: Theme.space

        Repeater {
            model: viewModel.valves

            SideButton {
                required property var modelData
                required property int index

                objectName: "valve_" + index
                width: (valves.width - (valves.across - 1) * Theme.space) / valves.across
                chosen: index === viewModel.valveIndex
                text: modelData.value === "" || page.tight ? modelData.label : modelData.label + "\n" + modelData.value
                horizontalPadding: 4
                // Two lines of words in a low button.
                padding: page.tight ? 4 : Theme.space
                targetKind: page.tight ? "minor" : "secondary"
                onClicked: viewModel.chooseValve(index)
            }
        }
    }

    seldom: Column {
        spacing: Theme.space

        SideButton {
            objectName: "unit"
            width: parent.width
            text: viewModel.unit === "mm" ? qsTr("thou") : qsTr("mm")
            onClicked: {
                page.closeFold();
                viewModel.switchUnit();
            }
        }

        SideButton {
            objectName: "remove"
            visible: viewModel.deletable
            width: parent.width
            text: qsTr("Delete")
            onClicked: {
                page.closeFold();
                viewModel.remove();
            }
        }

        SideButton {
            objectName: "howTo"
            width: parent.width
            text: qsTr("How to")
            onClicked: {
                page.closeFold();
                page.go("HowToCard", {
                    card: "clearances"
                });
            }
        }
    }

    buttons: [
        IconWord {
            objectName: "unit"
            visible: !page.crowded
            symbol: "swap"
            text: viewModel.unit === "mm" ? qsTr("thou") : qsTr("mm")
            onClicked: viewModel.switchUnit()
        },
        // In the place of how to: on the valve that was measured it has been of use.
        IconWord {
            objectName: "remove"
            visible: viewModel.deletable && !page.crowded
            symbol: "bin"
            text: qsTr("Delete")
            onClicked: viewModel.remove()
        },
        IconWord {
            objectName: "howTo"
            visible: !viewModel.deletable && !page.crowded
            symbol: "question"
            text: qsTr("How to")
            onClicked: page.go("HowToCard", {
                card: "clearances"
            })
        },
        BigButton {
            objectName: "keep"
            text: viewModel.keepText
            roomFor: qsTr("Keep, next valve").length < qsTr("Keep all the same").length ? qsTr("Keep all the same") : qsTr("Keep, next valve")
            onClicked: viewModel.keep()
        }
    ]
}
