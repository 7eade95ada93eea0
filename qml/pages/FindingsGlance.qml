// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// All cylinders in a sentence each, above what is said of them in full: picked(index) goes there.
Panel {
    id: glance

    property string headline
    property var cylinders: []

    signal picked(int index)

    objectName: "atAGlance"
    visible: cylinders.length > 1

    Column {
        width: parent.width
        spacing: Theme.space / 2

        LText {
            width: parent.width
            role: "heading"
            text: glance.headline
        }

        FindingLines {
            width: parent.width
            lines: Array.from(glance.cylinders).map((cylinder, i) => ({
                        mark: cylinder.state,
                        text: cylinder.headline,
                        from: i
                    }))
            onExplain: index => glance.picked(index)
        }
    }
}
