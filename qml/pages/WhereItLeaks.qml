// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Where one cylinder leaks, as the odds have it: a sentence, the bar with its legend, what repairs should bring,
// and what the odds lean on. `oddsState` is the model's ("working", "ready" ...); `odds` is empty until they are there.
Column {
    id: part

    required property string oddsState
    required property var odds
    property bool opened: true

    readonly property bool known: odds.headline !== undefined
    readonly property int from: odds.from ?? -1

    signal explain(index: int)

    visible: oddsState === "working" || known
    spacing: Theme.space

    LText {
        width: parent.width
        role: "heading"
        text: qsTr("Where it leaks")
    }

    LText {
        objectName: "working"
        width: parent.width
        visible: !part.known
        text: qsTr("Working it out …")
    }

    LText {
        width: parent.width
        visible: part.known
        role: "figure"
        text: part.odds.headline ?? ""
    }

    InfoLine {
        objectName: "oddsFrom"
        width: parent.width
        visible: part.known && part.odds.verdict
        text: qsTr("Odds under the app's working assumptions; not yet counted on real engines.")
        explained: part.from >= 0
        onClicked: part.explain(part.from)
    }

    ListRow {
        objectName: "showShares"
        width: parent.width
        visible: part.known && part.odds.verdict && !part.opened
        text: qsTr("Show the shares")
        forward: false
        onClicked: part.opened = true
    }

    Loader {
        width: parent.width
        visible: active
        active: part.known && part.odds.verdict && part.opened
        sourceComponent: ShareLegend {
            shares: part.odds.shares ?? []
            others: part.odds.others ?? ""
            means: part.odds.means ?? ""
        }
    }

    Repeater {
        model: part.known ? part.odds.reasons : []

        InfoLine {
            required property string modelData

            width: parent.width
            symbol: "question"
            text: modelData
            explained: false
        }
    }

    Repeater {
        model: part.known ? part.odds.repairs : []

        InfoLine {
            required property var modelData

            width: parent.width
            figure: modelData.figure
            text: modelData.text
            explained: part.from >= 0
            onClicked: part.explain(part.from)
        }
    }
}
