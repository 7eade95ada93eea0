// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One line of the plan, to be written and changed.
AppPage {
    id: page

    required property AppContext app
    required property string lineId

    signal go(name: string, args: var)

    title: qsTr("Line of the plan")

    PlanLineForm {
        id: line

        app: page.app
        recordId: page.lineId
        onRemoved: page.back()
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Theme.gap

        ErrorCard {
            width: parent.width
            visible: !line.found
            heading: qsTr("This line is gone")
            message: qsTr("It was deleted. Undo brings it back; otherwise go back to the plan.")
        }

        FormList {
            width: parent.width
            form: line
            allOpened: true
        }

        SideButton {
            objectName: "deleteLine"
            width: parent.width
            visible: line.found
            text: qsTr("Delete this line")
            onClicked: line.remove()
        }
    }

    actions: BigButton {
        objectName: "done"
        text: qsTr("Done")
        onClicked: page.back()
    }
}
