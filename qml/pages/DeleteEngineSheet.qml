// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// Asks before an engine goes with all that was ever measured on it.
Sheet {
    id: sheet

    required property EngineCardForm card

    title: qsTr("Delete %1?").arg(card.name)

    LText {
        width: parent.width
        text: qsTr("With it go %n session(s): readings, photos, voice notes, plans. Undo brings all of it back as long as it is offered; after that only a backup or a session file does.", "", sheet.card.visits.length)
    }

    SideButton {
        objectName: "deleteForSure"
        width: parent.width
        text: qsTr("Delete all of it")
        onClicked: {
            sheet.card.remove();
            sheet.close();
        }
    }

    actions: BigButton {
        objectName: "keepEngine"
        text: qsTr("Keep the engine")
        onClicked: sheet.close()
    }
}
