// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme

// Names of signatures that a backup brings: `keys` as BackupModel lists them. A backup is not signed as a whole, so
// each is taken only when it is ticked; toggled(key).
Column {
    id: list

    required property var keys

    signal toggled(key: string)

    visible: keys.length > 0
    spacing: Theme.space

    LText {
        width: parent.width
        role: "heading"
        text: qsTr("Names of signatures in it")
    }

    LText {
        width: parent.width
        text: qsTr("Anyone who had this file could have put a name in. Tick those whose fingerprint you know; the others stay unknown keys.")
    }

    Repeater {
        model: list.keys.length

        Loader {
            id: line

            required property int index
            readonly property var key: list.keys[index]

            width: list.width
            sourceComponent: key.here === "" ? unknown : named

            Component {
                id: unknown

                CheckRow {
                    objectName: "key_" + line.index
                    text: line.key.name
                    detail: line.key.fingerprint
                    checked: line.key.taken
                    onToggled: list.toggled(line.key.key)
                }
            }

            Component {
                id: named

                Panel {
                    LText {
                        width: parent.width
                        text: qsTr("%1 (%2) is called %3 here, and stays so.").arg(line.key.name).arg(line.key.fingerprint).arg(line.key.here)
                    }
                }
            }
        }
    }
}
