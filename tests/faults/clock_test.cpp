// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// The clock was ahead, or its battery ran out: it is set back while a library is in use.

#include <gtest/gtest.h>

#include <algorithm>

#include "core/store/backup.h"
#include "core/store/library.h"
#include "core/workflow/engines.h"
#include "core/workflow/readings.h"
#include "core/workflow/sessions.h"
#include "tests/faults/flow.h"

namespace lapwing::faults {
namespace {

using namespace workflow;
using namespace std::chrono_literals;
using sample::why;

constexpr auto years = 24h * 365 * 4;

class ClockSetBack : public testing::Test {
protected:
    sample::Folder folder;
    Person person{folder.path() / "library", folder.path()};

    void SetUp() override {
        ASSERT_TRUE(person.open());
        ASSERT_TRUE(person.run(save_engine(person.engine)));
        ASSERT_TRUE(person.run(open_session(person.session.id, person.engine.id, "As found")));
    }
    ReadingId keep(TestKind test, const std::string& bar) {
        auto reading = sample::reading(person.session.id, test, 1, bar);
        reading.id = person.desk->make_id<ReadingId>();
        reading.taken_at = {};  // now
        const auto done = person.run(keep_reading(reading));
        EXPECT_TRUE(done) << why(done);
        return reading.id;
    }
    std::vector<Reading> readings() { return person.desk->visit(person.session.id)->readings; }
};

TEST_F(ClockSetBack, KeepsReadingsInTheOrderTheyWereTaken) {
    std::vector<ReadingId> kept;
    for (int i = 0; i < 6; ++i) {
        kept.push_back(keep(TestKind::dry, "9." + std::to_string(i)));
        if (i == 1) person.clock.move_by(-1h);
        if (i == 3) person.clock.move_by(-years);
        if (i == 4) {
            person.close();
            ASSERT_TRUE(person.open());
        }
    }
    std::vector<ReadingId> found;
    for (const auto& reading : readings())
        found.push_back(reading.id);
    EXPECT_EQ(found, kept);
    EXPECT_EQ(latest(readings(), TestKind::dry, 1)->id, kept.back());
}

TEST_F(ClockSetBack, DoesNotHideThatOilIsOnTheRings) {
    keep(TestKind::wet, "11");
    person.clock.move_by(-2h);
    keep(TestKind::dry, "10");
    EXPECT_EQ(latest(readings(), TestKind::dry, 1)->oiled, Oiled::before);
}

TEST_F(ClockSetBack, LeavesUndoAndHistoryInOrder) {
    keep(TestKind::dry, "9.1");
    person.clock.move_by(-years);
    const auto second = SessionId::make(person.clock);
    ASSERT_TRUE(person.run(open_session(second, person.engine.id, "With the clock set back")));
    const auto steps = person.desk->steps();
    EXPECT_TRUE(std::ranges::is_sorted(steps, std::ranges::greater{}, &store::Step::number));
    EXPECT_EQ(steps.front().name, "session.open");
    EXPECT_EQ(person.desk->sessions(person.engine.id).size(), 2U);
    EXPECT_EQ(person.desk->sessions(person.desk->engines().front().id).size(), 2U);
    ASSERT_TRUE(person.undo(person.desk->last_step()->number));
    EXPECT_EQ(person.desk->sessions(person.engine.id).size(), 1U);
    EXPECT_EQ(readings().size(), 1U);
}

TEST_F(ClockSetBack, MakesNoIdTwiceAndKeepsTheirOrder) {
    std::vector<Uuid> ids;
    for (int i = 0; i < 200; ++i) {
        ids.push_back(Uuid::make(person.clock));
        person.clock.move_by(i % 50 == 49 ? std::chrono::milliseconds(-years) : 1ms);
    }
    EXPECT_TRUE(std::ranges::is_sorted(ids));
    EXPECT_EQ(std::ranges::adjacent_find(ids), ids.end());
}

/// Opens, lets the due backup run to its end and closes.
void use_for_a_day(const std::filesystem::path& folder, const Clock& clock) {
    auto library = store::Library::open(folder, clock);
    ASSERT_TRUE(library) << why(library);
    auto job = (*library)->start_due_backup();
    ASSERT_TRUE(job) << why(job);
    if (!*job) return;
    ASSERT_TRUE((*job)->step(-1).value());
    store::thin_out_backups((*library)->places(), clock.now());
}

TEST_F(ClockSetBack, DoesNotMakeNewBackupsGiveWayToOldOnes) {
    person.close();
    const store::Places places{person.folder};
    person.clock.move_by(years);
    for (int day = 0; day < 7; ++day) {
        use_for_a_day(person.folder, person.clock);
        person.clock.move_by(25h);
    }
    person.clock.move_by(-years);
    ASSERT_TRUE(person.open());
    ASSERT_TRUE(person.run(save_engine(sample::engine("After the clock was set right"))));
    person.close();
    for (int day = 0; day < 3; ++day) {
        use_for_a_day(person.folder, person.clock);
        person.clock.move_by(25h);
    }
    const auto good = store::last_good_backup(places, person.clock.now());
    ASSERT_TRUE(good);
    EXPECT_LT(person.clock.now().unix_ms - good->made_at_ms, std::chrono::milliseconds(26h).count());
    auto copy = store::Connection::open(good->file, store::Access::copy);
    ASSERT_TRUE(copy) << why(copy);
    EXPECT_EQ(store::Queries(**copy).engines()->size(), 2U);
    EXPECT_EQ(store::backups(places, person.clock.now()).size(), 5U);
}

}  // namespace
}  // namespace lapwing::faults
