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

bool means_no_room(int system) {
    return system == ENOSPC || system == EDQUOT || system == EFBIG;
}

/// Whether there is no room for more beside `file`. By the time SQLite's "write failed" arrives, clearing up
/// has often overwritten the system's reason, so this looks for it again.
bool has_no_room(const std::filesystem::path& file) {
    rlimit limit{};
    getrlimit(RLIMIT_FSIZE, &limit);
    for (const auto* suffix : {"", "-wal"}) {
        std::error_code error;
        const auto size = std::filesystem::file_size(file.string() + suffix, error);
        if (!error && limit.rlim_cur != RLIM_INFINITY && size + probe_bytes > limit.rlim_cur) return true;
    }
    const std::string probe = file.string() + ".probe";
    const int descriptor = ::open(probe.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
    if (descriptor < 0) return means_no_room(errno);
    const std::string bytes(probe_bytes, '\0');
    const auto written = ::write(descriptor, bytes.data(), bytes.size());
    const int system = errno;
    ::close(descriptor);
    ::unlink(probe.c_str());
    return written < 0 ? means_no_room(system) : static_cast<std::size_t>(written) < bytes.size();
}

}  // namespace

Error sqlite_error(int code, int system, std::string_view message, const std::filesystem::path& file) {
    const std::string where = file.string();
    const int primary = code & 0xff;
    const bool no_room = (primary == SQLITE_IOERR || primary == SQLITE_CANTOPEN) &&
                         (means_no_room(system) || has_no_room(file));
    if (primary == SQLITE_FULL || no_room)
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
    if (primary == SQLITE_READONLY || primary == SQLITE_PERM || primary == SQLITE_AUTH ||
        primary == SQLITE_CANTOPEN)
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
    if (primary == SQLITE_IOERR)
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
            if (access == Access::write) connection->tidy_up_on_close(false);
            db.exec("PRAGMA foreign_keys = ON");
            if (access == Access::write) {
                db.execAndGet("PRAGMA journal_mode = WAL");
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

Error Connection::explain(const SQLite::Exception& exception) {
    auto error = sqlite_error(exception.getErrorCode(), sqlite3_system_errno(db_.getHandle()),
                              exception.what(), file_);
    if (error.code == "store.damaged") saw_damage_ = true;
    return error;
}

}  // namespace lapwing::store
