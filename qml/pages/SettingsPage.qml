// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Units, look and handling; and what the app assumes, with its sources.
AppPage {
    id: page

    required property AppContext app

    readonly property AppSettings settings: app.settings

    signal go(name: string, args: var)

    title: qsTr("Settings")

    SettingsModel {
        id: model

        app: page.app
    }

    ScrollColumn {
        id: scroll

        anchors.fill: parent
        spacing: Theme.gap

        // Every language under its own name: who got into a wrong one finds the way back.
        ChoiceRow {
            objectName: "language"
            width: parent.width
            label: qsTr("Language")
            options: [
                {
                    value: "system",
                    text: qsTr("as the system")
                },
                {
                    value: "en",
                    text: "English"
                },
                {
                    value: "de",
                    text: "Deutsch"
                },
                {
                    value: "es",
                    text: "Español"
                }
            ]
            current: page.settings.language
            onChosen: value => page.settings.language = value
        }

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("Units")
        }

        ChoiceRow {
            objectName: "pressure"
            width: parent.width
            label: qsTr("Pressure")
            options: model.pressureUnits
            current: page.settings.pressureUnit
            onChosen: value => page.settings.pressureUnit = value
        }

        ChoiceRow {
            objectName: "clearance"
            width: parent.width
            label: qsTr("Lengths and clearances")
            options: [
                {
                    value: "mm",
                    text: "mm"
                },
                {
                    value: "thou",
                    text: qsTr("inch and thou")
                }
            ]
            current: page.settings.clearanceUnit
            onChosen: value => page.settings.clearanceUnit = value
        }

        LText {
            width: parent.width
            role: "label"
            text: qsTr("What was typed stays in the unit that it was typed in.")
        }

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("Look")
        }

        ChoiceRow {
            objectName: "look"
            width: parent.width
            options: [
                {
                    value: "system",
                    text: qsTr("as the system")
                },
                {
                    value: "workshop",
                    text: qsTr("workshop, dark")
                },
                {
                    value: "daylight",
                    text: qsTr("daylight, light")
                }
            ]
            current: page.settings.look
            onChosen: value => page.settings.look = value
        }

        ChoiceRow {
            id: textSize

            objectName: "textSize"
            width: parent.width
            label: qsTr("Text size, on top of the system's")
            options: Array.from([100, 125, 150, 175, 200]).map(percent => ({
                        value: percent,
                        text: percent + " %"
                    }))
            current: page.settings.textPercent
            onChosen: value => {
                // Sizes are compared by touching one after the other: they must not run away.
                scroll.pin(textSize);
                page.settings.textPercent = value;
            }
        }

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("Hands")
        }

        SettingsHands {
            width: parent.width
            settings: page.settings
            hapticsOffered: model.hapticsOffered
        }

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("Notes and findings")
        }

        SettingsPerson {
            width: parent.width
            settings: page.settings
        }

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("Report")
        }

        ChoiceRow {
            objectName: "paper"
            width: parent.width
            label: qsTr("Paper")
            options: Array.from(["A4", "Letter"]).map(paper => ({
                        value: paper,
                        text: paper
                    }))
            current: page.settings.paper
            onChosen: value => page.settings.paper = value
        }

        LText {
            width: parent.width
            role: "heading"
            text: qsTr("Storage")
        }

        ListRow {
            objectName: "backup"
            width: parent.width
            symbol: "share"
            text: qsTr("Backup")
            detail: qsTr("Everything into one file, or back from one")
            onClicked: page.go("Backup", {})
        }

        ListRow {
            objectName: "knownKeys"
            width: parent.width
            text: qsTr("Known keys")
            detail: qsTr("Whose session files you know by name, and your own fingerprint")
            onClicked: page.go("KnownKeys", {})
        }

        StorageList {
            objectName: "storage"
            width: parent.width
            app: page.app
        }

        SourceList {
            objectName: "limits"
            width: parent.width
            heading: qsTr("Limits")
            text: qsTr("Held against readings when the engine card has no factory limit.")
            items: model.limits
        }

        ListRow {
            objectName: "assumptions"
            width: parent.width
            text: qsTr("Working assumptions")
            detail: qsTr("Numbers of the app's own or of common practice.")
            onClicked: page.go("Assumptions", {})
        }

        ListRow {
            objectName: "licences"
            width: parent.width
            text: qsTr("Licences")
            detail: qsTr("What the app is made of.")
            onClicked: page.go("Licences", {})
        }

        LText {
            width: parent.width
            role: "label"
            text: qsTr("Lapwing %1. Works without a network; nothing leaves this device by itself. The library lies in %2.").arg(model.version).arg(model.folder)
        }
    }
}
