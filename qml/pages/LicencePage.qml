// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The words of one licence. Paragraph by paragraph: the long ones have hundreds of lines.
AppPage {
    id: page

    required property AppContext app
    required property string licence

    signal go(name: string, args: var)

    title: page.licence

    SettingsModel {
        id: model

        app: page.app
    }

    ListView {
        anchors.fill: parent
        clip: true
        spacing: Theme.gap
        boundsBehavior: Flickable.DragOverBounds
        boundsMovement: Flickable.StopAtBounds
        model: model.licenceText(page.licence).split(/\n\s*\n/)

        delegate: LText {
            required property string modelData

            width: ListView.view.width
            role: "label"
            // Law is written in lines of its own width.
            text: modelData.split("\n").map(line => line.trim()).join(" ")
        }
    }
}
