// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Capture
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// All photos and voice notes of a session.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId

    signal go(name: string, args: var)

    title: qsTr("Photos and voice notes")
    subtitle: evidence.visitLine

    EvidenceModel {
        id: evidence

        app: page.app
        sessionId: page.sessionId
    }

    ScrollColumn {
        anchors.fill: parent

        EmptyState {
            width: parent.width
            topPadding: 2 * Theme.gap
            visible: evidence.items.length === 0
            heading: qsTr("Nothing yet")
            text: qsTr("A photo of the gauge, a plug or a valve, or a few words while it is fresh. What is taken at a cylinder's exit or reading stands here too.")
        }

        Repeater {
            model: evidence.testers

            ListRow {
                required property var modelData

                width: parent.width
                symbol: "gauge"
                text: qsTr("Photo of the dial: %1").arg(modelData.name)
                onClicked: page.go("Photo", {
                    sessionId: page.sessionId,
                    to: "tester",
                    record: modelData.id,
                    kind: "gauge"
                })
            }
        }

        EvidenceList {
            width: parent.width
            model: evidence
            onOpened: photoId => page.go("Photo", {
                sessionId: page.sessionId,
                photoId: photoId
            })
        }
    }

    actions: [
        IconWord {
            objectName: "voiceNote"
            symbol: "voice"
            text: qsTr("Voice note")
            onClicked: page.go("VoiceNote", {
                sessionId: page.sessionId
            })
        },
        BigButton {
            objectName: "photo"
            text: qsTr("Photo")
            onClicked: page.go("Photo", {
                sessionId: page.sessionId,
                kind: "other"
            })
        }
    ]
}
