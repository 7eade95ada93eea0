// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import Lapwing.Components
import Lapwing.ViewModels

// Asks before an engine goes with all that was ever measured on it.
ConfirmSheet {
    required property EngineCardForm card

    title: qsTr("Delete %1?").arg(card.name)
    text: card.visits.length === 0 ? qsTr("Its card goes with all that is typed there. Undo brings it back, also later from More, until something else is done.") : qsTr("With it go %n session(s): readings, photos, voice notes, plans. Undo brings all of it back, also later from More, until something else is done; after that only a backup or a session file does.", "", card.visits.length)
    doIt: card.visits.length === 0 ? qsTr("Delete it") : qsTr("Delete all of it")
    leaveIt: qsTr("Keep the engine")
    onConfirmed: card.remove()
}
