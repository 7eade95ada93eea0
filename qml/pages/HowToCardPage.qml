// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One step of the job: why, what can hurt, pictures, how, what it tells, what goes wrong, and where that comes from.
AppPage {
    id: page

    required property AppContext app
    required property string card

    readonly property bool keepsAwake: true

    signal go(name: string, args: var)

    title: viewModel.found ? viewModel.title : qsTr("How to")

    HowToModel {
        id: viewModel

        app: page.app
        card: page.card
    }

    ScrollColumn {
        anchors.fill: parent

        ErrorCard {
            width: parent.width
            visible: !viewModel.found
            heading: qsTr("This card is not there")
            message: viewModel.problem !== "" ? viewModel.problem : qsTr("The list of all cards has what there is.")
        }

        // In the scrolling part: large text would leave it no room above.
        LText {
            width: parent.width
            visible: text !== ""
            text: viewModel.brief
        }

        HowToSection {
            objectName: "why"
            width: parent.width
            visible: viewModel.found
            heading: qsTr("Why")

            Repeater {
                model: viewModel.why

                LText {
                    required property string modelData

                    width: parent.width
                    text: modelData
                }
            }
        }

        Repeater {
            model: viewModel.cautions

            Caution {
                required property string modelData

                width: parent.width
                text: modelData
            }
        }

        Repeater {
            model: viewModel.pictures

            HowToPicture {
                required property var modelData

                width: parent.width
                picture: modelData
            }
        }

        HowToSection {
            objectName: "how"
            width: parent.width
            visible: viewModel.found
            heading: qsTr("How")

            Repeater {
                model: viewModel.how

                NumberedLine {
                    required property string modelData
                    required property int index

                    width: parent.width
                    number: index + 1
                    text: modelData
                }
            }
        }

        HowToTerms {
            objectName: "signs"
            width: parent.width
            heading: qsTr("What it tells")
            terms: viewModel.signs
        }

        HowToTerms {
            objectName: "slips"
            width: parent.width
            heading: qsTr("What goes wrong")
            terms: viewModel.slips
        }

        HowToTerms {
            objectName: "sources"
            width: parent.width
            heading: qsTr("Where this comes from")
            terms: viewModel.sources
        }

        SideButton {
            objectName: "allCards"
            width: parent.width
            text: qsTr("All cards")
            onClicked: page.go("HowTo", {})
        }
    }

    actions: BigButton {
        objectName: "nextCard"
        visible: viewModel.nextCard !== ""
        text: page.compact && Theme.textScale > 1.3 ? qsTr("Next card") : qsTr("Next: %1").arg(viewModel.nextTitle)
        onClicked: page.go("HowToCard", {
            card: viewModel.nextCard
        })
    }
}
