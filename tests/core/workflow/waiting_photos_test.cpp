// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/waiting_photos.h"

#include "core/store/attachment_files.h"
#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"
#include "tests/core/workflow/desk_fixture.h"

namespace lapwing::workflow {
namespace {

using namespace std::chrono_literals;
using sample::why;

/// A photo of the gauge, taken before the number is kept.
class WaitingPhotos : public DeskTest {
protected:
    Engine engine = sample::engine();
    Session session = sample::session(engine.id);

    void SetUp() override {
        const auto done = run(Command{"test.add", {}, {Put{engine}, Put{session}}});
        ASSERT_TRUE(done) << why(done);
    }
    AttachmentId photo(int cylinder, PhotoOf of = PhotoOf::gauge) {
        const unsigned char bytes[] = {'a', static_cast<unsigned char>(++photos_)};
        Attachment one = sample::attachment(session.id, desk->files().keep(bytes)->sha256, 2);
        one.photo_of = of;
        one.tie = {TiedTo::cylinder, {}, cylinder, {}};
        one.taken_at = clock.now();
        const auto done = run(save_attachment(one));
        EXPECT_TRUE(done) << why(done);
        return one.id;
    }
    Step read(int cylinder, const char* bar) {
        Reading fresh = sample::reading(session.id, TestKind::dry, cylinder, bar);
        fresh.id = {};
        fresh.taken_at = {};
        const auto done = run(keep_reading(fresh));
        EXPECT_TRUE(done) << why(done);
        return done.value_or(Step{});
    }
    Tie tie(AttachmentId id) {
        return std::get<Attachment>(*desk->record(RecordKind::attachment, id.uuid)).tie;
    }
    ReadingId newest() { return desk->visit(session.id)->readings.back().id; }

private:
    int photos_ = 0;
};

TEST_F(WaitingPhotos, AreTiedToTheReadingThatIsKeptNext) {
    const auto shot = photo(1);
    const auto step = read(1, "4.6");
    EXPECT_EQ(tie(shot).to, TiedTo::reading);
    EXPECT_EQ(tie(shot).record, newest().uuid);
    ASSERT_TRUE(undo(step.number));
    EXPECT_EQ(tie(shot).to, TiedTo::cylinder);
    EXPECT_EQ(tie(shot).cylinder, 1);
}

TEST_F(WaitingPhotos, OfAnotherCylinderOrOfAnotherThingStayWhereTheyAre) {
    const auto other = photo(2), plug = photo(1, PhotoOf::plug);
    read(1, "4.6");
    EXPECT_EQ(tie(other).to, TiedTo::cylinder);
    EXPECT_EQ(tie(plug).to, TiedTo::cylinder);
}

TEST_F(WaitingPhotos, OfTheReadingBeforeOrOfLongAgoAreNotThoseOfThisOne) {
    read(1, "9.4");
    const auto first = photo(1);
    read(1, "9.5");
    const auto held_by = newest();
    read(1, "9.6");
    EXPECT_EQ(tie(first).record, held_by.uuid);
    const auto old = photo(1);
    clock.move_by(20min);
    read(1, "9.3");
    EXPECT_EQ(tie(old).to, TiedTo::cylinder);
}

}  // namespace
}  // namespace lapwing::workflow
