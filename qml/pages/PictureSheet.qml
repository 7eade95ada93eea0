// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// One photo, large, only to look at. `photo` as EvidenceModel lists it.
Sheet {
    id: sheet

    required property var photo

    title: photo.title

    Image {
        objectName: "picture"
        width: parent.width
        height: Math.min(width, sheet.parent ? 0.6 * sheet.parent.height : width)
        visible: sheet.photo.file !== ""
        source: sheet.photo.file
        sourceSize.width: 1600
        sourceSize.height: 1600
        fillMode: Image.PreserveAspectFit
        asynchronous: true
        Accessible.role: Accessible.Graphic
        Accessible.name: sheet.photo.detail
    }

    LText {
        width: parent.width
        visible: sheet.photo.file === ""
        text: qsTr("The file of this photo is missing here. Ask for the session file again.")
    }

    LText {
        width: parent.width
        visible: text !== ""
        role: "figure"
        text: sheet.photo.reading === "" ? "" : qsTr("Read from the photo: %1").arg(sheet.photo.reading)
    }

    LText {
        width: parent.width
        role: "label"
        text: sheet.photo.detail
    }
}
