// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/library.h"

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>
#include <set>

#include "tests/core/store/sample.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;
using sample::why;

std::vector<Edit> puts(std::initializer_list<Record> records) {
    std::vector<Edit> edits;
    for (const auto& record : records)
        edits.emplace_back(Put{record});
    return edits;
}

Step info(const std::string& name) {
    Step step;
    step.name = name;
    step.at = sample::clock().now();
    return step;
}

std::string bytes_of(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// A library with one engine, closed again; hands back the engine.
Engine make_library(const fs::path& folder) {
    auto library = Library::open(folder, sample::clock());
    EXPECT_TRUE(library) << why(library);
    const auto engine = sample::engine();
    EXPECT_TRUE((*library)->apply(info("engine.add"), puts({engine})));
    return engine;
}

TEST(LibraryOpen, MakesTheFolderAndKeepsWhatIsPut) {
    const sample::Folder folder;
    const auto inside = folder.path() / "a" / "b";
    const auto engine = make_library(inside);
    const auto library = Library::open(inside, sample::clock());
    ASSERT_TRUE(library) << why(library);
    EXPECT_FALSE((*library)->was_checked());
    EXPECT_EQ((*library)->queries().engine(engine.id).value(), engine);
}

TEST(LibraryOpen, IsPrivateToItsOwnerWhereItMadeTheFolder) {
    const sample::Folder folder;
    const auto made = folder.path() / "new";
    ASSERT_TRUE(Library::open(made, sample::clock()));
    EXPECT_EQ(fs::status(made).permissions(), fs::perms::owner_all);
    const auto shared = folder.path() / "shared";
    fs::create_directory(shared);
    fs::permissions(shared, fs::perms::owner_all | fs::perms::group_read);
    ASSERT_TRUE(Library::open(shared, sample::clock()));
    EXPECT_EQ(fs::status(shared).permissions(), fs::perms::owner_all | fs::perms::group_read);
}

TEST(LibraryOpen, UsesTheSafetySettingsItPromises) {
    const sample::Folder folder;
    auto connection = Connection::open(folder.path() / "x.sqlite", Access::write);
    ASSERT_TRUE(connection) << why(connection);
    auto& db = (*connection)->db();
    // Values as the SQLite manual gives them ("PRAGMA synchronous": 2 is FULL).
    EXPECT_EQ(db.execAndGet("PRAGMA journal_mode").getString(), "wal");
    EXPECT_EQ(db.execAndGet("PRAGMA synchronous").getInt(), 2);
    EXPECT_EQ(db.execAndGet("PRAGMA foreign_keys").getInt(), 1);
}

TEST(LibraryOpen, MarksItsFileAsALibrary) {
    const sample::Folder folder;
    make_library(folder.path());
    // SQLite file format, section 1.3: user version at byte 60, application id at byte 68, big-endian.
    const auto bytes = bytes_of(folder.path() / "library.sqlite");
    EXPECT_EQ(bytes.substr(60, 4), std::string(3, '\0') + static_cast<char>(migrations().back().version));
    EXPECT_EQ(bytes.substr(68, 4), "LPWG");
}

TEST(LibraryOpen, RefusesASecondLapwingWithASentence) {
    const sample::Folder folder;
    const auto first = Library::open(folder.path(), sample::clock());
    ASSERT_TRUE(first) << why(first);
    const auto second = Library::open(folder.path(), sample::clock());
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code, "store.in_use");
    EXPECT_NE(second.error().english.find("already has"), std::string::npos);
}

TEST(LibraryOpen, RefusesASecondProcessToo) {
    const sample::Folder folder;
    const auto first = Library::open(folder.path(), sample::clock());
    ASSERT_TRUE(first) << why(first);
    const pid_t child = fork();
    if (child == 0) {
        const auto second = Library::open(folder.path(), sample::clock());
        _exit(!second && second.error().code == "store.in_use" ? 0 : 1);
    }
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status));
    EXPECT_EQ(WEXITSTATUS(status), 0);
}

TEST(LibraryOpen, ChecksTheFileAfterAnUncleanEnd) {
    const sample::Folder folder;
    make_library(folder.path());
    const pid_t child = fork();
    if (child == 0) {
        auto library = Library::open(folder.path(), sample::clock());
        _exit(library ? 0 : 1);  // no destructor: as if killed
    }
    int status = 0;
    waitpid(child, &status, 0);
    ASSERT_EQ(WEXITSTATUS(status), 0);
    {
        auto opened = open_or_restore(folder.path(), sample::clock());
        ASSERT_TRUE(opened) << why(opened);
        EXPECT_TRUE(opened->library->was_checked());
        ASSERT_EQ(opened->told.size(), 1U);
        EXPECT_EQ(opened->told[0].code, "store.was_checked");
    }
    auto opened = open_or_restore(folder.path(), sample::clock());
    ASSERT_TRUE(opened) << why(opened);
    EXPECT_TRUE(opened->told.empty());
}

TEST(LibraryOpen, LeavesANewerLibraryAlone) {
    const sample::Folder folder;
    make_library(folder.path());
    const auto file = folder.path() / "library.sqlite";
    {
        SQLite::Database db(file.string(), SQLite::OPEN_READWRITE);
        db.exec("PRAGMA user_version = 99");
        db.execAndGet("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    const auto before = bytes_of(file);
    const auto library = open_or_restore(folder.path(), sample::clock());
    ASSERT_FALSE(library);
    EXPECT_EQ(library.error().code, "store.newer_version");
    EXPECT_NE(library.error().english.find("Update Lapwing"), std::string::npos);
    EXPECT_EQ(bytes_of(file), before);
}

TEST(LibraryOpen, LeavesAnotherProgramsDatabaseAlone) {
    const sample::Folder folder;
    const auto file = folder.path() / "library.sqlite";
    {
        SQLite::Database db(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        db.exec("CREATE TABLE recipes (name TEXT)");
    }
    const auto library = open_or_restore(folder.path(), sample::clock());
    ASSERT_FALSE(library);
    EXPECT_EQ(library.error().code, "store.not_ours");
    SQLite::Database db(file.string(), SQLite::OPEN_READONLY);
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM sqlite_schema").getInt(), 1);
}

/// A made-up older library: version 1, and two migrations that follow it.
const std::vector<Migration> made_up_old{{1,
                                          "CREATE TABLE thing (id INTEGER PRIMARY KEY, name TEXT) STRICT;"
                                          "INSERT INTO thing VALUES (1, 'piston'), (2, 'valve');"}};
const std::vector<Migration> made_up_new{
    made_up_old[0],
    {2, "ALTER TABLE thing ADD COLUMN weight REAL;"},
    {3, "UPDATE thing SET weight = id * 0.5; CREATE INDEX thing_by_name ON thing (name);"}};

TEST(Migrations, RunInOrderAfterABackup) {
    const sample::Folder folder;
    ASSERT_TRUE(Library::open(folder.path(), sample::clock(), made_up_old));
    {
        const auto library = Library::open(folder.path(), sample::clock(), made_up_new);
        ASSERT_TRUE(library) << why(library);
    }
    SQLite::Database db((folder.path() / "library.sqlite").string(), SQLite::OPEN_READONLY);
    EXPECT_EQ(db.execAndGet("PRAGMA user_version").getInt(), 3);
    EXPECT_EQ(db.execAndGet("SELECT weight FROM thing WHERE name = 'valve'").getDouble(), 1.0);

    const auto kept = backups(Places{folder.path()}, sample::clock().now());
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_FALSE(kept[0].daily);
    EXPECT_EQ(kept[0].file.filename(), "before-leaving-version-1-20260314T083000Z.sqlite");
    auto copy = Connection::open(kept[0].file, Access::copy);
    ASSERT_TRUE(copy) << why(copy);
    EXPECT_EQ((*copy)->db().execAndGet("PRAGMA user_version").getInt(), 1);
    EXPECT_EQ((*copy)->db().execAndGet("SELECT count(*) FROM thing").getInt(), 2);
}

TEST(Migrations, AreAllOrNothing) {
    const sample::Folder folder;
    ASSERT_TRUE(Library::open(folder.path(), sample::clock(), made_up_old));
    auto broken = made_up_new;
    broken.push_back({4, "UPDATE no_such_table SET x = 1;"});
    const auto library = Library::open(folder.path(), sample::clock(), broken);
    ASSERT_FALSE(library);
    SQLite::Database db((folder.path() / "library.sqlite").string(), SQLite::OPEN_READONLY);
    EXPECT_EQ(db.execAndGet("PRAGMA user_version").getInt(), 1);
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM pragma_table_info('thing')").getInt(), 2);
}

TEST(Migrations, DontStartWithoutABackup) {
    const sample::Folder folder;
    ASSERT_TRUE(Library::open(folder.path(), sample::clock(), made_up_old));
    std::ofstream(folder.path() / "backups") << "a file where the folder should be";
    const auto library = Library::open(folder.path(), sample::clock(), made_up_new);
    ASSERT_FALSE(library);
    SQLite::Database db((folder.path() / "library.sqlite").string(), SQLite::OPEN_READONLY);
    EXPECT_EQ(db.execAndGet("PRAGMA user_version").getInt(), 1);
}

TEST(Migrations, OfTheRealListCountUp) {
    int version = 0;
    for (const auto& migration : migrations())
        EXPECT_EQ(migration.version, ++version);
}

}  // namespace
}  // namespace lapwing::store
