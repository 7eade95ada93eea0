// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A message that stays 8 s or until the next one replaces it, with Undo when it can be undone. The app places it over a
// page's title, where it covers nothing that is worked on, and calls show().
Rectangle {
    id: snack

    property string message
    property bool undoable: false
    property int stay: 8000
    readonly property alias running: timer.running
    // Large text on a narrow screen: beside the button no word would have room.
    readonly property bool stacked: button.visible && button.implicitWidth > 0.45 * width

    signal undo
    signal gone

    function show(text: string, canUndo: bool) {
        message = text;
        undoable = canUndo;
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

        objectName: "undo"
        targetKind: "minor"
        visible: snack.undoable
        text: qsTr("Undo")
        anchors.right: parent.right
        anchors.rightMargin: 2
        y: snack.stacked ? parent.height - height - 2 : (parent.height - height) / 2
        onClicked: {
            snack.hide();
            snack.undo();
        }
    }
}
