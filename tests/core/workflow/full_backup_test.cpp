// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Memory, damage and other tools' view of a backup: tests/acceptance/session_file/hostile.py and bagit.py.

#include "core/workflow/full_backup.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <fstream>

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
    const auto restored = restore(*fresh, file, scratch,
                                  [&](std::size_t done, std::size_t of) {
                                      seen.push_back(done);
                                      EXPECT_EQ(of, 10U);
                                      return true;
                                  },
                                  {std::string(64, 'a')});
    ASSERT_TRUE(restored) << why(restored);
    EXPECT_EQ(restored->engines, 5U);
    EXPECT_TRUE(std::ranges::is_sorted(seen));
    EXPECT_GE(seen.back(), 9U);
    EXPECT_EQ(everything(*fresh), everything(*desk));
    for (const auto& dossier : everything(*fresh))
        EXPECT_TRUE(fresh->files().has(dossier.visits[0].attachments[0].sha256));
    EXPECT_EQ(fresh->testers().size(), desk->testers().size());
    ASSERT_EQ(fresh->named_keys().size(), 1U);
    EXPECT_EQ(fresh->named_keys()[0].name, "The mentor");
    ASSERT_TRUE(desk->named_keys()[0].since);
    EXPECT_EQ(fresh->named_keys()[0].since, desk->named_keys()[0].since);
}

TEST_F(FullBackup, NamesOfKeysComeInOnlyWhenTheyAreWanted) {
    desk->name_key(std::string(64, 'b'), "Robin");
    desk->flush();
    ASSERT_TRUE(back_up(*desk, file, go_on));
    const auto backup = exchange::BackupReader::open(file, scratch, go_on);
    ASSERT_TRUE(backup) << why(backup);
    const sample::Folder fresh_folder;
    auto fresh = std::move(Desk::open(fresh_folder.path(), clock)->desk);
    fresh->name_key(std::string(64, 'b'), "Somebody else");
    fresh->flush();
    const auto shown = preview(*fresh, *backup, go_on);
    ASSERT_TRUE(shown) << why(shown);
    ASSERT_EQ(shown->keys.size(), 2U);  // by name
    EXPECT_EQ(shown->keys[0].key.name, "Robin");
    EXPECT_EQ(shown->keys[0].here, "Somebody else");
    EXPECT_EQ(shown->keys[1].key.name, "The mentor");
    EXPECT_EQ(shown->keys[1].here, "");
    ASSERT_TRUE(restore(*fresh, *backup, go_on));
    EXPECT_EQ(fresh->name_of_key(std::string(64, 'a')), "");
    ASSERT_TRUE(restore(*fresh, *backup, go_on, {std::string(64, 'a'), std::string(64, 'b')}));
    EXPECT_EQ(fresh->name_of_key(std::string(64, 'a')), "The mentor");
    EXPECT_EQ(fresh->name_of_key(std::string(64, 'b')), "Somebody else");  // what it is called here stays
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

TEST_F(FullBackup, AMissingPhotoIsSaidAndTheRestIsKept) {
    const auto all = everything(*desk);
    const auto& lost = all[2].visits[0].attachments[0];
    const auto& hurt = all[4].visits[0].attachments[0];
    std::filesystem::remove(desk->files().path(lost.sha256));
    std::filesystem::permissions(desk->files().path(hurt.sha256), std::filesystem::perms::owner_all);
    std::filesystem::resize_file(desk->files().path(hurt.sha256), 5);
    const auto made = back_up(*desk, file, go_on);
    ASSERT_TRUE(made) << why(made);
    const exchange::Gap gone{all[2].engine.name, all[2].visits[0].session.title, AttachmentKind::photo,
                             lost.taken_at, Loss::lost};
    const exchange::Gap cut{all[4].engine.name, all[4].visits[0].session.title, AttachmentKind::photo,
                            hurt.taken_at, Loss::damaged};
    EXPECT_THAT(*made, testing::UnorderedElementsAre(gone, cut));

    const sample::Folder fresh_folder;
    auto fresh = std::move(Desk::open(fresh_folder.path(), clock)->desk);
    const auto backup = exchange::BackupReader::open(file, scratch, go_on);
    ASSERT_TRUE(backup) << why(backup);
    EXPECT_TRUE(backup->damaged().empty());
    EXPECT_EQ(preview(*fresh, *backup, go_on)->gaps.size(), 2U);
    const auto restored = restore(*fresh, *backup, go_on);
    ASSERT_TRUE(restored) << why(restored);
    EXPECT_THAT(restored->gaps, testing::UnorderedElementsAre(gone, cut));
    EXPECT_EQ(everything(*fresh), all);
    EXPECT_TRUE(fresh->files().has(all[0].visits[0].attachments[0].sha256));
    EXPECT_FALSE(fresh->files().has(lost.sha256));
    EXPECT_FALSE(fresh->files().has(hurt.sha256));
}

/// Turns one byte of that engine's photo within the backup.
void damage(const std::filesystem::path& file, const Dossier& engine, const store::AttachmentFiles& files) {
    const auto read = [](const std::filesystem::path& path) {
        std::ifstream in(path, std::ios::binary);
        return std::string(std::istreambuf_iterator<char>(in), {});
    };
    auto bytes = read(file);
    const auto at = bytes.find(read(files.path(engine.visits[0].attachments[0].sha256)));
    ASSERT_NE(at, std::string::npos);
    bytes[at + 6] = static_cast<char>(bytes[at + 6] ^ 1);
    std::ofstream(file, std::ios::binary) << bytes;
}

TEST_F(FullBackup, OneDamagedEngineLeavesTheOthers) {
    ASSERT_TRUE(back_up(*desk, file, go_on));
    auto all = everything(*desk);
    damage(file, all[1], desk->files());
    const auto backup = exchange::BackupReader::open(file, scratch, go_on);
    ASSERT_TRUE(backup) << why(backup);
    EXPECT_EQ(backup->engines(), 4U);
    EXPECT_EQ(backup->of(), 5U);
    ASSERT_EQ(backup->damaged().size(), 1U);
    EXPECT_EQ(backup->damaged()[0].engine, all[1].engine.name);
    EXPECT_FALSE(backup->damaged()[0].partly);

    const sample::Folder fresh_folder;
    auto fresh = std::move(Desk::open(fresh_folder.path(), clock)->desk);
    const auto shown = preview(*fresh, *backup, go_on);
    ASSERT_TRUE(shown) << why(shown);
    EXPECT_EQ(shown->engines.size(), 4U);
    const auto restored = restore(*fresh, *backup, go_on);
    ASSERT_TRUE(restored) << why(restored);
    EXPECT_EQ(restored->engines, 4U);
    EXPECT_EQ(restored->of, 5U);
    EXPECT_EQ(restored->damaged, backup->damaged());
    all.erase(all.begin() + 1);
    EXPECT_EQ(everything(*fresh), all);
}

TEST_F(FullBackup, WithNothingWholeInItABackupIsRefused) {
    ASSERT_TRUE(back_up(*desk, file, go_on));
    for (const auto& engine : everything(*desk))
        damage(file, engine, desk->files());
    const auto backup = exchange::BackupReader::open(file, scratch, go_on);
    ASSERT_FALSE(backup);
    EXPECT_EQ(files_beside(), 1U);
}

/// An engine that is larger than one session file may be is dealt out over several, and comes back as one.
TEST_F(FullBackup, ALargeEngineIsDividedAndComesBackAsOne) {
    auto engine = sample::engine("Harbour six");
    Command many{"test.add", {}, {Put{engine}}};
    for (int visit = 0; visit < 3; ++visit) {
        const auto session = sample::session(engine.id);
        many.edits.emplace_back(Put{session});
        many.edits.emplace_back(Put{sample::reading(session.id)});
        for (int i = 0; i < 4; ++i) {
            std::string photo = std::string("\xff\xd8\xff\xfe\x00\x04", 6) + static_cast<char>('a' + visit) +
                                static_cast<char>('a' + i) +
                                std::string("\xff\xc0\x00\x0b\x08\x00\x10\x00\x20\x01\x01\x11\x00", 13) +
                                std::string(100'000, 'x') + "\xff\xd9";
            const auto kept =
                desk->files().keep({reinterpret_cast<const unsigned char*>(photo.data()), photo.size()});
            ASSERT_TRUE(kept) << why(kept);
            many.edits.emplace_back(Put{sample::attachment(session.id, kept->sha256, kept->bytes)});
        }
    }
    ASSERT_TRUE(run(many));
    desk->flush();

    exchange::BackupOrder order;
    for (const auto& one : desk->engines())
        order.engines.push_back({one.id, one.name});
    order.engine = [&](EngineId id) {
        return desk->dossier(id).map([&](Dossier dossier) {
            exchange::Outgoing outgoing;
            outgoing.dossier = std::move(dossier);
            outgoing.with_owner = true;
            outgoing.stored_at = [&](const Attachment& one) { return desk->files().path(one.sha256); };
            outgoing.at = clock.now();
            return outgoing;
        });
    };
    order.at = clock.now();
    order.limits.packed_bytes = 350'000;  // three photos and the texts
    const auto made = exchange::write_backup(file, order, go_on);
    ASSERT_TRUE(made) << why(made);
    const auto backup = exchange::BackupReader::open(file, scratch, go_on);
    ASSERT_TRUE(backup) << why(backup);
    EXPECT_EQ(backup->engines(), 6U);
    EXPECT_GT(backup->parts(), 5U + 3U);
    for (std::size_t part = 0; part < backup->parts(); ++part) {
        long long bytes = 0;
        const auto incoming = backup->part(part);
        ASSERT_TRUE(incoming) << why(incoming);
        for (const auto& one : incoming->attachments)
            bytes += static_cast<long long>(std::filesystem::file_size(one.file));
        EXPECT_LT(bytes, 350'000);
    }
    const sample::Folder fresh_folder;
    auto fresh = std::move(Desk::open(fresh_folder.path(), clock)->desk);
    const auto shown = preview(*fresh, *backup, go_on);
    ASSERT_TRUE(shown) << why(shown);
    ASSERT_EQ(shown->engines.size(), 6U);
    const auto large = std::ranges::find(shown->engines, "Harbour six", &BackupPreview::One::engine);
    ASSERT_NE(large, shown->engines.end());
    EXPECT_EQ(large->preview.added.at(RecordKind::session), 3);
    EXPECT_EQ(large->preview.added.at(RecordKind::attachment), 12);
    const auto restored = restore(*fresh, *backup, go_on);
    ASSERT_TRUE(restored) << why(restored);
    EXPECT_EQ(restored->engines, 6U);
    EXPECT_EQ(everything(*fresh), everything(*desk));

    order.limits.packed_bytes = 90'000;  // not even one photo
    const auto too_small = exchange::write_backup(file, order, go_on);
    ASSERT_FALSE(too_small);
    EXPECT_EQ(too_small.error().code, "session_file.too_large");
}

}  // namespace
}  // namespace lapwing::workflow
