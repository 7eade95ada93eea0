// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/record/record.h"
#include "core/store/summary.h"

namespace lapwing::store {
class AttachmentFiles;
class Queries;
}  // namespace lapwing::store

namespace lapwing::workflow {

using store::Change;
using store::EngineSummary;
using store::Step;

/// Everything that changes records is a command: done whole in one transaction, or not at all, and undone the
/// same way.
struct Command {
    std::string name;               ///< stable code, such as "reading.keep", "engine.delete"
    std::vector<std::string> args;  ///< for the sentence that says what was done
    std::vector<Edit> edits;        ///< parents before children when adding, children first when removing
    /// The records come with the lineage that they should have (from a file, or settled). All others that
    /// change are marked as changed here and now.
    bool keeps_lineage = false;
    bool part_of_last = false;  ///< see store::Step
};

/// What an intent may look at while it turns into a command.
struct Now {
    const store::Queries& library;
    const store::AttachmentFiles& files;
    const Clock& clock;
};

/// A wish that becomes a command on the writer thread, against the library as it stands then: what was queued
/// before it has already been committed. The use cases (keep_reading, open_session, ...) are intents.
using Intent = std::function<Result<Command>(const Now&)>;

}  // namespace lapwing::workflow
