// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick.Dialogs

// QtQuick.Dialogs has no public C++ interface: this gives QuickFileDialog properties and signals to hold on to.
FileDialog {
    id: dialog

    property bool saving: false

    signal chosen(file: url)

    objectName: "chooseFile"
    acceptLabel: saving ? qsTr("Save") : qsTr("Open")
    fileMode: saving ? FileDialog.SaveFile : FileDialog.OpenFile
    onAccepted: chosen(selectedFile)
}
