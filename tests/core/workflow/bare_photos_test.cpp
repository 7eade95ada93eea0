// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/bare_photos.h"

#include "core/base/atomic_file.h"
#include "core/exchange/whereabouts.h"
#include "core/record/merge.h"
#include "core/workflow/bring_in.h"
#include "tests/core/workflow/desk_fixture.h"

namespace lapwing::workflow {
namespace {

using sample::why;
using std::string_literals::operator""s;

/// A library with a photo that tells where it was taken and one that does not, as they come with a file.
class BarePhotos : public DeskTest {
protected:
    Engine engine = sample::engine();
    Session session = sample::session(engine.id);
    // Exif 2.32, 4.6.3, from memory: its first directory leads to positions.
    const std::string noted = "\xff\xe1\0\x22"s + "Exif\0\0MM\0*\0\0\0\x08\0\x01"s +
                              "\x88\x25\0\x04\0\0\0\x01\0\0\0\x1a"s + "\0\0\0\0"s;
    const std::string picture = "\xff\xc0\0\x0b\x08\0\x10\0\x10\x01\x01\x11\0\xff\xd9"s;
    Attachment with = photo("\xff\xd8"s + noted + picture);
    Attachment without = photo("\xff\xd8"s + picture + "other"s);

    void SetUp() override {
        ASSERT_TRUE(run(Command{"test.add", {}, {Put{engine}, Put{session}, Put{with}, Put{without}}}));
    }
    Attachment photo(const std::string& bytes) {
        const auto kept =
            desk->files().keep({reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size()});
        EXPECT_TRUE(kept);
        return sample::attachment(session.id, kept->sha256, kept->bytes);
    }
    Attachment now(const Attachment& photo) {
        return std::get<Attachment>(*desk->record(RecordKind::attachment, photo.id.uuid));
    }
    std::string bytes_of(const Attachment& photo) {
        return *read_file(desk->files().path(photo.sha256), 1000);
    }
};

TEST_F(BarePhotos, StandInForThoseThatTellAPlaceUntilUndone) {
    const auto bare = bare_photos(*desk, {engine.id, {}, false});
    ASSERT_TRUE(bare) << why(bare);
    ASSERT_EQ(bare->size(), 1U);
    EXPECT_EQ(now(with), with);  // nothing is changed before it is kept
    const auto done = run(keep_bare(*bare));
    ASSERT_TRUE(done) << why(done);
    EXPECT_EQ(bytes_of(now(with)), "\xff\xd8"s + picture);
    EXPECT_EQ(now(with).bytes, static_cast<long long>(2 + picture.size()));
    EXPECT_EQ(now(without), without);
    EXPECT_FALSE(exchange::tells_where(desk->files().path(now(with).sha256)));
    EXPECT_EQ(bytes_of(with), "\xff\xd8"s + noted + picture);  // as it came
    const auto again = bare_photos(*desk, {engine.id, {}, false});
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->empty());
    ASSERT_TRUE(undo(done->number));
    EXPECT_EQ(now(with), with);
}

TEST_F(BarePhotos, AreALaterVersionForWhoSentThem) {
    const Dossier sent = *hand_over(*desk, {engine.id, {}, false});
    ASSERT_TRUE(run(keep_bare(*bare_photos(*desk, {engine.id, {}, false}))));
    const Dossier back = *hand_over(*desk, {engine.id, {}, false});
    for (const auto& both : {merge(sent, back), merge(back, sent)}) {
        ASSERT_TRUE(both) << why(both);
        EXPECT_TRUE(conflicts(*both).empty());
        EXPECT_EQ(both->visits, back.visits);
    }
}

TEST_F(BarePhotos, LeaveAloneWhatStandsThereByNow) {
    const auto bare = bare_photos(*desk, {engine.id, {}, false});
    ASSERT_TRUE(bare);
    Attachment other = with;
    other.sha256 = without.sha256;
    ASSERT_TRUE(run(Command{"test.change", {}, {Put{other}}}));
    ASSERT_TRUE(run(keep_bare(*bare)));
    EXPECT_EQ(now(with).sha256, without.sha256);
}

}  // namespace
}  // namespace lapwing::workflow
