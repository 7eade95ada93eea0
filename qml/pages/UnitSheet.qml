// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// The digits look like those of the dial's other scale: one touch says which it was, and keeps them.
Sheet {
    id: sheet

    required property PadModel model

    title: qsTr("Which unit?")

    LText {
        objectName: "otherUnit"
        width: parent.width
        role: "figure"
        text: sheet.model.otherUnit
    }

    Repeater {
        // As it was asked: the answer takes the question away.
        model: sheet.model.unitChoices

        SideButton {
            required property var modelData

            objectName: "unit_" + modelData.value
            targetKind: "primary"
            width: parent.width
            text: modelData.text
            onClicked: {
                const model = sheet.model;
                const way = modelData.value;
                sheet.close();
                model.settleUnit(way);
            }
        }
    }
}
