// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Photo and voice note for one thing, with how many there are. `tie` is what they hang on, as pages hand it on:
// {sessionId, to, record, cylinder, kind}. go(name, args) as pages say it.
Flow {
    id: buttons

    required property var tie
    property int photos: 0
    property int voices: 0

    signal go(name: string, args: var)

    spacing: Theme.space

    IconWord {
        objectName: "photo"
        symbol: "photo"
        text: buttons.photos > 0 ? qsTr("Photo (%1)").arg(buttons.photos) : qsTr("Photo")
        onClicked: buttons.go("Photo", buttons.tie)
    }

    IconWord {
        objectName: "voiceNote"
        symbol: "voice"
        text: buttons.voices > 0 ? qsTr("Voice note (%1)").arg(buttons.voices) : qsTr("Voice note")
        onClicked: buttons.go("VoiceNote", buttons.tie)
    }
}
