// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <atomic>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>

#include "core/base/result.h"

namespace lapwing::store {

enum class Access {
    write,  ///< makes the file when it isn't there; every commit reaches the storage before it is reported
    read,   ///< a second connection beside the writer: never changes anything
    copy,   ///< a backup at rest: opened without leaving any trace beside it
};

/// One connection to a library file, with its statements prepared once. Not for several threads at a time.
class Connection {
public:
    static Result<std::unique_ptr<Connection>> open(const std::filesystem::path& file, Access access);

    SQLite::Database& db() { return db_; }
    const std::filesystem::path& file() const { return file_; }

    /// The statement for `sql`, prepared the first time.
    SQLite::Statement& prepared(const std::string& sql);

    /// Whether closing moves the journal (-wal) into the file. Not at first: a file that turns out to be
    /// damaged has to stay exactly as it was found.
    void tidy_up_on_close(bool yes);

    /// Fails with "store.gone" when the file was moved or removed while it is open: what goes on being
    /// written to it could never be found again.
    Status still_in_place();
    /// Ends a transaction so that what it did is where the next opening looks for it.
    Status commit(SQLite::Transaction& transaction);
    /// Before each transaction: writes the journal (-wal) again if the storage failed to sync it, or if an
    /// earlier run left it. What was written before such a failure may be forgotten by the storage, though it
    /// still can be read (fsync(2)); a later commit would stand behind that hole.
    Status mend_journal();

    /// The sentence for what SQLite reports here.
    Error explain(const SQLite::Exception& exception);
    /// Whether `explain` ever met signs of damage: the next opening then has to look closer.
    bool saw_damage() const { return saw_damage_; }

private:
    Connection(std::filesystem::path file, const std::string& name, int flags);
    [[nodiscard]] std::filesystem::path journal() const { return file_.string() + "-wal"; }

    std::filesystem::path file_;
    SQLite::Database db_;
    std::unordered_map<std::string, std::unique_ptr<SQLite::Statement>> statements_;
    std::atomic<bool> saw_damage_ = false;
    bool journal_in_doubt_ = true;
};

/// One use of a prepared statement; it is ready for the next use when this goes out of scope.
class Query {
public:
    Query(Connection& connection, const std::string& sql) : statement_(connection.prepared(sql)) {}
    ~Query() { statement_.tryReset(); }
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;

    /// Binds every parameter in order. Texts are copied.
    template <class... Values>
    Query& with(const Values&... values) {
        int index = 0;
        (bind(++index, values), ...);
        return *this;
    }
    void bind(int index, std::int64_t value) { statement_.bind(index, value); }
    void bind(int index, int value) { statement_.bind(index, value); }
    void bind(int index, const std::string& value) { statement_.bind(index, value); }
    void bind(int index, std::nullptr_t) { statement_.bind(index); }

    bool next() { return statement_.executeStep(); }
    void run() {
        while (statement_.executeStep()) {
        }
    }

    std::string text(int column) const { return statement_.getColumn(column).getString(); }
    std::int64_t integer(int column) const { return statement_.getColumn(column).getInt64(); }
    bool is_null(int column) const { return statement_.getColumn(column).isNull(); }

private:
    SQLite::Statement& statement_;
};

/// Runs `body`, which hands back a Result, and turns what SQLite throws into the sentence for it.
template <class Body>
auto guarded(Connection& connection, Body&& body) -> decltype(body()) {
    try {
        return body();
    } catch (const SQLite::Exception& exception) {
        return tl::unexpected(connection.explain(exception));
    }
}

/// The sentence for an SQLite result code; `system` is the operating system's errno behind it, 0 if none.
Error sqlite_error(int code, int system, std::string_view message, const std::filesystem::path& file);

}  // namespace lapwing::store
