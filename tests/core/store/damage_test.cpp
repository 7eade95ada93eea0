// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <fstream>

#include "core/store/library.h"
#include "tests/core/store/sample.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;
using sample::why;

Step info() {
    Step step;
    step.name = "engine.add";
    step.at = sample::clock().now();
    return step;
}

void add(Library& library, const Engine& engine) {
    const std::vector<Edit> edits{Put{engine}};
    const auto outcome = library.apply(info(), edits);
    ASSERT_TRUE(outcome) << why(outcome);
}

/// Opens, lets the due backup run to its end and closes.
void use_for_a_day(const fs::path& folder, const Clock& clock) {
    auto library = Library::open(folder, clock);
    ASSERT_TRUE(library) << why(library);
    auto job = (*library)->start_due_backup();
    ASSERT_TRUE(job) << why(job);
    if (!*job) return;
    while (true) {
        const auto finished = (*job)->step(2);
        ASSERT_TRUE(finished) << why(finished);
        if (*finished) break;
    }
    thin_out_backups((*library)->places(), clock.now());
}

void scribble(const fs::path& file, std::streamoff from, std::streamoff count) {
    std::fstream out(file, std::ios::in | std::ios::out | std::ios::binary);
    out.seekp(from);
    for (std::streamoff i = 0; i < count; ++i)
        out.put(static_cast<char>(0xA5));
}

std::vector<fs::path> set_aside_files(const fs::path& folder) {
    std::vector<fs::path> found;
    for (const auto& entry : fs::directory_iterator(folder))
        if (entry.path().filename().string().starts_with("library.damaged-")) found.push_back(entry.path());
    return found;
}

class Damage : public testing::Test {
protected:
    sample::Folder folder;
    FixedClock clock{sample::clock().now()};
    Engine first = sample::engine("In the backup");
    Engine second = sample::engine("After the backup");

    /// A library with one engine in its daily backup and another one added since, closed.
    void SetUp() override {
        {
            auto library = Library::open(folder.path(), clock);
            ASSERT_TRUE(library) << why(library);
            add(**library, first);
        }
        use_for_a_day(folder.path(), clock);
        auto library = Library::open(folder.path(), clock);
        ASSERT_TRUE(library) << why(library);
        add(**library, second);
    }
    fs::path file() const { return folder.path() / "library.sqlite"; }

    void expect_restored(Result<OpenedLibrary> opened) {
        ASSERT_TRUE(opened) << why(opened);
        ASSERT_EQ(opened->told.size(), 1U);
        EXPECT_EQ(opened->told[0].code, "store.restored");
        EXPECT_NE(opened->told[0].english.find("2026-03-14T09:30"), std::string::npos)
            << opened->told[0].english;
        const auto& queries = opened->library->queries();
        EXPECT_TRUE(queries.engine(first.id).value().has_value());
        EXPECT_FALSE(queries.engine(second.id).value().has_value());
    }
};

TEST_F(Damage, ToTheHeaderSetsTheFileAsideAndRestores) {
    scribble(file(), 0, 100);
    std::ifstream in(file(), std::ios::binary);
    const std::string damaged{std::istreambuf_iterator<char>(in), {}};

    expect_restored(open_or_restore(folder.path(), clock));
    const auto aside = set_aside_files(folder.path());
    ASSERT_EQ(aside.size(), 1U);
    EXPECT_EQ(aside[0].filename(), "library.damaged-20260314T083000Z.sqlite");
    std::ifstream kept(aside[0], std::ios::binary);
    EXPECT_EQ(std::string(std::istreambuf_iterator<char>(kept), {}), damaged);
}

TEST_F(Damage, InsideIsFoundByTheCheckAfterAnUncleanEnd) {
    // Every page but the first: the header still looks right, so only reading the whole file shows it.
    scribble(file(), 8192, static_cast<std::streamoff>(fs::file_size(file())) - 8192);
    fs::remove(folder.path() / "library.closed");
    expect_restored(open_or_restore(folder.path(), clock));
}

TEST_F(Damage, MetWhileReadingMakesTheNextOpeningCheck) {
    scribble(file(), 8192, static_cast<std::streamoff>(fs::file_size(file())) - 8192);
    {
        auto library = Library::open(folder.path(), clock);
        // Either opening meets the damage or the first read does.
        if (library) {
            const auto engines = (*library)->queries().engines();
            ASSERT_FALSE(engines);
            EXPECT_EQ(engines.error().code, "store.damaged");
        }
    }
    expect_restored(open_or_restore(folder.path(), clock));
}

TEST_F(Damage, TakesTheJournalFilesAlong) {
    scribble(file(), 0, 100);
    std::ofstream(folder.path() / "library.sqlite-wal") << "torn journal";
    expect_restored(open_or_restore(folder.path(), clock));
    const auto aside = folder.path() / "library.damaged-20260314T083000Z.sqlite";
    EXPECT_TRUE(fs::exists(aside));
    std::ifstream journal(aside.string() + "-wal", std::ios::binary);
    EXPECT_EQ(std::string(std::istreambuf_iterator<char>(journal), {}), "torn journal");
}

TEST_F(Damage, OfANewestBackupFallsBackToTheOneBefore) {
    clock.move_by(std::chrono::hours(25));
    use_for_a_day(folder.path(), clock);
    auto kept = backups(Places{folder.path()}, clock.now());
    ASSERT_EQ(kept.size(), 2U);
    scribble(kept[0].file, 4096, static_cast<std::streamoff>(fs::file_size(kept[0].file)) - 4096);
    scribble(file(), 0, 100);
    expect_restored(open_or_restore(folder.path(), clock));
}

TEST_F(Damage, TwiceKeepsBothFiles) {
    for (int i = 0; i < 2; ++i) {
        scribble(file(), 0, 100);
        expect_restored(open_or_restore(folder.path(), clock));
    }
    EXPECT_EQ(set_aside_files(folder.path()).size(), 2U);
}

TEST_F(Damage, WithoutAnyBackupStartsAnewAndSaysSo) {
    fs::remove_all(folder.path() / "backups");
    scribble(file(), 0, 100);
    const auto opened = open_or_restore(folder.path(), clock);
    ASSERT_TRUE(opened) << why(opened);
    ASSERT_EQ(opened->told.size(), 1U);
    EXPECT_EQ(opened->told[0].code, "store.started_anew");
    EXPECT_TRUE(opened->library->queries().engines()->empty());
    EXPECT_EQ(set_aside_files(folder.path()).size(), 1U);
}

TEST_F(Damage, IncludesAnEmptiedFile) {
    fs::resize_file(file(), 0);
    expect_restored(open_or_restore(folder.path(), clock));
}

TEST(DailyBackup, IsMadeOnceADayAndFiveAreKept) {
    const sample::Folder folder;
    FixedClock clock{sample::clock().now()};
    {
        auto library = Library::open(folder.path(), clock);
        ASSERT_TRUE(library) << why(library);
        // Nothing to lose yet.
        EXPECT_EQ((*library)->start_due_backup().value(), nullptr);
        add(**library, sample::engine());
    }
    const Places places{folder.path()};
    use_for_a_day(folder.path(), clock);
    EXPECT_EQ(backups(places, clock.now()).size(), 1U);
    clock.move_by(std::chrono::hours(23));
    use_for_a_day(folder.path(), clock);
    EXPECT_EQ(backups(places, clock.now()).size(), 1U);
    for (int day = 0; day < 7; ++day) {
        clock.move_by(std::chrono::hours(25));
        use_for_a_day(folder.path(), clock);
    }
    const auto kept = backups(places, clock.now());
    EXPECT_EQ(kept.size(), 5U);
    EXPECT_EQ(kept.front().made_at_ms, clock.now().unix_ms);
}

TEST(DailyBackup, HoldsOneMomentThoughTheLibraryIsWrittenMeanwhile) {
    const sample::Folder folder;
    const auto& clock = sample::clock();
    auto library = Library::open(folder.path(), clock);
    ASSERT_TRUE(library) << why(library);
    for (int i = 0; i < 50; ++i)
        add(**library, sample::engine("Engine " + std::to_string(i)));
    auto job = (*library)->start_due_backup();
    ASSERT_TRUE(job && *job) << why(job);
    for (int i = 50;; ++i) {
        const auto finished = (*job)->step(1);
        ASSERT_TRUE(finished) << why(finished);
        if (*finished) break;
        if (i < 60) add(**library, sample::engine("Engine " + std::to_string(i)));
    }
    auto copy = Connection::open((*job)->file(), Access::copy);
    ASSERT_TRUE(copy) << why(copy);
    EXPECT_TRUE(quick_check(**copy));
    EXPECT_GE(Queries(**copy).engines()->size(), 50U);
}

TEST(DailyBackup, GivenUpLeavesNothing) {
    const sample::Folder folder;
    auto library = Library::open(folder.path(), sample::clock());
    ASSERT_TRUE(library) << why(library);
    add(**library, sample::engine());
    {
        auto job = (*library)->start_due_backup();
        ASSERT_TRUE(job && *job) << why(job);
        ASSERT_FALSE((*job)->step(1).value());
    }
    EXPECT_TRUE(fs::is_empty(folder.path() / "backups"));
}

}  // namespace
}  // namespace lapwing::store
