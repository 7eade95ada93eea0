// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/attachment_files.h"
#include "core/workflow/bring_in.h"
#include "core/workflow/clearances.h"
#include "core/workflow/engines.h"
#include "core/workflow/exits.h"
#include "core/workflow/hand_over.h"
#include "core/workflow/plan.h"
#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"
#include "core/workflow/sessions.h"
#include "core/workflow/testers.h"
#include "tests/core/workflow/desk_fixture.h"

namespace lapwing::workflow {
namespace {

using sample::why;

/// An engine with one session of everything, and what stands in it.
class UseCases : public DeskTest {
protected:
    Engine engine = sample::engine();
    Tester gauge = sample::tester();
    Session session = sample::session(engine.id);
    Reading reading = sample::reading(session.id);
    ExitNote exit = sample::exit_note(session.id);
    Clearance clearance = sample::clearance(session.id);
    Note note = sample::note(session.id);
    PlanLine line = sample::plan_line(session.id);
    Attachment attachment;

    void SetUp() override {
        session.compression_gauge = gauge.id;
        const unsigned char bytes[] = {'a', 'b', 'c'};
        const auto kept = desk->files().keep(bytes);
        ASSERT_TRUE(kept) << why(kept);
        attachment = sample::attachment(session.id, kept->sha256, kept->bytes);
        const auto done = run(Command{"test.add",
                                      {},
                                      {Put{engine}, Put{gauge}, Put{session}, Put{reading}, Put{exit},
                                       Put{clearance}, Put{note}, Put{line}, Put{attachment}}});
        ASSERT_TRUE(done) << why(done);
    }
    Visit visit() { return desk->visit(session.id).value_or(Visit{}); }
    Reading kept(TestKind test, int cylinder) {
        const auto all = visit();
        const auto* found = latest(all.readings, test, cylinder);
        return found != nullptr ? *found : Reading{};
    }

    /// Everything that can be read, to compare before with after.
    struct Everything {
        std::vector<EngineSummary> summaries;
        std::vector<Tester> testers;
        std::vector<Dossier> dossiers;
        bool operator==(const Everything&) const = default;
    };
    Everything everything() {
        Everything all{desk->engines(), desk->testers(), {}};
        for (const auto& summary : all.summaries)
            all.dossiers.push_back(desk->dossier(summary.id).value());
        return all;
    }

    /// Does a command, undoes it, does it again: each time the library is exactly what it was.
    void there_and_back(const std::string& name, Intent intent) {
        const auto before = everything();
        const auto done = run(std::move(intent));
        ASSERT_TRUE(done) << name << ": " << why(done);
        EXPECT_EQ(done->name, name);
        EXPECT_EQ(desk->last_step(), *done);
        const auto after = everything();
        EXPECT_NE(after, before) << name;
        ASSERT_TRUE(undo(done->number)) << name;
        EXPECT_EQ(everything(), before) << name;
        ASSERT_TRUE(redo(done->number)) << name;
        EXPECT_EQ(everything(), after) << name;
        ASSERT_TRUE(undo(done->number)) << name;
        EXPECT_EQ(everything(), before) << name;
    }
};

TEST_F(UseCases, GoThereAndBackExactly) {
    auto other_engine = sample::engine("Another");
    auto renamed_engine = engine;
    renamed_engine.name = "Renamed";
    auto renamed_tester = gauge;
    renamed_tester.name = "Blue hose";
    auto retitled = session;
    retitled.title = "After the repair";
    auto conditions = session.conditions;
    conditions.heat = EngineHeat::warm;
    TesterCheck check;
    check.kind = TesterCheckKind::zero_at_rest;
    auto other_note = note;
    other_note.text = "Ticks when cold";
    Dossier dossier;
    dossier.engine = sample::engine("From a file");
    dossier.visits.emplace_back();
    dossier.visits[0].session = sample::session(dossier.engine.id);

    there_and_back("engine.add", save_engine(other_engine));
    there_and_back("engine.change", save_engine(renamed_engine));
    there_and_back("engine.delete", remove_engine(engine.id));
    there_and_back("tester.add", save_tester(sample::tester(TesterKind::leak_down, "Two gauges")));
    there_and_back("tester.change", save_tester(renamed_tester));
    there_and_back("tester.check", keep_check(gauge.id, check));
    there_and_back("session.open", open_session(SessionId::make(clock), engine.id, "After the repair"));
    there_and_back("session.change", save_session(retitled));
    there_and_back("session.step", mark_step(session.id, {PrepareStep::battery, StepState::done, ""}));
    there_and_back("session.conditions", set_conditions(session.id, conditions));
    there_and_back("session.tester", choose_tester(session.id, TesterUse::compression, std::nullopt));
    there_and_back("session.answer", set_answer(session.id, OwnerAnswer::yes));
    there_and_back("session.delete", remove_session(session.id));
    there_and_back("reading.keep", keep_reading(sample::reading(session.id, TestKind::dry, 2)));
    there_and_back("reading.redo",
                   redo_reading(reading.id, sample::reading(session.id, TestKind::dry, 1, "9.7")));
    there_and_back("reading.remove", remove_reading(reading.id));
    there_and_back("exit.keep", keep_exit(sample::exit_note(session.id, 2)));
    there_and_back("exit.remove", remove_exit(exit.id));
    there_and_back("clearance.keep", keep_clearance(sample::clearance(session.id, 2)));
    there_and_back("clearance.remove", remove_clearance(clearance.id));
    there_and_back("note.keep", save_note(other_note));
    there_and_back("note.remove", remove_note(note.id));
    there_and_back("attachment.remove", remove_attachment(attachment.id));
    there_and_back("attachment.keep", save_attachment(sample::attachment(session.id, attachment.sha256)));
    there_and_back("plan.keep", save_plan_line(sample::plan_line(session.id, "New rings")));
    there_and_back("plan.add", add_plan_line(sample::plan_line(session.id, "New rings")));
    there_and_back("plan.tick", tick_plan_line(line.id, true));
    there_and_back("plan.remove", remove_plan_line(line.id));
    there_and_back("session.retest", plan_retest(session.id, clock.now()));
    there_and_back("dossier.bring_in", bring_in(dossier));
}

TEST_F(UseCases, ACommittedCallStands) {
    Note call = sample::note(session.id, "Sounds at the exhaust");
    call.tie = {.to = TiedTo::cylinder, .record = {}, .cylinder = 1, .finding = {}};
    call.cause = Cause::exhaust;
    const auto committed = run(commit_calls({call}));
    ASSERT_TRUE(committed) << why(committed);
    EXPECT_EQ(committed->name, "note.call");
    const auto kept = [&] { return std::get<Note>(*desk->record(RecordKind::note, call.id.uuid)); };
    EXPECT_EQ(kept().kind, NoteKind::my_call);
    EXPECT_EQ(kept().cause, Cause::exhaust);

    Note wiser = kept();
    wiser.cause = Cause::rings;
    for (const auto& refused :
         {run(save_note(wiser)), run(remove_note(call.id)), run(commit_calls({wiser}))}) {
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, "note.call_stands");
    }
    EXPECT_EQ(kept().cause, Cause::exhaust);
}

TEST_F(UseCases, DeleteAnEngineWithAllThatHangsOnItAndBringItBack) {
    const auto before = everything();
    const auto deleted = run(remove_engine(engine.id));
    ASSERT_TRUE(deleted) << why(deleted);
    EXPECT_EQ(deleted->args, (std::vector<std::string>{engine.name, "1", "1"}));
    EXPECT_TRUE(desk->engines().empty());
    EXPECT_EQ(desk->session(session.id), std::nullopt);
    reopen();  // the way back survives closing
    ASSERT_TRUE(undo(desk->last_step()->number));
    EXPECT_EQ(everything(), before);
    EXPECT_TRUE(desk->files().has(attachment.sha256));
}

TEST_F(UseCases, FillInIdTimeAndTester) {
    auto fresh = sample::reading(session.id, TestKind::dry, 2);
    fresh.id = {};
    fresh.taken_at = {};
    const auto done = run(keep_reading(fresh));
    ASSERT_TRUE(done) << why(done);
    EXPECT_EQ(done->args, (std::vector<std::string>{"dry", "2"}));
    const auto stored = kept(TestKind::dry, 2);
    EXPECT_FALSE(stored.id.is_nil());
    EXPECT_EQ(stored.taken_at, clock.now());
    EXPECT_EQ(stored.tester, gauge.id);
}

TEST_F(UseCases, MarkOilOnTheRingsForEveryLaterReadingOfThatCylinder) {
    const auto keep = [&](TestKind test, int cylinder) {
        auto fresh = sample::reading(session.id, test, cylinder, "5.5");
        fresh.taken_at = {};
        fresh.oiled = Oiled::unknown;
        const auto done = run(keep_reading(fresh));
        EXPECT_TRUE(done) << why(done);
        return kept(test, cylinder);
    };
    EXPECT_EQ(keep(TestKind::dry, 1).oiled, Oiled::no);
    EXPECT_EQ(keep(TestKind::leak_down, 1).oiled, Oiled::no);
    const auto wet = keep(TestKind::wet, 1);
    EXPECT_EQ(wet.oiled, Oiled::fresh);
    EXPECT_EQ(keep(TestKind::dry, 1).oiled, Oiled::before);
    EXPECT_EQ(keep(TestKind::leak_down, 1).oiled, Oiled::before);
    EXPECT_EQ(keep(TestKind::dry, 2).oiled, Oiled::no);
    // A wet reading that was redone has still put oil in.
    auto wet_again = sample::reading(session.id, TestKind::wet);
    wet_again.taken_at = {};
    ASSERT_TRUE(run(redo_reading(wet.id, wet_again)));
    EXPECT_EQ(keep(TestKind::dry, 1).oiled, Oiled::before);
    // One typed in later, but taken before the oil went in.
    auto earlier = sample::reading(session.id, TestKind::dry, 1, "9.9");
    ASSERT_TRUE(run(keep_reading(earlier)));
    EXPECT_EQ(std::get<Reading>(*desk->record(RecordKind::reading, earlier.id.uuid)).oiled, Oiled::no);
}

/// assets/reference/prepare.json: "The rings are oiled then: the reading is no longer a dry one."
TEST_F(UseCases, MarkOilOnTheRingsWhereTheBoresWereOiledBeforehand) {
    ASSERT_TRUE(run(mark_step(session.id, {PrepareStep::bores_oiled, StepState::done, {}})));
    const auto keep = [&](Tag tag, Oiled said) {
        auto fresh = sample::reading(session.id, TestKind::dry, 1, "5.5");
        fresh.taken_at = {};
        fresh.tag = tag;
        fresh.oiled = said;
        const auto done = run(keep_reading(fresh));
        EXPECT_TRUE(done) << why(done);
        return kept(TestKind::dry, 1).oiled;
    };
    EXPECT_EQ(keep(Tag::as_found, Oiled::unknown), Oiled::before);
    // Whoever read it knows better; and running burns it off.
    EXPECT_EQ(keep(Tag::as_found, Oiled::no), Oiled::no);
    EXPECT_EQ(keep(Tag::after_running, Oiled::unknown), Oiled::no);
    ASSERT_TRUE(run(mark_step(session.id, {PrepareStep::bores_oiled, StepState::not_needed, {}})));
    EXPECT_EQ(keep(Tag::as_found, Oiled::unknown), Oiled::no);
}

TEST_F(UseCases, FindOilOnTheRingsFromASessionOfTheSameDay) {
    // Common practice, no source: oil stays until the engine has run, or overnight.
    const auto keep = [&](SessionId in, TestKind test, int cylinder) {
        auto fresh = sample::reading(in, test, cylinder);
        fresh.taken_at = {};
        const auto done = run(keep_reading(fresh));
        EXPECT_TRUE(done) << why(done);
        return std::get<Reading>(*desk->record(RecordKind::reading, fresh.id.uuid)).oiled;
    };
    EXPECT_EQ(keep(session.id, TestKind::wet, 1), Oiled::fresh);
    const auto begin = [&](const std::string& title) {
        const auto id = desk->make_id<SessionId>();
        EXPECT_TRUE(run(open_session(id, engine.id, title)));
        return id;
    };
    clock.move_by(std::chrono::minutes(20));
    const auto with_throttle_open = begin("Throttle open");
    EXPECT_EQ(keep(with_throttle_open, TestKind::dry, 1), Oiled::before);
    EXPECT_EQ(keep(with_throttle_open, TestKind::dry, 2), Oiled::no);
    clock.move_by(std::chrono::hours(13));
    EXPECT_EQ(keep(begin("Next day"), TestKind::dry, 1), Oiled::no);
}

// Work was ticked in the plan, and a session begun after it: the proof of the repair.
TEST_F(UseCases, TagWhatIsReadAfterTickedWorkAndForgetTheOilOfBefore) {
    const auto keep = [&](SessionId in, TestKind test, int cylinder, Tag tag = Tag::as_found) {
        auto fresh = sample::reading(in, test, cylinder);
        fresh.taken_at = {};
        fresh.tag = tag;
        const auto done = run(keep_reading(fresh));
        EXPECT_TRUE(done) << why(done);
        return std::get<Reading>(*desk->record(RecordKind::reading, fresh.id.uuid));
    };
    keep(session.id, TestKind::wet, 1);
    keep(session.id, TestKind::wet, 2);
    clock.move_by(std::chrono::minutes(20));
    PlanLine line = sample::plan_line(session.id, "New rings");
    line.option = PlanOption::strip;
    line.cylinder = 1;
    line.done_at = clock.now();
    ASSERT_TRUE(run(Command{"test.add", {}, {Put{line}}}));
    clock.move_by(std::chrono::minutes(20));
    const auto after = desk->make_id<SessionId>();
    ASSERT_TRUE(run(open_session(after, engine.id, "After repair")));
    const Reading repaired = keep(after, TestKind::dry, 1);
    EXPECT_EQ(repaired.tag, Tag::after_repair);
    // Nobody noted whether the work took the oil off, or brought new oil.
    EXPECT_EQ(repaired.oiled, Oiled::unknown);
    const Reading untouched = keep(after, TestKind::dry, 2);
    EXPECT_EQ(untouched.tag, Tag::as_found);
    EXPECT_EQ(untouched.oiled, Oiled::before);
    // Running burns it off (common practice, no source).
    EXPECT_EQ(keep(after, TestKind::dry, 2, Tag::after_running).oiled, Oiled::no);
    // A redo stays what it puts right.
    auto again = sample::reading(after, TestKind::dry, 1, "6.1");
    again.taken_at = {};
    ASSERT_TRUE(run(redo_reading(repaired.id, again)));
    EXPECT_EQ(std::get<Reading>(*desk->record(RecordKind::reading, again.id.uuid)).tag, Tag::after_repair);
    // Oil of this session counts as ever, and the session after this one follows no work.
    keep(after, TestKind::wet, 1);
    EXPECT_EQ(keep(after, TestKind::dry, 1).oiled, Oiled::before);
    clock.move_by(std::chrono::hours(24 * 300));
    const auto year_later = desk->make_id<SessionId>();
    ASSERT_TRUE(run(open_session(year_later, engine.id, "")));
    EXPECT_EQ(keep(year_later, TestKind::dry, 1).tag, Tag::as_found);
}

TEST_F(UseCases, TickAChecksRequestByDoingIt) {
    // Asked for by somebody else, after everything that stands there.
    const auto ask = [&](AskedCheck check, const Tie& tie) {
        clock.move_by(std::chrono::minutes(1));
        Note request = sample::note(session.id);
        request.id = desk->make_id<NoteId>();
        request.kind = NoteKind::test_request;
        request.test.reset();
        request.cause.reset();
        request.done = false;
        request.check = check;
        request.tie = tie;
        request.at = clock.now();
        const auto asked = run(save_note(request));
        EXPECT_TRUE(asked) << why(asked);
        return request.id;
    };
    const auto done = [&](NoteId id) {
        return std::get<Note>(*desk->record(RecordKind::note, id.uuid)).done;
    };
    const Tie second{.to = TiedTo::cylinder, .record = {}, .cylinder = 2, .finding = {}};
    const auto hunt = ask(AskedCheck::leak_hunt, second);
    const auto struck = ask(AskedCheck::staking, second);
    const auto gaps = ask(AskedCheck::clearances, second);
    Tie to_gauge;
    to_gauge.to = TiedTo::tester;
    to_gauge.record = gauge.id.uuid;
    const auto checked_gauge = ask(AskedCheck::tester_check, to_gauge);

    auto heard = sample::exit_note(session.id, 1);
    heard.at = {};
    ASSERT_TRUE(run(keep_exit(heard)));
    EXPECT_FALSE(done(hunt));
    heard = sample::exit_note(session.id, 2);
    heard.at = {};
    const auto listened = run(keep_exit(heard));
    ASSERT_TRUE(listened) << why(listened);
    EXPECT_TRUE(done(hunt));
    EXPECT_FALSE(done(struck));
    // In the same step.
    ASSERT_TRUE(undo(listened->number));
    EXPECT_FALSE(done(hunt));

    heard.tag = Tag::after_staking;
    ASSERT_TRUE(run(keep_exit(heard)));
    EXPECT_TRUE(done(struck));

    for (const ValveSide side : {ValveSide::intake, ValveSide::exhaust}) {
        EXPECT_FALSE(done(gaps));
        auto measured = sample::clearance(session.id, 2, side);
        measured.at = {};
        ASSERT_TRUE(run(keep_clearance(measured)));
    }
    EXPECT_TRUE(done(gaps));

    ASSERT_FALSE(done(checked_gauge));
    ASSERT_TRUE(run(keep_check(gauge.id, TesterCheck{})));
    EXPECT_TRUE(done(checked_gauge));
}

TEST_F(UseCases, CallNothingAsFoundThatIsHeardAfterAClearanceWasPutRight) {
    auto put_right = sample::clearance(session.id, 2, ValveSide::intake);
    put_right.found = TypedLength::make("0.05", units::mm).value();
    put_right.left = TypedLength::make("0.15", units::mm).value();
    const auto keep = [&](int cylinder) {
        auto heard = sample::exit_note(session.id, cylinder, Exit::exhaust);
        heard.tag = Tag::as_found;
        heard.at = {};
        const auto kept = run(keep_exit(heard));
        EXPECT_TRUE(kept) << why(kept);
        return std::get<ExitNote>(*desk->record(RecordKind::exit_note, heard.id.uuid));
    };
    const auto before = keep(2);
    EXPECT_EQ(before.tag, Tag::as_found);
    ASSERT_TRUE(run(keep_clearance(put_right)));
    const auto after = keep(2);
    EXPECT_EQ(after.tag, Tag::after_adjustment);
    EXPECT_FALSE(after.replaces);  // what was heard before stands for what it was
    EXPECT_EQ(keep(1).tag, Tag::as_found);
}

TEST_F(UseCases, CallNothingAsFoundThatIsReadAfterAClearanceWasPutRight) {
    const auto keep = [&](int cylinder, Tag tag = Tag::as_found) {
        auto fresh = sample::reading(session.id, TestKind::leak_down, cylinder, "5.5");
        fresh.taken_at = {};
        fresh.tag = tag;
        const auto done = run(keep_reading(fresh));
        EXPECT_TRUE(done) << why(done);
        return std::get<Reading>(*desk->record(RecordKind::reading, fresh.id.uuid)).tag;
    };
    EXPECT_EQ(keep(2), Tag::as_found);
    const ReadingId before = kept(TestKind::leak_down, 2).id;
    auto measured = sample::clearance(session.id, 2);
    measured.left.reset();
    ASSERT_TRUE(run(keep_clearance(measured)));
    EXPECT_EQ(keep(2), Tag::as_found);
    auto put_right = sample::clearance(session.id, 2, ValveSide::intake);
    put_right.found = TypedLength::make("0.05", units::mm).value();
    put_right.left = TypedLength::make("0.15", units::mm).value();
    ASSERT_TRUE(run(keep_clearance(put_right)));
    EXPECT_EQ(keep(2), Tag::after_adjustment);
    EXPECT_EQ(keep(2, Tag::after_running), Tag::after_running);
    // What was typed wrongly before it is put right as what it was.
    auto again = sample::reading(session.id, TestKind::leak_down, 2, "5.6");
    again.taken_at = {};
    ASSERT_TRUE(run(redo_reading(before, again)));
    EXPECT_EQ(std::get<Reading>(*desk->record(RecordKind::reading, again.id.uuid)).tag, Tag::as_found);
    EXPECT_EQ(keep(1), Tag::as_found);
}

TEST_F(UseCases, ApplyTheOilRuleToWhatIsStillQueued) {
    auto wet = sample::reading(session.id, TestKind::wet, 2);
    auto dry = sample::reading(session.id, TestKind::dry, 2);
    wet.taken_at = dry.taken_at = {};
    desk->run(keep_reading(wet));
    desk->run(keep_reading(dry));
    desk->flush();
    EXPECT_EQ(kept(TestKind::dry, 2).oiled, Oiled::before);
}

TEST_F(UseCases, RedoKeepsTheOldReadingInTheHistory) {
    auto again = sample::reading(session.id, TestKind::dry, 2, "9.9");
    ASSERT_TRUE(run(redo_reading(reading.id, again)));
    const auto now = visit();
    EXPECT_EQ(now.readings.size(), 2U);
    const auto stands = standing(now.readings, TestKind::dry, 1);
    ASSERT_EQ(stands.size(), 1U);
    EXPECT_EQ(stands[0]->id, again.id);
    EXPECT_EQ(stands[0]->replaces, reading.id);
    EXPECT_EQ(run(redo_reading(reading.id, sample::reading(session.id))).error().code,
              "reading.redone_already");
    EXPECT_EQ(run(remove_reading(reading.id)).error().code, "reading.redone_already");
    ASSERT_TRUE(run(remove_reading(again.id)));
    EXPECT_EQ(kept(TestKind::dry, 1).id, reading.id);
}

TEST_F(UseCases, RepeatsBothCount) {
    ASSERT_TRUE(run(keep_reading(sample::reading(session.id))));
    const auto now = visit();
    EXPECT_EQ(standing(now.readings, TestKind::dry, 1).size(), 2U);
}

TEST_F(UseCases, ListeningAgainReplacesOnlyTheSameExitUnderTheSameTag) {
    const auto louder = sample::exit_note(session.id, 1, Exit::intake, Loudness::strong);
    ASSERT_TRUE(run(keep_exit(louder)));
    auto after_staking = louder;
    after_staking.id = ExitNoteId::make(clock);
    after_staking.tag = Tag::after_staking;
    ASSERT_TRUE(run(keep_exit(after_staking)));
    ASSERT_TRUE(run(keep_exit(sample::exit_note(session.id, 1, Exit::exhaust))));
    const auto now = visit();
    EXPECT_EQ(now.exits.size(), 4U);
    EXPECT_EQ(standing(now.exits, 1).size(), 3U);
    EXPECT_EQ(std::get<ExitNote>(*desk->record(RecordKind::exit_note, louder.id.uuid)).replaces, exit.id);
    EXPECT_EQ(run(remove_exit(exit.id)).error().code, "exit.kept_again");
    auto same_again = sample::exit_note(session.id, 1, Exit::exhaust);
    EXPECT_EQ(run(keep_exit(same_again))->number, 0);
}

TEST_F(UseCases, AdjustedClearanceKeepsWhatWasFound) {
    auto left = clearance;
    left.id = ClearanceId::make(clock);
    left.found.reset();
    left.left = TypedLength::make("0.15", units::mm).value();
    ASSERT_TRUE(run(keep_clearance(left)));
    const auto now = visit();
    const auto stands = standing(now.clearances, 1);
    ASSERT_EQ(stands.size(), 1U);
    EXPECT_EQ(stands[0]->found, clearance.found);
    EXPECT_EQ(stands[0]->left, left.left);
    EXPECT_EQ(stands[0]->replaces, clearance.id);
}

TEST_F(UseCases, OpeningASessionCarriesOverWhatStaysTheSame) {
    auto conditions = session.conditions;
    conditions.altitude = TypedLength::make("610", units::m).value();
    conditions.air = TypedTemperature::make("18", units::deg_c).value();
    conditions.heat = EngineHeat::warm;
    ASSERT_TRUE(run(set_conditions(session.id, conditions)));
    const auto id = SessionId::make(clock);
    ASSERT_TRUE(run(open_session(id, engine.id, "After the repair")));
    const auto opened = desk->session(id);
    ASSERT_TRUE(opened);
    EXPECT_EQ(opened->conditions.altitude, conditions.altitude);
    EXPECT_EQ(opened->compression_gauge, gauge.id);
    EXPECT_EQ(opened->opened_at, clock.now());
    EXPECT_EQ(opened->conditions.air, std::nullopt);
    EXPECT_EQ(opened->conditions.heat, EngineHeat::unknown);
    EXPECT_EQ(desk->sessions(engine.id).front().id, id);
}

TEST_F(UseCases, FirstSessionTakesTheAltitudeFromTheEngineCard) {
    auto other = sample::engine("Another");
    other.shop_altitude = TypedLength::make("1200", units::ft).value();
    ASSERT_TRUE(run(save_engine(other)));
    const auto id = SessionId::make(clock);
    ASSERT_TRUE(run(open_session(id, other.id, "As found")));
    EXPECT_EQ(desk->session(id)->conditions.altitude, other.shop_altitude);
    EXPECT_EQ(desk->session(id)->compression_gauge, gauge.id);  // the shop's only one
    EXPECT_EQ(desk->session(id)->leak_down_tester, std::nullopt);
}

TEST_F(UseCases, MarkingAStepAgainReplacesTheMark) {
    ASSERT_TRUE(run(mark_step(session.id, {PrepareStep::battery, StepState::not_done, "flat"})));
    ASSERT_TRUE(run(mark_step(session.id, {PrepareStep::battery, StepState::done, ""})));
    EXPECT_EQ(desk->session(session.id)->prepare.size(), 1U);
    EXPECT_EQ(step_state(*desk->session(session.id), PrepareStep::battery), StepState::done);
}

TEST_F(UseCases, MarkingTheRestOfTheStepsIsOneStepAndLeavesTheOthersAlone) {
    ASSERT_TRUE(run(mark_step(session.id, {PrepareStep::battery, StepState::not_done, "flat"})));
    const std::vector<PrepareMark> rest{{PrepareStep::throttle_open, StepState::done, ""},
                                        {PrepareStep::breather_open, StepState::done, ""}};
    there_and_back("session.prepare", mark_steps(session.id, rest));
    const auto done = run(mark_steps(session.id, rest));
    ASSERT_TRUE(done) << why(done);
    EXPECT_EQ(done->args, (std::vector<std::string>{"2", "done"}));
    const auto marks = visit().session.prepare;
    ASSERT_EQ(marks.size(), 3u);
    EXPECT_EQ(marks[0], (PrepareMark{PrepareStep::battery, StepState::not_done, "flat"}));
    EXPECT_EQ(marks[1], rest[0]);
    EXPECT_EQ(marks[2], rest[1]);
    // Marked again, it stands in the same place.
    ASSERT_TRUE(run(mark_steps(session.id, {{PrepareStep::battery, StepState::done, ""}})));
    EXPECT_EQ(visit().session.prepare.size(), 3u);
    EXPECT_EQ(visit().session.prepare[0].state, StepState::done);
}

TEST_F(UseCases, ASessionBeginsWithWhatWasLookedAtBefore) {
    const auto later = SessionId::make(clock);
    const Start start{Throttle::held_open, EngineHeat::warm};
    there_and_back("session.open", open_session(later, engine.id, "Throttle open", start));
    ASSERT_TRUE(run(open_session(later, engine.id, "Throttle open", start)));
    const auto opened = desk->session(later).value();
    EXPECT_EQ(opened.conditions.throttle, Throttle::held_open);
    EXPECT_EQ(opened.conditions.heat, EngineHeat::warm);
    EXPECT_EQ(step_state(opened, PrepareStep::throttle_open), StepState::done);
    // Nothing was looked at: nothing is noted.
    const auto bare = SessionId::make(clock);
    ASSERT_TRUE(run(open_session(bare, engine.id, "")));
    EXPECT_EQ(desk->session(bare)->conditions.throttle, Throttle::unknown);
    EXPECT_EQ(step_state(*desk->session(bare), PrepareStep::throttle_open), StepState::open);
    there_and_back("session.conditions", set_start(bare, start));
}

TEST_F(UseCases, ATestThatWasAskedForIsTickedByDoingItInThatSessionOrALaterOne) {
    Note of_one = sample::note(session.id, "Before any oil");
    of_one.kind = NoteKind::test_request;
    of_one.test = TestKind::leak_down;
    of_one.tie = {.to = TiedTo::reading, .record = reading.id.uuid, .cylinder = {}, .finding = {}};
    Note of_all = sample::note(session.id, "With the throttle open");
    of_all.kind = NoteKind::test_request;
    of_all.test = TestKind::dry;
    for (Note* request : {&of_one, &of_all}) {
        clock.move_by(std::chrono::seconds(1));
        request->at = clock.now();
        ASSERT_TRUE(run(save_note(*request)));
    }
    const auto done = [&](const Note& request) {
        return std::get<Note>(desk->record(RecordKind::note, request.id.uuid).value()).done;
    };
    const auto later = SessionId::make(clock);
    ASSERT_TRUE(run(open_session(later, engine.id, "")));
    const auto keep = [&](TestKind test, int cylinder) {
        Reading one = sample::reading(later, test, cylinder);
        one.id = ReadingId::make(clock);
        one.taken_at = {};
        return run(keep_reading(one));
    };
    // Another cylinder's air answers nothing.
    ASSERT_TRUE(keep(TestKind::leak_down, 2));
    EXPECT_FALSE(done(of_one));
    const auto step = keep(TestKind::leak_down, 1);
    ASSERT_TRUE(step) << why(step);
    EXPECT_TRUE(done(of_one));
    EXPECT_FALSE(done(of_all));
    // One step: Undo asks for it again.
    ASSERT_TRUE(undo(step->number));
    EXPECT_FALSE(done(of_one));
    // So does taking the reading out, unless another one has it as well.
    ASSERT_TRUE(keep(TestKind::leak_down, 1));
    const auto newest = [&] { return latest(desk->visit(later)->readings, TestKind::leak_down, 1)->id; };
    ASSERT_TRUE(keep(TestKind::leak_down, 1));
    ASSERT_TRUE(run(remove_reading(newest())));
    EXPECT_TRUE(done(of_one));
    const auto out = run(remove_reading(newest()));
    ASSERT_TRUE(out) << why(out);
    EXPECT_FALSE(done(of_one));
    ASSERT_TRUE(undo(out->number));
    EXPECT_TRUE(done(of_one));
    // What was asked of the engine takes all its cylinders.
    ASSERT_TRUE(keep(TestKind::dry, 1));
    EXPECT_FALSE(done(of_all));
    ASSERT_TRUE(keep(TestKind::dry, 2));
    EXPECT_TRUE(done(of_all));
    EXPECT_EQ(desk->requests(engine.id).size(), 2u);
}

TEST_F(UseCases, WhatWasMeasuredBeforeItWasAskedForAnswersNothing) {
    Note request = sample::note(session.id, "Again, please");
    request.kind = NoteKind::test_request;
    request.test = TestKind::dry;
    request.tie = {.to = TiedTo::cylinder, .record = {}, .cylinder = 1, .finding = {}};
    clock.move_by(std::chrono::minutes(5));
    request.at = clock.now();
    ASSERT_TRUE(run(save_note(request)));
    // The session has a dry reading of cylinder 1 from before; one of another test keeps it open.
    Reading other = sample::reading(session.id, TestKind::leak_down, 1);
    other.id = ReadingId::make(clock);
    other.taken_at = {};
    ASSERT_TRUE(run(keep_reading(other)));
    const auto done = [&] {
        return std::get<Note>(desk->record(RecordKind::note, request.id.uuid).value()).done;
    };
    EXPECT_FALSE(done());
    Reading again = sample::reading(session.id, TestKind::dry, 1);
    again.id = ReadingId::make(clock);
    again.taken_at = {};
    ASSERT_TRUE(run(keep_reading(again)));
    EXPECT_TRUE(done());
}

TEST_F(UseCases, AddToAReadingWhatWasTypedAfterIt) {
    Reading wet = sample::reading(session.id, TestKind::wet, 1);
    wet.id = ReadingId::make(clock);
    wet.taken_at = {};
    wet.oil_volume.reset();
    ASSERT_TRUE(run(keep_reading(wet)));
    const auto kept = [&] { return std::get<Reading>(*desk->record(RecordKind::reading, wet.id.uuid)); };
    const auto before = kept();
    Addition oil;
    oil.oil_volume = TypedVolume::make("5", units::ml).value();
    const auto step = run(add_to_reading(wet.id, oil));
    ASSERT_TRUE(step) << why(step);
    EXPECT_EQ(kept().oil_volume, oil.oil_volume);
    EXPECT_EQ(kept().final, before.final);
    EXPECT_EQ(kept().taken_at, before.taken_at);
    ASSERT_TRUE(undo(step->number));
    EXPECT_EQ(kept().oil_volume, std::nullopt);
}

TEST_F(UseCases, BelieveWhoeverSaysThatOilWentIn) {
    Reading air = sample::reading(session.id, TestKind::leak_down, 2);
    for (const Oiled said : {Oiled::before, Oiled::unknown}) {
        air.id = ReadingId::make(clock);
        air.taken_at = {};
        air.oiled = said;
        ASSERT_TRUE(run(keep_reading(air)));
        EXPECT_EQ(std::get<Reading>(*desk->record(RecordKind::reading, air.id.uuid)).oiled,
                  said == Oiled::before ? Oiled::before : Oiled::no);
    }
}

TEST_F(UseCases, SayWhatIsMissing) {
    EXPECT_EQ(run(keep_reading(sample::reading(SessionId::make(clock)))).error().code, "session.gone");
    EXPECT_EQ(run(keep_reading(sample::reading(session.id, TestKind::dry, 7))).error().code,
              "cylinder.unknown");
    EXPECT_EQ(run(open_session({}, EngineId::make(clock), "x")).error().code, "engine.gone");
    EXPECT_EQ(run(remove_engine(EngineId::make(clock))).error().code, "engine.gone");
    EXPECT_EQ(run(remove_tester(TesterId::make(clock))).error().code, "tester.gone");
    EXPECT_EQ(run(remove_note(NoteId::make(clock))).error().code, "record.gone");
    EXPECT_EQ(run(save_attachment(sample::attachment(session.id, std::string(64, 'b')))).error().code,
              "attachment.no_file");
    auto nameless = engine;
    nameless.name.clear();
    EXPECT_FALSE(run(save_engine(nameless)));
    auto no_pressure = reading;
    no_pressure.final.reset();
    EXPECT_FALSE(run(keep_reading(no_pressure)));
}

TEST_F(UseCases, ProtectWhatOthersNeed) {
    const auto in_use = run(remove_tester(gauge.id));
    ASSERT_FALSE(in_use);
    EXPECT_EQ(in_use.error().code, "tester.in_use");
    const auto unused = sample::tester(TesterKind::leak_down, "Unused");
    ASSERT_TRUE(run(save_tester(unused)));
    EXPECT_TRUE(run(remove_tester(unused.id)));

    auto fewer = engine;
    fewer.cylinders.erase(fewer.cylinders.begin());
    const auto refused = run(save_engine(fewer));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, "engine.cylinder_in_use");
    auto other_end = engine;
    other_end.cylinders.pop_back();  // nothing was recorded for cylinder 2
    EXPECT_TRUE(run(save_engine(other_end)));
}

TEST_F(UseCases, BringInAddsOnceAndOnlyWhatIsNew) {
    auto dossier = desk->dossier(engine.id).value();
    const auto extra = sample::reading(session.id, TestKind::dry, 2);
    dossier.visits[0].readings.push_back(extra);
    const auto what = preview(*desk, dossier);
    EXPECT_FALSE(what.new_engine);
    EXPECT_EQ(Preview::total(what.added), 1);
    EXPECT_EQ(what.added.at(RecordKind::reading), 1);
    EXPECT_EQ(Preview::total(what.same), 9);
    EXPECT_TRUE(what.differences.empty());

    const auto done = run(bring_in(dossier));
    ASSERT_TRUE(done) << why(done);
    EXPECT_EQ(done->args, (std::vector<std::string>{engine.name, "1"}));
    EXPECT_EQ(visit().readings.size(), 2U);
    const auto again = run(bring_in(dossier));
    ASSERT_TRUE(again) << why(again);
    EXPECT_EQ(again->number, 0);
}

TEST_F(UseCases, HandOverTakesOnlyWhatIsChosen) {
    auto with_owner = engine;
    with_owner.owner = {"A. Owner", "somewhere"};
    ASSERT_TRUE(run(save_engine(with_owner)));
    auto second = sample::session(engine.id, "After the repair");
    ASSERT_TRUE(run(Command{"test.add", {}, {Put{second}}}));

    const auto chosen = hand_over(*desk, {engine.id, {second.id}, false});
    ASSERT_TRUE(chosen) << why(chosen);
    ASSERT_EQ(chosen->visits.size(), 1U);
    EXPECT_EQ(chosen->visits[0].session.id, second.id);
    EXPECT_TRUE(chosen->testers.empty());
    EXPECT_EQ(chosen->engine.owner, Owner{});

    const auto all = hand_over(*desk, {engine.id, {}, true});
    ASSERT_TRUE(all) << why(all);
    EXPECT_EQ(all->visits.size(), 2U);
    EXPECT_EQ(all->testers.size(), 1U);
    EXPECT_EQ(all->engine.owner, with_owner.owner);
    EXPECT_EQ(hand_over(*desk, {engine.id, {SessionId::make(clock)}, false}).error().code, "session.gone");

    // Coming back without its owner, it is still the same engine.
    const auto back = run(bring_in(*hand_over(*desk, {engine.id, {}, false})));
    ASSERT_TRUE(back) << why(back);
    EXPECT_EQ(desk->engine(engine.id)->owner, with_owner.owner);
}

}  // namespace
}  // namespace lapwing::workflow
