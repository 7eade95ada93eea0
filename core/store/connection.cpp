// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/connection.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/resource.h>
#include <unistd.h>

#include <cerrno>

namespace lapwing::store {
namespace {

constexpr int busy_ms = 5000;
constexpr std::size_t probe_bytes = 65536;

/// A file name as SQLite's URI form wants it, saying that nobody will change the file (sqlite.org/uri.html).
std::string immutable_uri(const std::filesystem::path& file) {
    std::string uri = "file:";
    for (const char c : file.string()) {
        if (c == '%' || c == '?' || c == '#')
            uri += fmt::format("%{:02x}", static_cast<unsigned char>(c));
        else
            uri += c;
    }
    return uri + "?immutable=1";
}

/// Writes the bytes of a file over themselves, so that the next sync can't pass them over.
Status rewrite(const std::filesystem::path& file) {
    const int descriptor = ::open(file.c_str(), O_RDWR | O_CLOEXEC);
    std::string bytes(probe_bytes, '\0');
    bool done = descriptor >= 0;
    ssize_t count = 0;
    for (off_t at = 0; done && (count = ::pread(descriptor, bytes.data(), bytes.size(), at)) > 0; at += count)
        done = ::pwrite(descriptor, bytes.data(), static_cast<std::size_t>(count), at) == count;
    done = done && count == 0 && ::fsync(descriptor) == 0;
    const int system = errno;
    if (descriptor >= 0) ::close(descriptor);
    if (done) return {};
    return tl::unexpected(sqlite_error(SQLITE_IOERR, system, std::generic_category().message(system), file));
}

bool means_no_room(int system) {
    return system == ENOSPC || system == EDQUOT || system == EFBIG;
}

/// What the system says to writing `file` and beside it, 0 when it can be done. By the time SQLite's "write
/// failed" or "can't open" arrives, clearing up or another try has overwritten the system's reason, so this
/// looks for it again. The library itself is not opened: closing it would give up SQLite's locks on it.
int what_hinders(const std::filesystem::path& file) {
    rlimit limit{};
    getrlimit(RLIMIT_FSIZE, &limit);
    for (const auto* suffix : {"", "-wal"}) {
        const std::string name = file.string() + suffix;
        std::error_code error;
        const auto size = std::filesystem::file_size(name, error);
        if (error) continue;
        if (limit.rlim_cur != RLIM_INFINITY && size + probe_bytes > limit.rlim_cur) return EFBIG;
        if (::access(name.c_str(), W_OK) != 0) return errno;
    }
    const std::string probe = file.string() + ".probe";
    const int descriptor = ::open(probe.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
    if (descriptor < 0) return errno;
    const std::string bytes(probe_bytes, '\0');
    errno = ENOSPC;  // of a write that is short
    const auto written = ::write(descriptor, bytes.data(), bytes.size());
    const int system = written == static_cast<ssize_t>(bytes.size()) ? 0 : errno;
    ::close(descriptor);
    ::unlink(probe.c_str());
    return system;
}

}  // namespace

Error sqlite_error(int code, int system, std::string_view message, const std::filesystem::path& file) {
    const std::string where = file.string();
    const int primary = code & 0xff;
    const bool says_little =
        primary == SQLITE_IOERR || primary == SQLITE_CANTOPEN || primary == SQLITE_READONLY;
    const int reason = says_little && !means_no_room(system) ? what_hinders(file) : system;
    if (primary == SQLITE_FULL || (says_little && means_no_room(reason)))
        return fail("store.full",
                    "There is no room left to store this: {} could not grow. Nothing stored before is lost. "
                    "Free some space on this device and do it again.",
                    where)
            .value();
    if (primary == SQLITE_CORRUPT || primary == SQLITE_NOTADB)
        return fail("store.damaged",
                    "The library {} is damaged ({}). Close Lapwing and open it again: it sets the damaged "
                    "file "
                    "aside and goes back to the last good backup.",
                    where, std::string(message))
            .value();
    const bool is_hindered = says_little && primary != SQLITE_IOERR && reason != 0 && reason != EIO;
    if (primary == SQLITE_PERM || primary == SQLITE_AUTH || is_hindered)
        return fail("store.read_only",
                    "{} can't be written. Check that its folder exists, belongs to you and is not "
                    "write-protected.",
                    where)
            .value();
    if (primary == SQLITE_BUSY || primary == SQLITE_LOCKED)
        return fail("store.busy",
                    "Another program is holding {}, so this was not stored. Close that program and do it "
                    "again.",
                    where)
            .value();
    if (says_little)
        return fail("store.io",
                    "The storage that holds {} reports an error ({}), so this was not stored. Do it again; "
                    "if it "
                    "keeps failing, copy the folder to another place.",
                    where, std::string(message))
            .value();
    return fail("store.unexpected", "{} could not be used: {}. Nothing was stored.", where,
                std::string(message))
        .value();
}

Connection::Connection(std::filesystem::path file, const std::string& name, int flags)
    : file_(std::move(file)), db_(name, flags, busy_ms) {}

Result<std::unique_ptr<Connection>> Connection::open(const std::filesystem::path& file, Access access) {
    try {
        const bool copy = access == Access::copy;
        int flags = SQLite::OPEN_READWRITE;
        if (access == Access::write) flags |= SQLite::OPEN_CREATE;
        if (copy) flags = SQLite::OPEN_READONLY | SQLite::OPEN_URI;
        std::unique_ptr<Connection> connection(
            new Connection(file, copy ? immutable_uri(file) : file.string(), flags));
        try {
            auto& db = connection->db_;
            if (access == Access::write) {
                connection->tidy_up_on_close(false);
                // SQLite opens for reading what it can't open for writing, and says so at the first write.
                if (sqlite3_db_readonly(db.getHandle(), "main") != 0)
                    return tl::unexpected(
                        sqlite_error(SQLITE_READONLY, 0, "it opens for reading only", file));
                if (auto sound = connection->mend_journal(); !sound) return tl::unexpected(sound.error());
            }
            db.exec("PRAGMA foreign_keys = ON");
            if (access == Access::write) {
                // It says its new mode before that is stored, so it has to run to its end. SQLite goes on
                // without the journal where it can't make one; what is confirmed then is not safe when the
                // power fails (sqlite.org/pragma.html, synchronous: EXTRA).
                db.exec("PRAGMA journal_mode = WAL");
                if (db.execAndGet("PRAGMA journal_mode").getString() != "wal")
                    return tl::unexpected(sqlite_error(SQLITE_IOERR, sqlite3_system_errno(db.getHandle()),
                                                       "no journal (WAL) can be kept", file));
                db.exec("PRAGMA synchronous = FULL");
            } else {
                db.exec("PRAGMA query_only = ON");
            }
            // Opening alone reads nothing; this meets a file that is no database at all.
            db.execAndGet("SELECT count(*) FROM sqlite_schema");
        } catch (const SQLite::Exception& exception) {
            return tl::unexpected(connection->explain(exception));
        }
        return connection;
    } catch (const SQLite::Exception& exception) {
        return tl::unexpected(sqlite_error(exception.getErrorCode(), errno, exception.what(), file));
    }
}

void Connection::tidy_up_on_close(bool yes) {
    sqlite3_db_config(db_.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, yes ? 0 : 1, nullptr);
}

SQLite::Statement& Connection::prepared(const std::string& sql) {
    auto& slot = statements_[sql];
    if (!slot) slot = std::make_unique<SQLite::Statement>(db_, sql);
    return *slot;
}

Status Connection::still_in_place() {
    int moved = 0;
    sqlite3_file_control(db_.getHandle(), "main", SQLITE_FCNTL_HAS_MOVED, &moved);
    std::error_code error;
    if (moved == 0 && std::filesystem::exists(journal(), error)) return {};
    return fail(
        "store.gone",
        "{} was moved or removed while Lapwing had it open, so this was not stored. Put its folder back "
        "and do it again; or close Lapwing and open it again.",
        file_.string());
}

Status Connection::commit(SQLite::Transaction& transaction) {
    if (auto here = still_in_place(); !here) return here;
    transaction.commit();
    return {};
}

Status Connection::mend_journal() {
    if (!journal_in_doubt_) return {};
    std::error_code error;
    if (std::filesystem::file_size(journal(), error) > 0 && !error)
        if (auto written = rewrite(journal()); !written) return written;
    journal_in_doubt_ = false;
    return {};
}

Error Connection::explain(const SQLite::Exception& exception) {
    if (exception.getExtendedErrorCode() == SQLITE_IOERR_FSYNC) journal_in_doubt_ = true;
    auto error = sqlite_error(exception.getErrorCode(), sqlite3_system_errno(db_.getHandle()),
                              exception.what(), file_);
    if (error.code == "store.damaged") saw_damage_ = true;
    return error;
}

}  // namespace lapwing::store
