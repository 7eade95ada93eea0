// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The pad: digits and one touch a cylinder. Upright the digits lie under the readout; lying down, beside it.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId
    required property string test
    property int cylinder: 0

    readonly property bool lying: width > height && height < 640
    readonly property bool tight: !lying && height < 700
    readonly property real keyHeight: Theme.padKeyHeight(width, height)

    readonly property bool crowded: (tight || lying) && Theme.textScale > 1.3

    readonly property bool ownUndo: true

    signal go(name: string, args: var)

    function showNextTdc() {
        go("NextTdc", {
            sessionId: sessionId,
            cylinder: viewModel.cylinder
        });
    }

    corner: UndoCorner {
        app: page.app
    }

    // Small screens have one line for both.
    title: tight && viewModel.lastKept !== "" ? viewModel.lastKept : viewModel.title
    subtitle: tight ? "" : viewModel.lastKept !== "" ? viewModel.lastKept : viewModel.subtitle
    focus: true

    PadModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
        test: page.test
        Component.onCompleted: if (page.cylinder > 0)
            chooseCylinder(page.cylinder)
        onListenTo: cylinder => page.go("LeakHunt", {
            sessionId: page.sessionId,
            cylinder: cylinder
        })
        onFinished: page.back()
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

    PadReadout {
        id: readout

        model: viewModel
        tight: page.tight
        lying: page.lying
        crowded: page.crowded
        turns: page.test === "leak-down"
        anchors.top: parent.top
        anchors.left: page.lying && Theme.leftHand ? pad.right : parent.left
        anchors.leftMargin: page.lying && Theme.leftHand ? Theme.gap : 0
        anchors.right: page.lying && !Theme.leftHand ? pad.left : parent.right
        anchors.rightMargin: page.lying && !Theme.leftHand ? Theme.gap : 0
        anchors.bottom: page.lying ? parent.bottom : pad.top
        anchors.bottomMargin: page.lying ? (buttons.height + 3 * Theme.space) : Theme.space
        onDerivationAsked: line => derivation.show(line)
        onMoreAsked: more.active = true
        onNextTdcAsked: page.showNextTdc()
    }

    NumberPad {
        id: pad

        objectName: "pad"
        visible: !viewModel.refused
        width: page.lying ? Math.min(parent.width * 0.46, 420) : parent.width
        height: Math.min(4 * page.keyHeight + 3 * spacing, parent.height - anchors.bottomMargin)
        keyHeight: page.keyHeight
        decimalMark: Qt.locale().decimalPoint
        decimalEnabled: viewModel.decimals
        anchors.bottom: parent.bottom
        anchors.bottomMargin: page.lying ? Theme.space : 0
        anchors.right: page.lying && Theme.leftHand ? undefined : parent.right
        anchors.left: page.lying && Theme.leftHand ? parent.left : undefined
        onKey: character => viewModel.press(character)
        onBackspace: viewModel.backspace()
        onCleared: viewModel.clear()
        onHaptic: page.app.tick()
    }

    // Lying down the buttons stand beside the digits, so that the digits get the height.
    ActionBar {
        id: buttons

        parent: page.lying ? page.body : page
        visible: !viewModel.refused
        height: implicitHeight
        x: page.lying ? readout.x : Theme.gap
        y: page.lying ? page.body.height - Theme.space - height : page.height - Theme.gap - height
        width: page.lying ? readout.width : page.width - 2 * Theme.gap

        IconWord {
            objectName: "more"
            visible: !page.crowded
            symbol: "more"
            text: qsTr("More")
            onClicked: more.active = true
        }

        IconWord {
            objectName: "nextTdc"
            visible: page.test === "leak-down" && !page.crowded
            symbol: "turn"
            text: qsTr("Next TDC")
            onClicked: page.showNextTdc()
        }

        BigButton {
            objectName: "keep"
            text: viewModel.keepText
            onClicked: viewModel.keep()
        }
    }

    // Room for the buttons when they lie under the pad.
    actions: Item {
        visible: !page.lying && !viewModel.refused
        implicitHeight: buttons.implicitHeight
        implicitWidth: 1
    }

    ErrorCard {
        visible: viewModel.refused
        width: parent.width
        anchors.verticalCenter: parent.verticalCenter
        heading: qsTr("No wet test on a diesel")
        message: qsTr("Oil does not compress. In a diesel's small chamber it can lock the engine and bend a rod. Use leak-down instead.")
        action: qsTr("Back to the session")
        onActed: page.back()
    }

    Loader {
        id: more

        active: false
        sourceComponent: PadMoreSheet {
            model: readout.model
            onClosed: more.active = false
            Component.onCompleted: open()
        }
    }

    Loader {
        id: derivation

        property int line: 0

        function show(index: int) {
            line = index;
            active = true;
        }

        active: false
        sourceComponent: DerivationSheet {
            steps: viewModel.derivation(derivation.line)
            onClosed: derivation.active = false
            Component.onCompleted: open()
        }
    }

    CautionGate {
        app: page.app
        sessionId: page.sessionId
        place: page.test
        cautions: viewModel.cautions
    }
}
