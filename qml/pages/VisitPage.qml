// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The visit itself: complaint, conditions, how it is cranked, testers used.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId
    // The line that is asked for: its sheet stands open.
    property string line

    signal go(name: string, args: var)

    title: qsTr("Complaint and conditions")
    subtitle: Array.from([visit.engineName, visit.visitLine]).filter(part => part !== "").join(" · ")

    VisitForm {
        id: visit

        app: page.app
        recordId: page.sessionId
    }

    // By the line that it is wanted for.
    readonly property var testerKinds: ({
            gauge: "compression gauge",
            leak_down: "leak-down tester",
            crankcase: "crankcase tester"
        })

    TesterListModel {
        id: testers

        app: page.app
        // Who adds one from here wants to use it in this session.
        onAdded: testerId => visit.enter(sheets.line, {
                chosen: [testerId]
            })
    }

    SheetLoader {
        id: sheets

        readonly property TesterListModel pageTesters: testers
        property string line
    }

    Component {
        id: newTester

        NewTesterSheet {
            testers: sheets.pageTesters
            kind: page.testerKinds[sheets.line]
        }
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Theme.gap

        SessionGone {
            width: parent.width
            visible: !visit.found
        }

        FormList {
            width: parent.width
            form: visit
            allOpened: true
            Component.onCompleted: if (page.line !== "" && visit.found)
                edit(page.line)
            ways: ({
                    gauge: qsTr("Add a tester"),
                    leak_down: qsTr("Add a tester"),
                    crankcase: qsTr("Add a tester")
                })
            onWayTaken: key => {
                sheets.line = key;
                sheets.show(newTester);
            }
        }

        SideButton {
            objectName: "testers"
            width: parent.width
            text: qsTr("Testers")
            onClicked: page.go("Testers", {})
        }
    }

    actions: BigButton {
        objectName: "done"
        text: qsTr("Done")
        onClicked: page.back()
    }
}
