// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// How loud it is: a bar that fills. `level` 0..1.
Rectangle {
    id: meter

    property real level: 0

    implicitHeight: 24
    radius: height / 2
    color: Theme.key
    Accessible.role: Accessible.ProgressBar
    Accessible.name: qsTr("Loudness %1 %").arg(Math.round(100 * level))
    Accessible.ignored: Theme.isBehind(meter)

    Rectangle {
        width: Math.max(parent.height, parent.width * Math.min(1, meter.level))
        height: parent.height
        radius: parent.radius
        color: Theme.info
    }
}
