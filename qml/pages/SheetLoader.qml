// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components

// Makes a sheet when it is wanted and lets it go when it is closed, so that a page opens without its sheets.
Loader {
    id: loader

    function show(sheet: Component) {
        active = false;
        sourceComponent = sheet;
        active = true;
        (item as Sheet).open();
    }

    active: false

    Connections {
        target: loader.item as Sheet

        // Later: what closed the sheet may have more to do, and a handler ends with its sheet.
        function onClosed() {
            const closed = loader.item;
            Qt.callLater(() => {
                if (loader.item === closed)
                    loader.active = false;
            });
        }
    }
}
