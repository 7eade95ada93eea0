// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components

// What the app says over its pages.
Snack {
    id: messages

    property double step: -1

    signal undoStep(step: double)

    function say(text: string, undoableStep: double) {
        step = undoableStep;
        show(text, undoableStep >= 0);
    }

    objectName: "snack"
    onUndo: undoStep(step)
}
