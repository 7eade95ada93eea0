// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// "My call" before the findings are shown, for who wants to learn: lies over them until it is committed. `closed`
// while it hides them.
Loader {
    id: gate

    required property AppContext app
    required property string sessionId

    readonly property bool closed: call.wanted
    readonly property bool complete: call.complete
    readonly property bool single: call.cylinders.length === 1

    function commit() {
        call.commit();
    }

    active: closed
    sourceComponent: ScrollColumn {
        id: form

        spacing: Theme.gap

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("My call")
        }

        LText {
            width: parent.width
            text: qsTr("Where does it leak, in your own view? More than one can be chosen. Once committed it stands, and the findings are shown beside it.")
        }

        LText {
            objectName: "reported"
            width: parent.width
            visible: gate.model.reported
            text: qsTr("A report with the findings was written already. Your call will say that it came after.")
        }

        Repeater {
            model: gate.model.cylinders.length

            Column {
                id: cylinder

                required property int index
                readonly property var call: gate.model.cylinders[index]

                width: form.width
                spacing: Theme.space
                Accessible.role: Accessible.Grouping
                Accessible.name: heading.text
                Accessible.ignored: Theme.isBehind(cylinder)

                LText {
                    id: heading

                    width: parent.width
                    role: "heading"
                    text: qsTr("Cylinder %1").arg(cylinder.call.number)
                }

                // What a call is made of: nobody is to keep it in mind.
                LText {
                    objectName: "measured_" + cylinder.call.number
                    width: parent.width
                    text: cylinder.call.measured
                }

                ChoiceRow {
                    objectName: "call_" + cylinder.call.number
                    width: parent.width
                    options: gate.model.causes
                    currents: cylinder.call.causes
                    onChosen: value => gate.model.choose(cylinder.call.number, value)
                }

                TextRow {
                    objectName: "why_" + cylinder.call.number
                    width: parent.width
                    label: qsTr("Why")
                    text: cylinder.call.text
                    onEdited: text => gate.model.write(cylinder.call.number, text)
                }
            }
        }

        SideButton {
            objectName: "skipCall"
            width: parent.width
            text: qsTr("Show the findings without my call")
            onClicked: gate.model.skip()
        }
    }

    readonly property MyCallModel model: MyCallModel {
        id: call

        app: gate.app
        sessionId: gate.sessionId
    }
}
