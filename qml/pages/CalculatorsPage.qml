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

    // Without a session: the engine whose card fills them.
    property string engineId
    property string engineName

    signal go(name: string, args: var)

    title: qsTr("Calculators")
    subtitle: sessionId === "" ? "" : qsTr("filled from the session")

    EngineListModel {
        id: engines

        app: page.app
    }

    SheetLoader {
        id: sheets
    }

    Component {
        id: whichEngine

        ChoiceSheet {
            title: qsTr("Filled from which engine's card?")
            options: [
                {
                    value: "",
                    text: qsTr("None: I type it all")
                }
            ].concat(Array.from(engines.choices("", 12)))
            current: page.engineId
            onChosen: value => {
                page.engineName = options.find(one => one.value === value)?.text ?? "";
                page.engineId = value;
            }
        }
    }

    CalculatorList {
        id: list
    }

    ScrollColumn {
        anchors.fill: parent

        ListRow {
            objectName: "fromEngine"
            width: parent.width
            visible: page.sessionId === "" && engines.total > 0
            text: qsTr("Bore, stroke and the rest from")
            figure: page.engineId === "" ? qsTr("none") : page.engineName
            onClicked: sheets.show(whichEngine)
        }

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
                    sessionId: page.sessionId,
                    engineId: page.engineId
                })
            }
        }
    }
}
