// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What session files brought for one engine: each with what it was before, and a way to where it belongs.
AppPage {
    id: page

    required property AppContext app
    required property string engineId

    signal go(name: string, args: var)

    // The card may be gone once it is seen.
    function follow(index: int) {
        const way = viewModel.items[index];
        viewModel.touch(index);
        go(way.page, way.args);
    }

    title: qsTr("What is new")
    subtitle: viewModel.engineName

    NewsModel {
        id: viewModel

        app: page.app
        engineId: page.engineId
    }

    ScrollColumn {
        anchors.fill: parent

        LText {
            width: parent.width
            visible: viewModel.items.length === 0
            text: qsTr("Nothing that you have not seen.")
        }

        LText {
            objectName: "newsFrom"
            width: parent.width
            visible: text !== ""
            role: "label"
            text: viewModel.from
        }

        ListRow {
            objectName: "conflicts"
            width: parent.width
            visible: viewModel.twoVersions > 0
            mark: "borderline"
            text: qsTr("Two versions: choose")
            detail: qsTr("Changed on both sides; until you choose, both are kept")
            figure: String(viewModel.twoVersions)
            onClicked: page.go("Conflicts", {
                engineId: page.engineId
            })
        }

        Repeater {
            model: viewModel.items

            Panel {
                id: item

                required property var modelData
                required property int index
                readonly property string detail: modelData.seen ? modelData.detail + " · " + qsTr("seen") : modelData.detail

                objectName: "news_" + index
                width: parent.width
                clickable: true
                text: States.sentence([modelData.title, modelData.text, detail])
                onClicked: page.follow(index)

                Column {
                    width: parent.width
                    spacing: 4

                    Item {
                        width: parent.width
                        height: Math.max(name.height, forward.height)

                        LText {
                            id: name

                            role: "heading"
                            silent: true
                            text: item.modelData.title
                            anchors.left: parent.left
                            anchors.right: forward.left
                            anchors.rightMargin: Theme.space
                            anchors.verticalCenter: parent.verticalCenter
                        }

                        Symbol {
                            id: forward

                            name: "forward"
                            size: 22
                            rotation: Theme.rightToLeft ? 180 : 0
                            anchors.right: parent.right
                            anchors.verticalCenter: parent.verticalCenter
                        }
                    }

                    LText {
                        width: parent.width
                        visible: text !== ""
                        silent: true
                        text: item.modelData.text
                    }

                    LText {
                        width: parent.width
                        role: "label"
                        silent: true
                        text: item.detail
                    }

                    VersionFields {
                        width: parent.width
                        fields: item.modelData.fields
                        oneHead: qsTr("Before")
                        otherHead: qsTr("Now")
                    }
                }
            }
        }
    }

    actions: BigButton {
        objectName: "seen"
        text: viewModel.items.length > 0 ? qsTr("Seen") : qsTr("Done")
        onClicked: {
            viewModel.seen();
            page.back();
        }
    }
}
