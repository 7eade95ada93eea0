// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// What a session file holds and what of it is new here, before anything is changed.
Sheet {
    id: sheet

    required property BringInModel model

    title: model.heading
    onClosed: model.cancel()

    ErrorCard {
        width: parent.width
        visible: sheet.model.problem !== ""
        heading: qsTr("This file can't be brought in")
        message: sheet.model.problem
    }

    Repeater {
        model: sheet.model.lines

        Panel {
            id: line

            required property var modelData

            width: parent.width

            Column {
                width: parent.width
                spacing: 2

                LText {
                    width: parent.width
                    role: "heading"
                    text: line.modelData.text
                }

                LText {
                    width: parent.width
                    text: line.modelData.detail
                }
            }
        }
    }

    actions: BigButton {
        objectName: "bringIn"
        visible: sheet.model.possible
        text: qsTr("Bring it in")
        onClicked: {
            sheet.model.bringIn();
            sheet.close();
        }
    }
}
