// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick

// A key with a picture only because its word stands beside it: - and +, previous and next.
Pressable {
    id: control

    required property string symbol

    targetKind: "minor"
    padding: 0
    horizontalPadding: 0
    autoRepeat: true

    inside: Item {
        Symbol {
            name: control.symbol
            size: 24
            anchors.centerIn: parent
        }
    }
}
