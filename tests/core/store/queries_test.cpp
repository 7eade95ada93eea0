// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <chrono>
#include <thread>

#include "core/store/library.h"
#include "tests/core/store/sample.h"

namespace lapwing::store {
namespace {

using sample::why;

class Reads : public testing::Test {
protected:
    sample::Folder folder;
    std::unique_ptr<Library> library = Library::open(folder.path(), sample::clock()).value();

    void put(std::vector<Edit> edits) {
        Step info;
        info.name = "test.put";
        const auto done = library->apply(std::move(info), edits);
        ASSERT_TRUE(done) << why(done);
    }
    const Queries& queries() const { return library->queries(); }
};

Session session_at(EngineId engine, const std::string& time, const std::string& title) {
    auto session = sample::session(engine, title);
    session.opened_at = parse_rfc3339(time).value();
    return session;
}

TEST_F(Reads, SummarisesEnginesNewestWorkFirst) {
    auto quiet = sample::engine("Never worked on", 4);
    quiet.made_at = parse_rfc3339("2025-01-01T00:00:00Z").value();
    auto busy = sample::engine("Worked on", 6);
    busy.tags = {"spring", "1/2\" hose", "back\\slash", "größer, [x]"};
    const auto old_visit = session_at(busy.id, "2026-05-01T10:00:00+02:00", "As found");
    auto new_visit = session_at(busy.id, "2026-06-01T10:00:00+02:00", "After the repair");
    new_visit.retest_planned_for = parse_rfc3339("2026-12-01T08:00:00+01:00").value();
    put({Put{quiet}, Put{busy}, Put{new_visit}, Put{old_visit}, Put{sample::reading(old_visit.id)},
         Put{sample::reading(old_visit.id, TestKind::dry, 2)}, Put{sample::reading(new_visit.id)}});

    const auto engines = queries().engines().value();
    ASSERT_EQ(engines.size(), 2U);
    EXPECT_EQ(engines[0].id, busy.id);
    EXPECT_EQ(engines[0].name, "Worked on");
    EXPECT_EQ(engines[0].tags, busy.tags);
    EXPECT_EQ(engines[0].cylinders, 6);
    EXPECT_EQ(engines[0].last_session, new_visit.id);
    EXPECT_EQ(engines[0].last_opened_at, new_visit.opened_at);
    EXPECT_EQ(engines[0].retest_planned_for, new_visit.retest_planned_for);
    EXPECT_EQ(engines[1].id, quiet.id);
    EXPECT_EQ(engines[1].last_session, std::nullopt);
}

TEST_F(Reads, TakesTheLaterIdWhereTwoSessionsWereOpenedAtOneMoment) {
    const auto engine = sample::engine("Opened twice", 4);
    std::vector<Edit> edits{Put{engine}};
    std::string latest;
    for (int i = 0; i < 5; ++i) {
        auto session = session_at(engine.id, "2026-05-01T10:00:00+02:00", "At one moment");
        session.retest_planned_for = parse_rfc3339("2026-12-01T08:00:00+01:00").value();
        session.retest_planned_for->unix_ms += i;
        latest = std::max(latest, session.id.text());
        edits.push_back(Put{session});
    }
    put(std::move(edits));

    const auto engines = queries().engines().value();
    ASSERT_EQ(engines.size(), 1U);
    EXPECT_EQ(engines[0].last_session->text(), latest);
    EXPECT_EQ(engines[0].retest_planned_for,
              queries().session(*engines[0].last_session).value()->retest_planned_for);
}

TEST_F(Reads, OpensNoRowForTheListOfEngines) {
    // Each row takes more than half a page of the file, so that opening the rows would read a page for every
    // one.
    constexpr int engines = 300;
    std::vector<Edit> edits;
    for (int i = 0; i < engines; ++i) {
        auto engine = sample::engine("Engine " + std::to_string(i), 4);
        engine.history = std::string(2400, 'h');
        auto session = sample::session(engine.id);
        session.note = std::string(2400, 'r');
        edits.push_back(Put{engine});
        edits.push_back(Put{session});
    }
    put(std::move(edits));
    library.reset();

    const auto copy = Connection::open(Places{folder.path()}.library(), Access::copy).value();
    const Queries asked(*copy);
    auto* handle = copy->db().getHandle();
    int pages = 0;
    int most = 0;
    sqlite3_db_status(handle, SQLITE_DBSTATUS_CACHE_MISS, &pages, &most, 1);
    ASSERT_EQ(asked.engines()->size(), 300U);
    sqlite3_db_status(handle, SQLITE_DBSTATUS_CACHE_MISS, &pages, &most, 0);
    EXPECT_GT(pages, 0);
    EXPECT_LT(pages, engines / 2);
}

TEST_F(Reads, GathersAVisitOldestFirst) {
    const auto engine = sample::engine();
    const auto session = sample::session(engine.id);
    auto late = sample::reading(session.id);
    auto early = sample::reading(session.id, TestKind::leak_down, 2, "5.2");
    early.taken_at.unix_ms -= 60'000;
    const auto exit = sample::exit_note(session.id);
    const auto clearance = sample::clearance(session.id);
    const auto note = sample::note(session.id);
    const auto attachment = sample::attachment(session.id, std::string(64, 'a'));
    auto second_line = sample::plan_line(session.id, "Second");
    second_line.order = 2;
    auto first_line = sample::plan_line(session.id, "First");
    first_line.order = 1;
    put({Put{engine}, Put{session}, Put{late}, Put{early}, Put{exit}, Put{clearance}, Put{note},
         Put{attachment}, Put{second_line}, Put{first_line}});

    const auto visit = queries().visit(session.id).value();
    ASSERT_TRUE(visit);
    EXPECT_EQ(visit->session, session);
    EXPECT_EQ(visit->readings, (std::vector{early, late}));
    EXPECT_EQ(visit->exits, std::vector{exit});
    EXPECT_EQ(visit->clearances, std::vector{clearance});
    EXPECT_EQ(visit->notes, std::vector{note});
    EXPECT_EQ(visit->attachments, std::vector{attachment});
    EXPECT_EQ(visit->plan, (std::vector{first_line, second_line}));
    EXPECT_EQ(queries().engine_of(session.id).value(), engine.id);
}

TEST_F(Reads, PutsTheTestersNamedIntoTheDossier) {
    const auto engine = sample::engine();
    const auto by_session = sample::tester(TesterKind::compression_gauge, "By the session");
    const auto by_reading = sample::tester(TesterKind::compression_gauge, "By a reading");
    const auto unused = sample::tester(TesterKind::leak_down, "Unused");
    auto session = sample::session(engine.id);
    session.compression_gauge = by_session.id;
    auto reading = sample::reading(session.id);
    reading.tester = by_reading.id;
    put({Put{by_session}, Put{by_reading}, Put{unused}, Put{engine}, Put{session}, Put{reading}});

    const auto dossier = queries().dossier(engine.id).value();
    ASSERT_TRUE(dossier);
    EXPECT_EQ(dossier->testers.size(), 2U);
    EXPECT_NE(find_tester(*dossier, by_session.id), nullptr);
    EXPECT_NE(find_tester(*dossier, by_reading.id), nullptr);
    EXPECT_EQ(queries().uses_of(by_session.id).value(), 1);
    EXPECT_EQ(queries().uses_of(by_reading.id).value(), 1);
    EXPECT_EQ(queries().uses_of(unused.id).value(), 0);
}

TEST_F(Reads, ComeBackEmptyForWhatIsNotThere) {
    EXPECT_EQ(queries().engine(EngineId::make(sample::clock())).value(), std::nullopt);
    EXPECT_EQ(queries().visit(SessionId::make(sample::clock())).value(), std::nullopt);
    EXPECT_EQ(queries().dossier(EngineId::make(sample::clock())).value(), std::nullopt);
    EXPECT_EQ(queries().engine_of(SessionId::make(sample::clock())).value(), std::nullopt);
    EXPECT_EQ(queries().draft("none").value(), "");
}

TEST_F(Reads, SayWhichRecordCannotBeRead) {
    const auto engine = sample::engine();
    put({Put{engine}});
    SQLite::Database db((folder.path() / "library.sqlite").string(), SQLite::OPEN_READWRITE);
    db.exec("UPDATE engine SET body = '{\"name\": 7}'");
    const auto found = queries().engine(engine.id);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().code, "store.unreadable");
    EXPECT_NE(found.error().english.find(engine.id.text()), std::string::npos);
}

TEST_F(Reads, StoreKeepsDraftsApartFromTheJournal) {
    const std::vector<Library::Draft> drafts{{"pad", "9.4"}, {"place", "3"}, {"gone", "x"}};
    ASSERT_TRUE(library->keep_drafts(drafts));
    const std::vector<Library::Draft> later{{"pad", "9.45"}, {"gone", ""}};
    ASSERT_TRUE(library->keep_drafts(later));
    EXPECT_EQ(queries().draft("pad").value(), "9.45");
    EXPECT_EQ(queries().draft("place").value(), "3");
    EXPECT_EQ(queries().draft("gone").value(), "");
    EXPECT_TRUE(queries().steps()->empty());
}

TEST_F(Reads, ReaderSeesOneMomentWhileTheWriterGoesOn) {
    const auto engine = sample::engine();
    put({Put{engine}});
    auto reader = Reader::open(library->places());
    ASSERT_TRUE(reader) << why(reader);
    std::atomic<bool> stop = false;
    std::atomic<int> looks = 0;
    std::atomic<int> torn = 0;
    // Each command adds a session with exactly two readings: a torn look would see one or none.
    std::thread looking([&] {
        while (!stop) {
            const auto dossier = (*reader)->queries().dossier(engine.id);
            if (!dossier || !*dossier) {
                ++torn;
                continue;
            }
            for (const auto& visit : (*dossier)->visits)
                if (visit.readings.size() != 2) ++torn;
            ++looks;
        }
    });
    for (int i = 0; i < 60; ++i) {
        const auto session = sample::session(engine.id);
        put({Put{session}, Put{sample::reading(session.id)},
             Put{sample::reading(session.id, TestKind::dry, 2)}});
    }
    stop = true;
    looking.join();
    EXPECT_EQ(torn, 0);
    EXPECT_GT(looks, 1);
}

TEST_F(Reads, StayQuickWithTwoThousandEnginesAndTwoHundredThousandReadings) {
    const auto engine = sample::engine();
    const auto session = sample::session(engine.id);
    put({Put{engine}, Put{session}, Put{sample::reading(session.id)}});
    {
        // Copies of one record each: enough for lists and look-ups, which never open a body they don't show.
        SQLite::Database db((folder.path() / "library.sqlite").string(), SQLite::OPEN_READWRITE);
        db.exec("BEGIN");
        db.exec(
            "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 1999) "
            "INSERT INTO engine SELECT 'engine' || i, made_at, name || i, description, tags, cylinders, body "
            "FROM n, (SELECT * FROM engine)");
        db.exec(
            "WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < 9999) "
            "INSERT INTO session (id, parent, opened_at, opened_offset, title, body) "
            "SELECT 'session' || i, 'engine' || (i % 1999 + 1), opened_at + i, 60, title, body "
            "FROM n, (SELECT * FROM session)");
        db.exec(
            "WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < 199999) "
            "INSERT INTO reading SELECT 'reading' || i, 'session' || (i / 20), test, cylinder, at, tester, "
            "body "
            "FROM n, (SELECT * FROM reading)");
        db.exec("COMMIT");
    }
    const auto measure = [](const char* what, auto&& ask) {
        double best = 1e9;
        for (int i = 0; i < 5; ++i) {
            const auto from = std::chrono::steady_clock::now();
            ask();
            best = std::min(
                best,
                std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - from).count());
        }
        std::printf("%s: %.1f ms\n", what, best);
        return best;
    };
    EXPECT_LT(measure("list of 2,000 engines", [&] { ASSERT_EQ(queries().engines()->size(), 2000U); }),
              150.0);
    EXPECT_LT(
        measure("one visit among 10,000", [&] { ASSERT_TRUE(queries().visit(session.id)->has_value()); }),
        5.0);
    EXPECT_LT(measure("keeping one more reading", [&] { put({Put{sample::reading(session.id)}}); }), 50.0);
}

}  // namespace
}  // namespace lapwing::store
