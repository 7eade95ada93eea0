// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/record/record.h"

namespace lapwing::store {

/// What a line of the list of engines shows, read without opening the engines' whole cards. No more than
/// that: thousands of these are read before the first frame.
struct EngineSummary {
    EngineId id;
    std::string name;
    std::string description;
    std::vector<std::string> tags;
    int cylinders = 0;                            ///< 1 to 16
    std::optional<SessionId> last_session;        ///< the one opened last
    std::optional<Timestamp> last_opened_at;      ///< of that session
    std::optional<Timestamp> retest_planned_for;  ///< of that session

    bool operator==(const EngineSummary&) const = default;
};

/// A command that was done, as the journal remembers it.
struct Step {
    std::int64_t number = 0;  ///< counts up; 0: the command had nothing to change and left no step
    std::string name;         ///< stable code, such as "reading.keep"
    std::vector<std::string> args;
    Timestamp at;
    bool undone = false;
    /// Asked of apply(): done and undone with the newest step, provided that one stands and touched each of
    /// these records too; else a step of its own. For what the program adds by itself to what a person did.
    bool part_of_last = false;

    bool operator==(const Step&) const = default;
};

/// What a commit touched.
struct Change {
    std::set<RecordKind> kinds;
    std::set<EngineId> engines;
    std::set<SessionId> sessions;
};

}  // namespace lapwing::store
