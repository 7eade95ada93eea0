// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Before a test is done again: how throttle and engine are now, and into which session it goes.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId
    required property string test
    property int cylinder: 0
    property bool other: false

    signal go(name: string, args: var)
    // Several pages at one go, the last one on top.
    signal goOn(places: var)

    title: qsTr("Before you test")
    subtitle: viewModel.engineName + " · " + viewModel.title

    AgainModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
        test: page.test
        cylinder: page.cylinder
        other: page.other
        onStarted: session => page.goOn([
                {
                    name: "Session",
                    args: {
                        sessionId: session
                    }
                },
                {
                    name: "Pad",
                    args: {
                        sessionId: session,
                        test: page.test,
                        cylinder: page.cylinder
                    }
                }
            ])
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Theme.gap

        LText {
            width: parent.width
            visible: viewModel.asksThrottle || viewModel.asksHeat
            role: "heading"
            text: qsTr("How is the engine now?")
        }

        CheckRow {
            objectName: "throttleOpen"
            width: parent.width
            visible: viewModel.asksThrottle
            text: qsTr("Throttle held wide open")
            detail: viewModel.throttleBefore
            checked: viewModel.throttleOpen
            onClicked: viewModel.throttleOpen = !viewModel.throttleOpen
        }

        CheckRow {
            objectName: "warm"
            width: parent.width
            visible: viewModel.asksHeat
            text: qsTr("Engine warm")
            detail: viewModel.heatBefore
            checked: viewModel.warm
            onClicked: viewModel.warm = !viewModel.warm
        }

        LText {
            width: parent.width
            text: viewModel.why
        }

        SideButton {
            objectName: "howTo"
            width: parent.width
            text: qsTr("How to")
            onClicked: page.go("HowToCard", {
                card: page.test
            })
        }
    }

    actions: BigButton {
        objectName: "start"
        text: viewModel.startText
        onClicked: viewModel.start()
    }
}
