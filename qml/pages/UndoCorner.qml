// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Undo in a page's corner, where steps follow each other quickly and a message would cover the keys. Its room is kept
// free before where the head may wrap, which would move everything under the thumb when it comes. A head of one line
// has that room until then.
Item {
    id: corner

    required property AppContext app
    // A pad says in its head what was undone: a message would lie over the cylinder that its digits go back to.
    property KeyedModel keyed: null
    property double step: -1
    property bool roomKept: true

    implicitWidth: roomKept || button.visible ? button.implicitWidth : 0
    // A dp or two over the way back's height would push all that lies under the head down when it comes.
    implicitHeight: button.implicitHeight < Theme.minorTarget + 3 ? Theme.minorTarget : button.implicitHeight

    IconWord {
        id: button

        objectName: "undo"
        visible: corner.step >= 0
        height: corner.implicitHeight
        targetKind: "minor"
        padding: 0
        verticalPadding: 0
        symbol: "undo"
        text: qsTr("Undo")
        onClicked: {
            const step = corner.step;
            corner.step = -1;
            if (corner.keyed)
                corner.keyed.undo(step);
            else
                corner.app.undo(step);
        }
    }

    Connections {
        target: corner.app

        function onStepDone(text: string, step: double) {
            corner.step = step;
        }
    }
}
