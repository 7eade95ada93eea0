// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A column that scrolls when it is too long, and follows the keyboard focus. Children take
// `width: parent.width`.
Flickable {
    id: flick

    default property alias content: column.data
    property alias spacing: column.spacing

    readonly property Item focused: Window.activeFocusItem

    function reveal(item: Item) {
        const top = item.mapToItem(column, 0, 0).y;
        const bottom = top + item.height;
        if (top < contentY)
            contentY = Math.max(0, top - Theme.space);
        else if (bottom > contentY + height)
            contentY = Math.min(Math.max(0, contentHeight - height), bottom - height + Theme.space);
    }

    // With its beginning at the top, as far as the column reaches.
    function show(item: Item) {
        if (item)
            contentY = Math.max(0, Math.min(contentHeight - height, item.mapToItem(column, 0, 0).y));
    }

    function contains(item: Item): bool {
        for (let up = item; up; up = up.parent)
            if (up === column)
                return true;
        return false;
    }

    // Keeps that item where it stands on the screen while the column above it changes, until a finger moves it.
    property Item pinned: null
    property real pinnedAt: 0

    function pin(item: Item) {
        pinnedAt = item.mapToItem(flick, 0, 0).y;
        pinned = item;
    }

    function hold() {
        if (pinned)
            contentY = Math.max(0, Math.min(contentHeight - height, pinned.mapToItem(column, 0, 0).y - pinnedAt));
    }

    onMovementStarted: pinned = null
    onContentHeightChanged: hold()

    contentWidth: width
    contentHeight: column.height
    implicitWidth: column.implicitWidth
    implicitHeight: column.height
    // At its end it stands still, and takes the finger all the same: a swipe is no touch of what lies under it.
    boundsBehavior: Flickable.DragOverBounds
    boundsMovement: Flickable.StopAtBounds
    clip: contentHeight > height
    onFocusedChanged: if (focused && contains(focused))
        reveal(focused)

    Column {
        id: column

        width: flick.width
        spacing: Theme.space
    }

    Rectangle {
        parent: flick
        visible: flick.contentHeight > flick.height
        anchors.right: parent.right
        anchors.rightMargin: -6
        width: 3
        radius: 1.5
        color: Theme.quietInk
        opacity: 0.6
        y: flick.visibleArea.yPosition * flick.height
        height: flick.visibleArea.heightRatio * flick.height
    }
}
