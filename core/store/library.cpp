// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/library.h"

#include <sqlite3.h>

#include <fstream>

#include "core/base/atomic_file.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;

/// A file of no bytes, or none at all, is what a crash while making the first library leaves, or what is left
/// of a lost one: backups, or a library that was set aside, tell which.
Status refuse_lost(const Places& places) {
    std::error_code error;
    const bool is_there = fs::exists(places.library(), error);
    if (is_there && fs::file_size(places.library(), error) > 0) return {};
    if (backups(places, Timestamp{}).empty() && set_aside_last(places).empty()) return {};
    return fail("store.damaged", "The library {} is {}, though there was one before.",
                places.library().string(), is_there ? "empty" : "missing");
}

Status back_up_before_migration(Connection& connection, const Places& places, int from, Timestamp now) {
    auto job = BackupJob::start(connection, places, migration_backup_name(from, now));
    if (!job) return tl::unexpected(job.error());
    const auto finished = (*job)->step(-1);
    if (!finished) return tl::unexpected(finished.error());
    if (!*finished) return tl::unexpected(sqlite_error(SQLITE_BUSY, 0, "", places.library()));
    return {};
}

}  // namespace

/// The part of opening that happens with the folder locked already.
struct Opening {
    const Places& places;
    const Clock& clock;
    const std::vector<Migration>& list;

    /// Whether a library that is missing, though there was one, may be made anew.
    enum class Lost { is_refused, is_known };

    Result<std::unique_ptr<Library>> open(std::unique_ptr<FolderLock>& lock,
                                          Lost lost = Lost::is_refused) const {
        const bool existed = fs::exists(places.library());
        const bool closed_properly = fs::exists(places.closed_marker());
        if (lost == Lost::is_refused)
            if (auto status = refuse_lost(places); !status) return tl::unexpected(status.error());

        auto connection = Connection::open(places.library(), Access::write);
        if (!connection) return tl::unexpected(connection.error());
        const bool check = existed && !closed_properly;
        if (check)
            if (auto sound = quick_check(**connection); !sound) return tl::unexpected(sound.error());
        auto shaped = migrate(**connection, list, [&](int from, int) {
            return back_up_before_migration(**connection, places, from, clock.now());
        });
        if (!shaped) return tl::unexpected(shaped.error());
        if (auto marked = take_closed_marker(); !marked) return tl::unexpected(marked.error());

        std::unique_ptr<Library> library(new Library(places, std::move(lock), std::move(*connection), clock));
        library->was_checked_ = check;
        return library;
    }

    Status take_closed_marker() const {
        std::error_code error;
        fs::remove(places.closed_marker(), error);
        if (error) return file_error(error.value(), places.closed_marker());
        // After an unclean end there may be names here that are not on the storage yet.
        return sync_folder(places.folder);
    }

    [[nodiscard]] Error restored(const Backup& backup, const fs::path& aside) const {
        const auto made = to_rfc3339(Timestamp{backup.made_at_ms, clock.now().offset_min}).substr(0, 16);
        if (aside.empty())
            return fail("store.restored_lost",
                        "The file of the library was gone. The backup of {} stands in for it; what was "
                        "recorded after that is not in it.",
                        made)
                .value();
        return fail("store.restored",
                    "The library was damaged. It was set aside as {}, and the backup of {} stands in for it. "
                    "What was recorded after that is only in the file set aside: keep it.",
                    aside.filename().string(), made)
            .value();
    }

    [[nodiscard]] static Error started_anew(const fs::path& aside) {
        if (aside.empty())
            return fail("store.started_anew_lost",
                        "The file of the library was gone and no backup of it can be used. An empty library "
                        "was started. Session files handed over before can be opened again.")
                .value();
        return fail("store.started_anew",
                    "The library was damaged and there is no backup of it. It was set aside as {}, and an "
                    "empty library was started. Keep that file; session files handed over before can be "
                    "opened again.",
                    aside.filename().string())
            .value();
    }

    Result<OpenedLibrary> restore_and_open(std::unique_ptr<FolderLock>& lock) const {
        const auto aside = set_aside(places, clock.now());
        if (!aside) return tl::unexpected(aside.error());
        std::error_code error;
        fs::remove(places.closed_marker(), error);
        OpenedLibrary opened;
        const auto backup = last_good_backup(places, clock.now());
        if (backup)
            if (auto status = restore(places, *backup); !status) return tl::unexpected(status.error());
        opened.told.push_back(backup ? restored(*backup, *aside) : started_anew(*aside));
        auto library = open(lock, Lost::is_known);
        if (!library) return tl::unexpected(library.error());
        opened.library = std::move(*library);
        return opened;
    }
};

Library::Library(Places places, std::unique_ptr<FolderLock> lock, std::unique_ptr<Connection> connection,
                 const Clock& clock)
    : places_(std::move(places)),
      lock_(std::move(lock)),
      connection_(std::move(connection)),
      queries_(*connection_),
      clock_(clock) {}

Library::~Library() {
    // Another library may lie there by now; its journal and marker are not this one's to touch.
    const bool sound = !suspected_ && !connection_->saw_damage() && connection_->still_in_place().has_value();
    connection_->tidy_up_on_close(sound);
    connection_.reset();
    if (!sound) return;
    std::ofstream(places_.closed_marker()).close();
    (void)sync_folder(places_.folder);
}

Result<std::unique_ptr<Library>> Library::open(const fs::path& folder, const Clock& clock,
                                               const std::vector<Migration>& list) {
    const Places places{folder};
    auto lock = FolderLock::take(places);
    if (!lock) return tl::unexpected(lock.error());
    return Opening{places, clock, list}.open(*lock);
}

Result<OpenedLibrary> open_or_restore(const fs::path& folder, const Clock& clock,
                                      const std::vector<Migration>& list) {
    const Places places{folder};
    auto lock = FolderLock::take(places);
    if (!lock) return tl::unexpected(lock.error());
    const Opening opening{places, clock, list};
    auto library = opening.open(*lock);
    if (!library) {
        if (library.error().code != "store.damaged") return tl::unexpected(library.error());
        return opening.restore_and_open(*lock);
    }
    OpenedLibrary opened;
    opened.library = std::move(*library);
    if (opened.library->was_checked())
        opened.told.push_back(fail("store.was_checked",
                                   "Lapwing was not closed properly last time. The library was checked and "
                                   "is sound: everything that was confirmed is there.")
                                  .value());
    return opened;
}

Result<Outcome> Library::apply(Step info, std::span<const Edit> edits) {
    return store::apply(*connection_, std::move(info), edits);
}

Result<Outcome> Library::undo(std::int64_t number) {
    return store::undo(*connection_, number);
}

Result<Outcome> Library::redo(std::int64_t number) {
    return store::redo(*connection_, number);
}

namespace {

/// While it lives, commits don't wait for the storage, nor do they clear the journal away: either would make
/// the next reading wait behind a draft.
class Unhurried {
public:
    explicit Unhurried(SQLite::Database& db) : db_(db) {
        db_.exec("PRAGMA synchronous = NORMAL");
        sqlite3_wal_autocheckpoint(db_.getHandle(), 0);
    }
    ~Unhurried() {
        db_.tryExec("PRAGMA synchronous = FULL");
        sqlite3_wal_autocheckpoint(db_.getHandle(), 1000);
    }
    Unhurried(const Unhurried&) = delete;
    Unhurried& operator=(const Unhurried&) = delete;

private:
    SQLite::Database& db_;
};

}  // namespace

Status Library::keep_drafts(std::span<const Draft> drafts) {
    return guarded(*connection_, [&]() -> Status {
        if (auto sound = connection_->mend_journal(); !sound) return sound;
        const Unhurried unhurried(connection_->db());
        SQLite::Transaction transaction(connection_->db(), SQLite::TransactionBehavior::IMMEDIATE);
        for (const auto& [key, text] : drafts) {
            if (text.empty())
                Query(*connection_, "DELETE FROM draft WHERE key = ?").with(key).run();
            else
                Query(*connection_,
                      "INSERT INTO draft (key, text) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET text = "
                      "excluded.text")
                    .with(key, text)
                    .run();
        }
        return connection_->commit(transaction);
    });
}

Status Library::name_key(const std::string& public_key, const std::string& name, Timestamp since) {
    return guarded(*connection_, [&]() -> Status {
        if (auto sound = connection_->mend_journal(); !sound) return sound;
        SQLite::Transaction transaction(connection_->db(), SQLite::TransactionBehavior::IMMEDIATE);
        if (name.empty())
            Query(*connection_, "DELETE FROM known_key WHERE public_key = ?").with(public_key).run();
        else
            Query(*connection_,
                  "INSERT INTO known_key (public_key, name, since) VALUES (?, ?, ?) ON CONFLICT (public_key) "
                  "DO UPDATE SET name = excluded.name")
                .with(public_key, name, to_rfc3339(since))
                .run();
        return connection_->commit(transaction);
    });
}

Result<std::unique_ptr<BackupJob>> Library::start_due_backup() {
    // After an unclean end the file may hold damage that the quick check can't see: the good backups of the
    // days before must not be pushed out by copies of it.
    const auto now = clock_.now();
    if (was_checked_ || !backup_is_due(places_, now)) return nullptr;
    if (auto all = queries_.engines(); !all || all->empty()) return nullptr;
    return BackupJob::start(*connection_, places_, daily_backup_name(now));
}

Result<std::unique_ptr<Reader>> Reader::open(const Places& places) {
    auto connection = Connection::open(places.library(), Access::read);
    if (!connection) return tl::unexpected(connection.error());
    return std::unique_ptr<Reader>(new Reader(std::move(*connection)));
}

}  // namespace lapwing::store
