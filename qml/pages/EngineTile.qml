// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One engine of the list: name, last session, its bores (or how many are in which state), tags. A list shows many at
// once and is the first thing that the app draws, so parts are made only where there is something in them, and the
// pictures only once `drawn` says that the words stand.
Pressable {
    id: tile

    property string name
    property string last
    property var tags: []
    property string retest
    property var bores: []
    property string boreLine
    property string boreState: "none"
    // The state is that of a visit before the newest one.
    property bool boreEarlier: false
    readonly property string stateWord: boreEarlier ? qsTr("%1, from an earlier visit").arg(States.word(boreState)) : States.word(boreState)
    readonly property string paleWord: Array.from(bores).some(bore => bore.earlier ?? false) ? qsTr("some cylinders as an earlier visit left them") : ""
    property bool drawn: true
    // Its pages stand beside the list.
    property bool selected: false

    signal tagged(string tag)

    targetKind: "primary"
    fill: selected ? Theme.chosen : Theme.panel
    outlineColor: selected ? Theme.info : Theme.hairline
    Accessible.selected: selected
    padding: 14
    horizontalPadding: 14
    text: drawn ? States.sentence([name, last, retest, boreLine === "" ? stateWord : boreLine, paleWord, ...Array.from(tags)]) : name

    inside: Column {
        spacing: 2

        LText {
            width: parent.width
            role: "heading"
            silent: true
            text: tile.name
        }

        LText {
            width: parent.width
            silent: true
            text: tile.retest === "" ? tile.last : tile.last + "\n" + tile.retest
        }

        Item {
            width: parent.width
            height: Theme.space + (tile.boreLine === "" ? 44 : line.height)

            Loader {
                id: line

                y: Theme.space
                width: parent.width - 22 - Theme.space
                anchors.left: parent.left
                active: tile.boreLine !== ""
                sourceComponent: LText {
                    silent: true
                    role: "figure"
                    text: tile.boreLine
                }
            }

            // Found by its file's name: a type named here would be read before the first frame.
            Loader {
                active: tile.drawn
                anchors.fill: parent
                source: "EngineTilePictures.qml"
                onLoaded: item.tile = tile
            }
        }

        // As words first: what can be touched takes the same room.
        Item {
            width: parent.width
            visible: tile.tags.length > 0
            height: Theme.space + (chips.item?.height ?? Theme.minorTarget)

            Loader {
                active: !tile.drawn && tile.tags.length > 0
                anchors.fill: parent
                sourceComponent: LText {
                    role: "label"
                    silent: true
                    text: Array.from(tile.tags).join(" · ")
                    verticalAlignment: Text.AlignVCenter
                    elide: Text.ElideRight
                }
            }

            Loader {
                id: chips

                active: tile.drawn && tile.tags.length > 0
                y: Theme.space
                width: parent.width
                source: "TagChips.qml"
                onLoaded: {
                    item.tags = Qt.binding(() => tile.tags);
                    item.of = Qt.binding(() => tile.name);
                }
            }

            Connections {
                target: chips.item
                ignoreUnknownSignals: true

                function onChosen(tag: string) {
                    tile.tagged(tag);
                }
            }
        }
    }
}
