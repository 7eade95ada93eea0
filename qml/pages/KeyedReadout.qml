// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What stands over the digits: the rail of cylinders, the row of fields, the huge figure and what it would mean.
Item {
    id: readout

    required property KeyedModel model
    property bool tight: false
    property bool lying: false
    // Large text on a small screen: rail, fields and the seldom buttons fold into one line.
    property bool crowded: false

    property Component between
    property bool betweenShort: false
    property string betweenWord
    property Component seldom

    // One button beside the fields, wherever that is.
    property bool betweenBeside: false
    readonly property bool joined: betweenBeside || tight && betweenShort && Theme.textScale < 1.2

    // What is left under rail and fields decides: figure, caption and lines one below the other; or the figure
    // alone with its first line beside it. Where even that is too much, rail and fields scroll.
    readonly property real rest: height - upper.contentHeight
    readonly property real lineHeight: 56 * Theme.textScale
    readonly property int linesFitting: Math.floor((rest - 24 * Theme.textScale - 100) / lineHeight)
    // Not by the figure's own height, which hangs on this.
    readonly property bool beside: linesFitting < 1

    // What a caption of two lines and a line under the figure leave of it.
    readonly property real aboveLines: (rest - lineHeight - 2.6 * Theme.labelSize - 4 * Theme.space) / 1.15

    // Smaller where that keeps everything in sight.
    readonly property real fittingSize: (rest - Theme.space) / 1.06
    readonly property bool shrunk: beside && fittingSize >= Theme.readoutFloor
    readonly property real besideSize: shrunk ? Math.min(60, fittingSize) : Theme.readoutFloor

    signal derivationAsked(int line)

    // The sheet with the fields, when one of its buttons opens something else.
    function closeFold() {
        fold.item?.close();
    }

    ScrollColumn {
        id: upper

        width: parent.width
        height: readout.beside ? Math.max(0, Math.min(contentHeight, parent.height - Math.max(figure.height, line.visible ? line.height : 0) - Theme.space)) : contentHeight

        CylinderRail {
            objectName: "rail"
            visible: readout.model.cylinders.length > 1 && !readout.crowded
            height: visible ? implicitHeight : 0
            width: parent.width
            cylinders: readout.model.cylinders
            flat: readout.tight || readout.lying
            bare: readout.tight
            current: readout.model.currentIndex
            tileHeight: readout.tight || readout.lying ? Theme.minorTarget : rowCount > 1 ? Theme.primaryTarget : 112
            onChosen: index => readout.model.choose(index)
        }

        Flow {
            id: choosers

            width: parent.width
            visible: !readout.crowded
            spacing: Theme.space

            Loader {
                id: chooser

                // Two valves to choose from, or a clock beside fields with long names.
                width: readout.joined ? Math.round((readout.betweenBeside ? 0.42 : 0.55) * (choosers.width - Theme.space)) : choosers.width
                visible: status === Loader.Ready
                sourceComponent: readout.between
                active: !readout.crowded
            }

            FieldTabs {
                width: readout.joined ? choosers.width - Theme.space - chooser.width : choosers.width
                fields: readout.model.fields
                current: readout.model.field
                low: readout.tight || readout.lying
                onChosen: key => readout.model.focusField(key)
                onStepped: (key, by) => readout.model.step(key, by)
            }
        }

        Loader {
            id: fold

            width: parent.width
            visible: readout.crowded
            active: readout.crowded
            sourceComponent: KeyedFold {
                model: readout.model
                between: readout.between
                betweenWord: readout.betweenWord
                seldom: readout.seldom
            }
        }
    }

    ReadoutField {
        id: figure

        objectName: "readout"
        width: readout.beside && readout.model.lines.length > 0 ? Math.max(parent.width * 0.5, leastWidth) : parent.width
        anchors.left: parent.left
        y: readout.beside ? parent.height - height : upper.height + Theme.space / 2
        caption: readout.rest < 130 * Theme.textScale ? "" : readout.model.caption
        value: readout.model.typed
        placeholder: readout.model.placeholder
        unit: readout.model.unit
        caret: true
        lines: readout.beside ? [] : readout.model.lines
        linesShown: Math.max(0, readout.linesFitting)
        room: readout.beside ? Infinity : readout.rest - Theme.space / 2
        leading: readout.shrunk ? 1.06 : 1.15
        unitShare: readout.beside ? 0.45 : 0.6
        figureSize: readout.beside ? readout.besideSize : Math.max(Theme.readoutFloor, Math.min(Theme.readoutSize, Theme.isCompact(Window.width, Window.height) ? 60 : Infinity, aboveLines))
        onLineTapped: line => readout.derivationAsked(line)
    }

    // The first line beside the figure; a touch opens all of them.
    Pressable {
        id: line

        objectName: "besideLine"
        readonly property var first: readout.model.lines[0] ?? {}
        readonly property bool marked: (first.mark ?? "") !== ""

        fill: Theme.panel
        outlineColor: Theme.hairline
        visible: readout.beside && readout.model.lines.length > 0
        targetKind: "minor"
        anchors.right: parent.right
        anchors.left: figure.right
        anchors.bottom: parent.bottom
        topPadding: 2
        bottomPadding: 2
        leftPadding: marked && !mirrored ? 30 : 6
        rightPadding: marked && mirrored ? 30 : 6
        // The shape is not left without its word.
        text: first.figure ? marked && first.figure !== States.word(first.mark) ? States.word(first.mark) + "\n" + first.figure : first.figure : first.symbol === "question" ? qsTr("Is this right?") : qsTr("What to expect")
        onClicked: allLines.active = true

        inside: LText {
            silent: true
            text: line.text
            font.pixelSize: Theme.textSize(line.marked ? 15 : 16)
            lineHeight: line.marked ? 0.95 : 1
            wrapMode: Text.NoWrap
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 14
            elide: Text.ElideRight
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
        }

        StateMark {
            visible: line.marked
            state: visible ? line.first.mark : "none"
            silent: true
            size: 18
            anchors.left: parent.left
            anchors.leftMargin: 8
            anchors.verticalCenter: parent.verticalCenter
        }
    }

    // Named apart from the sheet's own `lines`, which would hide it in there.
    Loader {
        id: allLines

        active: false
        sourceComponent: LinesSheet {
            lines: readout.model.lines
            onLineTapped: line => readout.derivationAsked(line)
            onClosed: allLines.active = false
            Component.onCompleted: open()
        }
    }
}
