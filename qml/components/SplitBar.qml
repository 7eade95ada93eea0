// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// Shares of one whole side by side: `shares` is a list of {path, name, share, sure, text}, from 0 to 1. A segment is as
// long as its share and filled as far as that is sure (all of it without `sure`); the rest of it is an empty outline, as
// is what the segments leave of the whole. One that has room writes its name; `text` is for the screen reader ("exhaust
// 70 %, 60 to 85").
Item {
    id: bar

    property var shares: []
    readonly property real sum: shares.reduce((sum, part) => sum + part.share, 0)
    readonly property real total: Math.max(1, sum)
    readonly property bool open: sum < 0.995
    readonly property var present: shares.filter(part => part.share > 0)
    // What the segments take of the width, the gap after each with them. Not asked of the row's places: turned round
    // for a right-to-left language these depend on the widths.
    readonly property real taken: present.reduce((sum, part) => sum + lengthOf(part.share) + 2, 0)
    readonly property real room: width - 2 * Math.max(0, present.length - (open ? 0 : 1))

    function lengthOf(share: real): real {
        return Math.floor(room * share / total);
    }

    implicitHeight: Math.max(44, Theme.labelSize * 1.7)
    Accessible.role: Accessible.Chart
    Accessible.name: shares.map(part => part.text ?? part.name).join(", ")
    Accessible.ignored: Theme.isBehind(bar)

    Row {
        spacing: 2

        Repeater {
            model: bar.present

            Rectangle {
                id: segment

                required property var modelData
                readonly property real sure: Math.min(modelData.sure ?? modelData.share, modelData.share)

                width: bar.lengthOf(modelData.share)
                height: bar.height
                radius: 6
                color: "transparent"
                border.width: 1
                border.color: Theme.ink

                PathPattern {
                    id: filled

                    objectName: "sure"
                    path: segment.modelData.path
                    visible: width >= 1
                    width: Math.floor(segment.width * segment.sure / segment.modelData.share)
                    height: segment.height
                    anchors.left: parent.left
                }

                Rectangle {
                    visible: words.visible
                    anchors.fill: words
                    anchors.margins: -4
                    radius: 4
                    color: filled.color
                }

                LText {
                    id: words

                    visible: implicitWidth + 16 <= segment.width
                    silent: true
                    role: "figure"
                    text: segment.modelData.label ?? segment.modelData.name
                    color: Theme.inkOnPath
                    font.pixelSize: Theme.textSize(15)
                    wrapMode: Text.NoWrap
                    anchors.left: parent.left
                    anchors.leftMargin: 8
                    anchors.verticalCenter: parent.verticalCenter
                }
            }
        }

        Rectangle {
            objectName: "openPart"
            visible: bar.open
            width: Math.max(0, bar.width - bar.taken)
            height: bar.height
            radius: 6
            color: "transparent"
            border.width: 1
            border.color: Theme.ink
        }
    }
}
