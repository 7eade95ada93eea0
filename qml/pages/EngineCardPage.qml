// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One engine: its sessions, its layout picture and its card, line by line.
AppPage {
    id: page

    required property AppContext app
    required property string engineId

    // The line of the card that is asked for: its sheet stands open.
    property string line

    property bool allSessions: false
    // A session of today is gone on with; a second one on a day is the exception.
    readonly property bool goesOn: card.visits.length > 0 && card.visits[0].today

    signal go(name: string, args: var)

    title: card.found ? card.name : qsTr("Engine card")
    subtitle: card.subtitle

    EngineCardForm {
        id: card

        app: page.app
        recordId: page.engineId
        onRemoved: page.back()
    }

    EngineStarter {
        id: starter

        app: page.app
        onSessionOpened: sessionId => page.go("Session", {
                sessionId: sessionId
            })
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Theme.gap

        ErrorCard {
            width: parent.width
            visible: !card.found
            heading: qsTr("This engine is gone")
            message: qsTr("It was deleted. Undo brings it back; otherwise go back to the list.")
        }

        NewsRow {
            width: parent.width
            app: page.app
            engineId: page.engineId
            onGo: (name, args) => page.go(name, args)
        }

        TagChips {
            width: parent.width
            visible: card.found && card.tags.length > 0
            tags: card.tags
            onChosen: tag => page.go("Engines", {
                tag: tag
            })
        }

        Column {
            id: sessions

            width: parent.width
            topPadding: Theme.space
            visible: card.visits.length > 0
            spacing: Theme.space

            LText {
                width: parent.width
                role: "heading"
                text: qsTr("Sessions")
            }

            Repeater {
                model: page.allSessions ? card.visits : Array.from(card.visits).slice(0, 3)

                ListRow {
                    required property var modelData

                    objectName: "session_" + modelData.sessionId
                    width: sessions.width
                    text: modelData.text
                    detail: modelData.detail
                    onClicked: page.go("Session", {
                        sessionId: modelData.sessionId
                    })
                }
            }

            SideButton {
                objectName: "allSessions"
                width: parent.width
                visible: card.visits.length > 3 && !page.allSessions
                text: qsTr("All %n sessions", "", card.visits.length)
                onClicked: page.allSessions = true
            }
        }

        ListRow {
            objectName: "handOver"
            width: parent.width
            visible: card.visits.length > 0
            symbol: "share"
            text: qsTr("Hand over")
            detail: qsTr("Report, session file, table")
            onClicked: page.go("HandOver", {
                engineId: page.engineId,
                sessionId: card.visits[0].sessionId
            })
        }

        ListRow {
            objectName: "beforeAfter"
            width: parent.width
            visible: card.visits.length > 0
            symbol: "swap"
            text: qsTr("Before and after")
            detail: qsTr("Two visits, cylinder by cylinder")
            onClicked: page.go("Changes", {
                engineId: page.engineId
            })
        }

        HistoryPanel {
            width: parent.width
            app: page.app
            engineId: page.engineId
        }

        LayoutPicture {
            width: parent.width
            visible: card.found
            cylinders: card.cylinders
            onSwapped: (a, b) => card.swapCylinders(a, b)
            onEdit: index => {
                sheets.index = index;
                sheets.show(cylinderSheet);
            }
        }

        FormList {
            width: parent.width
            form: card
            Component.onCompleted: if (page.line !== "" && card.found)
                edit(page.line)
            opened: card.visits.length === 0 ? [1] : []
        }

        SideButton {
            objectName: "deleteEngine"
            width: parent.width
            visible: card.found
            text: card.visits.length > 0 ? qsTr("Delete this engine and its sessions") : qsTr("Delete this engine")
            onClicked: sheets.show(deleting)
        }
    }

    SheetLoader {
        id: sheets

        // Inside a sheet its own property of the same name would hide the page's id.
        readonly property EngineCardForm pageCard: card
        property int index: 0
    }

    Component {
        id: cylinderSheet

        CylinderSheet {
            card: sheets.pageCard
            index: sheets.index
        }
    }

    // Asked about, with a bare card too: the message's Undo is gone in seconds, a year of work is not.
    Component {
        id: deleting

        DeleteEngineSheet {
            card: sheets.pageCard
        }
    }

    actions: [
        IconWord {
            objectName: "anotherSession"
            visible: page.goesOn
            symbol: "plus"
            text: qsTr("New session")
            onClicked: starter.openSession(page.engineId)
        },
        BigButton {
            objectName: page.goesOn ? "goOn" : "newSession"
            enabled: card.found
            text: page.goesOn ? qsTr("Go on: %1").arg(card.visits[0].text) : qsTr("New session")
            onClicked: {
                if (page.goesOn)
                    page.go("Session", {
                        sessionId: card.visits[0].sessionId
                    });
                else
                    starter.openSession(page.engineId);
            }
        }
    ]
}
