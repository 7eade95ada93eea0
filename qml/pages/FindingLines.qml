// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Lines of findings: {mark, symbol, figure, text, from}. explain(from) when a line has a derivation.
Column {
    id: list

    property var lines: []

    signal explain(int from)

    spacing: Theme.space

    Repeater {
        model: list.lines

        InfoLine {
            required property var modelData

            width: list.width
            mark: modelData.mark ?? ""
            symbol: modelData.symbol ?? ""
            figure: modelData.figure ?? ""
            text: modelData.text ?? ""
            explained: modelData.from >= 0
            onClicked: list.explain(modelData.from)
        }
    }
}
