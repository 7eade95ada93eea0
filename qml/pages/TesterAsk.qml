// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// "Which gauge?" before the first reading of a kind that no tester was named for; once, and "Not now" is one touch.
Item {
    id: asking

    required property AppContext app
    required property string sessionId
    required property string test

    function ask() {
        if (asker.wanted)
            sheets.show(question);
    }

    TesterAskModel {
        id: asker

        app: asking.app
        sessionId: asking.sessionId
        test: asking.test
    }

    SheetLoader {
        id: sheets
    }

    Component {
        id: question

        Sheet {
            id: sheet

            title: asking.test === "dry" || asking.test === "wet" ? qsTr("Which gauge?") : qsTr("Which tester?")
            onClosed: asker.notNow()

            LText {
                width: parent.width
                text: qsTr("How far a reading can be trusted hangs on it. Without one the app has to assume a usual one.")
            }

            Repeater {
                model: asker.choices

                ListRow {
                    required property var modelData

                    objectName: "tester_" + modelData.value
                    width: parent.width
                    forward: false
                    text: modelData.text
                    detail: modelData.detail
                    onClicked: {
                        asker.choose(modelData.value);
                        sheet.close();
                    }
                }
            }

            SideButton {
                objectName: "notNow"
                width: parent.width
                text: qsTr("Not now")
                onClicked: sheet.close()
            }

            actions: BigButton {
                objectName: "addTester"
                focus: true
                answersReturn: true
                text: qsTr("Add one")
                onClicked: {
                    asker.notNow();
                    sheets.show(newTester);
                }
            }
        }
    }

    Component {
        id: newTester

        NewTesterSheet {
            testers: list
            kind: asker.kind
        }
    }

    // Who adds one from here wants to use it in this session.
    TesterListModel {
        id: list

        app: asking.app
        onAdded: testerId => asker.choose(testerId)
    }
}
