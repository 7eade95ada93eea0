// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Every number that the app assumes, with its comment, so that nobody has to take the odds on trust.
AppPage {
    id: page

    required property AppContext app

    signal go(name: string, args: var)

    title: qsTr("Working assumptions")
    subtitle: qsTr("Version %1").arg(viewModel.version)

    AssumptionsModel {
        id: viewModel

        app: page.app
    }

    HitRateModel {
        id: hitRate

        app: page.app
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Theme.gap

        LText {
            width: parent.width
            text: qsTr("The odds of where it leaks rest on these numbers. They were not yet counted on real engines. Every report names their version, so that it can be worked out again.")
        }

        LText {
            objectName: "hitRate"
            width: parent.width
            visible: text !== ""
            text: hitRate.text
        }

        Repeater {
            model: viewModel.groups

            SourceList {
                required property var modelData
                required property int index

                objectName: "group_" + index
                width: parent.width
                heading: modelData.heading
                text: modelData.text
                items: modelData.items
            }
        }
    }
}
