// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Capture
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// Takes a photo and keeps it at once; then shows it, with what it shows. A photo that is there opens the same way.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId
    property string to
    property string record
    property int cylinder: 0
    property string kind: "other"
    property string photoId
    // Which test a number read from the photo would belong to.
    property string test
    // What is typed there and not kept yet.
    property string pending

    readonly property bool taken: photo.photoId !== ""
    readonly property bool keepsAwake: true

    signal go(name: string, args: var)

    title: qsTr("Photo")
    subtitle: photo.photoPlace

    PhotoModel {
        id: photo

        app: page.app
        sessionId: page.sessionId
        to: page.to
        record: page.record
        cylinder: page.cylinder
        kind: page.kind
        photoId: page.photoId
        live: page.visible
    }

    NeedleModel {
        id: needle

        app: page.app
        sessionId: page.sessionId
        photoId: photo.photoId
        test: page.test
    }

    PhotoFinder {
        anchors.fill: parent
        visible: !page.taken && photo.blocked === ""
        photo: photo
    }

    ScrollColumn {
        anchors.fill: parent
        visible: page.taken || photo.blocked !== ""

        CaptureTrouble {
            width: parent.width
            capture: photo
            heading: qsTr("No picture")
            onAgain: photo.lookAgain()
        }

        PhotoPicture {
            width: parent.width
            height: Math.min(width, Math.max(180, 0.5 * page.height))
            visible: page.taken
            photo: photo
            needle: needle
        }

        NeedlePanel {
            width: parent.width
            needle: needle
            pending: page.pending
        }

        ChoiceRow {
            objectName: "kinds"
            width: parent.width
            visible: page.taken
            label: qsTr("It shows")
            options: photo.kinds
            current: photo.kind
            onChosen: value => photo.kind = value
        }
    }

    actions: [
        IconWord {
            objectName: "torch"
            visible: !page.taken && photo.hasTorch
            symbol: "torch"
            text: qsTr("Torch")
            chosen: photo.torch
            onClicked: photo.torch = !photo.torch
        },
        IconWord {
            objectName: "fromFile"
            visible: !page.taken && photo.canChoose
            symbol: "open"
            text: qsTr("From a file")
            onClicked: photo.choose()
        },
        IconWord {
            objectName: "removePhoto"
            visible: page.taken
            symbol: "bin"
            text: qsTr("Delete")
            onClicked: {
                photo.remove();
                page.back();
            }
        },
        IconWord {
            objectName: "retake"
            visible: page.taken
            symbol: "photo"
            text: qsTr("Retake")
            onClicked: photo.retake()
        },
        BigButton {
            objectName: "take"
            visible: !page.taken && photo.blocked === ""
            enabled: photo.state === "looking"
            text: photo.state === "keeping" ? qsTr("Keeping it ...") : qsTr("Take photo")
            onClicked: photo.take()
        },
        BigButton {
            objectName: "photoDone"
            visible: page.taken
            text: qsTr("Done")
            onClicked: page.back()
        }
    ]
}
