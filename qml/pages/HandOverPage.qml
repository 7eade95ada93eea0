// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The report for the owner, the session file for the mentor, the readings as a table.
AppPage {
    id: page

    required property AppContext app
    required property string engineId
    required property string sessionId
    // What most likely goes out: the session file back to who asked, or else the owner's report.
    property bool sendingBack: false

    signal go(name: string, args: var)

    title: qsTr("Hand over")
    subtitle: viewModel.engineName + " · " + viewModel.visitLine

    HandOverModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
    }

    ScrollColumn {
        id: scroll

        anchors.fill: parent

        // What was just written stands on top: nobody should have to look for it.
        Connections {
            target: viewModel

            function onMadeChanged() {
                scroll.contentY = 0;
            }
        }

        Repeater {
            model: viewModel.made

            Panel {
                id: made

                required property var modelData
                required property int index

                objectName: "made_" + index
                width: parent.width
                selected: index === 0

                Column {
                    width: parent.width
                    spacing: Theme.space

                    LText {
                        width: parent.width
                        role: "heading"
                        text: qsTr("Written: %1").arg(made.modelData.name)
                        wrapMode: Text.Wrap
                    }

                    LText {
                        width: parent.width
                        role: "label"
                        text: made.modelData.place
                        wrapMode: Text.WrapAnywhere
                    }

                    LText {
                        objectName: "gaps_" + made.index
                        width: parent.width
                        visible: made.modelData.gaps !== ""
                        text: qsTr("Everything is in it but what is no longer on this device:") + "\n" + made.modelData.gaps
                    }

                    LText {
                        objectName: "whereabouts_" + made.index
                        width: parent.width
                        visible: made.modelData.whereabouts !== ""
                        text: qsTr("These photos came with another file and tell where they were taken. Whoever gets this one can read it:") + "\n" + made.modelData.whereabouts
                    }

                    SideButton {
                        objectName: "takePlacesOff_" + made.index
                        width: parent.width
                        visible: made.modelData.whereabouts !== ""
                        enabled: !viewModel.busy
                        text: qsTr("Write it anew without the places")
                        onClicked: viewModel.takePlacesOff()
                    }

                    Flow {
                        width: parent.width
                        spacing: Theme.space

                        SideButton {
                            width: Math.min(implicitWidth, parent.width)
                            visible: viewModel.canShare
                            text: viewModel.shareText
                            onClicked: viewModel.share(made.index)
                        }

                        SideButton {
                            width: Math.min(implicitWidth, parent.width)
                            text: qsTr("Save a copy")
                            onClicked: viewModel.saveCopy(made.index)
                        }
                    }
                }
            }
        }

        Panel {
            objectName: "beforeCall"
            width: parent.width
            visible: viewModel.beforeCall
            selected: true

            LText {
                width: parent.width
                text: qsTr("Your own call is not made yet. The report holds the findings, in the session file too: once one is written, your call will say that it came after. The table of readings gives nothing away.")
            }
        }

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("What goes in")
        }

        Repeater {
            model: viewModel.visits

            CheckRow {
                required property var modelData

                objectName: "visit_" + modelData.id
                width: parent.width
                text: modelData.title
                detail: modelData.date
                checked: modelData.chosen
                onToggled: viewModel.toggleVisit(modelData.id)
            }
        }

        SwitchRow {
            objectName: "withOwner"
            width: parent.width
            text: qsTr("With the owner's name and contact")
            detail: qsTr("Left out of the session file unless you switch it on")
            checked: viewModel.withOwner
            onToggled: viewModel.withOwner = checked
        }

        SwitchRow {
            objectName: "appendix"
            width: parent.width
            text: qsTr("Report with formulas and sources")
            detail: qsTr("For a mentor; the one in the session file has them always")
            checked: viewModel.appendix
            onToggled: viewModel.appendix = checked
        }

        Tile {
            objectName: "makeReportToo"
            width: parent.width
            visible: page.sendingBack
            enabled: !viewModel.busy
            title: qsTr("Report for the owner (PDF)")
            onClicked: viewModel.make("report")
        }

        Tile {
            objectName: "makeSession"
            width: parent.width
            visible: !page.sendingBack
            enabled: !viewModel.busy
            title: qsTr("Session file")
            detail: qsTr("For a mentor: everything in one file that any unzip opens, with checksums against damage")
            onClicked: viewModel.make("session")
        }

        Tile {
            objectName: "makeTable"
            width: parent.width
            enabled: !viewModel.busy
            title: qsTr("Table of readings (CSV)")
            detail: qsTr("For a spreadsheet: every reading as typed, and in SI units")
            onClicked: viewModel.make("table")
        }

        ListRow {
            objectName: "backup"
            width: parent.width
            text: qsTr("Backup of everything")
            detail: qsTr("All engines into one file, or back from one")
            onClicked: page.go("Backup", {})
        }

        LText {
            objectName: "ownFingerprint"
            width: parent.width
            visible: viewModel.fingerprint !== ""
            role: "label"
            text: qsTr("Your session files are signed. Who gets one compares this fingerprint with you once: %1").arg(viewModel.fingerprint)
        }
    }

    actions: BigButton {
        objectName: page.sendingBack ? "makeSession" : "makeReport"
        enabled: !viewModel.busy
        text: viewModel.busy ? qsTr("Writing …") : page.sendingBack ? qsTr("Session file") : qsTr("Report for the owner (PDF)")
        onClicked: viewModel.make(page.sendingBack ? "session" : "report")
    }
}
