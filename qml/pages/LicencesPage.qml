// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What the app is made of, and under which licence. Names and holders are the same in every language.
AppPage {
    id: page

    required property AppContext app

    signal go(name: string, args: var)

    title: qsTr("Licences")

    SettingsModel {
        id: model

        app: page.app
    }

    ListView {
        objectName: "licences"
        anchors.fill: parent
        clip: true
        spacing: Theme.space
        boundsBehavior: Flickable.DragOverBounds
        boundsMovement: Flickable.StopAtBounds
        model: model.licences

        delegate: ListRow {
            required property var modelData

            objectName: "licence_" + modelData.name
            width: ListView.view.width
            text: modelData.name + " · " + modelData.licence
            detail: modelData.holders
            onClicked: page.go("Licence", {
                licence: modelData.name
            })
        }
    }
}
