// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <map>

#include "core/store/library.h"
#include "tests/core/store/sample.h"

namespace lapwing::store {
namespace {

using sample::why;

class Journal : public testing::Test {
protected:
    sample::Folder folder;
    std::unique_ptr<Library> library = Library::open(folder.path(), sample::clock()).value();
    Engine engine = sample::engine();
    Session session = sample::session(engine.id);

    Result<Outcome> apply(std::vector<Edit> edits, std::vector<std::string> args = {}) {
        Step info;
        info.name = "test.step";
        info.args = std::move(args);
        info.at = sample::clock().now();
        return library->apply(std::move(info), edits);
    }
    const Queries& queries() const { return library->queries(); }
};

TEST_F(Journal, KeepsNameArgsAndTime) {
    const auto done = apply({Put{engine}}, {"Twin", "a \"quoted\" 2"});
    ASSERT_TRUE(done) << why(done);
    const auto step = queries().last_step().value();
    ASSERT_TRUE(step);
    EXPECT_EQ(step->name, "test.step");
    EXPECT_EQ(step->args, (std::vector<std::string>{"Twin", "a \"quoted\" 2"}));
    EXPECT_EQ(step->at, sample::clock().now());
    EXPECT_EQ(*step, done->step);
}

TEST_F(Journal, SaysWhatChanged) {
    const auto reading = sample::reading(session.id);
    const auto done = apply({Put{engine}, Put{session}, Put{reading}});
    ASSERT_TRUE(done) << why(done);
    EXPECT_EQ(done->change.kinds, (std::set{RecordKind::engine, RecordKind::session, RecordKind::reading}));
    EXPECT_EQ(done->change.engines, std::set{engine.id});
    EXPECT_EQ(done->change.sessions, std::set{session.id});
    const auto gone = apply({Remove{RecordKind::reading, reading.id.uuid}});
    ASSERT_TRUE(gone) << why(gone);
    EXPECT_EQ(gone->change.engines, std::set{engine.id});
    EXPECT_EQ(gone->change.sessions, std::set{session.id});
}

TEST_F(Journal, UndoesWithTheLastStepWhatTheProgramAddedToIt) {
    ASSERT_TRUE(apply({Put{engine}, Put{session}}));
    auto reading = sample::reading(session.id);
    const auto first = apply({Put{reading}});
    ASSERT_TRUE(first) << why(first);
    reading.pulls = 6;
    Step more;
    more.name = "test.more";
    more.at = sample::clock().now();
    more.part_of_last = true;
    const std::vector<Edit> added{Put{reading}};
    const auto joined = library->apply(more, added);
    ASSERT_TRUE(joined) << why(joined);
    EXPECT_EQ(joined->step.number, first->step.number);
    EXPECT_EQ(queries().visit(session.id).value()->readings[0].pulls, 6);
    ASSERT_TRUE(library->undo(first->step.number));
    EXPECT_TRUE(queries().visit(session.id).value()->readings.empty());
    ASSERT_TRUE(library->redo(first->step.number));
    EXPECT_EQ(queries().visit(session.id).value()->readings[0].pulls, 6);

    // Something else was done in between: what is added now is a step of its own.
    session.title = "Again";
    ASSERT_TRUE(apply({Put{session}}));
    reading.pulls = 7;
    const std::vector<Edit> later{Put{reading}};
    const auto apart = library->apply(more, later);
    ASSERT_TRUE(apart) << why(apart);
    EXPECT_GT(apart->step.number, first->step.number + 1);
    ASSERT_TRUE(library->undo(apart->step.number));
    EXPECT_EQ(queries().visit(session.id).value()->readings[0].pulls, 6);
}

TEST_F(Journal, DoesAllOfACommandOrNothing) {
    const auto orphan = sample::reading(SessionId::make(sample::clock()));
    const auto failed = apply({Put{engine}, Put{session}, Put{orphan}});
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().code, "store.no_parent");
    EXPECT_TRUE(queries().engines()->empty());
    EXPECT_TRUE(queries().steps()->empty());
}

TEST_F(Journal, RefusesToTakeAnEngineFromUnderItsSessions) {
    ASSERT_TRUE(apply({Put{engine}, Put{session}}));
    const auto failed = apply({Remove{RecordKind::engine, engine.id.uuid}});
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().code, "store.hangs");
    EXPECT_TRUE(queries().engine(engine.id).value());
}

TEST_F(Journal, LeavesNoStepWhereNothingChanges) {
    ASSERT_TRUE(apply({Put{engine}}));
    const auto again = apply({Put{engine}, Remove{RecordKind::session, session.id.uuid}});
    ASSERT_TRUE(again) << why(again);
    EXPECT_EQ(again->step.number, 0);
    EXPECT_TRUE(again->change.kinds.empty());
    EXPECT_EQ(queries().steps()->size(), 1U);
}

TEST_F(Journal, UndoesAndDoesAgain) {
    const auto done = apply({Put{engine}, Put{session}});
    ASSERT_TRUE(done) << why(done);
    const auto undone = library->undo(done->step.number);
    ASSERT_TRUE(undone) << why(undone);
    EXPECT_TRUE(undone->step.undone);
    EXPECT_TRUE(queries().engines()->empty());
    EXPECT_EQ(queries().last_step().value(), std::nullopt);
    EXPECT_EQ(queries().last_undone().value()->number, done->step.number);
    ASSERT_FALSE(library->undo(done->step.number));

    const auto redone = library->redo(done->step.number);
    ASSERT_TRUE(redone) << why(redone);
    EXPECT_EQ(queries().session(session.id).value(), session);
    EXPECT_EQ(queries().last_undone().value(), std::nullopt);
    ASSERT_FALSE(library->redo(done->step.number));
}

TEST_F(Journal, UndoesARecordTouchedTwiceInOneStep) {
    ASSERT_TRUE(apply({Put{engine}}));
    auto once = engine;
    once.name = "Once";
    auto twice = engine;
    twice.name = "Twice";
    const auto done = apply({Put{once}, Put{twice}});
    ASSERT_TRUE(done) << why(done);
    ASSERT_TRUE(library->undo(done->step.number));
    EXPECT_EQ(queries().engine(engine.id).value(), engine);
    ASSERT_TRUE(library->redo(done->step.number));
    EXPECT_EQ(queries().engine(engine.id).value(), twice);
}

TEST_F(Journal, RefusesToUndoWhatWasChangedSince) {
    const auto added = apply({Put{engine}});
    auto renamed = engine;
    renamed.name = "Other name";
    const auto change = apply({Put{renamed}});
    ASSERT_TRUE(added && change);
    const auto refused = library->undo(added->step.number);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, "undo.changed_since");
    EXPECT_EQ(queries().engine(engine.id).value(), renamed);
    ASSERT_TRUE(library->undo(change->step.number));
    EXPECT_TRUE(library->undo(added->step.number));
}

TEST_F(Journal, RefusesToDoAgainWhatWasChangedSinceOrHasLostItsPlace) {
    ASSERT_TRUE(apply({Put{engine}}));
    auto renamed = engine;
    renamed.name = "Other name";
    const auto change = apply({Put{renamed}});
    ASSERT_TRUE(change && library->undo(change->step.number));
    auto otherwise = engine;
    otherwise.name = "Yet another";
    ASSERT_TRUE(apply({Put{otherwise}}));
    // Not the newest any more, and it would undo what was done since.
    EXPECT_EQ(queries().last_undone().value(), std::nullopt);
    const auto changed = library->redo(change->step.number);
    ASSERT_FALSE(changed);
    EXPECT_EQ(changed.error().code, "redo.changed_since");
    EXPECT_EQ(queries().engine(engine.id).value(), otherwise);

    const auto opened = apply({Put{session}});
    ASSERT_TRUE(opened && library->undo(opened->step.number));
    ASSERT_TRUE(apply({Remove{RecordKind::engine, engine.id.uuid}}));
    const auto lost = library->redo(opened->step.number);
    ASSERT_FALSE(lost);
    EXPECT_EQ(lost.error().code, "redo.hangs");
}

TEST_F(Journal, RefusesToUndoWhatSomethingHangsOn) {
    const auto added = apply({Put{engine}});
    ASSERT_TRUE(added && apply({Put{session}}));
    const auto refused = library->undo(added->step.number);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, "undo.hangs");
    EXPECT_TRUE(queries().session(session.id).value());
}

TEST_F(Journal, UndoesAnOlderStepThatNothingTouchedSince) {
    ASSERT_TRUE(apply({Put{engine}, Put{session}}));
    const auto first = sample::reading(session.id);
    const auto second = sample::reading(session.id, TestKind::dry, 2);
    const auto older = apply({Put{first}});
    ASSERT_TRUE(older && apply({Put{second}}));
    ASSERT_TRUE(library->undo(older->step.number));
    const auto visit = queries().visit(session.id).value();
    ASSERT_EQ(visit->readings.size(), 1U);
    EXPECT_EQ(visit->readings[0], second);
    // Something was done after it, so it is not what "do again" offers.
    EXPECT_EQ(queries().last_undone().value(), std::nullopt);
}

TEST_F(Journal, ForgetsStepsBeyondTwoHundred) {
    for (int i = 0; i < steps_kept + 25; ++i) {
        engine.name = "Name " + std::to_string(i);
        ASSERT_TRUE(apply({Put{engine}}));
    }
    const auto steps = queries().steps().value();
    ASSERT_EQ(steps.size(), static_cast<std::size_t>(steps_kept));
    EXPECT_EQ(steps.front().number, steps_kept + 25);
    EXPECT_EQ(steps.back().number, 26);
    const auto gone = library->undo(1);
    ASSERT_FALSE(gone);
    EXPECT_EQ(gone.error().code, "undo.gone");
    SQLite::Database db((folder.path() / "library.sqlite").string(), SQLite::OPEN_READONLY);
    EXPECT_EQ(db.execAndGet("SELECT min(step) FROM step_image").getInt(), 26);
}

TEST_F(Journal, CountsReadingsThroughUndo) {
    const auto done = apply({Put{engine}, Put{session}, Put{sample::reading(session.id)},
                             Put{sample::reading(session.id, TestKind::dry, 2)}});
    ASSERT_TRUE(done) << why(done);
    const auto readings = [&] {
        SQLite::Database db((folder.path() / "library.sqlite").string(), SQLite::OPEN_READONLY);
        return db.execAndGet("SELECT coalesce(sum(readings), 0) FROM session").getInt();
    };
    EXPECT_EQ(readings(), 2);
    ASSERT_TRUE(library->undo(done->step.number));
    EXPECT_EQ(readings(), 0);
    ASSERT_TRUE(library->redo(done->step.number));
    EXPECT_EQ(readings(), 2);
}

/// Everything in the library that undo is about.
std::map<std::string, std::string> contents(const std::filesystem::path& folder) {
    SQLite::Database db((folder / "library.sqlite").string(), SQLite::OPEN_READWRITE);
    std::map<std::string, std::string> all;
    for (const auto* table : {"engine", "tester", "session", "reading", "note"}) {
        SQLite::Statement query(db, std::string("SELECT id, body FROM ") + table);
        while (query.executeStep())
            all[query.getColumn(0).getString()] = query.getColumn(1).getString();
    }
    return all;
}

RC_GTEST_PROP(JournalProperty, UndoingEverythingBackwardsPassesThroughEveryState, ()) {
    const sample::Folder folder;
    auto library = Library::open(folder.path(), sample::clock()).value();
    std::vector<Engine> engines{sample::engine("A"), sample::engine("B")};
    std::vector<Session> sessions{sample::session(engines[0].id), sample::session(engines[1].id)};
    std::vector<Reading> readings{sample::reading(sessions[0].id), sample::reading(sessions[0].id),
                                  sample::reading(sessions[1].id)};
    std::vector<std::map<std::string, std::string>> states{contents(folder.path())};
    std::vector<std::int64_t> steps;

    const auto count = *rc::gen::inRange(1, 12);
    for (int i = 0; i < count; ++i) {
        std::vector<Edit> edits;
        const auto length = *rc::gen::inRange(1, 5);
        for (int j = 0; j < length; ++j) {
            const auto which = *rc::gen::inRange<std::size_t>(0, 7);
            const bool take_out = *rc::gen::inRange(0, 3) == 0;
            Record record = engines[0];
            if (which < 2)
                record = engines[which];
            else if (which < 4)
                record = sessions[which - 2];
            else
                record = readings[which - 4];
            if (auto* engine = std::get_if<Engine>(&record)) engine->history = "state " + std::to_string(i);
            if (auto* reading = std::get_if<Reading>(&record)) reading->note = "state " + std::to_string(i);
            if (take_out)
                edits.emplace_back(Remove{kind_of(record), id_of(record)});
            else
                edits.emplace_back(Put{record});
        }
        Step info;
        info.name = "random";
        const auto outcome = library->apply(info, edits);
        if (!outcome) RC_ASSERT(contents(folder.path()) == states.back());
        if (!outcome || outcome->step.number == 0) continue;
        steps.push_back(outcome->step.number);
        states.push_back(contents(folder.path()));
    }
    for (std::size_t i = steps.size(); i-- > 0;) {
        RC_ASSERT(library->undo(steps[i]));
        RC_ASSERT(contents(folder.path()) == states[i]);
    }
    for (std::size_t i = 0; i < steps.size(); ++i) {
        RC_ASSERT(library->redo(steps[i]));
        RC_ASSERT(contents(folder.path()) == states[i + 1]);
    }
}

}  // namespace
}  // namespace lapwing::store
