// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Where words of an engine are typed, above the list.
Item {
    id: search

    signal typed(text: string)

    function clear() {
        box.clear();
        search.typed("");
        box.forceActiveFocus();
    }

    // What was asked for otherwise than by typing. The keyboard goes on at the button that puts it away; the one on the
    // glass stays down.
    function show(text: string, byKeys: bool) {
        box.text = text;
        if (byKeys)
            cross.forceActiveFocus(Qt.TabFocusReason);
    }

    implicitHeight: box.implicitHeight + Theme.space

    FieldBox {
        id: box

        property string targetKind: "secondary"

        objectName: "search"
        width: parent.width
        placeholderText: qsTr("Search name, tags, description")
        Accessible.name: placeholderText
        inputMethodHints: Qt.ImhNoPredictiveText
        trailingRoom: text === "" ? 0 : cross.width
        onTextEdited: search.typed(text)
        // What is typed goes first, then the page.
        Keys.onEscapePressed: event => {
            event.accepted = text !== "";
            if (event.accepted)
                search.clear();
        }

        Pressable {
            id: cross

            objectName: "clearSearch"
            visible: box.text !== ""
            targetKind: "minor"
            fill: "transparent"
            padding: 0
            horizontalPadding: 0
            width: leastHeight
            x: Theme.rightToLeft ? 4 : box.width - width - 4
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Clear the search")
            onClicked: search.clear()

            inside: Item {
                Symbol {
                    anchors.centerIn: parent
                    name: "close"
                    size: 22
                }
            }
        }
    }
}
