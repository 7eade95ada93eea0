// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// One word of a ChoiceRow, or a filter that stands alone (`checkable: true`).
Pressable {
    id: control

    property int textSize: Theme.bodySize

    fill: checked ? Theme.chosen : Theme.key
    outlineColor: checked ? Theme.info : "transparent"
    horizontalPadding: Theme.space
    Accessible.role: checkable ? Accessible.CheckBox : Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: checked

    inside: LText {
        silent: true
        text: control.text
        font.pixelSize: control.textSize
        font.bold: control.checked
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
}
