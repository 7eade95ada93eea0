// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// Undo in a page's corner, where steps follow each other quickly and a message would cover the keys.
IconWord {
    id: corner

    required property AppContext app
    property double step: -1

    objectName: "undo"
    visible: step >= 0
    targetKind: "minor"
    padding: 0
    symbol: "undo"
    text: qsTr("Undo")
    onClicked: {
        app.undo(step);
        step = -1;
    }

    Connections {
        target: corner.app

        function onStepDone(text: string, step: double) {
            corner.step = step;
        }
    }
}
