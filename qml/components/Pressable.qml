// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Templates as T
import Lapwing.Theme

// What everything that can be pressed has in common: keyboard, screen reader, focus ring, a least height.
// `targetKind` ("primary", "secondary" or "minor") says which least height a test holds it to.
T.AbstractButton {
    id: control

    property string targetKind: "secondary"
    property color fill: Theme.key
    property color fillPressed: Theme.keyPressed
    property color outlineColor: "transparent"
    property real corner: Theme.corner
    // Whether it takes a share of the room in an ActionBar.
    property bool stretch: true
    // Return presses it as soon as it has the focus, however that came: the one answer of a sheet.
    property bool answersReturn: false
    // What the control shows. (Not contentItem: that one is made late, so nothing in it could bear an id.)
    property Item inside: null

    readonly property int leastHeight: targetKind === "primary" ? Theme.primaryTarget : targetKind === "secondary" ? Theme.secondaryTarget : Theme.minorTarget

    // What a touch does, for the keyboard and the screen reader.
    function activate() {
        if (checkable) {
            toggle();
            toggled();
        }
        clicked();
    }

    implicitWidth: Math.max(leastHeight, implicitContentWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(leastHeight, implicitContentHeight + topPadding + bottomPadding)
    padding: Theme.space
    horizontalPadding: 2 * Theme.space
    focusPolicy: Qt.StrongFocus

    contentItem: inside

    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.ignored: Theme.isBehind(control)
    // Who is read to goes on from here, as by keyboard.
    Accessible.onPressAction: {
        control.forceActiveFocus(Qt.TabFocusReason);
        control.activate();
    }

    // A touch leaves the focus here too, but not the sign of it: then the key is the page's, which keeps a reading.
    function takeReturn(event: var) {
        event.accepted = visualFocus || answersReturn;
        if (event.accepted)
            activate();
    }

    Keys.onReturnPressed: event => takeReturn(event)
    Keys.onEnterPressed: event => takeReturn(event)

    background: Rectangle {
        radius: control.corner
        color: control.down ? control.fillPressed : control.fill
        border.width: control.visualFocus ? 3 : Theme.outline
        border.color: control.visualFocus ? Theme.info : control.outlineColor
        opacity: control.enabled ? 1 : 0.5
    }
}
