// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Stands in for the app when its library can't be opened: what is wrong, where, and what to do about it.
Window {
    id: window

    required property string message
    required property bool dark
    required property real textScale

    width: 412
    height: 915
    minimumWidth: 320
    minimumHeight: 320
    visible: true
    title: qsTr("Lapwing")
    color: Theme.ground

    Binding {
        target: Theme
        property: "dark"
        value: window.dark
    }

    Binding {
        target: Theme
        property: "textScale"
        value: window.textScale
    }

    AppPage {
        anchors.fill: parent
        title: qsTr("Lapwing")
        backVisible: false

        ScrollColumn {
            anchors.fill: parent

            ErrorCard {
                objectName: "trouble"
                width: parent.width
                heading: qsTr("The library can't be opened")
                message: window.message
            }
        }

        actions: BigButton {
            objectName: "close"
            text: qsTr("Close Lapwing")
            onClicked: Qt.quit()
        }
    }
}
