// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// A page of digits: one touch of the amber button a reading. Upright the pad lies under the readout; lying down,
// beside it. A page brings its `keyed` model, what stands between rail and fields (`between`, of which `betweenWord` is
// chosen), what is needed seldom (`seldom`, shown when large text leaves no room for it among the `buttons`), and the buttons.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId
    property int cylinder: 0
    property KeyedModel keyed
    property string heading
    property string about
    property bool shut: false

    // The session was deleted, or Undo took it back, while its page stood open.
    readonly property bool gone: !(keyed?.found ?? true)
    readonly property bool closed: shut || gone
    readonly property bool lying: width > height && height < 640
    readonly property bool tight: !lying && height < 700
    // Big keys take the room of rail and fields on a small screen, as large text does.
    readonly property bool crowded: (tight || lying) && Theme.textScale > 1.3 || tight && Theme.bigKeys
    // Large text: the fields that are typed into need the lines that would say what the session says, too.
    readonly property bool large: !lying && Theme.textScale > 1.5
    // The figure and what stands beside it, that the keys leave alone.
    readonly property real figureRoom: crowded ? Math.max(Theme.readoutFloor * 1.15, 42 * Theme.textScale) : Theme.readoutFloor * 1.06
    readonly property bool ownUndo: true
    readonly property bool keepsAwake: true
    readonly property bool wholeWidth: true
    // The last digit or Keep came from a keyboard, not from the glass.
    property bool typedByKeys: false

    property Component between
    // Few enough to share a line with the fields where every dp counts.
    property bool betweenShort: false
    property string betweenWord
    // One button, that shares a line with the fields everywhere.
    property bool betweenBeside: false
    // Too many for a small screen whatever the text's size.
    property bool betweenLong: false
    property Component seldom
    property alias buttons: bar.data

    signal go(name: string, args: var)
    // A touch on a line that asks something.
    signal asked(what: string)

    function closeFold() {
        readout.closeFold();
    }

    // A touch on a line of what the digits mean: where it comes from, or the page where what is missing is typed.
    function lineAsked(index: int) {
        const line = keyed.lines[index] ?? {};
        if (line.way)
            go(line.way, line.args);
        else if (line.asks)
            asked(line.asks);
        else
            derivation.show(keyed.derivation(index));
    }

    title: heading
    subtitle: keyed.lastKept !== "" ? keyed.lastKept : tight || crowded || large ? "" : about
    // On a small screen the fields under it must not move with every reading that is kept.
    headLines: lying ? 2 : tight ? 1 : 4
    focus: true

    corner: UndoCorner {
        app: page.app
        keyed: page.keyed
        roomKept: !page.headFolds && page.headLines > 1
    }

    Keys.onPressed: event => {
        if (closed)
            return;
        const volume = event.key === Qt.Key_VolumeUp || event.key === Qt.Key_VolumeDown;
        if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter || volume && page.app.settings.volumeKeeps) {
            page.typedByKeys = !volume;
            if (!event.isAutoRepeat)
                page.keyed.keep();
            event.accepted = true;
        } else {
            event.accepted = pad.takeKey(event);
            page.typedByKeys = event.accepted || page.typedByKeys;
        }
    }
    Component.onCompleted: if (cylinder > 0)
        keyed.chooseCylinder(cylinder)

    Connections {
        target: page.keyed

        function onFinished() {
            page.back();
        }
    }

    SessionGone {
        objectName: "gone"
        width: parent.width
        visible: page.gone
    }

    KeyedReadout {
        id: readout

        model: page.keyed
        between: page.between
        betweenShort: page.betweenShort
        betweenWord: page.betweenWord
        betweenBeside: page.betweenBeside
        seldom: page.seldom
        tight: page.tight
        lying: page.lying
        // Big keys leave no room for three rows above them on any phone.
        crowded: page.crowded || page.tight && page.betweenLong || Theme.bigKeys && !page.lying && page.between !== null && !page.betweenBeside
        visible: !page.closed
        anchors.top: parent.top
        anchors.left: page.lying && Theme.leftHand ? pad.right : parent.left
        anchors.leftMargin: page.lying && Theme.leftHand ? Theme.gap : 0
        anchors.right: page.lying && !Theme.leftHand ? pad.left : parent.right
        anchors.rightMargin: page.lying && !Theme.leftHand ? Theme.gap : 0
        anchors.bottom: page.lying ? parent.bottom : pad.top
        anchors.bottomMargin: page.lying ? (bar.height + 3 * Theme.space) : Theme.space
        onDerivationAsked: line => page.lineAsked(line)
    }

    NumberPad {
        id: pad

        objectName: "pad"
        visible: !page.closed
        width: page.lying ? Math.min(parent.width * 0.46, 420) : parent.width
        // However big the keys: the figure that is being typed, cylinders and fields keep their room.
        height: Math.min(4 * keyHeight + 3 * spacing, Math.max(4 * Theme.secondaryTarget + 3 * spacing, parent.height - anchors.bottomMargin - (page.lying ? 0 : (page.crowded ? 1 : 2) * (Theme.minorTarget + Theme.space) + page.figureRoom + Theme.space)))
        keyHeight: Theme.padKeyHeight(page.width, page.height)
        decimalMark: Qt.locale().decimalPoint
        decimalEnabled: page.keyed.decimals
        anchors.bottom: parent.bottom
        anchors.bottomMargin: page.lying ? Theme.space : 0
        anchors.right: page.lying && Theme.leftHand ? undefined : parent.right
        anchors.left: page.lying && Theme.leftHand ? parent.left : undefined
        onKey: character => page.keyed.press(character)
        onBackspace: page.keyed.backspace()
        onCleared: page.keyed.clear()
        onHaptic: {
            page.typedByKeys = false;
            page.app.tick();
        }
    }

    // Lying down the buttons stand beside the digits, so that the digits get the height.
    ActionBar {
        id: bar

        // Never lower again: keys that jump when "Next 2" becomes "Keep, next 2" are struck wrong.
        property real tallest: 0

        parent: page.lying ? page.body : page
        visible: !page.closed
        height: Math.max(tallest, implicitHeight)
        onImplicitHeightChanged: settled.restart()
        onWidthChanged: resized.restart()
        x: page.lying ? readout.x : Theme.gap
        y: page.lying ? page.body.height - Theme.space - height : page.height - Theme.gap - height
        width: page.lying ? readout.width : page.width - 2 * Theme.gap
    }

    // Not while buttons change places: for a moment the one that goes and the one that comes stand side by side.
    Timer {
        id: settled

        interval: 0
        onTriggered: bar.tallest = Math.max(bar.tallest, bar.implicitHeight)
    }

    // Once the bar's words have found their lines in it: what they took before was for another width.
    Timer {
        id: resized

        interval: 0
        onTriggered: bar.tallest = bar.implicitHeight
    }

    // Room for the buttons when they lie under the pad.
    actions: Item {
        visible: !page.lying && !page.closed
        implicitHeight: bar.height
        implicitWidth: 1
    }

    Explainer {
        id: derivation
    }
}
