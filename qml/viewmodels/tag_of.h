// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/reading.h"

namespace lapwing {

/// Whether what is kept with the tag `kept` belongs to what is entered now as `now`: in a session that
/// follows ticked work, "as found" is tagged "after repair" when it is kept.
constexpr bool is_of(Tag now, Tag kept) {
    return kept == now || (now == Tag::as_found && kept == Tag::after_repair);
}

}  // namespace lapwing
