// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// The right pane of a wide screen before anything is chosen.
Rectangle {
    color: Theme.ground

    EmptyState {
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.gap, 400)
        heading: qsTr("Choose an engine")
        text: qsTr("Its sessions open here.")
    }
}
