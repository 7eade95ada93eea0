// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One sum: what comes out on top, what goes in below.
AppPage {
    id: page

    required property AppContext app
    required property string calculator
    property string sessionId
    property string engineId

    title: sheet.title
    subtitle: sheet.purpose

    CalculatorModel {
        id: sheet

        app: page.app
        recordId: page.calculator
        sessionId: page.sessionId
        engineId: page.engineId
        onAttached: page.back()
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Theme.gap

        CalculatorResult {
            objectName: "result"
            width: parent.width
            results: sheet.results
            problem: sheet.found ? sheet.problem : page.engineId !== "" ? qsTr("This engine is gone: it was deleted. Undo brings it back.") : qsTr("This session is gone: it was deleted. Undo brings it back.")
            onExplain: from => derivation.show(sheet.derivation(from))
        }

        Repeater {
            model: sheet.cautions

            Caution {
                required property string modelData

                width: parent.width
                text: modelData
                read: true
            }
        }

        FormList {
            width: parent.width
            form: sheet
            allOpened: true
        }

        SideButton {
            objectName: "startAgain"
            width: parent.width
            visible: sheet.found
            text: qsTr("Forget what was typed")
            onClicked: sheet.startAgain()
        }
    }

    actions: BigButton {
        objectName: "attach"
        visible: page.sessionId !== "" && sheet.attachable
        text: qsTr("Attach to session")
        onClicked: sheet.attach()
    }

    Explainer {
        id: derivation
    }
}
