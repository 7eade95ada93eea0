// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/record/record.h"
#include "core/store/connection.h"
#include "core/store/summary.h"

namespace lapwing::store {

/// Everything that is read from a library. Each call sees one moment of it, however much it reads. Errors are
/// those of the storage, and "store.unreadable" for a record that this version can't make sense of.
class Queries {
public:
    explicit Queries(Connection& connection) : connection_(connection) {}

    Result<std::vector<EngineSummary>> engines() const;  ///< the one worked on last first
    Result<std::optional<Engine>> engine(EngineId id) const;
    Result<std::optional<Tester>> tester(TesterId id) const;
    Result<std::vector<Tester>> testers() const;               ///< by name
    Result<std::vector<Session>> sessions(EngineId id) const;  ///< newest first
    Result<std::optional<Session>> session(SessionId id) const;
    Result<std::optional<Visit>> visit(SessionId id) const;
    Result<std::optional<Dossier>> dossier(EngineId id) const;  ///< whole history and the testers it names
    Result<std::optional<EngineId>> engine_of(SessionId id) const;
    /// The tests that were asked for in whichever of the engine's sessions, done or not, oldest first.
    Result<std::vector<Note>> requests(EngineId id) const;
    Result<std::optional<Record>> record(RecordKind kind, Uuid id) const;

    /// What has to go before the session can: everything that hangs on it, and then the session itself.
    Result<std::vector<Edit>> removal_of(SessionId id) const;
    /// Sessions and readings that name the tester.
    Result<int> uses_of(TesterId id) const;

    Result<std::vector<Attachment>> attachments() const;  ///< of the whole library
    /// SHA-256 of every file that a step of the journal names; undo and redo may want it.
    Result<std::vector<std::string>> files_in_steps() const;

    Result<std::vector<Step>> steps() const;  ///< newest first
    Result<std::optional<Step>> last_step() const;
    /// The step that was undone last, unless something was done after it.
    Result<std::optional<Step>> last_undone() const;

    Result<std::string> draft(const std::string& key) const;

    /// This library's own name among others (see Lineage), made when it was.
    Result<Uuid> library_id() const;
    /// Whether a record was taken out here and not put in again.
    Result<bool> was_removed(Uuid id) const;
    /// What the person here calls whoever signs with this key; empty for an unknown key.
    Result<std::string> name_of_key(const std::string& public_key) const;
    struct NamedKey {
        std::string public_key;
        std::string name;
        std::optional<Timestamp> since;  ///< unknown of names given before this was noted
    };
    Result<std::vector<NamedKey>> named_keys() const;  ///< by name

private:
    Connection& connection_;
};

}  // namespace lapwing::store
