// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <SQLiteCpp/Backup.h>

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/store/connection.h"
#include "core/store/folder.h"

namespace lapwing::store {

/// Daily backups kept; those made before a migration are all kept.
inline constexpr int daily_backups_kept = 5;

struct Backup {
    std::filesystem::path file;
    std::int64_t made_at_ms = 0;  ///< since 1970, UTC, to the second
    bool daily = false;           ///< or made before a migration
};

/// The backups in a library's folder, the one made last first. Those of more than a day after `now` were made
/// before the clock was set back, so they come last.
std::vector<Backup> backups(const Places& places, Timestamp now);

/// A backup in the making: a copy of the library at one moment, in small steps so that a reading never waits
/// for it. It takes its name only when it is whole and on the storage; let go before that it leaves nothing.
class BackupJob {
public:
    static Result<std::unique_ptr<BackupJob>> start(Connection& library, const Places& places,
                                                    const std::string& name);
    ~BackupJob();
    BackupJob(const BackupJob&) = delete;
    BackupJob& operator=(const BackupJob&) = delete;

    /// Copies up to `pages` more pages (-1: all). True when the backup is finished.
    Result<bool> step(int pages);

    [[nodiscard]] const std::filesystem::path& file() const { return file_; }

private:
    BackupJob(Connection& library, std::filesystem::path file);
    [[nodiscard]] std::filesystem::path part() const { return file_.string() + ".part"; }
    Status finish();

    Connection& library_;
    std::filesystem::path file_;
    std::unique_ptr<SQLite::Database> copy_;
    std::unique_ptr<SQLite::Backup> backup_;
};

std::string daily_backup_name(Timestamp at);  ///< "daily-20260314T083000Z.sqlite"
std::string migration_backup_name(int from_version,
                                  Timestamp at);  ///< "before-leaving-version-1-20260314T083000Z.sqlite"
/// Whether the last daily backup is a day old or more.
bool backup_is_due(const Places& places, Timestamp now);
/// Removes the oldest daily backups beyond daily_backups_kept.
void thin_out_backups(const Places& places, Timestamp now);

/// Renames a damaged library, with its journal files, to "library.damaged-TIME.sqlite"; nothing is deleted.
/// Hands back the new name: when there was nothing to rename the one given last, or an empty path.
Result<std::filesystem::path> set_aside(const Places& places, Timestamp now);
/// The library that was set aside last; an empty path when none was.
std::filesystem::path set_aside_last(const Places& places);

/// The backup made last that passes SQLite's own check, or null when there is none.
std::unique_ptr<Backup> last_good_backup(const Places& places, Timestamp now);

/// Makes a copy of `backup` the library. There must be no library file: set it aside first.
Status restore(const Places& places, const Backup& backup);

/// Reads the whole file and says whether SQLite finds it sound (PRAGMA quick_check).
Status quick_check(Connection& connection);

}  // namespace lapwing::store
