// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The power fails at every single write of the main flow, and the library is opened again as the app does it.

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <set>

#include "core/base/sha256.h"
#include "tests/faults/disk.h"
#include "tests/faults/flow.h"
#include "tests/faults/handed_over.h"

namespace lapwing::faults {
namespace {

using sample::why;

/// What the whole flow asked of the storage, and what had been confirmed at which point of it.
struct Told {
    Image at_first;
    std::vector<Wish> log;
    std::vector<Deed> deeds;
    std::vector<std::size_t> ends;   ///< by deed: wishes asked until it was confirmed
    std::vector<Holdings> after;     ///< by deed
    std::vector<std::string> draft;  ///< by deed
    std::vector<std::map<std::string, std::string>> handed_over;  ///< by deed
};

Told watch_the_main_flow() {
    const sample::Folder folder;
    const sample::Folder outside;
    file_from_elsewhere(outside.path());
    const Disk disk(folder.path());
    Person person(folder.path() / "library", outside.path());
    Told told;
    told.deeds = main_flow();
    told.at_first = disk.at_first();
    std::string draft;
    for (const auto& deed : told.deeds) {
        const auto done = deed.act(person);
        EXPECT_TRUE(done) << deed.name << ": " << why(done);
        told.ends.push_back(disk.wishes());
        told.after.push_back(person.desk ? Holdings::of(*person.desk) : told.after.back());
        draft = deed.draft.value_or(draft);
        told.draft.push_back(draft);
        told.handed_over.push_back(handed_over(Image::of(folder.path())));
        if (deed.hands_over.empty()) continue;
        EXPECT_EQ(fault_of(person, deed.hands_over), "") << deed.name;
        EXPECT_TRUE(person.gaps.empty()) << deed.name;
    }
    EXPECT_TRUE(person.troubles().empty());
    EXPECT_TRUE(disk.is_complete()) << "something is written by calls that are not watched";
    told.log = disk.log();
    return told;
}

const Told& main_flow_told() {
    static const Told told = watch_the_main_flow();
    return told;
}

/// Deeds confirmed when the power failed after so many wishes.
std::size_t confirmed_at(const Told& told, std::size_t wishes) {
    return static_cast<std::size_t>(
        std::ranges::count_if(told.ends, [&](std::size_t end) { return end <= wishes; }));
}

/// Drafts that may be found: the one that was safe with the last confirmed command, and any typed since.
std::set<std::string> drafts_at(const Told& told, std::size_t confirmed) {
    std::size_t safe = confirmed;
    while (safe > 0 && told.deeds[safe - 1].draft)
        --safe;
    std::set<std::string> allowed;
    for (std::size_t i = safe; i <= std::min(confirmed + 1, told.draft.size()); ++i)
        allowed.insert(i == 0 ? "" : told.draft[i - 1]);
    return allowed;
}

testing::AssertionResult is_sound(const fs::path& file) {
    SQLite::Database db(file.string(), SQLite::OPEN_READWRITE);
    const auto verdict = db.execAndGet("PRAGMA integrity_check").getString();
    if (verdict != "ok") return testing::AssertionFailure() << verdict;
    SQLite::Statement broken(db, "PRAGMA foreign_key_check");
    if (broken.executeStep()) return testing::AssertionFailure() << "a record hangs on nothing";
    return testing::AssertionSuccess();
}

/// Opens what the power cut left and holds it against what was confirmed.
void check_after_cut(const Told& told, const Image& left, std::size_t confirmed) {
    const sample::Folder folder;
    left.lay_out(folder.path());
    Person person(folder.path() / "library", folder.path());
    const auto opened = person.open();
    ASSERT_TRUE(opened) << why(opened);
    for (const auto& one : person.told)
        EXPECT_EQ(one.code, "store.was_checked") << one.english;
    const auto found = Holdings::of(*person.desk);
    const auto before = confirmed == 0 ? Holdings{} : told.after[confirmed - 1];
    const auto after = confirmed < told.after.size() ? told.after[confirmed] : before;
    EXPECT_TRUE(found == before || found == after) << "neither as confirmed nor with the next deed whole";
    // Each file that was handed over is as confirmed, or as the next deed leaves it: the old one, none, or
    // whole.
    const auto files = handed_over(left);
    const std::map<std::string, std::string> none;
    const auto& files_before = confirmed == 0 ? none : told.handed_over[confirmed - 1];
    const auto& files_after =
        confirmed < told.handed_over.size() ? told.handed_over[confirmed] : files_before;
    EXPECT_TRUE(files == files_before || files == files_after) << "a file that was handed over is not whole";
    EXPECT_EQ(lost_files(*person.desk, found), std::vector<std::string>{});
    EXPECT_TRUE(drafts_at(told, confirmed).contains(person.desk->draft("pad")))
        << "draft: " << person.desk->draft("pad");
    EXPECT_TRUE(person.troubles().empty());
    person.close();
    EXPECT_TRUE(is_sound(person.folder / "library.sqlite"));
}

std::string fingerprint(const Image& image, std::size_t confirmed) {
    Sha256 sum;
    for (const auto& name : image.folders)
        sum.add(name + '\n');
    for (const auto& [name, bytes] : image.files)
        sum.add(name + '\n' + std::to_string(bytes.size()) + '\n' + bytes);
    return sum.hex() + std::to_string(confirmed);
}

/// Cuts the power after every wish of the log, in one way. Says how many different things were found.
std::size_t cut_everywhere(const Told& told, Left left, std::uint32_t seed) {
    Storage storage(told.at_first);
    std::set<std::string> seen;
    for (std::size_t wishes = 0; wishes <= told.log.size(); ++wishes) {
        if (wishes > 0) storage.take(told.log[wishes - 1]);
        const auto confirmed = confirmed_at(told, wishes);
        const auto image = storage.after_power_cut(left, seed + static_cast<std::uint32_t>(wishes));
        if (!seen.insert(fingerprint(image, confirmed)).second) continue;
        check_after_cut(told, image, confirmed);
        if (testing::Test::HasFailure()) {
            ADD_FAILURE() << "power cut after wish " << wishes << " of " << told.log.size() << " ("
                          << (wishes > 0 ? told.log[wishes - 1].name : "none") << "), "
                          << (confirmed > 0 ? "after \"" + told.deeds[confirmed - 1].name + '"' : "at first")
                          << ", seed " << seed;
            break;
        }
    }
    return seen.size();
}

TEST(PowerCut, ThatLosesAllUnsyncedWritesTakesNothingConfirmed) {
    const auto& told = main_flow_told();
    const auto found = cut_everywhere(told, Left::synced, 0);
    std::printf("%zu writes, %zu different remains\n", told.log.size(), found);
    EXPECT_GT(found, told.deeds.size());
}

TEST(PowerCut, ThatLeavesUnsyncedWritesTornAndOutOfOrderTakesNothingConfirmed) {
    const auto& told = main_flow_told();
    const char* wanted = std::getenv("LAPWING_DRAWS");  // tests/long/faults
    const int draws = wanted != nullptr ? std::atoi(wanted) : 1;
    for (int draw = 1; draw <= draws && !HasFailure(); ++draw) {
        const auto found = cut_everywhere(told, Left::drawn, static_cast<std::uint32_t>(draw) * 100'000);
        std::printf("%zu writes, %zu different remains\n", told.log.size(), found);
        EXPECT_GT(found, told.log.size() / 2);
    }
}

/// Works on in a library that a killed program left: an engine, a session and a photo that may lie there
/// already. Says what is confirmed.
Holdings work_on(Person& person) {
    const auto opened = person.open();
    EXPECT_TRUE(opened) << why(opened);
    for (const auto& deed : main_flow())
        if (person.desk &&
            (deed.name == "add an engine" || deed.name == "open a session" || deed.name == "keep a photo")) {
            const auto done = deed.act(person);
            EXPECT_TRUE(done) << deed.name << ": " << why(done);
        }
    return person.desk ? Holdings::of(*person.desk) : Holdings();
}

/// The program is killed with that left on its way to the storage, another run works on, then the power
/// fails.
void check_after_kill_and_cut(Storage storage) {
    const sample::Folder folder;
    storage.after_power_cut(Left::everything).lay_out(folder.path());
    const Disk disk(folder.path(), storage);
    Person person(folder.path() / "library", folder.path());
    const auto confirmed = work_on(person);
    for (const auto& wish : disk.log())
        storage.take(wish);
    const sample::Folder after;
    storage.after_power_cut(Left::synced).lay_out(after.path());
    Person later(after.path() / "library", after.path());
    const auto opened = later.open();
    ASSERT_TRUE(opened) << why(opened);
    for (const auto& one : later.told)
        EXPECT_EQ(one.code, "store.was_checked") << one.english;
    EXPECT_TRUE(Holdings::of(*later.desk) == confirmed) << "a power cut took what was confirmed";
    EXPECT_EQ(lost_files(*later.desk, confirmed), std::vector<std::string>{});
}

TEST(PowerCut, AfterAKillAndAnotherRunTakesNothingConfirmed) {
    const auto& told = main_flow_told();
    const bool all = std::getenv("LAPWING_EVERY_CALL") != nullptr;  // tests/long/faults
    Storage storage(told.at_first);
    std::size_t kills = 0;
    for (std::size_t wishes = 0; wishes < told.log.size() && !HasFailure(); ++wishes) {
        const auto& wish = told.log[wishes];
        storage.take(wish);
        // What a run leaves undone for the next are names, above all; of other writes some stand for all.
        const bool is_plain = wish.kind == Wish::Kind::write || wish.kind == Wish::Kind::truncate ||
                              wish.kind == Wish::Kind::sync;
        if (!all && is_plain && wishes % 20 != 0) continue;
        ++kills;
        check_after_kill_and_cut(storage);
        if (HasFailure()) ADD_FAILURE() << "killed after wish " << wishes + 1 << " (" << wish.name << ')';
    }
    std::printf("%zu kills\n", kills);
    EXPECT_GT(kills, told.deeds.size());
}

}  // namespace
}  // namespace lapwing::faults
