// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/sweep.h"

#include <gtest/gtest.h>

#include <fstream>

#include "core/store/attachment_files.h"
#include "core/store/library.h"
#include "core/store/recordings.h"
#include "tests/core/store/sample.h"

namespace lapwing::store {
namespace {

namespace fs = std::filesystem;
using sample::why;

class SweepTest : public testing::Test {
protected:
    void SetUp() override {
        auto opened = Library::open(folder_.path(), sample::clock());
        ASSERT_TRUE(opened) << why(opened);
        library_ = std::move(*opened);
        const auto engine = sample::engine();
        const auto session = sample::session(engine.id);
        session_ = session.id;
        apply({Put{engine}, Put{session}});
    }
    std::int64_t apply(const std::vector<Edit>& edits) {
        auto done = library_->apply({0, "test", {}, sample::clock().now(), false}, edits);
        EXPECT_TRUE(done) << why(done);
        return done->step.number;
    }
    Attachment keep(const std::string& bytes) {
        const AttachmentFiles files(library_->places().attachments());
        const auto kept = files.keep({reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size()});
        EXPECT_TRUE(kept) << why(kept);
        fs::last_write_time(files.path(kept->sha256),
                            fs::file_time_type::clock::now() - std::chrono::hours(1));
        return sample::attachment(session_, kept->sha256, kept->bytes);
    }
    Sweep look() {
        const auto named = named_files(library_->queries());
        EXPECT_TRUE(named) << why(named);
        return sweep(library_->places(), *named);
    }
    fs::path file(const Attachment& attachment) {
        return library_->places().attachments() / attachment.sha256;
    }

    sample::Folder folder_;
    std::unique_ptr<Library> library_;
    SessionId session_;
};

TEST_F(SweepTest, FindsARecordingThatNothingSaysWhatItHangsOn) {
    const auto folder = library_->places().recordings();
    Attachment note = sample::attachment(session_, std::string(64, '0'), 1);
    note.photo_of.reset();
    const auto known = Recordings(folder).begin(note);
    ASSERT_TRUE(known) << why(known);
    for (const auto& sound : {known->sound, folder / "alone.wav"}) {
        std::ofstream(sound) << "words";
        fs::last_write_time(sound, fs::file_time_type::clock::now() - std::chrono::hours(1));
    }
    const auto found = look();
    ASSERT_EQ(found.without_record.size(), 1U);
    EXPECT_EQ(found.without_record[0].path, folder / "alone.wav");
    EXPECT_GE(found.attachment_bytes, 10);
}

TEST_F(SweepTest, FindsNothingWhereAllIsWell) {
    apply({Put{keep("one")}, Put{keep("three")}});
    const auto found = look();
    EXPECT_TRUE(found.without_file.empty());
    EXPECT_TRUE(found.without_record.empty());
    EXPECT_TRUE(found.for_undo.empty());
    EXPECT_EQ(found.attachment_bytes, 8);
    EXPECT_GT(found.library_bytes, 0);
}

TEST_F(SweepTest, TellsLostFilesStrangersAndWhatUndoNeedsApart) {
    const auto lost = keep("lost"), deleted = keep("deleted"), stranger = keep("stranger");
    apply({Put{lost}, Put{deleted}});
    apply({Remove{RecordKind::attachment, deleted.id.uuid}});
    fs::remove(file(lost));
    std::ofstream(library_->places().attachments() / ".incoming-young.part") << "on its way";

    const auto found = look();
    ASSERT_EQ(found.without_file.size(), 1U);
    EXPECT_EQ(found.without_file.front(), lost);
    ASSERT_EQ(found.for_undo.size(), 1U);
    EXPECT_EQ(found.for_undo.front().path, file(deleted));
    ASSERT_EQ(found.without_record.size(), 1U);
    EXPECT_EQ(found.without_record.front().path, file(stranger));
    EXPECT_EQ(found.without_record.front().bytes, 8);
    // Looking is all it does.
    EXPECT_TRUE(fs::exists(file(stranger)));
    EXPECT_TRUE(fs::exists(file(deleted)));
}

}  // namespace
}  // namespace lapwing::store
