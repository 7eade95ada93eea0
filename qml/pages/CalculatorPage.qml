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

    title: sheet.title
    subtitle: sheet.purpose

    CalculatorModel {
        id: sheet

        app: page.app
        recordId: page.calculator
        sessionId: page.sessionId
        onAttached: page.back()
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Theme.gap

        CalculatorResult {
            objectName: "result"
            width: parent.width
            results: sheet.results
            problem: sheet.found ? sheet.problem : qsTr("This session is gone: it was deleted. Undo brings it back.")
            onExplain: from => derivation.show(from)
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

    Loader {
        id: derivation

        property int from: -1

        function show(index: int) {
            from = index;
            active = index >= 0;
        }

        active: false
        sourceComponent: DerivationSheet {
            steps: sheet.derivation(derivation.from)
            onClosed: derivation.active = false
            Component.onCompleted: open()
        }
    }
}
