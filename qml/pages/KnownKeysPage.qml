// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Whose signatures are known by name, and the fingerprint that others know this library by.
AppPage {
    id: page

    required property AppContext app

    // As JavaScript has it: a property of a map that may be empty.
    readonly property var gone: viewModel.forgotten

    title: qsTr("Known keys")

    KnownKeysModel {
        id: viewModel

        app: page.app
    }

    ScrollColumn {
        anchors.fill: parent

        Panel {
            width: parent.width

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("Your own fingerprint")
                }

                LText {
                    objectName: "own"
                    width: parent.width
                    role: viewModel.own === "" ? "body" : "figure"
                    text: viewModel.own === "" ? qsTr("There is none yet: your key is made with the first session file that you hand over.") : viewModel.own
                }

                LText {
                    width: parent.width
                    visible: viewModel.own !== ""
                    role: "label"
                    text: qsTr("Read it out to who gets your session files, or send it another way than the file: only then does it tell them that a file is yours.")
                }

                SideButton {
                    objectName: "copyOwn"
                    width: parent.width
                    visible: viewModel.own !== ""
                    text: viewModel.copied ? qsTr("Copied") : qsTr("Copy")
                    onClicked: viewModel.copyOwn()
                }
            }
        }

        Panel {
            objectName: "forgotten"
            width: parent.width
            visible: page.gone.name !== undefined
            selected: true

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    text: qsTr("%1 is forgotten: what this key signs is from an unknown key again.").arg(page.gone.name ?? "")
                }

                SideButton {
                    objectName: "undoForget"
                    width: parent.width
                    text: qsTr("Undo")
                    onClicked: viewModel.undoForget()
                }
            }
        }

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("People")
        }

        LText {
            objectName: "nobody"
            width: parent.width
            visible: viewModel.keys.length === 0
            text: qsTr("Nobody is named yet. When a signed session file comes in you can say whose key it is.")
        }

        Repeater {
            model: viewModel.keys

            KnownKey {
                required property var modelData
                required property int index

                objectName: "key_" + index
                width: parent.width
                known: modelData
                onRenamed: name => viewModel.rename(modelData.key, name)
                onForgotten: viewModel.forget(modelData.key)
            }
        }

        LText {
            width: parent.width
            role: "label"
            text: qsTr("A name is what you call the holder of a key. Give one only after you have compared the fingerprint with them.")
        }
    }
}
