// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma Singleton
import QtQuick

// The words of the four states, and of what is not to be judged yet.
QtObject {
    function word(state: string): string {
        switch (state) {
        case "good":
            return qsTr("in range");
        case "borderline":
            return qsTr("borderline");
        case "fault":
            return qsTr("fault");
        case "unjudged":
            return qsTr("measured, not judged");
        case "waiting":
            return qsTr("measured, your own call first");
        default:
            return qsTr("not measured");
        }
    }

    // What a screen reader says of a row: its parts, without the empty ones.
    function sentence(parts: var): string {
        return parts.filter(part => part !== "").join(", ");
    }
}
