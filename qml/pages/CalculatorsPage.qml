// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// The single sums, each a page of its own. `sessionId` fills them from a session.
AppPage {
    id: page

    required property AppContext app
    property string sessionId

    signal go(name: string, args: var)

    title: qsTr("Calculators")
    subtitle: sessionId === "" ? "" : qsTr("filled from the session")

    CalculatorList {
        id: list
    }

    ScrollColumn {
        anchors.fill: parent

        Repeater {
            model: list.calculators

            ListRow {
                required property var modelData

                objectName: "calculator_" + modelData.calculator
                width: parent.width
                targetKind: "primary"
                text: modelData.title
                detail: modelData.text
                onClicked: page.go("Calculator", {
                    calculator: modelData.calculator,
                    sessionId: page.sessionId
                })
            }
        }
    }
}
