// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One test of one cylinder, before and after: two bores, the difference, the verdict with its shape. A touch
// asks where the difference comes from.
Pressable {
    id: control

    required property var change

    readonly property real boreWidth: 34

    fill: "transparent"
    padding: 4
    horizontalPadding: 0
    enabled: change.from >= 0
    Accessible.name: States.sentence([change.title, qsTr("before %1").arg(change.beforeText), qsTr("after %1").arg(change.afterText), change.difference, change.word])
    Accessible.description: enabled ? qsTr("Where does this come from?") : ""

    inside: Flow {
        id: inner

        // Words that would break in their middle go below the bores: large text, long words, a small phone.
        readonly property real beside: width - bores.width - spacing
        readonly property bool below: beside < 6.5 * Theme.bodySize || beside < longest.advanceWidth + mark.width + Theme.space + 2 || beside < title.advanceWidth + 2

        spacing: Theme.gap

        TextMetrics {
            id: title

            font.family: Theme.family
            font.pixelSize: Theme.labelSize
            text: control.change.title.split(" ").reduce((most, word) => word.length > most.length ? word : most, "")
        }

        TextMetrics {
            id: longest

            font.family: Theme.family
            font.pixelSize: Theme.bodySize
            text: control.change.word.split(" ").reduce((most, word) => word.length > most.length ? word : most, "")
        }

        Row {
            id: bores

            width: Math.min(inner.width, 2 * Math.max(control.boreWidth + Theme.gap, 5.2 * Theme.labelSize))
            LayoutMirroring.enabled: false

            ChangeSide {
                width: bores.width / 2
                boreWidth: control.boreWidth
                bore: control.change.before
                figure: control.change.beforeText
            }

            ChangeSide {
                width: bores.width / 2
                boreWidth: control.boreWidth
                bore: control.change.after
                figure: control.change.afterText
            }
        }

        Column {
            width: inner.below ? inner.width : inner.beside
            spacing: 2

            LText {
                width: parent.width
                silent: true
                role: "label"
                text: control.change.title
            }

            LText {
                width: parent.width
                silent: true
                role: "figure"
                visible: text !== ""
                text: control.change.difference
            }

            Row {
                width: parent.width
                spacing: Theme.space

                ChangeMark {
                    id: mark

                    change: control.change.verdict
                    anchors.verticalCenter: parent.verticalCenter
                }

                LText {
                    silent: true
                    text: control.change.word
                    width: parent.width - mark.width - parent.spacing
                    anchors.verticalCenter: parent.verticalCenter
                }
            }
        }
    }
}
