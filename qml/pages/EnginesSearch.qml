// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Where words of an engine are typed, above the list.
Item {
    id: search

    signal typed(text: string)

    implicitHeight: box.implicitHeight + Theme.space

    FieldBox {
        id: box

        property string targetKind: "secondary"

        objectName: "search"
        width: parent.width
        placeholderText: qsTr("Search name, tags, description")
        Accessible.name: placeholderText
        inputMethodHints: Qt.ImhNoPredictiveText
        onTextEdited: search.typed(text)
    }
}
