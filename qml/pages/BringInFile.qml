// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One session file before it is brought in: whose it is, what is new in it, and what differs. `file` as BringInModel
// lists it.
Column {
    id: list

    required property var file
    property bool signatureShown: true

    signal named(name: string)

    spacing: Theme.space

    SignaturePanel {
        width: parent.width
        visible: list.signatureShown
        signature: list.file.signature
        onNamed: name => list.named(name)
    }

    Panel {
        width: parent.width

        Column {
            width: parent.width
            spacing: Theme.space

            LText {
                width: parent.width
                role: "heading"
                text: list.file.title
            }

            LText {
                objectName: "whatIsNew"
                width: parent.width
                text: list.file.text
            }

            LText {
                objectName: "gaps"
                width: parent.width
                visible: list.file.gaps !== ""
                text: qsTr("The sender no longer had everything. Not in this file:") + "\n" + list.file.gaps
            }

            LText {
                objectName: "whereabouts"
                width: parent.width
                visible: list.file.whereabouts !== ""
                text: qsTr("These photos tell where they were taken. They are kept as the sender made them:") + "\n" + list.file.whereabouts
            }

            Repeater {
                model: list.file.news

                Column {
                    id: news

                    required property var modelData

                    width: parent.width
                    spacing: 2

                    LText {
                        width: parent.width
                        role: "figure"
                        text: news.modelData.title
                    }

                    LText {
                        width: parent.width
                        visible: text !== ""
                        text: news.modelData.text
                    }
                }
            }

            LText {
                width: parent.width
                visible: list.file.more > 0
                role: "label"
                text: qsTr("and %1 more").arg(list.file.more)
            }
        }
    }

    Repeater {
        model: list.file.differences

        Panel {
            id: difference

            required property var modelData
            required property int index

            objectName: "difference_" + index
            width: list.width

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: difference.modelData.title
                }

                LText {
                    width: parent.width
                    text: difference.modelData.text
                }

                VersionFields {
                    width: parent.width
                    fields: difference.modelData.fields
                }
            }
        }
    }
}
