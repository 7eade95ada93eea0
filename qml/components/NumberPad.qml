// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Theme

// The pad of digits. A key counts when the finger leaves it where it landed: quick taps and two thumbs lose nothing, a
// swipe across types nothing.
// `key` carries a digit or the decimal mark; holding backspace clears. `haptic` comes with every press.
Item {
    id: pad

    property string decimalMark: Qt.locale().decimalPoint
    property bool decimalEnabled: true
    property real keyHeight: Theme.padKeyHeight(Window.width, Window.height)
    property real spacing: Theme.space

    signal key(string character)
    signal backspace
    signal cleared
    signal haptic

    // For a page's Keys.onPressed: true when the pad took the key of a hardware keyboard.
    function takeKey(event: var): bool {
        if (event.key === Qt.Key_Backspace)
            backspace();
        else if (event.key === Qt.Key_Delete)
            cleared();
        else if (event.text === "." || event.text === ",")
            key(decimalMark);
        else if (/^[0-9]$/.test(event.text))
            key(event.text);
        else
            return false;
        return true;
    }

    implicitWidth: 3 * 100 + 2 * spacing
    implicitHeight: 4 * keyHeight + 3 * spacing

    // A pad of digits runs the same way in every language.
    Item {
        anchors.fill: parent
        LayoutMirroring.enabled: false

        Repeater {
            model: ["7", "8", "9", "4", "5", "6", "1", "2", "3", "mark", "0", "backspace"]

            PadKey {
                required property string modelData
                required property int index

                objectName: "key_" + modelData
                width: (pad.width - 2 * pad.spacing) / 3
                height: (pad.height - 3 * pad.spacing) / 4
                x: index % 3 * (width + pad.spacing)
                y: Math.floor(index / 3) * (height + pad.spacing)
                symbol: modelData === "backspace" ? "backspace" : ""
                face: modelData === "mark" ? pad.decimalMark : modelData === "backspace" ? "" : modelData
                text: modelData === "mark" ? qsTr("decimal point") : modelData === "backspace" ? qsTr("delete digit") : modelData
                enabled: modelData !== "mark" || pad.decimalEnabled
                onStruck: {
                    pad.haptic();
                    if (modelData === "backspace")
                        pad.backspace();
                    else
                        pad.key(face);
                }
                holds: modelData === "backspace"
                onHeld: pad.cleared()
            }
        }
    }
}
