// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Memory, damage and other tools' view of a backup: tests/acceptance/session_file/hostile.py and bagit.py.

#include "core/workflow/full_backup.h"

#include <algorithm>

#include "core/store/attachment_files.h"
#include "core/workflow/testers.h"
#include "tests/core/workflow/desk_fixture.h"

namespace lapwing::workflow {
namespace {

using sample::why;

class FullBackup : public DeskTest {
protected:
    sample::Folder other_folder;
    std::filesystem::path file = other_folder.path() / "all.lapwing-backup";
    std::filesystem::path scratch = other_folder.path() / "scratch";
    Tester unused = sample::tester(TesterKind::leak_down, "Never used yet");
    const Progress go_on = [](std::size_t, std::size_t) { return true; };

    void SetUp() override {
        for (int i = 0; i < 5; ++i) {
            auto engine = sample::engine("Engine " + std::to_string(i));
            engine.owner = {"Mill Lane Engine Club", "the white gate"};
            auto session = sample::session(engine.id);
            // A photo by its header (ITU-T T.81), told apart by its number.
            std::string photo =
                std::string("\xff\xd8\xff\xfe\x00\x03", 6) + static_cast<char>('a' + i) +
                std::string("\xff\xc0\x00\x0b\x08\x00\x10\x00\x20\x01\x01\x11\x00\xff\xd9", 15);
            const auto kept =
                desk->files().keep({reinterpret_cast<const unsigned char*>(photo.data()), photo.size()});
            ASSERT_TRUE(kept) << why(kept);
            ASSERT_TRUE(run(Command{"test.add",
                                    {},
                                    {Put{engine}, Put{session}, Put{sample::reading(session.id)},
                                     Put{sample::attachment(session.id, kept->sha256, kept->bytes)}}}));
        }
        ASSERT_TRUE(run(save_tester(unused)));
        desk->name_key(std::string(64, 'a'), "The mentor");
        desk->flush();
    }
    static std::vector<Dossier> everything(const Desk& from) {
        std::vector<Dossier> all;
        for (const auto& engine : from.engines())
            all.push_back(*from.dossier(engine.id));
        std::ranges::sort(all, {}, [](const Dossier& one) { return one.engine.id; });
        return all;
    }
    std::size_t files_beside() const {
        return static_cast<std::size_t>(std::distance(
            std::filesystem::directory_iterator(other_folder.path()), std::filesystem::directory_iterator{}));
    }
};

TEST_F(FullBackup, ComesBackWholeOnAnEmptyPhone) {
    const auto made = back_up(*desk, file, go_on);
    ASSERT_TRUE(made) << why(made);
    EXPECT_EQ(files_beside(), 1U);
    const sample::Folder fresh_folder;
    auto fresh = std::move(Desk::open(fresh_folder.path(), clock)->desk);
    std::vector<std::size_t> seen;
    const auto restored = restore(*fresh, file, scratch, [&](std::size_t done, std::size_t of) {
        seen.push_back(done);
        EXPECT_EQ(of, 10U);
        return true;
    });
    ASSERT_TRUE(restored) << why(restored);
    EXPECT_EQ(restored->engines, 5U);
    EXPECT_TRUE(std::ranges::is_sorted(seen));
    EXPECT_GE(seen.back(), 9U);
    EXPECT_EQ(everything(*fresh), everything(*desk));
    for (const auto& dossier : everything(*fresh))
        EXPECT_TRUE(fresh->files().has(dossier.visits[0].attachments[0].sha256));
    EXPECT_EQ(fresh->testers().size(), desk->testers().size());
    EXPECT_EQ(fresh->name_of_key(std::string(64, 'a')), "The mentor");
}

TEST_F(FullBackup, StoppedWhileBeingMadeLeavesNothing) {
    for (int at = 0; at < 12; ++at) {
        int left = at;
        const auto made = back_up(*desk, file, [&](std::size_t, std::size_t) { return left-- > 0; });
        ASSERT_FALSE(made);
        EXPECT_EQ(made.error().code, "backup.stopped");
        EXPECT_EQ(files_beside(), 0U);
    }
}

TEST_F(FullBackup, StoppedWhileComingInLeavesWholeEnginesAndTheRestComesLater) {
    ASSERT_TRUE(back_up(*desk, file, go_on));
    const sample::Folder fresh_folder;
    auto fresh = std::move(Desk::open(fresh_folder.path(), clock)->desk);
    const auto early = restore(*fresh, file, scratch, [](std::size_t done, std::size_t) { return done < 3; });
    ASSERT_FALSE(early);
    EXPECT_EQ(early.error().code, "backup.stopped");
    EXPECT_TRUE(fresh->engines().empty());  // still being checked
    const auto late = restore(*fresh, file, scratch, [](std::size_t done, std::size_t) { return done < 8; });
    ASSERT_TRUE(late) << why(late);
    EXPECT_TRUE(late->stopped);
    EXPECT_EQ(late->engines, 3U);
    EXPECT_EQ(fresh->engines().size(), 3U);
    ASSERT_TRUE(restore(*fresh, file, scratch, go_on));
    EXPECT_EQ(everything(*fresh), everything(*desk));
}

TEST_F(FullBackup, SaysWhatItHoldsBeforeAnythingComesIn) {
    ASSERT_TRUE(back_up(*desk, file, go_on));
    const auto backup = exchange::BackupReader::open(file, scratch, go_on);
    ASSERT_TRUE(backup) << why(backup);
    const sample::Folder fresh_folder;
    auto fresh = std::move(Desk::open(fresh_folder.path(), clock)->desk);
    const auto whole = preview(*fresh, *backup, go_on);
    ASSERT_TRUE(whole) << why(whole);
    ASSERT_EQ(whole->engines.size(), 5U);
    EXPECT_EQ(whole->new_testers, 1U);
    for (const auto& one : whole->engines) {
        EXPECT_TRUE(one.engine.starts_with("Engine "));
        EXPECT_TRUE(one.preview.new_engine);
        EXPECT_EQ(one.preview.added.at(RecordKind::reading), 1);
    }
    EXPECT_TRUE(fresh->engines().empty());
    ASSERT_TRUE(restore(*fresh, *backup, go_on));
    EXPECT_EQ(everything(*fresh), everything(*desk));
    const auto again = preview(*fresh, *backup, go_on);
    ASSERT_TRUE(again) << why(again);
    EXPECT_EQ(again->new_testers, 0U);
    for (const auto& one : again->engines)
        EXPECT_FALSE(one.preview.brings_something());
    const auto stopped = preview(*fresh, *backup, [](std::size_t done, std::size_t) { return done < 2; });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, "backup.stopped");
}

TEST_F(FullBackup, AMissingPhotoIsSaidAndNothingIsWritten) {
    std::filesystem::remove(desk->files().path(everything(*desk)[2].visits[0].attachments[0].sha256));
    const auto made = back_up(*desk, file, go_on);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, "session_file.attachment_missing");
    EXPECT_EQ(files_beside(), 0U);
}

}  // namespace
}  // namespace lapwing::workflow
