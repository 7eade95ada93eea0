// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Parts of the library's folder, or all of it, go missing under the program.

#include <gtest/gtest.h>

#include <chrono>
#include <fstream>
#include <thread>

#include "core/exchange/session_file.h"
#include "core/store/attachment_files.h"
#include "core/workflow/engines.h"
#include "core/workflow/hand_over.h"
#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"
#include "core/workflow/sessions.h"
#include "tests/faults/flow.h"

namespace lapwing::faults {
namespace {

using namespace workflow;
using sample::why;

/// A library with an engine whose session has ten photos, and an engine that has none.
class Missing : public testing::Test {
protected:
    sample::Folder folder;
    std::filesystem::path library = folder.path() / "library";
    Person person{library, folder.path()};
    Engine plain = sample::engine("No photos");
    std::vector<Attachment> photos;

    void SetUp() override {
        ASSERT_TRUE(person.open());
        ASSERT_TRUE(person.run(save_engine(plain)));
        ASSERT_TRUE(person.run(save_engine(person.engine)));
        ASSERT_TRUE(person.run(open_session(person.session.id, person.engine.id, "As found")));
        for (int i = 0; i < 10; ++i)
            keep_photo("photo " + std::to_string(i));
    }
    void keep_photo(const std::string& bytes) {
        const auto kept =
            person.desk->files().keep({reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size()});
        ASSERT_TRUE(kept) << why(kept);
        photos.push_back(sample::attachment(person.session.id, kept->sha256, kept->bytes));
        const auto done = person.run(save_attachment(photos.back()));
        ASSERT_TRUE(done) << why(done);
    }
    Result<std::vector<exchange::Gap>> hand_over_to_file(EngineId engine) {
        exchange::Outgoing outgoing;
        auto dossier = hand_over(*person.desk, {engine, {}, false});
        if (!dossier) return tl::unexpected(dossier.error());
        outgoing.dossier = std::move(*dossier);
        outgoing.stored_at = [&](const Attachment& one) { return person.desk->files().path(one.sha256); };
        outgoing.at = person.clock.now();
        return exchange::write_session_file(folder.path() / "out.lapwing", outgoing);
    }
};

TEST_F(Missing, HalfOfThePhotosIsToldAndTheRestWorks) {
    person.close();
    std::set<std::string> gone;
    for (std::size_t i = 0; i < photos.size(); i += 2) {
        std::filesystem::remove(library / "attachments" / photos[i].sha256);
        gone.insert(photos[i].sha256);
    }
    ASSERT_TRUE(person.open());
    const auto sweep = person.desk->sweep();
    ASSERT_TRUE(sweep) << why(sweep);
    std::set<std::string> told;
    for (const auto& attachment : sweep->without_file)
        told.insert(attachment.sha256);
    EXPECT_EQ(told, gone);
    EXPECT_EQ(person.desk->visit(person.session.id)->attachments.size(), 10U);

    const auto with_gaps = hand_over_to_file(person.engine.id);
    ASSERT_TRUE(with_gaps) << why(with_gaps);
    EXPECT_EQ(with_gaps->size(), gone.size());
    EXPECT_TRUE(hand_over_to_file(plain.id).value().empty());
    keep_photo("a new one");
    EXPECT_TRUE(person.run(keep_reading(person.reading)));
    for (const auto& sha256 : gone)
        for (const auto& photo : photos)
            if (photo.sha256 == sha256) {
                EXPECT_TRUE(person.run(remove_attachment(photo.id)));
            }
    EXPECT_TRUE(hand_over_to_file(person.engine.id).value().empty());
}

TEST_F(Missing, TheWholeFolderOfPhotosIsMadeAgain) {
    std::filesystem::remove_all(library / "attachments");
    keep_photo("after that");
    EXPECT_EQ(person.desk->sweep()->without_file.size(), 10U);
    person.close();
    ASSERT_TRUE(person.open());
    EXPECT_TRUE(person.desk->files().has(photos.back().sha256));
}

TEST_F(Missing, AFolderMovedAwayWhileOpenIsToldAndNothingIsSaidToBeStored) {
    const auto before = Holdings::of(*person.desk);
    const auto away = folder.path() / "away";
    std::filesystem::rename(library, away);
    for (const auto& done : {person.run(keep_reading(person.reading)),
                             person.undo(before.steps.front().number), person.type("9.5")}) {
        ASSERT_FALSE(done);
        EXPECT_EQ(done.error().code, "store.gone");
        EXPECT_NE(done.error().english.find(library.string()), std::string::npos);
    }
    const std::string photo = "while it is away";
    EXPECT_FALSE(
        person.desk->files().keep({reinterpret_cast<const unsigned char*>(photo.data()), photo.size()}));
    EXPECT_FALSE(std::filesystem::exists(library)) << "something new grows where the library was";

    std::filesystem::rename(away, library);
    EXPECT_TRUE(Holdings::of(*person.desk) == before);
    const auto again = person.run(keep_reading(person.reading));
    ASSERT_TRUE(again) << why(again);
    const auto after = Holdings::of(*person.desk);
    person.close();
    ASSERT_TRUE(person.open());
    EXPECT_TRUE(Holdings::of(*person.desk) == after);
}

TEST_F(Missing, AFolderRemovedWhileOpenIsToldAndClosingIsSafe) {
    // The desk may still be putting a file there (its daily backup): remove until nothing is left.
    std::error_code left;
    for (int tries = 0; tries < 100; ++tries) {
        std::filesystem::remove_all(library, left);
        if (!left && !std::filesystem::exists(library)) break;
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    ASSERT_FALSE(std::filesystem::exists(library));
    const auto done = person.run(keep_reading(person.reading));
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, "store.gone");
    person.close();
    EXPECT_FALSE(std::filesystem::exists(library));
    ASSERT_TRUE(person.open());
    EXPECT_TRUE(person.desk->engines().empty());
    EXPECT_TRUE(person.run(save_engine(plain)));
}

TEST_F(Missing, AnotherLibraryInItsPlaceIsNotTouched) {
    std::filesystem::rename(library, folder.path() / "away");
    Person other(library, folder.path());
    ASSERT_TRUE(other.open());
    ASSERT_TRUE(other.run(save_engine(sample::engine("Of the other library"))));
    EXPECT_FALSE(person.run(keep_reading(person.reading)));
    person.close();
    EXPECT_FALSE(std::filesystem::exists(library / "library.closed"));
    ASSERT_TRUE(other.run(save_engine(sample::engine("Another one"))));
    other.close();
    ASSERT_TRUE(other.open());
    EXPECT_EQ(other.desk->engines().size(), 2U);
}

}  // namespace
}  // namespace lapwing::faults
