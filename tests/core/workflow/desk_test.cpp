// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <atomic>
#include <chrono>
#include <thread>

#include "core/store/library.h"
#include "core/workflow/engines.h"
#include "core/workflow/readings.h"
#include "core/workflow/sessions.h"
#include "tests/core/workflow/desk_fixture.h"

namespace lapwing::workflow {
namespace {

using sample::why;
using namespace std::chrono_literals;

class DeskOpen : public DeskTest {
protected:
    Engine engine = sample::engine();
    Session session = sample::session(engine.id);

    void add_engine_and_session() {
        const auto done = run(Command{"test.add", {}, {Put{engine}, Put{session}}});
        ASSERT_TRUE(done) << why(done);
    }
};

TEST_F(DeskOpen, ReadsWhatWasConfirmed) {
    add_engine_and_session();
    EXPECT_EQ(desk->engine(engine.id), engine);
    EXPECT_EQ(desk->session(session.id), session);
    EXPECT_EQ(desk->engines().size(), 1U);
    EXPECT_EQ(desk->sessions(engine.id), std::vector{session});
    EXPECT_EQ(desk->engine_of(session.id), engine.id);
    EXPECT_EQ(desk->last_step()->name, "test.add");
    const auto dossier = desk->dossier(engine.id);
    ASSERT_TRUE(dossier) << why(dossier);
    EXPECT_EQ(dossier->visits.size(), 1U);
    const auto missing = desk->dossier(EngineId::make(clock));
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code, "engine.gone");
}

TEST_F(DeskOpen, TellsListenersAfterTheCommitAndBeforeDone) {
    std::vector<std::string> order;
    desk->listen([&](const Change& change) {
        order.push_back("change");
        EXPECT_TRUE(change.engines.contains(engine.id));
        EXPECT_TRUE(change.sessions.contains(session.id));
        EXPECT_TRUE(desk->engine(engine.id).has_value());  // committed: another connection sees it
    });
    std::promise<void> done;
    desk->run(Command{"test.add", {}, {Put{engine}, Put{session}}}, [&](Result<Step> step) {
        EXPECT_TRUE(step) << why(step);
        order.push_back("done");
        done.set_value();
    });
    done.get_future().wait();
    EXPECT_EQ(order, (std::vector<std::string>{"change", "done"}));
}

TEST_F(DeskOpen, SaysNothingWhenACommandFails) {
    int changes = 0;
    desk->listen([&](const Change&) { ++changes; });
    const auto failed = run(Command{"test.add", {}, {Put{session}}});
    ASSERT_FALSE(failed);
    EXPECT_EQ(changes, 0);
    EXPECT_EQ(desk->last_step(), std::nullopt);
}

TEST_F(DeskOpen, RunsCommandsInTheOrderAskedFor) {
    add_engine_and_session();
    std::vector<std::string> done;
    for (int i = 0; i < 20; ++i) {
        engine.name = "Name " + std::to_string(i);
        desk->run(save_engine(engine), [&](Result<Step> step) {
            ASSERT_TRUE(step) << why(step);
            done.push_back(step->args.at(0));
        });
    }
    desk->flush();
    ASSERT_EQ(done.size(), 20U);
    for (int i = 0; i < 20; ++i)
        EXPECT_EQ(done[static_cast<std::size_t>(i)], "Name " + std::to_string(i));
}

TEST_F(DeskOpen, CommitsWhatIsQueuedBeforeItCloses) {
    std::atomic<int> done = 0;
    for (int i = 0; i < 10; ++i)
        desk->run(Command{"test.add", {}, {Put{sample::engine()}}},
                  [&](const Result<Step>& step) { done += step ? 1 : 0; });
    desk->keep_draft("pad", "9.4");
    reopen();
    EXPECT_EQ(done, 10);
    EXPECT_EQ(desk->engines().size(), 10U);
    EXPECT_EQ(desk->draft("pad"), "9.4");
}

TEST_F(DeskOpen, LetsADoneAskForMoreEvenWhileClosing) {
    std::atomic<bool> second = false;
    auto& closing = *desk;
    desk->run(Command{"test.add", {}, {Put{engine}}}, [&](const Result<Step>&) {
        closing.flush();  // must not wait for itself
        closing.run(Command{"test.add", {}, {Put{session}}},
                    [&](const Result<Step>& step) { second = step.has_value(); });
    });
    reopen();
    EXPECT_TRUE(second);
}

TEST_F(DeskOpen, RefusesASecondDesk) {
    const auto second = Desk::open(folder.path(), clock);
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code, "store.in_use");
}

TEST_F(DeskOpen, MakesADailyBackupOnItsOwn) {
    add_engine_and_session();
    reopen();
    const auto backups = [&] { return store::backups(store::Places{folder.path()}, clock.now()); };
    for (int i = 0; i < 500 && backups().empty(); ++i)
        std::this_thread::sleep_for(10ms);
    EXPECT_EQ(backups().size(), 1U);
}

TEST_F(DeskOpen, KeepsDrafts) {
    std::promise<void> stored;
    desk->keep_draft("pad", "9");
    desk->keep_draft("pad", "9.");
    desk->keep_draft("pad", "9.4", [&] { stored.set_value(); });
    EXPECT_EQ(desk->draft("pad"), "9.4");  // at once, stored or not
    stored.get_future().wait();
    EXPECT_EQ(desk->draft("pad"), "9.4");
    reopen();
    EXPECT_EQ(desk->draft("pad"), "9.4");
    desk->keep_draft("pad", "");
    EXPECT_EQ(desk->draft("pad"), "");
    reopen();
    EXPECT_EQ(desk->draft("pad"), "");
    EXPECT_EQ(desk->last_step(), std::nullopt);
}

TEST_F(DeskOpen, CallsEveryDraftsDoneThoughTextsAreJoined) {
    std::atomic<int> done = 0;
    for (int i = 0; i < 100; ++i)
        desk->keep_draft("pad", std::to_string(i), [&] { ++done; });
    desk->flush();
    EXPECT_EQ(done, 100);
    EXPECT_EQ(desk->draft("pad"), "99");
}

TEST_F(DeskOpen, ReadsFromSeveralThreadsWhileItWrites) {
    add_engine_and_session();
    std::atomic<bool> stop = false;
    std::atomic<int> torn = 0;
    std::atomic<int> looks = 0;
    std::vector<std::thread> readers;
    for (int i = 0; i < 3; ++i)
        readers.emplace_back([&] {
            while (!stop) {
                // Every command keeps two readings, so an odd count is half a command.
                const auto visit = desk->visit(session.id);
                if (!visit || visit->readings.size() % 2 != 0) ++torn;
                ++looks;
            }
        });
    for (int i = 0; i < 50; ++i)
        desk->run(
            Command{"test.pair",
                    {},
                    {Put{sample::reading(session.id)}, Put{sample::reading(session.id, TestKind::dry, 2)}}});
    desk->flush();
    stop = true;
    for (auto& reader : readers)
        reader.join();
    EXPECT_EQ(torn, 0);
    EXPECT_GT(looks, 0);
    EXPECT_EQ(desk->visit(session.id)->readings.size(), 100U);
}

TEST_F(DeskOpen, KeepsAReadingWithinFiftyMillisecondsThoughDraftsPourIn) {
    add_engine_and_session();
#if defined(__SANITIZE_ADDRESS__) || !defined(__OPTIMIZE__)
    constexpr double limit = 500.0;  // looked over at every step, it takes longer: that it hangs is seen
#else
    constexpr double limit = 50.0;
#endif
    // The clock on the wall is also that of everything else that writes here: the best of up to three rounds.
    double p95 = 1e9;
    for (int round = 0; round < 3 && p95 >= limit; ++round) {
        std::vector<double> milliseconds;
        for (int i = 0; i < 100; ++i) {
            for (int key = 0; key < 5; ++key)
                desk->keep_draft("key" + std::to_string(key), std::to_string(i));
            const auto from = std::chrono::steady_clock::now();
            const auto done = run(keep_reading(sample::reading(session.id, TestKind::dry, i % 2 + 1)));
            ASSERT_TRUE(done) << why(done);
            milliseconds.push_back(
                std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - from).count());
        }
        std::ranges::sort(milliseconds);
        p95 = std::min(p95, milliseconds[94]);
        std::printf("keep to Done over %zu readings: median %.1f ms, p95 %.1f ms, longest %.1f ms\n",
                    milliseconds.size(), milliseconds[50], milliseconds[94], milliseconds[99]);
    }
    EXPECT_LT(p95, limit);
}

TEST_F(DeskOpen, ReportsAReadThatFails) {
    add_engine_and_session();
    std::vector<std::string> trouble;
    desk->on_trouble([&](const Error& error) { trouble.push_back(error.code); });
    {
        SQLite::Database db((folder.path() / "library.sqlite").string(), SQLite::OPEN_READWRITE);
        db.exec("UPDATE engine SET body = '{}'");
    }
    EXPECT_EQ(desk->engine(engine.id), std::nullopt);
    EXPECT_EQ(trouble, std::vector<std::string>{"store.unreadable"});
}

}  // namespace
}  // namespace lapwing::workflow
