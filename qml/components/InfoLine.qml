// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// A derived line: a state mark or a picture, a bold `figure`, the rest of the sentence. A touch asks where it
// comes from.
Pressable {
    id: control

    property string mark
    property string symbol
    property string figure
    property bool explained: true

    targetKind: "minor"
    fill: "transparent"
    padding: 4
    horizontalPadding: 0
    enabled: explained
    Accessible.name: States.sentence([mark === "" ? "" : States.word(mark), figure, text])
    Accessible.description: explained ? qsTr("Where does this come from?") : ""

    inside: Item {
        implicitHeight: words.height
        implicitWidth: 200

        LeadMark {
            id: picture

            mark: control.mark
            symbol: control.symbol
            size: Theme.markSize
            color: Theme.info
            gap: Theme.space
            anchors.left: parent.left
            anchors.verticalCenter: parent.verticalCenter
        }

        Column {
            id: words

            anchors.left: picture.right
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter

            LText {
                readonly property string escapedFigure: quoted(control.figure)
                readonly property string escapedText: quoted(control.text)

                function quoted(plain: string): string {
                    return plain.replace(/&/g, "&amp;").replace(/</g, "&lt;");
                }

                width: parent.width
                silent: true
                textFormat: Text.StyledText
                text: escapedFigure === "" ? escapedText : "<b>" + escapedFigure + "</b> " + escapedText
            }
        }
    }
}
