// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components

// What the app says over its pages.
Snack {
    id: messages

    property double step: -1

    property double since: 0

    signal undoStep(step: double)
    signal redoStep(step: double)

    // What was said on the page before is not about the next one; what was said in leaving it is.
    function pageChanges() {
        if (Date.now() - since > 1500)
            hide();
    }

    function say(text: string, about: double, offered: string) {
        since = Date.now();
        step = about;
        show(text, offered);
    }

    objectName: "snack"
    onUndo: undoStep(step)
    onRedo: redoStep(step)
}
