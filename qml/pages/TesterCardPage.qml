// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One gauge or tester: self-checks first, then its card line by line.
AppPage {
    id: page

    required property AppContext app
    required property string testerId
    // The check that is asked for: its sheet stands open.
    property string checkKind

    // The check that is worth doing next: one that failed or was never done.
    readonly property var due: Array.from(card.checks).find(check => check.state !== "good") ?? card.checks[0]

    signal go(name: string, args: var)

    function check(which: var) {
        sheets.check = which;
        sheets.show(checkSheet);
    }

    Component.onCompleted: {
        const asked = Array.from(card.checks).find(one => one.kind === checkKind);
        if (asked)
            check(asked);
    }

    title: card.found ? card.name : qsTr("Testers")
    subtitle: card.kindName

    TesterCardForm {
        id: card

        app: page.app
        recordId: page.testerId
        onRemoved: page.back()
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Theme.gap

        ErrorCard {
            width: parent.width
            visible: !card.found
            heading: qsTr("This tester is gone")
            message: qsTr("It was deleted. Undo brings it back; otherwise go back to the list.")
        }

        Column {
            id: checks

            width: parent.width
            topPadding: Theme.space
            visible: card.found
            spacing: Theme.space

            LText {
                width: parent.width
                role: "heading"
                text: qsTr("Self-checks")
            }

            LText {
                width: parent.width
                text: qsTr("Before you blame the engine.")
            }

            Repeater {
                model: card.checks

                ListRow {
                    required property var modelData

                    objectName: "check_" + modelData.kind
                    width: checks.width
                    targetKind: "primary"
                    text: modelData.title
                    detail: modelData.last
                    mark: modelData.state
                    onClicked: page.check(modelData)
                }
            }
        }

        FormList {
            id: lines

            width: parent.width
            form: card
            opened: [0, 1]
        }

        // No question that could only be answered one way.
        Column {
            width: parent.width
            visible: card.found && card.uses > 0
            spacing: Theme.space

            LText {
                objectName: "inUse"
                width: parent.width
                text: qsTr("It can't be deleted: %n sessions and readings were taken with it, and their figures need it. If it is no longer used, say so in its name, so that nobody takes it by mistake.", "", card.uses)
            }

            SideButton {
                objectName: "renameTester"
                width: parent.width
                text: qsTr("Change its name")
                onClicked: lines.edit("name")
            }
        }

        SideButton {
            objectName: "deleteTester"
            width: parent.width
            visible: card.found && card.uses === 0
            text: qsTr("Delete this tester")
            onClicked: sheets.show(confirmation)
        }
    }

    SheetLoader {
        id: sheets

        // Inside a sheet its own property of the same name would hide the page's id.
        readonly property TesterCardForm pageCard: card
        property var check
    }

    Component {
        id: confirmation

        ConfirmSheet {
            title: qsTr("Delete %1?").arg(sheets.pageCard.name)
            text: qsTr("Its dial and its checks go with it. No session and no reading was taken with it. Undo brings it back, also later from More, until something else is done.")
            doIt: qsTr("Delete this tester")
            onConfirmed: sheets.pageCard.remove()
        }
    }

    Component {
        id: checkSheet

        TesterCheckSheet {
            card: sheets.pageCard
            check: sheets.check
        }
    }

    actions: BigButton {
        objectName: "checkNext"
        visible: card.found
        text: page.due ? qsTr("Check: %1").arg(page.due.title) : ""
        onClicked: page.check(page.due)
    }
}
