// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick

// Counts seconds by the clock from start to stop, so that a phone that slept in between is right. Nothing runs before
// start() and after stop().
Item {
    id: clock

    property real since: 0
    property int seconds: 0
    readonly property bool running: since > 0
    readonly property string text: Math.floor(seconds / 60) + ":" + String(seconds % 60).padStart(2, "0")

    // A full minute has gone by.
    signal minute

    function look() {
        const now = Math.floor((Date.now() - since) / 1000);
        const full = Math.floor(now / 60) > Math.floor(seconds / 60);
        seconds = now;
        // Forgotten: it must not run all night.
        if (now >= 3600)
            since = 0;
        if (full)
            minute();
    }

    function start() {
        seconds = 0;
        since = Date.now();
    }

    function stop() {
        if (!running)
            return;
        look();
        since = 0;
    }

    Timer {
        objectName: "tick"
        interval: 500
        repeat: true
        running: clock.running
        onTriggered: clock.look()
    }
}
