// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Who writes here, and whether they want to judge before the app does.
Column {
    id: person

    required property AppSettings settings

    spacing: Theme.space

    TextRow {
        objectName: "author"
        width: parent.width
        label: qsTr("Your name")
        hint: qsTr("It stands beside the notes that you write, in session files too.")
        text: person.settings.author
        maximumLength: 80
        onEdited: text => person.settings.author = text
    }

    SwitchRow {
        objectName: "callFirst"
        width: parent.width
        text: qsTr("My call before the findings")
        detail: qsTr("To learn: say where each cylinder leaks before the app does. What was committed stands.")
        checked: person.settings.callFirst
        onClicked: person.settings.callFirst = checked
    }
}
