// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// A repeat that is further from the reading before than gauge and scatter explain: what is it? Oil that went in since
// comes first: it alone explains a jump.
Sheet {
    id: sheet

    required property PadModel model
    property string standing

    signal fresh
    signal redo

    readonly property bool oiled: model.oilBetween

    title: oiled ? qsTr("Oil went in since") : qsTr("What is different?")

    LText {
        width: parent.width
        role: "figure"
        text: sheet.model.oddRepeat
    }

    LText {
        width: parent.width
        text: sheet.oiled ? qsTr("Oil stays on the rings and helps them to seal. What is read now can't be averaged with what was read before it: it is kept beside it, and not counted.") : qsTr("With another throttle, a warmer engine or another gauge the two can't be averaged: they belong in two sessions.")
    }

    SideButton {
        objectName: "keepOiled"
        width: parent.width
        visible: !sheet.oiled
        text: qsTr("Oil was used since: keep apart")
        onClicked: {
            sheet.close();
            sheet.model.keepOiled();
        }
    }

    SideButton {
        objectName: "changedElse"
        width: parent.width
        visible: sheet.oiled
        text: qsTr("Something else changed: new session")
        onClicked: {
            sheet.close();
            sheet.fresh();
        }
    }

    SideButton {
        objectName: "keepRepeat"
        width: parent.width
        visible: !sheet.oiled
        text: qsTr("Nothing changed: keep both")
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
        objectName: sheet.oiled ? "keepAfterOil" : "freshSession"
        text: sheet.oiled ? qsTr("Keep as read after oil") : qsTr("Something changed: new session")
        onClicked: {
            sheet.close();
            if (sheet.oiled)
                sheet.model.keepOiled();
            else
                sheet.fresh();
        }
    }
}
