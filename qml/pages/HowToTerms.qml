// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import Lapwing.Components

// A part of a How to card that is a list of {term, text}; not there when the list is empty.
HowToSection {
    id: section

    property var terms: []

    visible: terms.length > 0

    Repeater {
        model: section.terms

        TermLine {
            required property var modelData

            width: parent.width
            term: modelData.term
            text: modelData.text
        }
    }
}
