// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A message that stays 8 s or until the next one replaces it, with what it offers: "undo", or "redo" of what was
// undone. The app places it over a page's title, where it covers nothing that is worked on, and calls show().
Rectangle {
    id: snack

    property string message
    property string offer
    property int stay: 8000
    readonly property alias running: timer.running
    // Large text on a narrow screen: beside the button no word would have room.
    readonly property bool stacked: button.visible && button.implicitWidth > 0.45 * width

    signal undo
    signal redo
    signal gone

    function show(text: string, offered: string) {
        message = text;
        offer = offered;
        visible = true;
        timer.restart();
    }

    function hide() {
        if (!visible)
            return;
        timer.stop();
        visible = false;
        gone();
    }

    visible: false
    implicitHeight: stacked ? words.height + button.implicitHeight + 2 * Theme.space + 2 : Math.max(button.implicitHeight + 4, words.height + 2 * Theme.space)
    radius: Theme.corner
    color: Theme.ink

    Accessible.role: Accessible.AlertMessage
    Accessible.name: message
    Accessible.ignored: !visible

    // What lies under it is not touched through it: a touch, or a swipe that begins on it, puts it away.
    MouseArea {
        objectName: "putAway"
        anchors.fill: parent
        onReleased: snack.hide()
        onCanceled: snack.hide()
    }

    Timer {
        id: timer

        interval: snack.stay
        onTriggered: snack.hide()
    }

    LText {
        id: words

        silent: true
        text: snack.message
        color: Theme.ground
        // It stands where a page's head does.
        font.pixelSize: Theme.frameSize(16, Theme.isCrowded(snack.Window.width, snack.Window.height))
        anchors.left: parent.left
        anchors.leftMargin: 14
        anchors.right: button.visible && !snack.stacked ? button.left : parent.right
        anchors.rightMargin: Theme.space
        y: snack.stacked ? Theme.space : (parent.height - height) / 2
    }

    SideButton {
        id: button

        objectName: snack.offer === "redo" ? "redo" : "undo"
        targetKind: "minor"
        visible: snack.offer !== ""
        width: Math.min(implicitWidth, snack.width - 4)
        text: snack.offer === "redo" ? qsTr("Redo") : qsTr("Undo")
        anchors.right: parent.right
        anchors.rightMargin: 2
        y: snack.stacked ? parent.height - height - 2 : (parent.height - height) / 2
        onClicked: {
            const again = snack.offer === "redo";
            snack.hide();
            if (again)
                snack.redo();
            else
                snack.undo();
        }
    }
}
