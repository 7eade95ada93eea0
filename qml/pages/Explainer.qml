// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components

// Shows where a figure comes from: show(steps), nothing where there are none.
Loader {
    id: explainer

    property var steps: []

    function show(of: var) {
        steps = of;
        active = of.length > 0;
    }

    active: false
    sourceComponent: DerivationSheet {
        steps: explainer.steps
        onClosed: explainer.active = false
        Component.onCompleted: open()
    }
}
