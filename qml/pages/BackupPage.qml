// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Everything into one file, and everything back from one. With `file` that backup is opened at once.
AppPage {
    id: page

    required property AppContext app
    property string file

    signal go(name: string, args: var)
    // Several pages at one go; none is the first page.
    signal goOn(places: var)

    title: qsTr("Backup")
    subtitle: viewModel.file

    BackupModel {
        id: viewModel

        app: page.app
        Component.onCompleted: if (page.file !== "")
            open(page.file)
    }

    ScrollColumn {
        anchors.fill: parent

        LText {
            width: parent.width
            visible: !viewModel.possible && !viewModel.busy && !viewModel.nothing
            text: qsTr("One file with all engines, sessions, photos, voice notes and testers, owners' names and contacts too. Keep it somewhere else than on this device.")
        }

        Panel {
            objectName: "work"
            width: parent.width
            visible: viewModel.busy
            selected: true

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("%1: %2 %").arg(viewModel.doing).arg(Math.round(100 * viewModel.share))
                }

                Rectangle {
                    id: bar

                    width: parent.width
                    height: 12
                    radius: 6
                    color: Theme.key
                    Accessible.role: Accessible.ProgressBar
                    Accessible.name: viewModel.doing
                    Accessible.ignored: Theme.isBehind(bar)

                    Rectangle {
                        width: parent.width * viewModel.share
                        height: parent.height
                        radius: parent.radius
                        color: Theme.info
                    }
                }

                SideButton {
                    objectName: "cancel"
                    width: parent.width
                    text: qsTr("Stop")
                    onClicked: viewModel.cancel()
                }
            }
        }

        ErrorCard {
            objectName: "backupProblem"
            width: parent.width
            visible: viewModel.problem !== ""
            message: viewModel.problem
        }

        Panel {
            width: parent.width
            visible: viewModel.result !== ""

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    objectName: "result"
                    width: parent.width
                    role: "figure"
                    text: viewModel.result
                }

                SideButton {
                    objectName: "toEngines"
                    width: parent.width
                    text: qsTr("To the engines")
                    onClicked: page.goOn([])
                }
            }
        }

        Panel {
            width: parent.width
            visible: viewModel.unsaved && !viewModel.busy

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("The backup is made, but lies nowhere yet")
                }

                SideButton {
                    objectName: "saveBackup"
                    width: parent.width
                    text: qsTr("Choose where it goes")
                    onClicked: viewModel.save()
                }
            }
        }

        Tile {
            objectName: "openBackup"
            width: parent.width
            visible: !viewModel.possible && !viewModel.busy && !viewModel.nothing
            title: qsTr("Restore from a backup")
            detail: qsTr("Checked first, then shown, then merged with what is here")
            onClicked: viewModel.choose()
        }

        LText {
            width: parent.width
            visible: viewModel.nothing && !viewModel.possible && !viewModel.busy
            text: qsTr("Nothing is recorded here yet, so there is nothing to back up. A backup is checked first, then shown, then brought in.")
        }

        LText {
            objectName: "holds"
            width: parent.width
            visible: viewModel.possible
            text: viewModel.holds
        }

        Repeater {
            model: viewModel.engines

            Panel {
                id: engine

                required property var modelData

                width: parent.width

                Column {
                    width: parent.width
                    spacing: 4

                    LText {
                        width: parent.width
                        role: "heading"
                        text: engine.modelData.title
                    }

                    LText {
                        width: parent.width
                        text: engine.modelData.text
                    }
                }
            }
        }

        BackupKeys {
            width: parent.width
            keys: viewModel.keys
            onToggled: key => viewModel.toggleKey(key)
        }

        LText {
            width: parent.width
            visible: viewModel.possible
            role: "label"
            text: qsTr("Restoring takes nothing away. What you deleted here and the backup still has comes back; what was changed on both sides is kept in both versions.")
        }
    }

    actions: [
        SideButton {
            objectName: "dontRestore"
            visible: viewModel.possible
            text: qsTr("Don't")
            onClicked: viewModel.forget()
        },
        BigButton {
            objectName: viewModel.possible ? "restore" : viewModel.nothing ? "chooseBackup" : "backUp"
            enabled: !viewModel.busy
            text: viewModel.possible ? qsTr("Restore it") : viewModel.nothing ? qsTr("Choose a backup") : qsTr("Back up everything")
            onClicked: viewModel.possible ? viewModel.restore() : viewModel.nothing ? viewModel.choose() : viewModel.backUp()
        }
    ]
}
