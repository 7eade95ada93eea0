// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.ViewModels

// Asks for a session file, or takes the demo, and goes to the page that shows what is in it.
Item {
    id: flow

    required property AppContext app

    signal go(name: string, args: var)

    function openFile() {
        model.choose();
    }

    function openDemo() {
        go("BringIn", {});
    }

    BringInModel {
        id: model

        app: flow.app
        onChosen: file => flow.go("BringIn", {
                file: file
            })
    }
}
