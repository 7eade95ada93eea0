// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// How the app is held and pressed.
Column {
    id: hands

    required property AppSettings settings
    property bool hapticsOffered: false

    // A phone lying down that is this low gives its digits all its height already; a small one standing has none left
    // beside large text.
    readonly property bool roomForKeys: Window.width > Window.height ? Window.height >= 340 : !Theme.isCrowded(Window.width, Window.height)

    spacing: Theme.space

    SwitchRow {
        objectName: "leftHand"
        width: parent.width
        text: qsTr("Left hand")
        detail: qsTr("The amber button comes under the left thumb.")
        checked: hands.settings.leftHand
        onClicked: hands.settings.leftHand = checked
    }

    SwitchRow {
        objectName: "bigKeys"
        width: parent.width
        text: qsTr("Big keys")
        detail: hands.roomForKeys ? qsTr("The pad's keys grow for thick gloves.") : qsTr("The pad's keys grow for thick gloves. This screen has no room for more.")
        checked: hands.settings.bigKeys
        onClicked: hands.settings.bigKeys = checked
    }

    SwitchRow {
        objectName: "haptics"
        width: parent.width
        visible: hands.hapticsOffered
        text: qsTr("Tick on a key")
        checked: hands.settings.haptics
        onClicked: hands.settings.haptics = checked
    }

    SwitchRow {
        objectName: "volumeKeeps"
        width: parent.width
        text: qsTr("Volume key keeps")
        detail: qsTr("Keeps a reading without a look at the screen.")
        checked: hands.settings.volumeKeeps
        onClicked: hands.settings.volumeKeeps = checked
    }
}
