// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/schema.h"

namespace lapwing::store {
namespace {

// One table a kind of record. `body` is the record itself in its one JSON form; the other columns are copies
// of what lists, searches and orders need. Times are milliseconds since 1970 in UTC.
// Children hold their parent in place (RESTRICT): taking an engine out means naming everything that goes with
// it, which is what lets undo bring it all back.
constexpr const char* version_1 = R"sql(
CREATE TABLE engine (
    id TEXT PRIMARY KEY NOT NULL,
    made_at INTEGER NOT NULL,
    name TEXT NOT NULL,
    description TEXT NOT NULL,
    tags TEXT NOT NULL CHECK (json_valid(tags)),
    cylinders INTEGER NOT NULL,
    body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;

CREATE TABLE tester (
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL,
    kind TEXT NOT NULL,
    body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;

CREATE TABLE session (
    id TEXT PRIMARY KEY NOT NULL,
    parent TEXT NOT NULL REFERENCES engine (id) ON DELETE RESTRICT,
    opened_at INTEGER NOT NULL,
    opened_offset INTEGER NOT NULL,
    title TEXT NOT NULL,
    retest_at INTEGER,
    retest_offset INTEGER,
    compression_gauge TEXT,
    leak_down_tester TEXT,
    crankcase_tester TEXT,
    readings INTEGER NOT NULL DEFAULT 0,
    body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE INDEX session_by_engine ON session (parent, opened_at, id);

CREATE TABLE reading (
    id TEXT PRIMARY KEY NOT NULL,
    parent TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
    test TEXT NOT NULL,
    cylinder INTEGER NOT NULL,
    at INTEGER NOT NULL,
    tester TEXT,
    body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE INDEX reading_by_session ON reading (parent, test, cylinder, at);
CREATE INDEX reading_by_tester ON reading (tester) WHERE tester IS NOT NULL;

CREATE TABLE exit_note (
    id TEXT PRIMARY KEY NOT NULL,
    parent TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
    cylinder INTEGER NOT NULL,
    at INTEGER NOT NULL,
    body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE INDEX exit_note_by_session ON exit_note (parent, at);

CREATE TABLE clearance (
    id TEXT PRIMARY KEY NOT NULL,
    parent TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
    cylinder INTEGER NOT NULL,
    at INTEGER NOT NULL,
    body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE INDEX clearance_by_session ON clearance (parent, at);

CREATE TABLE attachment (
    id TEXT PRIMARY KEY NOT NULL,
    parent TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
    sha256 TEXT NOT NULL,
    bytes INTEGER NOT NULL,
    at INTEGER NOT NULL,
    body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE INDEX attachment_by_session ON attachment (parent, at);
CREATE INDEX attachment_by_file ON attachment (sha256);

CREATE TABLE note (
    id TEXT PRIMARY KEY NOT NULL,
    parent TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
    at INTEGER NOT NULL,
    body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE INDEX note_by_session ON note (parent, at);

CREATE TABLE plan_line (
    id TEXT PRIMARY KEY NOT NULL,
    parent TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
    at INTEGER NOT NULL,
    body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE INDEX plan_line_by_session ON plan_line (parent, at);

-- The list of engines counts readings without touching any of them.
CREATE TRIGGER reading_added AFTER INSERT ON reading BEGIN
    UPDATE session SET readings = readings + 1 WHERE id = new.parent;
END;
CREATE TRIGGER reading_removed AFTER DELETE ON reading BEGIN
    UPDATE session SET readings = readings - 1 WHERE id = old.parent;
END;
CREATE TRIGGER reading_moved AFTER UPDATE OF parent ON reading WHEN old.parent <> new.parent BEGIN
    UPDATE session SET readings = readings - 1 WHERE id = old.parent;
    UPDATE session SET readings = readings + 1 WHERE id = new.parent;
END;

-- What was done, and every record it touched as it was before and after: the way back.
CREATE TABLE step (
    number INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    args TEXT NOT NULL CHECK (json_valid(args)),
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    undone INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE TABLE step_image (
    step INTEGER NOT NULL REFERENCES step (number) ON DELETE CASCADE,
    position INTEGER NOT NULL,
    kind TEXT NOT NULL,
    id TEXT NOT NULL,
    before TEXT CHECK (before IS NULL OR json_valid(before)),
    after TEXT CHECK (after IS NULL OR json_valid(after)),
    PRIMARY KEY (step, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE draft (
    key TEXT PRIMARY KEY NOT NULL,
    text TEXT NOT NULL
) STRICT;
)sql";

// What merging needs to know beside the records. `removed`: what was taken out here stays out when a file
// still holds it. `known_key`: whose signature a key makes, as the person here calls them.
constexpr const char* version_2 = R"sql(
CREATE TABLE own (
    key TEXT PRIMARY KEY NOT NULL,
    value TEXT NOT NULL
) STRICT;
INSERT INTO own (key, value)
    SELECT 'library', substr(h, 1, 8) || '-' || substr(h, 9, 4) || '-4' || substr(h, 14, 3) || '-8' ||
                      substr(h, 18, 3) || '-' || substr(h, 21, 12)
    FROM (SELECT lower(hex(randomblob(16))) AS h);

CREATE TABLE removed (
    id TEXT PRIMARY KEY NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE known_key (
    public_key TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL
) STRICT;
)sql";

// Since when a key has its name here; empty where that was not noted.
constexpr const char* version_3 = R"sql(
ALTER TABLE known_key ADD COLUMN since TEXT NOT NULL DEFAULT '';
)sql";

// All that the list of engines shows stands in two indexes: the first page after the start reads no row,
// whose bodies make it several times as long as what is shown of it. `Queries::engines` asks for them by
// name.
constexpr const char* version_4 = R"sql(
DROP INDEX session_by_engine;
CREATE INDEX session_by_engine ON session (parent, opened_at, id, opened_offset, retest_at, retest_offset);
CREATE INDEX engine_in_list ON engine (id, made_at, name, description, tags, cylinders);
)sql";

}  // namespace

const std::vector<Migration>& migrations() {
    static const std::vector<Migration> list{{1, version_1}, {2, version_2}, {3, version_3}, {4, version_4}};
    return list;
}

Status migrate(Connection& connection, const std::vector<Migration>& list,
               const std::function<Status(int, int)>& before_change) {
    return guarded(connection, [&]() -> Status {
        auto& db = connection.db();
        const int id = db.execAndGet("PRAGMA application_id").getInt();
        const int version = db.execAndGet("PRAGMA user_version").getInt();
        const int tables = db.execAndGet("SELECT count(*) FROM sqlite_schema").getInt();
        const int wanted = list.back().version;
        const bool is_new = id == 0 && version == 0 && tables == 0;

        if (!is_new && id != application_id)
            return fail("store.not_ours",
                        "{} belongs to another program. Move it away, or choose another folder for Lapwing.",
                        connection.file().string());
        if (version > wanted)
            return fail(
                "store.newer_version",
                "{} was written by a newer Lapwing (its version is {}, this one knows up to {}). It was "
                "left as it is. Update Lapwing to open it.",
                connection.file().string(), version, wanted);
        if (version == wanted) return {};

        if (!is_new)
            if (auto safe = before_change(version, wanted); !safe) return safe;
        SQLite::Transaction transaction(db, SQLite::TransactionBehavior::IMMEDIATE);
        for (const auto& migration : list)
            if (migration.version > version) db.exec(migration.sql);
        db.exec(fmt::format("PRAGMA application_id = {}", application_id));
        db.exec(fmt::format("PRAGMA user_version = {}", wanted));
        transaction.commit();
        return {};
    });
}

}  // namespace lapwing::store
