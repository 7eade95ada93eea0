// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The gauges and testers of the shop.
AppPage {
    id: page

    required property AppContext app

    signal go(name: string, args: var)

    title: qsTr("Testers")

    TesterListModel {
        id: testers

        app: page.app
        onAdded: testerId => page.go("TesterCard", {
                testerId: testerId
            })
    }

    ListView {
        anchors.fill: parent
        objectName: "testers"
        clip: true
        spacing: Theme.space
        boundsBehavior: Flickable.DragOverBounds
        boundsMovement: Flickable.StopAtBounds
        model: testers

        delegate: ListRow {
            required property string testerId
            required property string name
            required property string checkState
            required detail

            objectName: "tester_" + testerId
            width: ListView.view.width
            targetKind: "primary"
            text: name
            mark: checkState
            onClicked: page.go("TesterCard", {
                testerId: testerId
            })
        }
    }

    // Large words may need more than a small screen.
    ScrollColumn {
        id: none

        objectName: "noTesters"
        anchors.fill: parent
        visible: testers.count === 0

        Item {
            width: parent.width
            height: Math.max(0, (none.height - words.height) / 3)
        }

        EmptyState {
            id: words

            objectName: "noTestersWords"
            width: parent.width
            heading: qsTr("No tester yet")
            text: qsTr("A reading is only as good as its gauge. Type the gauge in once: range, class, hose. Home-made ones are normal.")
        }
    }

    // Inside the sheet its own property of the same name would hide the page's id.
    SheetLoader {
        id: sheets

        readonly property TesterListModel pageTesters: testers
    }

    Component {
        id: newTester

        NewTesterSheet {
            testers: sheets.pageTesters
        }
    }

    actions: BigButton {
        objectName: "addTester"
        text: qsTr("Add a tester")
        onClicked: sheets.show(newTester)
    }
}
