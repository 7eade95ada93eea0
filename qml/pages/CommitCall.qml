// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components

// The amber button of a page whose `gate` asks for the person's own call.
BigButton {
    id: button

    required property MyCallGate gate

    objectName: "commitCall"
    visible: gate.closed
    enabled: gate.complete
    text: gate.complete ? qsTr("Commit my call") : gate.single ? qsTr("Choose where it leaks") : qsTr("Call every cylinder first")
    onClicked: gate.commit()
}
