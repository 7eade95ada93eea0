// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// All cards that say how a step is done, in the order of the job.
AppPage {
    id: page

    required property AppContext app

    signal go(name: string, args: var)

    title: qsTr("How to")

    HowToModel {
        id: viewModel

        app: page.app
    }

    ScrollColumn {
        anchors.fill: parent

        ErrorCard {
            width: parent.width
            visible: viewModel.problem !== ""
            heading: qsTr("The cards can't be shown")
            message: viewModel.problem
        }

        Repeater {
            model: viewModel.groups

            Column {
                id: group

                required property var modelData

                width: parent.width
                spacing: 8

                LText {
                    width: parent.width
                    role: "heading"
                    text: group.modelData.title
                    topPadding: 8
                }

                Repeater {
                    model: group.modelData.cards

                    ListRow {
                        required property var modelData

                        objectName: "card_" + modelData.card
                        width: parent.width
                        targetKind: "primary"
                        text: modelData.title
                        detail: modelData.brief
                        onClicked: page.go("HowToCard", {
                            card: modelData.card
                        })
                    }
                }
            }
        }
    }
}
