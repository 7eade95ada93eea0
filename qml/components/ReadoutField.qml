// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// The huge figure being typed, its unit and a caret, and the derived `lines` under it: a list of
// {mark?, symbol?, figure, text}. Lines that find no room fold into one "more"; a touch on a line asks where it
// comes from: lineTapped(index).
Item {
    id: readout

    property string caption
    property string value
    property string placeholder
    property string unit
    property bool caret: false
    property var lines: []
    property int linesShown: Theme.textScale > 1.3 ? 1 : 3

    signal valueTapped
    signal lineTapped(int index)

    implicitHeight: column.height

    Column {
        id: column

        width: parent.width

        LText {
            width: parent.width
            visible: text !== ""
            role: "label"
            text: readout.caption
        }

        Item {
            width: parent.width
            height: figure.height

            LText {
                id: figure

                role: "readout"
                silent: true
                text: readout.value !== "" ? readout.value : readout.placeholder
                color: readout.value !== "" ? Theme.ink : Theme.quietInk
                width: Math.min(implicitWidth, parent.width - unit.width - caret.width - 3 * 6)
                height: Math.min(Theme.readoutSize, Math.max(Theme.readoutFloor, readout.width / 4)) * 1.15
                fontSizeMode: Text.Fit
                minimumPixelSize: Theme.readoutFloor
                wrapMode: Text.NoWrap
                anchors.left: parent.left
            }

            Rectangle {
                id: caret

                objectName: "caret"
                visible: readout.caret
                width: 3
                height: figure.height * 0.72
                color: Theme.info
                anchors.left: figure.right
                anchors.leftMargin: 4
                anchors.verticalCenter: figure.verticalCenter
            }

            LText {
                id: unit

                silent: true
                text: readout.unit
                font.pixelSize: Theme.textSize(24)
                wrapMode: Text.NoWrap
                anchors.left: caret.right
                anchors.leftMargin: 10
                anchors.baseline: figure.baseline
            }

            Accessible.role: Accessible.StaticText
            Accessible.name: (readout.value === "" ? States.word("none") : readout.value) + " " + readout.unit
        }

        Repeater {
            model: readout.lines.slice(0, readout.linesShown)

            InfoLine {
                required property var modelData
                required property int index

                objectName: "line_" + index
                width: column.width
                mark: modelData.mark ?? ""
                symbol: modelData.symbol ?? ""
                figure: modelData.figure ?? ""
                text: modelData.text ?? ""
                onClicked: readout.lineTapped(index)
            }
        }

        SideButton {
            objectName: "more"
            visible: readout.lines.length > readout.linesShown
            targetKind: "minor"
            width: parent.width
            text: qsTr("%n more", "", readout.lines.length - readout.linesShown)
            onClicked: moreSheet.createObject(readout)
        }
    }

    Component {
        id: moreSheet

        LinesSheet {
            lines: readout.lines
            onLineTapped: index => readout.lineTapped(index)
            onClosed: destroy()
            Component.onCompleted: open()
        }
    }
}
