// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.ViewModels

// Held, it records until it is let go of; tapped, until it is tapped again.
BigButton {
    id: button

    required property VoiceNoteModel note

    readonly property bool recording: note.state === "recording"
    // Longer than any tap.
    readonly property int hold: 600
    property double began: 0

    function begin() {
        if (recording) {
            began = 0;
            note.stop();
        } else {
            note.start();
            // Not before: opening the microphone may take longer than a tap.
            began = Date.now();
        }
    }

    function letGo() {
        if (began > 0 && Date.now() - began > hold)
            note.stop();
    }

    text: recording ? qsTr("Stop and keep") : qsTr("Record: hold or tap")
    enabled: note.state !== "keeping"
    onPressed: begin()
    onReleased: letGo()
    onCanceled: letGo()
    Keys.onReturnPressed: begin()
    Keys.onEnterPressed: begin()
    Accessible.onPressAction: begin()
}
