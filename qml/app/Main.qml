// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme
import Lapwing.ViewModels

Window {
    id: window

    required property AppContext app
    required property LookModel look
    property var greetings: []
    // Their names: a place that was kept by another version may name none of them.
    property var pages: []

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
        value: window.look.dark
    }

    Binding {
        target: Theme
        property: "textScale"
        value: window.look.textScale
    }

    Binding {
        target: Theme
        property: "reducedMotion"
        value: window.look.reducedMotion
    }

    Binding {
        target: Theme
        property: "leftHand"
        value: window.app.settings.leftHand
    }

    Connections {
        target: window.app

        // At the start the theme has looked itself.
        function onLanguageChanged() {
            Theme.rightToLeft = Qt.locale().textDirection === Qt.RightToLeft;
        }
    }

    Binding {
        target: Theme
        property: "bigKeys"
        value: window.app.settings.bigKeys
    }

    Shell {
        id: shell

        objectName: "shell"
        anchors.fill: parent
        app: window.app
        pages: window.pages
        focus: true
        Component.onCompleted: if (window.greetings.length > 0)
            shell.tell(window.greetings.join("\n\n"))
    }

    // The system's back closes one page, and the window only from the first one.
    onClosing: close => {
        if (Qt.platform.os === "android" && (shell.locked || shell.depth > 1)) {
            close.accepted = false;
            if (!shell.locked)
                shell.leave();
        }
    }
}
