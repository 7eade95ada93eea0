// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/backup.h"

#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <optional>
#include <tuple>

#include "core/base/atomic_file.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view daily_prefix = "daily-";
constexpr std::string_view migration_prefix = "before-leaving-version-";
constexpr std::string_view aside_prefix = "library.damaged-";
constexpr std::string_view ending = ".sqlite";
constexpr std::array library_files{"", "-wal", "-shm"};
constexpr std::int64_t day_ms = 24LL * 60 * 60 * 1000;

/// 20260314T083000Z: sorts by time and is a file name everywhere.
std::string stamp(Timestamp at) {
    const auto text = to_rfc3339(Timestamp{at.unix_ms, 0});  // 2026-03-14T08:30:00.000+00:00
    std::string out;
    for (const char c : text.substr(0, 19))
        if (c != '-' && c != ':') out += c;
    return out + 'Z';
}

/// The time at the end of a backup's name.
std::optional<std::int64_t> stamped_ms(std::string_view name) {
    constexpr std::size_t length = 16;
    if (name.size() < ending.size() + length || !name.ends_with(ending)) return std::nullopt;
    const auto text = name.substr(name.size() - ending.size() - length, length);
    const auto part = [&](std::size_t at, std::size_t count) { return std::string(text.substr(at, count)); };
    const auto at = parse_rfc3339(part(0, 4) + '-' + part(4, 2) + '-' + part(6, 2) + 'T' + part(9, 2) + ':' +
                                  part(11, 2) + ':' + part(13, 2) + 'Z');
    if (!at) return std::nullopt;
    return at->unix_ms;
}

/// Renames; an error becomes a sentence.
Status rename_file(const fs::path& from, const fs::path& to) {
    std::error_code error;
    fs::rename(from, to, error);
    if (error)
        return fail("store.read_only",
                    "{} could not be renamed to {} ({}). Check that its folder is not "
                    "write-protected.",
                    from.string(), to.filename().string(), error.message());
    return {};
}

fs::path beside(const fs::path& file, std::string_view suffix) {
    return file.string() + std::string(suffix);
}

/// What a backup that was cut short leaves.
void remove_leftovers(const Places& places) {
    std::error_code error;
    std::vector<fs::path> leftovers;
    for (const auto& entry : fs::directory_iterator(places.backups(), error))
        if (entry.path().filename().string().find(".sqlite.part") != std::string::npos)
            leftovers.push_back(entry.path());
    for (const auto& file : leftovers)
        fs::remove(file, error);
}

}  // namespace

std::vector<Backup> backups(const Places& places, Timestamp now) {
    std::vector<Backup> found;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(places.backups(), error)) {
        const std::string name = entry.path().filename().string();
        const bool daily = name.starts_with(daily_prefix);
        if (!daily && !name.starts_with(migration_prefix)) continue;
        if (const auto at = stamped_ms(name)) found.push_back({entry.path(), *at, daily});
    }
    const auto order = [&](const Backup& backup) {
        const bool from_the_future = backup.made_at_ms > now.unix_ms + day_ms;
        return std::tuple(!from_the_future, backup.made_at_ms, backup.file);
    };
    std::ranges::sort(found, std::ranges::greater{}, order);
    return found;
}

BackupJob::BackupJob(Connection& library, fs::path file) : library_(library), file_(std::move(file)) {}

Result<std::unique_ptr<BackupJob>> BackupJob::start(Connection& library, const Places& places,
                                                    const std::string& name) {
    if (auto made = make_folder(places.backups()); !made) return tl::unexpected(made.error());
    std::unique_ptr<BackupJob> job(new BackupJob(library, places.backups() / name));
    remove_leftovers(places);
    try {
        job->copy_ = std::make_unique<SQLite::Database>(job->part().string(),
                                                        SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        // Nobody can see the copy before it is whole, so SQLite needn't protect it on the way there.
        job->copy_->exec("PRAGMA journal_mode = OFF");
        job->copy_->exec("PRAGMA synchronous = OFF");
        job->backup_ = std::make_unique<SQLite::Backup>(*job->copy_, library.db());
    } catch (const SQLite::Exception& exception) {
        return tl::unexpected(sqlite_error(exception.getErrorCode(), errno, exception.what(), job->file_));
    }
    return job;
}

BackupJob::~BackupJob() {
    backup_.reset();
    copy_.reset();
    std::error_code error;
    fs::remove(part(), error);
}

Result<bool> BackupJob::step(int pages) {
    return guarded(library_, [&]() -> Result<bool> {
        backup_->executeStep(pages);
        if (backup_->getRemainingPageCount() > 0) {
            // A little at every step, so that the last one is as short as the others.
            if (auto status = sync_file(part()); !status) return tl::unexpected(status.error());
            return false;
        }
        if (auto status = finish(); !status) return tl::unexpected(status.error());
        return true;
    });
}

Status BackupJob::finish() {
    backup_.reset();
    copy_.reset();
    return put_in_place(part(), file_);
}

std::string daily_backup_name(Timestamp at) {
    return fmt::format("{}{}{}", daily_prefix, stamp(at), ending);
}

std::string migration_backup_name(int from_version, Timestamp at) {
    return fmt::format("{}{}-{}{}", migration_prefix, from_version, stamp(at), ending);
}

bool backup_is_due(const Places& places, Timestamp now) {
    for (const auto& backup : backups(places, now)) {
        // One from the future (the clock was set back) must not hold up backups for years.
        if (backup.daily && now.unix_ms - backup.made_at_ms < day_ms &&
            backup.made_at_ms - now.unix_ms < day_ms)
            return false;
    }
    return true;
}

void thin_out_backups(const Places& places, Timestamp now) {
    int daily = 0;
    for (const auto& backup : backups(places, now)) {
        std::error_code error;
        if (backup.daily && ++daily > daily_backups_kept) fs::remove(backup.file, error);
    }
}

fs::path set_aside_last(const Places& places) {
    fs::path last;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(places.folder, error)) {
        const auto name = entry.path().filename().string();
        if (name.starts_with(aside_prefix) && name.ends_with(ending) && entry.path() > last)
            last = entry.path();
    }
    return last;
}

Result<fs::path> set_aside(const Places& places, Timestamp now) {
    const auto is_there = [](const fs::path& file, std::string_view suffix) {
        std::error_code error;
        return fs::exists(beside(file, suffix), error);
    };
    const auto any_there = [&](const fs::path& file) {
        return std::ranges::any_of(library_files, [&](const auto* suffix) { return is_there(file, suffix); });
    };
    if (!any_there(places.library())) return set_aside_last(places);

    // A journal alone was left by a run that was cut off here: it goes beside its file.
    fs::path target = is_there(places.library(), "") ? fs::path() : set_aside_last(places);
    if (target.empty() || is_there(target, "-wal")) {
        const std::string base = std::string(aside_prefix) + stamp(now);
        target = places.folder / (base + std::string(ending));
        for (int again = 2; any_there(target); ++again)
            target =
                places.folder / fmt::format("{}_{}{}", base, again, ending);  // sorts after the one before
    }
    // The library goes before its journal: without the journal it would pass for a whole, but older one.
    for (const auto* suffix : library_files) {
        if (!is_there(places.library(), suffix)) continue;
        if (auto status = rename_file(beside(places.library(), suffix), beside(target, suffix)); !status)
            return tl::unexpected(status.error());
    }
    if (auto status = sync_folder(places.folder); !status) return tl::unexpected(status.error());
    return target;
}

std::unique_ptr<Backup> last_good_backup(const Places& places, Timestamp now) {
    for (auto& backup : backups(places, now)) {
        auto connection = Connection::open(backup.file, Access::copy);
        if (connection && quick_check(**connection)) return std::make_unique<Backup>(std::move(backup));
    }
    return nullptr;
}

Status restore(const Places& places, const Backup& backup) {
    const auto part = beside(places.library(), ".part");
    std::error_code error;
    fs::copy_file(backup.file, part, fs::copy_options::overwrite_existing, error);
    if (error) {
        const auto reason = file_error(error.value(), part);
        fs::remove(part, error);
        return reason;
    }
    return put_in_place(part, places.library());
}

Status quick_check(Connection& connection) {
    return guarded(connection, [&]() -> Status {
        Query query(connection, "PRAGMA quick_check(1)");
        query.next();
        const std::string verdict = query.text(0);
        if (verdict != "ok")
            return fail("store.damaged", "The library {} is damaged ({}).", connection.file().string(),
                        verdict);
        return {};
    });
}

}  // namespace lapwing::store
