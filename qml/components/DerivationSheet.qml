// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick

// "Where does this come from": `steps` is a list of {title, words, formula, inputs and doubts: [{name, value}], doubtsTitle, source}.
Sheet {
    id: sheet

    property var steps: []

    title: qsTr("Where does this come from")

    Repeater {
        model: sheet.steps

        Panel {
            id: step

            required property var modelData

            width: parent.width

            Column {
                width: parent.width
                spacing: 4

                LText {
                    width: parent.width
                    role: "heading"
                    text: step.modelData.title ?? ""
                    visible: text !== ""
                }

                LText {
                    width: parent.width
                    text: step.modelData.words ?? ""
                    visible: text !== ""
                }

                LText {
                    width: parent.width
                    text: step.modelData.formula ?? ""
                    visible: text !== ""
                }

                Repeater {
                    model: step.modelData.inputs ?? []

                    PairLine {
                        required property var modelData

                        width: parent.width
                        name: modelData.name
                        value: modelData.value
                    }
                }

                LText {
                    width: parent.width
                    role: "label"
                    text: step.modelData.doubtsTitle ?? ""
                    visible: doubts.count > 0
                }

                Repeater {
                    id: doubts

                    model: step.modelData.doubts ?? []

                    PairLine {
                        required property var modelData

                        width: parent.width
                        name: modelData.name
                        value: modelData.value
                    }
                }

                LText {
                    width: parent.width
                    role: "label"
                    text: step.modelData.source ? qsTr("Source: %1").arg(step.modelData.source) : ""
                    visible: text !== ""
                }
            }
        }
    }
}
