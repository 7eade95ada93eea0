// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Opening that changes much at once - a damaged library set aside, an older one brought up to date - while
// the power fails or the storage refuses.

#include <gtest/gtest.h>

#include <cerrno>
#include <set>

#include "core/store/library.h"
#include "core/workflow/engines.h"
#include "tests/faults/disk.h"
#include "tests/faults/flow.h"

namespace lapwing::faults {
namespace {

using sample::why;

/// The library after the main flow, closed, its daily backup beside it; and what it holds.
struct Closed {
    Image files;
    Holdings holdings;
};
Closed after_the_main_flow() {
    const sample::Folder folder;
    const sample::Folder outside;
    file_from_elsewhere(outside.path());
    Person person(folder.path() / "library", outside.path());
    Closed closed;
    for (const auto& deed : main_flow()) {
        const auto done = deed.act(person);
        EXPECT_TRUE(done) << deed.name << ": " << why(done);
        if (person.desk) closed.holdings = Holdings::of(*person.desk);
    }
    closed.files = Image::of(folder.path());
    return closed;
}

const Closed& main_flow_closed() {
    static const Closed closed = after_the_main_flow();
    return closed;
}

std::vector<std::string> first_column(SQLite::Database& db, const std::string& sql) {
    std::vector<std::string> out;
    SQLite::Statement rows(db, sql);
    while (rows.executeStep())
        out.push_back(rows.getColumn(0).getString());
    return out;
}

/// A library made by the first migrations alone, with all that today's holds and it has room for.
std::string library_of_version(int version) {
    const sample::Folder folder;
    main_flow_closed().files.lay_out(folder.path());
    {
        SQLite::Database db((folder.path() / "then").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        for (const auto& migration : store::migrations())
            if (migration.version <= version) db.exec(migration.sql);
        db.exec("ATTACH '" + (folder.path() / "library" / "library.sqlite").string() + "' AS now");
        // Counts come with the rows.
        const std::string triggers = " FROM main.sqlite_schema WHERE type = 'trigger'";
        const auto counting = first_column(db, "SELECT sql" + triggers);
        for (const auto& name : first_column(db, "SELECT name" + triggers))
            db.exec("DROP TRIGGER " + name);
        for (const auto& table : first_column(db,
                                              "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND "
                                              "name NOT LIKE 'sqlite_%'")) {
            std::string columns;
            for (const auto& name : first_column(db, "SELECT name FROM pragma_table_info('" + table + "')"))
                columns += (columns.empty() ? "" : ", ") + name;
            db.exec("DELETE FROM main." + table);
            db.exec("INSERT INTO main." + table + " (" + columns + ") SELECT " + columns + " FROM now." +
                    table);
        }
        for (const auto& sql : counting)
            db.exec(sql);
        db.exec("DETACH now");
        db.exec(fmt::format("PRAGMA application_id = {}", store::application_id));
        db.exec(fmt::format("PRAGMA user_version = {}", version));
    }
    return Image::of(folder.path()).files["then"];
}

/// The closed library as an earlier Lapwing would have left it.
Image of_version(int version) {
    auto files = main_flow_closed().files;
    files.files["library/library.sqlite"] = library_of_version(version);
    std::erase_if(files.files, [](const auto& file) { return file.first.starts_with("library/backups/"); });
    return files;
}

/// What that version can hold: names of keys came with the second.
Holdings held_by(int version) {
    auto holdings = main_flow_closed().holdings;
    if (version < 2) holdings.keys.clear();
    return holdings;
}

/// After the day of the main flow's backup; before it, that one would seem to come from the future.
constexpr std::chrono::hours later(26);

struct Opening {
    Image at_first;
    std::vector<Wish> log;
    std::vector<std::string> calls;
};
Opening watch_opening(const Image& files) {
    const sample::Folder folder;
    files.lay_out(folder.path());
    const Disk disk(folder.path());
    Person person(folder.path() / "library", folder.path());
    person.clock.move_by(later);
    const auto opened = person.open();
    EXPECT_TRUE(opened) << why(opened);
    person.close();
    Opening out{disk.at_first(), disk.log(), {}};
    for (std::size_t call = 0; call < disk.calls(); ++call)
        out.calls.push_back(disk.call(call));
    EXPECT_TRUE(disk.is_complete());
    return out;
}

/// Cuts the power after every write of an opening; `check` looks at a person who opened what was left.
template <class Check>
std::size_t cut_while_opening(const Image& files, const Check& check) {
    const auto opening = watch_opening(files);
    for (const auto left : {Left::synced, Left::drawn, Left::everything}) {
        Storage storage(opening.at_first);
        for (std::size_t wishes = 0; wishes <= opening.log.size(); ++wishes) {
            if (wishes > 0) storage.take(opening.log[wishes - 1]);
            const sample::Folder folder;
            storage.after_power_cut(left, static_cast<std::uint32_t>(wishes)).lay_out(folder.path());
            Person person(folder.path() / "library", folder.path());
            person.clock.move_by(later);
            const auto opened = person.open();
            EXPECT_TRUE(opened) << why(opened);
            if (opened) check(person);
            if (testing::Test::HasFailure()) {
                ADD_FAILURE() << "power cut after write " << wishes << " of " << opening.log.size()
                              << ", left " << static_cast<int>(left);
                return 0;
            }
        }
    }
    return opening.log.size();
}

TEST(EarlierVersion, OfEverySchemaOpensWithAllItHeld) {
    for (int version = 1; version < store::migrations().back().version; ++version) {
        const sample::Folder folder;
        of_version(version).lay_out(folder.path());
        Person person(folder.path() / "library", folder.path());
        person.clock.move_by(later);
        const auto opened = person.open();
        ASSERT_TRUE(opened) << why(opened);
        EXPECT_TRUE(person.told.empty());
        const auto found = Holdings::of(*person.desk);
        EXPECT_TRUE(found == held_by(version)) << "version " << version;
        EXPECT_TRUE(lost_files(*person.desk, found).empty());
        EXPECT_TRUE(person.run(workflow::save_engine(sample::engine("One more"))));
    }
}

/// Whether there is a sound copy of the library as it was in that version.
bool has_backup_of(const fs::path& folder, int version) {
    for (const auto& backup : store::backups(store::Places{folder}, sample::clock().now())) {
        auto copy = store::Connection::open(backup.file, store::Access::copy);
        if (copy && store::quick_check(**copy) &&
            (*copy)->db().execAndGet("PRAGMA user_version").getInt() == version)
            return true;
    }
    return false;
}

TEST(EarlierVersion, IsWholeWheneverThePowerFailsWhileItIsBroughtUpToDate) {
    for (int version = 1; version < store::migrations().back().version; ++version) {
        const auto holdings = held_by(version);
        const auto cuts = cut_while_opening(of_version(version), [&](const Person& person) {
            EXPECT_TRUE(Holdings::of(*person.desk) == holdings);
            EXPECT_TRUE(has_backup_of(person.folder, version));
            for (const auto& told : person.told)
                EXPECT_EQ(told.code, "store.was_checked") << told.english;
        });
        EXPECT_GT(cuts, 20U);
    }
}

TEST(EarlierVersion, IsLeftAloneWhenTheStorageRefusesAndOpensOnceItDoesNot) {
    for (int version = 1; version < store::migrations().back().version; ++version) {
        const auto files = of_version(version);
        const auto calls = watch_opening(files).calls;
        int told = 0;
        for (const int system_error : {ENOSPC, EIO})
            for (std::size_t call = 0; call < calls.size(); ++call) {
                if (!may_fail(calls[call], system_error)) continue;
                const sample::Folder folder;
                files.lay_out(folder.path());
                Disk disk(folder.path());
                Person person(folder.path() / "library", folder.path());
                person.clock.move_by(later);
                disk.refuse(call, system_error,
                            system_error == ENOSPC ? Disk::Lasting::until_room : Disk::Lasting::once);
                const auto opened = person.open();
                const auto what = disk.call(call);
                if (!opened) {
                    ++told;
                    EXPECT_TRUE(tells(opened.error(), system_error)) << what << ": " << why(opened);
                }
                disk.make_room();
                if (!opened) {
                    ASSERT_TRUE(person.open()) << what;
                }
                ASSERT_TRUE(Holdings::of(*person.desk) == held_by(version)) << what;
                if (testing::Test::HasFailure()) {
                    ADD_FAILURE() << "refused: " << what;
                    return;
                }
            }
        EXPECT_GT(told, 20);
    }
}

/// The closed library with its inside overwritten, as an unclean end left it.
Image damaged() {
    auto files = main_flow_closed().files;
    auto& library = files.files["library/library.sqlite"];
    std::fill(library.begin() + 4096, library.end(), '\xa5');
    files.files.erase("library/library.closed");
    return files;
}

TEST(Damage, IsSetAsideAndTheBackupStandsInWheneverThePowerFailsMeanwhile) {
    const auto damage = damaged().files["library/library.sqlite"];
    const auto backed_up = main_flow_closed().holdings.engines.size();
    const auto cuts = cut_while_opening(damaged(), [&](const Person& person) {
        EXPECT_EQ(person.desk->engines().size(), backed_up);
        bool kept = false;
        for (const auto& [name, bytes] : Image::of(person.folder).files)
            kept = kept || (name.starts_with("library.damaged-") && bytes == damage);
        EXPECT_TRUE(kept) << "the damaged file is gone";
    });
    EXPECT_GT(cuts, 5U);
}

TEST(Damage, AMissingLibraryIsNotTakenForANewOne) {
    const sample::Folder folder;
    auto files = main_flow_closed().files;
    files.files.erase("library/library.sqlite");
    files.lay_out(folder.path());
    Person person(folder.path() / "library", folder.path());
    person.clock.move_by(later);
    const auto opened = person.open();
    ASSERT_TRUE(opened) << why(opened);
    ASSERT_EQ(person.told.size(), 1U);
    EXPECT_EQ(person.told[0].code, "store.restored_lost");
    EXPECT_EQ(person.desk->engines().size(), main_flow_closed().holdings.engines.size());
}

}  // namespace
}  // namespace lapwing::faults
