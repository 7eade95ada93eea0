// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// The huge figure being typed, its unit and a caret, and the derived `lines` under it: a list of
// {mark?, symbol?, figure, text}. `linesShown` of them find room, the others fold into one "more" beside the figure;
// a touch on a line asks where it comes from: lineTapped(index).
Item {
    id: readout

    property string caption
    property string value
    property string placeholder
    property string unit
    property bool caret: false
    property var lines: []
    property int linesShown: Theme.textScale > 1.3 ? 1 : 3
    property real leading: 1.15

    // What there is in height for all of it: a line that would reach beyond folds into "more".
    property real room: Infinity
    readonly property int linesFitting: {
        let left = room - (caption === "" ? 0 : captionLine.height + column.spacing) - Math.max(figureSize * leading, Theme.minorTarget);
        let count = 0;
        for (let i = 0; i < shown.count && shown.itemAt(i); ++i) {
            left -= shown.itemAt(i).whole + column.spacing;
            if (left < 0)
                break;
            ++count;
        }
        return count;
    }

    // The unit's share of the figure's size.
    property real unitShare: 0.6

    // Below this the figure would leave its frame.
    readonly property real leastWidth: Theme.readoutFloor * hundred.advanceWidth / 100 + caret.width + unit.implicitWidth + 14

    property real figureSize: Theme.isCompact(Window.width, Window.height) ? Math.min(Theme.readoutSize, 60) : Theme.readoutSize

    signal lineTapped(int index)

    implicitHeight: column.height

    Column {
        id: column

        width: parent.width
        spacing: Theme.space

        LText {
            id: captionLine

            width: parent.width
            visible: text !== ""
            role: "label"
            text: readout.caption
        }

        Item {
            id: field

            width: parent.width
            height: Math.max(figure.height, more.visible ? more.height : 0)

            Accessible.role: Accessible.StaticText
            Accessible.name: (readout.value === "" ? States.word("none") : readout.value) + " " + readout.unit
            Accessible.ignored: Theme.isBehind(field)

            TextMetrics {
                id: hundred

                font.family: Theme.family
                font.bold: true
                font.pixelSize: 100
                text: figure.text
            }

            // A figure and its unit run the same way in every language.
            Item {
                width: figure.width + caret.width + unit.width + 14
                height: figure.height
                anchors.left: parent.left

                Item {
                    anchors.fill: parent
                    LayoutMirroring.enabled: false
                    LayoutMirroring.childrenInherit: true

                    LText {
                        id: figure

                        readonly property real room: field.width - caret.width - unit.implicitWidth - 14 - (more.visible ? more.width + Theme.space : 0)

                        objectName: "figure"
                        role: "readout"
                        silent: true
                        text: readout.value !== "" ? readout.value : readout.placeholder
                        color: readout.value !== "" ? Theme.ink : Theme.quietInk
                        font.pixelSize: Math.max(Theme.readoutFloor, Math.min(readout.figureSize, Math.floor(100 * room / Math.max(1, hundred.advanceWidth))))
                        height: font.pixelSize * readout.leading
                        verticalAlignment: Text.AlignVCenter
                        wrapMode: Text.NoWrap
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
                        font.pixelSize: Math.min(Theme.textSize(24), readout.figureSize * readout.unitShare)
                        wrapMode: Text.NoWrap
                        anchors.left: caret.right
                        anchors.leftMargin: 7
                        anchors.baseline: figure.baseline
                    }
                }
            }

            SideButton {
                id: more

                readonly property int folded: readout.lines.length - readout.linesFitting

                objectName: "more"
                visible: folded > 0
                targetKind: "minor"
                horizontalPadding: 12
                text: qsTr("%1 more").arg(folded)
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                onClicked: moreSheet.createObject(readout)
            }
        }

        Repeater {
            id: shown

            // By count: the lines stay while a figure is being typed.
            model: Math.min(readout.lines.length, readout.linesShown)

            InfoLine {
                required property int index
                readonly property var modelData: readout.lines[index] ?? {}

                // A hidden line forgets the height of its words: were it asked then, it would fit, show itself, not fit,
                // and so on without end.
                property real whole: implicitHeight

                onImplicitHeightChanged: if (visible)
                    whole = implicitHeight
                onTextChanged: whole = implicitHeight
                onWidthChanged: whole = implicitHeight

                objectName: "line_" + index
                visible: index < readout.linesFitting
                width: column.width
                mark: modelData.mark ?? ""
                symbol: modelData.symbol ?? ""
                figure: modelData.figure ?? ""
                text: modelData.text ?? ""
                onClicked: readout.lineTapped(index)
            }
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
