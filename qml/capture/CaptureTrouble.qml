// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// Why nothing can be taken, and the way out.
ErrorCard {
    id: trouble

    required property CaptureBacked capture

    signal again

    visible: capture.blocked !== ""
    message: capture.blocked
    action: qsTr("Try again")
    second: capture.canOpenSettings ? qsTr("System settings") : ""
    onActed: again()
    onSecondActed: capture.openSystemSettings()
}
