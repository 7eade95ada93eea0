// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Records that were changed on two sides: all versions with what differs, and the choice which one stands.
AppPage {
    id: page

    required property AppContext app
    required property string engineId

    signal go(name: string, args: var)

    title: qsTr("Two versions")
    subtitle: viewModel.engineName

    ConflictsModel {
        id: viewModel

        app: page.app
        engineId: page.engineId
    }

    ScrollColumn {
        anchors.fill: parent

        LText {
            width: parent.width
            text: viewModel.items.length > 0 ? qsTr("Each of these was changed on two sides. Nothing is lost until you choose, and Undo brings the other version back.") : qsTr("Every record has one version. There is nothing to choose.")
        }

        Repeater {
            model: viewModel.items

            Panel {
                id: record

                required property var modelData
                required property int index

                objectName: "record_" + index
                width: parent.width

                Column {
                    width: parent.width
                    spacing: Theme.space

                    LText {
                        width: parent.width
                        role: "heading"
                        text: record.modelData.title
                    }

                    LText {
                        width: parent.width
                        visible: text !== ""
                        role: "label"
                        text: record.modelData.place
                    }

                    Repeater {
                        model: record.modelData.versions

                        Column {
                            id: version

                            required property var modelData
                            required property int index

                            width: parent.width
                            spacing: Theme.space / 2

                            Accessible.role: Accessible.Grouping
                            Accessible.name: which.text
                            Accessible.ignored: Theme.isBehind(version)

                            LText {
                                id: which

                                width: parent.width
                                role: "figure"
                                text: version.index === 0 ? qsTr("Shows now, %1").arg(version.modelData.when) : qsTr("The other one, %1").arg(version.modelData.when)
                            }

                            Repeater {
                                model: version.modelData.fields

                                PairLine {
                                    required property var modelData

                                    width: version.width
                                    name: modelData.name
                                    value: modelData.text === "" ? qsTr("nothing noted") : modelData.text
                                }
                            }

                            SideButton {
                                objectName: "choose_" + record.index + "_" + version.index
                                width: parent.width
                                text: qsTr("This one stands")
                                onClicked: viewModel.choose(record.index, version.index)
                            }
                        }
                    }
                }
            }
        }
    }

    actions: BigButton {
        objectName: "done"
        text: qsTr("Done")
        onClicked: page.back()
    }
}
