// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// The frame of a page: back, title and subtitle above, the page's own items in the middle, `actions` under the
// thumb. Children fill the middle themselves (anchors.fill: parent).
FocusScope {
    id: page

    default property alias content: body.data
    property alias actions: bar.data
    property alias corner: cornerItems.data
    property string title
    property string subtitle
    property bool backVisible: true
    // The subtitle has a figure in it, and a touch on the words asks where that comes from.
    property bool explained: false
    // Where the keyboard begins on a page that opens: at the first thing in here, instead of at the way back.
    property Item firstStop: null

    readonly property alias body: body
    readonly property bool compact: Theme.isCompact(width, height)
    readonly property int backTarget: compact ? Theme.minorTarget : Theme.secondaryTarget
    property int headLines: compact && width > height ? 2 : 4
    // Large text on a small screen: the head folds into a line each, and a touch on it shows it whole.
    readonly property bool headFolds: Theme.isCrowded(width, height)
    property bool headOpened: false
    readonly property int linesShown: headFolds && !headOpened ? 1 : headLines

    // Where something may lie over the title for a while without covering a button.
    readonly property real titleLeft: backVisible ? backTarget + Theme.space / 2 : Theme.space
    readonly property real titleRight: cornerItems.width > 0 ? cornerItems.width + Theme.space : Theme.space / 2

    signal back
    signal explain

    LayoutMirroring.enabled: Theme.rightToLeft
    LayoutMirroring.childrenInherit: true

    Accessible.role: Accessible.Pane
    Accessible.name: title
    Accessible.ignored: Theme.isBehind(page)

    Keys.onEscapePressed: event => {
        event.accepted = backVisible;
        if (backVisible)
            back();
    }
    Keys.onBackPressed: event => {
        event.accepted = backVisible;
        if (backVisible)
            back();
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.ground
    }

    Item {
        id: header

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.margins: Theme.space / 2
        // The button stands at the top, so that its neighbour below keeps its distance.
        height: Math.max(page.backTarget, words.height, cornerItems.height) + Theme.space

        Loader {
            id: backButton

            active: page.backVisible
            width: active ? page.backTarget : Theme.space
            anchors.left: parent.left
            anchors.top: parent.top
            sourceComponent: BackButton {
                targetKind: page.compact ? "minor" : "secondary"
                onClicked: page.back()
            }
        }

        Column {
            id: words

            anchors.left: backButton.right
            anchors.right: cornerItems.left
            anchors.rightMargin: Theme.space
            anchors.verticalCenter: parent.verticalCenter

            LText {
                readonly property bool preview: page.headFolds

                role: "title"
                text: page.title
                width: parent.width
                font.pixelSize: Theme.frameSize(20, page.headFolds)
                // A long word in one line rather gets smaller than loses its end.
                fontSizeMode: page.headLines === 1 ? Text.HorizontalFit : Text.FixedSize
                minimumPixelSize: 15
                maximumLineCount: page.linesShown
                elide: Text.ElideRight
            }

            LText {
                readonly property bool preview: page.headFolds

                role: "label"
                text: page.subtitle
                visible: text !== ""
                width: parent.width
                font.pixelSize: Theme.frameSize(14, page.headFolds)
                font.underline: page.explained
                fontSizeMode: page.headLines === 1 ? Text.HorizontalFit : Text.FixedSize
                minimumPixelSize: Math.round(0.85 * font.pixelSize)
                maximumLineCount: page.linesShown
                elide: Text.ElideRight
            }
        }

        Pressable {
            objectName: "explainHead"
            visible: page.explained && (!page.headFolds || page.headOpened)
            targetKind: "minor"
            fill: "transparent"
            // As far from the way back and from the page's first row as neighbours are.
            anchors.left: words.left
            anchors.leftMargin: Theme.space
            anchors.right: words.right
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.space
            height: Math.max(Theme.minorTarget, parent.height - 2 * Theme.space)
            text: page.subtitle
            Accessible.description: qsTr("Where does this come from?")
            onClicked: page.explain()
        }

        TapHandler {
            enabled: page.headFolds && !(page.explained && page.headOpened)
            onTapped: page.headOpened = !page.headOpened
        }

        Row {
            id: cornerItems

            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            spacing: Theme.space
        }
    }

    Item {
        id: body

        anchors.top: header.bottom
        anchors.bottom: bar.top
        anchors.bottomMargin: bar.height > 0 ? Theme.space : 0
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.leftMargin: Theme.gap
        anchors.rightMargin: Theme.gap
    }

    ActionBar {
        id: bar

        height: implicitHeight
        anchors.bottom: parent.bottom
        anchors.bottomMargin: height > 0 ? Theme.gap : 0
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.leftMargin: Theme.gap
        anchors.rightMargin: Theme.gap
    }
}
