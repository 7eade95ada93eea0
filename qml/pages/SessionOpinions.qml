// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What others brought into a session: what is new, and tests that they ask for.
Column {
    id: list

    required property AppContext app
    required property string sessionId
    required property string engineId
    readonly property string remarks: model.remarksText

    signal go(name: string, args: var)

    spacing: Theme.space

    TodoModel {
        id: model

        app: list.app
        sessionId: list.sessionId
    }

    NewsRow {
        width: parent.width
        app: list.app
        engineId: list.engineId
        onGo: (name, args) => list.go(name, args)
    }

    Panel {
        width: parent.width
        visible: model.todos.length > 0
        selected: model.open > 0

        Column {
            id: todos

            width: parent.width
            spacing: Theme.space

            LText {
                width: parent.width
                role: "heading"
                text: model.open > 0 ? qsTr("Please test this") : qsTr("Asked for, and done")
            }

            Repeater {
                model: model.todos

                Column {
                    id: todo

                    required property var modelData
                    required property int index

                    width: todos.width
                    spacing: Theme.space

                    CheckRow {
                        objectName: "todo_" + todo.index
                        width: parent.width
                        text: todo.modelData.text
                        detail: todo.modelData.detail
                        checked: todo.modelData.done
                        onClicked: model.tick(todo.modelData.id)
                    }

                    SideButton {
                        objectName: "doTodo_" + todo.index
                        width: parent.width
                        visible: !todo.modelData.done
                        text: todo.modelData.look ? qsTr("Look at it") : qsTr("Test it now")
                        onClicked: list.go(todo.modelData.page, todo.modelData.args)
                    }
                }
            }
        }
    }
}
