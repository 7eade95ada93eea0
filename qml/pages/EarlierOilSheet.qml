// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// Another session's wet test left oil on these rings, hours ago. Whether it is gone only the person knows, and the
// proof of a repair hangs on it. Asked once a session.
Sheet {
    id: sheet

    required property PadModel model

    title: qsTr("Is the oil gone?")

    function settle(way: string) {
        const model = sheet.model;
        sheet.close();
        model.settleOil(way);
    }

    LText {
        objectName: "earlierOil"
        width: parent.width
        role: "figure"
        text: sheet.model.earlierOil
    }

    SideButton {
        objectName: "oilWiped"
        width: parent.width
        targetKind: "primary"
        text: qsTr("This bore was wiped")
        onClicked: sheet.settle("wiped")
    }

    SideButton {
        objectName: "oilStays"
        width: parent.width
        targetKind: "primary"
        text: qsTr("Neither: read over oil")
        onClicked: sheet.settle("stays")
    }

    // Last, so that large text does not push the other answers out of sight behind the amber one.
    LText {
        width: parent.width
        text: qsTr("Oil helps the rings to seal until the engine has run for some minutes, or the bore was wiped. A reading over oil can't be compared with one before it.")
    }

    actions: BigButton {
        objectName: "oilGone"
        text: qsTr("The engine ran since")
        onClicked: sheet.settle("ran")
    }
}
