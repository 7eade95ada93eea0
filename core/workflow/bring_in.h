// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <map>
#include <vector>

#include "core/workflow/command.h"

namespace lapwing::workflow {

class Desk;

/// What becomes of one record of a file.
enum class Arrival {
    added,
    same,          ///< nothing new: equal, or the one here came after it
    newer,         ///< changed elsewhere after it was here: takes its place
    conflict,      ///< changed on both sides: both are kept, and a person chooses
    removed_here,  ///< was taken out here, or belongs to a session that was: stays out
};

/// A record that would change.
struct Difference {
    Arrival arrival = Arrival::newer;  ///< or conflict
    Record here;
    Record incoming;
};

/// What bringing a dossier in would do, record by record.
struct Preview {
    std::map<RecordKind, int> added;
    std::map<RecordKind, int> same;
    std::map<RecordKind, int> newer;
    std::map<RecordKind, int> conflicts;
    std::map<RecordKind, int> removed_here;
    std::vector<Difference> differences;
    std::vector<Record> new_records;  ///< those that `added` counts, parents first
    bool new_engine = false;
    std::optional<Error> refusal;  ///< why it can't be brought in at all

    static int total(const std::map<RecordKind, int>& counts);
    /// Whether bringing it in would change anything.
    [[nodiscard]] bool brings_something() const {
        return !refusal && total(added) + total(newer) + total(conflicts) > 0;
    }
};

/// Records that were taken out here: left out, unless the person wants them back.
enum class RemovedHere { stay_out, come_back };

Preview preview(const Desk& desk, const Dossier& dossier, RemovedHere removed = RemovedHere::stay_out);

/// Merges a dossier into the library in one step ("dossier.bring_in"; args: engine name, records added or
/// changed). Doing it twice changes nothing, and the order of several files doesn't matter. A file never
/// takes anything away. Of an engine that is not here any more everything comes back. Fails as `merge` does
/// (core/record/merge.h).
Intent bring_in(Dossier dossier, RemovedHere removed = RemovedHere::stay_out);

/// The records of a dossier of which several versions wait for a choice (see `versions`).
std::vector<Record> conflicts(const Dossier& dossier);
/// Keeps the version at that place in `versions` ("record.settle"; args: kind); the others go.
Intent settle(RecordKind kind, Uuid id, std::size_t chosen);

}  // namespace lapwing::workflow
