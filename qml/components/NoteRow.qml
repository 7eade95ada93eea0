// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Templates as T
import Lapwing.Theme

// A labelled note of several lines. edited(text) with every key, finished(text) when it is left.
Column {
    id: row

    property string label
    property string text
    property string placeholder
    property alias readOnly: area.readOnly
    readonly property alias field: area

    signal edited(string text)
    signal finished(string text)

    spacing: Theme.space / 2
    onTextChanged: if (area.text !== text)
        area.text = text

    LText {
        width: parent.width
        visible: text !== ""
        role: "label"
        text: row.label
    }

    T.TextArea {
        id: area

        property string targetKind: "secondary"

        objectName: "field"
        width: parent.width
        implicitHeight: Math.max(2 * Theme.minorTarget, contentHeight + topPadding + bottomPadding)
        padding: Theme.gap
        color: Theme.ink
        selectionColor: Theme.info
        selectedTextColor: Theme.ground
        font.family: Theme.family
        font.pixelSize: Theme.bodySize
        wrapMode: TextEdit.Wrap
        // A finger that drags in it scrolls the page, a mouse selects.
        selectByMouse: mouse.hovered
        KeyNavigation.priority: KeyNavigation.BeforeItem
        KeyNavigation.tab: nextItemInFocusChain(true)
        Accessible.name: row.label
        Accessible.ignored: Theme.isBehind(area)
        onTextChanged: if (activeFocus && text !== row.text)
            row.edited(text)
        onEditingFinished: row.finished(text)
        Component.onCompleted: text = row.text

        HoverHandler {
            id: mouse

            acceptedDevices: PointerDevice.Mouse | PointerDevice.TouchPad
        }

        background: Rectangle {
            radius: Theme.corner
            color: Theme.key
            border.width: area.activeFocus ? 3 : 0
            border.color: Theme.info
        }

        LText {
            visible: area.text === "" && area.preeditText === ""
            silent: true
            text: row.placeholder
            color: Theme.quietInk
            x: area.leftPadding
            y: area.topPadding
            width: parent.width - 2 * x
        }
    }
}
