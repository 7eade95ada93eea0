// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import Lapwing.Components

// What a page says whose session was deleted while it stood open.
ErrorCard {
    heading: qsTr("This session is gone")
    message: qsTr("It was deleted, or Undo took it back. Go back to the list.")
}
