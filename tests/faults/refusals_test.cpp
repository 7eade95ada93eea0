// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The storage refuses calls of the main flow: it is full, or it reports an error.

#include <gtest/gtest.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <map>
#include <set>

#include "core/record/walk.h"
#include "tests/faults/disk.h"
#include "tests/faults/flow.h"
#include "tests/faults/handed_over.h"

namespace lapwing::faults {
namespace {

using sample::why;
using Lasting = Disk::Lasting;

/// One call of one deed.
struct Spot {
    std::size_t deed = 0;
    std::size_t call = 0;  ///< counted from the deed's first
    std::string what;
};

/// Every call of the main flow; or of all calls alike in one deed the first and the last, which is what most
/// of them come to. LAPWING_EVERY_CALL=1 (tests/long/faults) takes them all.
std::vector<Spot> spots() {
    const sample::Folder folder;
    const sample::Folder outside;
    file_from_elsewhere(outside.path());
    const Disk disk(folder.path());
    Person person(folder.path() / "library", outside.path());
    const auto deeds = main_flow();
    const bool all = std::getenv("LAPWING_EVERY_CALL") != nullptr;
    std::vector<Spot> out;
    for (std::size_t deed = 0; deed < deeds.size(); ++deed) {
        const std::size_t from = disk.calls();
        const auto done = deeds[deed].act(person);
        EXPECT_TRUE(done) << deeds[deed].name << ": " << why(done);
        std::map<std::string, std::set<std::size_t>> alike;
        for (std::size_t call = 0; from + call < disk.calls(); ++call) {
            auto& calls = alike[disk.call(from + call)];
            if (!all && calls.size() == 2) calls.erase(std::prev(calls.end()));
            calls.insert(call);
        }
        for (const auto& [what, calls] : alike)
            for (const auto call : calls)
                out.push_back({deed, call, what});
    }
    return out;
}

struct Case {
    int system_error = 0;
    Lasting lasting = Lasting::once;
};

std::vector<std::string> names_of(const std::map<std::string, std::string>& files) {
    std::vector<std::string> names;
    for (const auto& [name, bytes] : files)
        names.push_back(name);
    return names;
}

/// Whether an engine came back whole, and nothing else is different.
bool grew_by_what_was_backed_up(Holdings found, const Holdings& before, const Person& person) {
    const auto back = std::ranges::find(found.dossiers, person.engine.id,
                                        [](const Dossier& dossier) { return dossier.engine.id; });
    if (back == found.dossiers.end() || count_records(*back) != count_records(*person.backed_up))
        return false;
    found.dossiers.erase(back);
    std::erase_if(found.engines, [&](const auto& one) { return one.id == person.engine.id; });
    return found.engines == before.engines && found.testers == before.testers &&
           found.dossiers == before.dossiers;
}

/// Does the deeds up to the spot, lets it be refused there, does the deed again and the two after it; then
/// the power fails too. Says whether anything was refused, and whether the deed was.
struct Seen {
    bool refused = false;
    bool told = false;
};
Seen refuse_at(const Spot& spot, const Case& refusal) {
    const sample::Folder folder;
    const sample::Folder outside;
    file_from_elsewhere(outside.path());
    Disk disk(folder.path());
    Person person(folder.path() / "library", outside.path());
    const auto deeds = main_flow();
    const auto do_it = [&](std::size_t deed) {
        const auto done = deeds[deed].act(person);
        EXPECT_TRUE(done) << '"' << deeds[deed].name << "\": " << why(done);
    };
    for (std::size_t deed = 0; deed < spot.deed; ++deed)
        do_it(deed);

    const auto is_told = [&](const Error& error) {
        // Where there is room again at once, SQLite can't tell a full storage from a broken one.
        const bool short_lived = refusal.system_error == ENOSPC && refusal.lasting == Lasting::once;
        return tells(error, refusal.system_error) || (short_lived && error.code == "store.io");
    };
    Seen seen;
    const bool was_open = person.desk != nullptr;
    const auto before = was_open ? Holdings::of(*person.desk) : Holdings();
    auto files_before = files_beside(Image::of(folder.path()));
    const auto number = disk.calls() + spot.call;
    disk.refuse(number, refusal.system_error, refusal.lasting);
    const auto done = deeds[spot.deed].act(person);
    // Engines stand in a backup by their ids, so the calls come in another order each time.
    const auto what = disk.call(number);
    seen = {disk.refused() && may_fail(what, refusal.system_error), !done};
    if (disk.refused() && !seen.refused) return {};
    if (!done) {
        EXPECT_TRUE(is_told(done.error())) << why(done);
        if (was_open && person.desk) {
            const auto found = Holdings::of(*person.desk);
            EXPECT_TRUE(found == before ||
                        (deeds[spot.deed].piecemeal && grew_by_what_was_backed_up(found, before, person)))
                << "changed all the same";
        }
        // The file is the old one, none, or whole: that only its name may not be safe yet is told too.
        const auto& file = deeds[spot.deed].hands_over;
        auto left = files_beside(Image::of(folder.path()));
        if (!file.empty() && left[file] != files_before[file]) {
            EXPECT_EQ(fault_of(person, file), "");
            left[file] = files_before[file];
        }
        // What could not be taken away again may lie there, under a name that nobody takes for a file of
        // theirs.
        if (what.starts_with("remove"))
            EXPECT_TRUE(handed_over({left, {}}) == handed_over({files_before, {}}));
        else
            EXPECT_EQ(names_of(left), names_of(files_before)) << "something is left lying about";
    }
    for (const auto& trouble : person.troubles())
        EXPECT_TRUE(is_told(trouble)) << trouble.code << ": " << trouble.english;
    disk.make_room();
    if (!done) do_it(spot.deed);
    if (const auto& file = deeds[spot.deed].hands_over; !file.empty()) {
        EXPECT_EQ(fault_of(person, file), "");
        EXPECT_TRUE(person.gaps.empty() || (done && seen.refused)) << "more is missing than was refused";
    }
    for (std::size_t deed = spot.deed + 1; deed < std::min(deeds.size(), spot.deed + 3); ++deed)
        do_it(deed);

    if (person.desk == nullptr) {
        EXPECT_TRUE(person.open());
    }
    const auto confirmed = Holdings::of(*person.desk);
    Storage storage(disk.at_first());
    for (const auto& wish : disk.log())
        storage.take(wish);
    const sample::Folder after;
    storage.after_power_cut(Left::synced).lay_out(after.path());
    Person later(after.path() / "library", outside.path());
    const auto opened = later.open();
    EXPECT_TRUE(opened) << why(opened);
    if (!opened) return seen;
    for (const auto& told : later.told)
        EXPECT_EQ(told.code, "store.was_checked") << told.english;
    const auto found = Holdings::of(*later.desk);
    EXPECT_TRUE(found == confirmed) << "a power cut took what was confirmed";
    EXPECT_TRUE(lost_files(*later.desk, found).empty());
    EXPECT_TRUE(handed_over(Image::of(after.path())) == handed_over(Image::of(folder.path())))
        << "a power cut took a file that was handed over";
    return seen;
}

void refuse_everywhere(const Case& refusal) {
    std::size_t refused = 0;
    std::size_t told = 0;
    for (const auto& spot : spots()) {
        if (!may_fail(spot.what, refusal.system_error)) continue;
        const auto seen = refuse_at(spot, refusal);
        refused += seen.refused ? 1 : 0;
        told += seen.told ? 1 : 0;
        if (testing::Test::HasFailure()) {
            ADD_FAILURE() << "refused: " << spot.what << " (call " << spot.call << ") of \""
                          << main_flow()[spot.deed].name << '"';
            break;
        }
    }
    std::printf("%zu calls refused, %zu of them told by the deed\n", refused, told);
    EXPECT_GT(refused, 100U);
    EXPECT_GT(told, 50U);
}

TEST(FullStorage, AtAnyCallIsToldAndLosesNothing) {
    refuse_everywhere({ENOSPC, Lasting::until_room});
}

TEST(FullStorage, ForOneCallIsToldAndLosesNothing) {
    refuse_everywhere({ENOSPC, Lasting::once});
}

TEST(StorageError, AtAnyCallIsToldAndLosesNothing) {
    refuse_everywhere({EIO, Lasting::once});
}

}  // namespace
}  // namespace lapwing::faults
