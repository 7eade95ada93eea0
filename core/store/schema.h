// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <vector>

#include "core/store/connection.h"

namespace lapwing::store {

/// One step of the database's shape. A migration that changes the JSON form of records has to change the
/// images in `step_image` too: undo puts them back as they are.
struct Migration {
    int version;      ///< user_version after it; the list counts 1, 2, 3 ...
    const char* sql;  ///< run in one transaction with the others that are due
};

/// How a library gets its shape. A new one runs the whole list.
const std::vector<Migration>& migrations();

/// "LPWG" in the header, so that file tools can tell a library from any other database.
inline constexpr std::int32_t application_id = 0x4C505747;

/// Brings the library up to the last version of `list`. `before_change` (make a backup) runs first when there
/// is something to lose; if it fails nothing is changed. Fails with "store.newer_version" on a library from a
/// newer Lapwing and with "store.not_ours" on a database of another program.
Status migrate(Connection& connection, const std::vector<Migration>& list,
               const std::function<Status(int from, int to)>& before_change);

}  // namespace lapwing::store
