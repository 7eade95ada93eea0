// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/model/visit.h"

namespace lapwing {

/// The kinds of record: what is stored, undone, handed over and merged one by one, each by its id.
enum class RecordKind { engine, tester, session, reading, exit_note, clearance, attachment, note, plan_line };
LAPWING_WORDS(RecordKind, "engine", "tester", "session", "reading", "exit", "clearance", "attachment", "note",
              "plan line");

/// Alternatives stand in the order of RecordKind.
using Record =
    std::variant<Engine, Tester, Session, Reading, ExitNote, Clearance, Attachment, Note, PlanLine>;

RecordKind kind_of(const Record& record);
Uuid id_of(const Record& record);
/// The engine of a session, the session of everything below one; nil for engines and testers.
Uuid parent_of(const Record& record);

/// The one JSON form of a record, used by the store and by session files alike: compact, keys in a fixed
/// order, absent optionals left out, quantities as {"digits": "6.4", "unit": "bar"}, fields of a newer minor
/// version (`extra`) put back where they came from.
std::string to_json(const Record& record);

/// Reads that form strictly: a missing or wrongly typed field, an unknown word or unit, or a record that
/// can't exist (model's `checked`) is an error that names the place ("readings[3].final.unit"). Fields that
/// this version doesn't know end up in `extra`.
Result<Record> record_from_json(RecordKind kind, std::string_view json);

inline constexpr std::string_view session_format = "lapwing-session";
inline constexpr int session_major = 1;
inline constexpr int session_minor = 4;
inline constexpr std::size_t longest_json = 32u << 20;  ///< bytes
inline constexpr int deepest_json = 64;                 ///< objects and arrays in one another

/// session.json of a session file: format name and version, engine, testers and visits (assets/schema).
/// A higher major version is refused (`record.newer_major`); fields of a higher minor version are kept, a
/// word of one that is not known here is refused (`record.newer_minor`).
std::string to_json(const Dossier& dossier);
Result<Dossier> dossier_from_json(std::string_view json);

/// The dossier's records, parents first; and back (records of other engines are an error).
std::vector<Record> records_of(const Dossier& dossier);
Result<Dossier> dossier_of(std::vector<Record> records);

/// The engine without its owner's name and contact, in whatever field they stand.
Engine without_owner(Engine engine);

/// One thing to do to the library.
struct Put {
    Record record;  ///< added, or stands in for the one with the same id
};
struct Remove {
    RecordKind kind = RecordKind::engine;
    Uuid id;
};
using Edit = std::variant<Put, Remove>;

}  // namespace lapwing
