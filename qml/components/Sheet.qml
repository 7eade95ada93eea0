// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Templates as T
import Lapwing.Theme

// A sheet that comes up from the bottom over the page: title, scrolling content, close, and `actions` under the
// thumb. open() and close(); Escape, the back key and a touch outside close it too.
T.Popup {
    id: sheet

    default property alias content: column.content
    property alias actions: bar.data
    property string title
    // Something was typed that closing would lose: a touch beside the sheet, easily a slip, doesn't close it then.
    property bool unfinished: false
    // While it is open it does not shrink: what a finger aims at stays where it is when a line folds away.
    property real tallest: 0
    // How far it still has to come up. Not y itself: the height may change while it comes.
    property real below: 0

    // Whether there is nothing below what is seen of it.
    readonly property bool atEnd: column.contentY + column.height >= column.contentHeight - 1

    // Most of what is seen scrolls away: a line or two stay to go on from.
    function readOn() {
        column.contentY = Math.max(0, Math.min(column.contentHeight - column.height, column.contentY + Math.max(Theme.minorTarget, 0.8 * column.height)));
    }

    // Brings something in the sheet into sight: what was refused must not stand below the edge.
    function reveal(item: Item) {
        revealing.item = item;
        revealing.start();
    }

    parent: T.Overlay.overlay
    width: parent ? Math.min(parent.width, 600) : 0
    height: parent ? Math.min(parent.height - Theme.minorTarget, Math.max(tallest, implicitHeight)) : 0
    x: parent ? (parent.width - width) / 2 : 0
    y: parent ? parent.height - height + below : 0
    implicitHeight: topPadding + bottomPadding + head.height + column.contentHeight + (bar.implicitHeight > 0 ? bar.implicitHeight + Theme.gap : 0) + Theme.space
    modal: true
    focus: true
    padding: Theme.gap
    closePolicy: unfinished ? T.Popup.CloseOnEscape : T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside

    onOpened: tallest = implicitHeight
    onClosed: tallest = 0
    onWidthChanged: tallest = 0
    onImplicitHeightChanged: tallest = opened ? Math.max(tallest, implicitHeight) : 0

    T.Overlay.modal: Rectangle {
        color: Theme.scrim
    }

    background: Rectangle {
        color: Theme.ground
        radius: Theme.corner + 2
        border.width: 1
        border.color: Theme.key
    }

    contentItem: frame

    readonly property Item frame: FocusScope {
        focus: true
        LayoutMirroring.enabled: Theme.rightToLeft
        LayoutMirroring.childrenInherit: true
        Accessible.role: Accessible.Dialog
        Accessible.name: sheet.title

        // Once it has its place: a sentence that comes up under a field makes it taller first.
        Timer {
            id: revealing

            property Item item

            interval: 50
            onTriggered: column.reveal(item)
        }

        Item {
            id: head

            anchors.left: parent.left
            anchors.right: parent.right
            height: Math.max(Theme.secondaryTarget, heading.height)

            WordMetrics {
                id: metrics
            }

            // No word breaks in its middle while smaller letters keep it whole.
            LText {
                id: heading

                objectName: "sheetTitle"
                role: "title"
                text: sheet.title
                font.pixelSize: Math.max(Theme.bodySize, metrics.fitting(sheet.title, Theme.titleSize, width))
                anchors.left: parent.left
                anchors.right: closer.left
                anchors.verticalCenter: parent.verticalCenter
            }

            BackButton {
                id: closer

                objectName: "close"
                symbol: "close"
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                onClicked: sheet.close()
            }
        }

        ScrollColumn {
            id: column

            anchors.top: head.bottom
            anchors.topMargin: Theme.space
            anchors.bottom: bar.top
            anchors.bottomMargin: bar.height > 0 ? Theme.gap : 0
            anchors.left: parent.left
            anchors.right: parent.right
        }

        ActionBar {
            id: bar

            height: implicitHeight
            anchors.bottom: parent.bottom
            anchors.left: parent.left
            anchors.right: parent.right
        }
    }

    enter: Transition {
        NumberAnimation {
            target: sheet
            property: "below"
            from: sheet.height
            to: 0
            duration: Theme.motion
            easing.type: Easing.OutCubic
        }
    }
}
