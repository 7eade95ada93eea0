// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/lineage.h"

#include <algorithm>

#include "core/model/check.h"

namespace lapwing::model {

void check_lineage(Check& check, const Lineage& lineage) {
    constexpr std::size_t most_libraries = 1000;
    const auto& revisions = lineage.revisions;
    check.that(revisions.size() <= most_libraries, "lineage.too_many",
               "{} libraries changed this record: at most {} can be told apart.", revisions.size(),
               most_libraries);
    for (const auto& revision : revisions) {
        check.id(revision.library, "library that changed it");
        check.time(revision.at, "Time of a change");
    }
    check.that(std::ranges::adjacent_find(revisions, std::ranges::greater_equal{}, &Revision::library) ==
                   revisions.end(),
               "lineage.order", "Its changes are not listed once for each library and in their order.");
    check.that(lineage.other_versions.size() <= most_other_versions, "lineage.too_many_versions",
               "It has {} other versions: at most {} are kept. Choose between them first.",
               lineage.other_versions.size(), most_other_versions);
}

}  // namespace lapwing::model
