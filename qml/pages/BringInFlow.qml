// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.ViewModels

// Opens a session file or the demo: shows first what is new in it, then brings it in.
Item {
    id: flow

    required property AppContext app

    signal broughtIn(engineId: string)

    function openFile() {
        model.openSessionFile();
    }

    function openDemo() {
        model.openDemo();
    }

    BringInModel {
        id: model

        app: flow.app
        onPreviewReady: sheets.show(preview)
        onBroughtIn: engineId => flow.broughtIn(engineId)
    }

    // Inside the sheet its own property of the same name would hide the flow's id.
    SheetLoader {
        id: sheets

        readonly property BringInModel flowModel: model
    }

    Component {
        id: preview

        BringInSheet {
            model: sheets.flowModel
        }
    }
}
