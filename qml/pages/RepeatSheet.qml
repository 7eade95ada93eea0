// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// A repeat that is further from the reading before than gauge and scatter explain: what is it?
Sheet {
    id: sheet

    required property PadModel model
    property string standing

    signal fresh
    signal redo

    title: qsTr("Were conditions changed?")

    LText {
        width: parent.width
        role: "figure"
        text: sheet.model.oddRepeat
    }

    LText {
        width: parent.width
        text: qsTr("With another throttle, a warmer engine or another gauge the two can't be averaged: they belong in two sessions.")
    }

    SideButton {
        objectName: "keepRepeat"
        width: parent.width
        text: qsTr("Nothing changed: keep as repeat")
        onClicked: {
            sheet.close();
            sheet.model.keepRepeat();
        }
    }

    SideButton {
        objectName: "keepInstead"
        width: parent.width
        visible: sheet.standing !== ""
        text: qsTr("The first was wrong: replace it")
        onClicked: {
            sheet.close();
            sheet.redo();
        }
    }

    actions: BigButton {
        objectName: "freshSession"
        text: qsTr("Start a new session")
        onClicked: {
            sheet.close();
            sheet.fresh();
        }
    }
}
