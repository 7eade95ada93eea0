// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Templates as T
import Lapwing.Theme

// The box of a typed line. `lead` keeps room at its end for a unit.
T.TextField {
    id: field

    property bool questioned: false
    property real trailingRoom: 0

    implicitHeight: Math.max(Theme.secondaryTarget, contentHeight + topPadding + bottomPadding)
    leftPadding: mirroredWriting ? 14 + trailingRoom : 14
    rightPadding: mirroredWriting ? 14 : 14 + trailingRoom
    topPadding: Theme.space
    bottomPadding: Theme.space
    color: Theme.ink
    selectionColor: Theme.info
    selectedTextColor: Theme.ground
    font.family: Theme.family
    font.pixelSize: Theme.textSize(18)
    verticalAlignment: TextInput.AlignVCenter
    selectByMouse: true
    Accessible.name: Accessible.description
    Accessible.ignored: Theme.isBehind(field)

    readonly property bool mirroredWriting: Theme.rightToLeft

    background: Rectangle {
        radius: Theme.corner
        color: Theme.key
        border.width: field.activeFocus ? 3 : field.questioned ? Theme.outline : 0
        border.color: field.activeFocus ? Theme.info : Theme.fault
    }

    LText {
        visible: field.text === "" && field.preeditText === ""
        silent: true
        text: field.placeholderText
        color: Theme.quietInk
        font.pixelSize: field.font.pixelSize
        x: field.leftPadding
        width: field.width - field.leftPadding - field.rightPadding
        // A text that shrinks to fit keeps the height of its full size: it has to be told to stay in the middle.
        height: field.height
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.NoWrap
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Math.min(field.font.pixelSize, 18)
        elide: Text.ElideRight
    }
}
