// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/base/uuid.h"

namespace lapwing {

namespace model {
class Check;
}

/// The last change that one library made to a record.
struct Revision {
    Uuid library;
    Timestamp at;

    bool operator==(const Revision&) const = default;
};

/// Where a record stands among its own versions. A record that was never changed has no revisions; each
/// change sets the line of the library that made it. So of two versions one came after the other, or they
/// were made apart from each other, and merging (core/record/merge.h) can tell which.
struct Lineage {
    std::vector<Revision> revisions;  ///< one for each library, sorted by it
    /// Versions that were made apart from this one and wait for a person to choose: each the JSON form of a
    /// whole record of the same kind and id, without other versions of its own.
    std::vector<std::string> other_versions;

    bool operator==(const Lineage&) const = default;
};

/// Most other versions that one record may carry.
inline constexpr std::size_t most_other_versions = 64;

namespace model {
void check_lineage(Check& check, const Lineage& lineage);
}

}  // namespace lapwing
