// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// A photo of the gauge reads otherwise than was typed: which of the two holds? One touch keeps it; closed without
// an answer, the next Keep takes what was typed.
Sheet {
    id: sheet

    required property PadModel model

    title: qsTr("Which one holds?")

    LText {
        objectName: "photoReads"
        width: parent.width
        role: "figure"
        text: sheet.model.photoReads
    }

    Repeater {
        // As it was asked: the answer takes the question away.
        model: sheet.model.photoChoices

        SideButton {
            required property var modelData

            objectName: "photo_" + modelData.value
            targetKind: "primary"
            width: parent.width
            text: modelData.text
            onClicked: {
                const model = sheet.model;
                const way = modelData.value;
                sheet.close();
                model.settlePhoto(way);
            }
        }
    }
}
