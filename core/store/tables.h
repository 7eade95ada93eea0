// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>

#include "core/record/record.h"
#include "core/store/connection.h"

namespace lapwing::store {

// How records lie in their tables. These throw what SQLite throws; callers stand inside `guarded`.

std::string table_of(RecordKind kind);

/// Adds the record or stands in for the one with its id. `body` is its JSON form, stored to the byte.
void put(Connection& connection, const Record& record, const std::string& body);
void remove(Connection& connection, RecordKind kind, const std::string& id);
std::optional<std::string> body_of(Connection& connection, RecordKind kind, const std::string& id);

}  // namespace lapwing::store
