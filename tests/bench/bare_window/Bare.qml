// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick

Window {
    width: 412
    height: 915
    visible: true

    Text {
        anchors.centerIn: parent
        text: "Bare"
    }
}
