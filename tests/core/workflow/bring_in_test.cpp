// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// A session file on its way to a mentor and back: two libraries that hand one engine to each other.

#include "core/workflow/bring_in.h"

#include <algorithm>

#include "core/record/merge.h"
#include "core/workflow/engines.h"
#include "core/workflow/hand_over.h"
#include "core/workflow/readings.h"
#include "core/workflow/remarks.h"
#include "core/workflow/sessions.h"
#include "tests/core/workflow/desk_fixture.h"

namespace lapwing::workflow {
namespace {

using sample::why;

/// The mechanic's library is the fixture's own; the mentor's lies in another folder.
class ThereAndBack : public DeskTest {
protected:
    sample::Folder mentor_folder;
    std::unique_ptr<Desk> mentor = [this] {
        auto opened = Desk::open(mentor_folder.path(), clock);
        EXPECT_TRUE(opened) << why(opened);
        return std::move(opened->desk);
    }();
    Engine engine = sample::engine();
    Session session = sample::session(engine.id);
    Reading reading = sample::reading(session.id);
    Note note = sample::note(session.id);

    void SetUp() override {
        engine.owner = {"Mill Lane Engine Club", "the white gate"};
        ASSERT_TRUE(run(Command{"test.add", {}, {Put{engine}, Put{session}, Put{reading}, Put{note}}}));
        ASSERT_TRUE(give(*desk, *mentor));
    }
    template <class Wish>
    Result<Step> at(Desk& where, Wish wish) {
        clock.move_by(std::chrono::seconds(1));
        return wait([&](Desk::Done done) { where.run(std::move(wish), std::move(done)); });
    }
    Dossier file_from(const Desk& from) { return *hand_over(from, {engine.id, {}, false}); }
    Result<Step> give(const Desk& from, Desk& to) { return at(to, bring_in(file_from(from))); }
    static Note note_of(const Desk& desk, NoteId id) {
        return std::get<Note>(*desk.record(RecordKind::note, id.uuid));
    }
    Note with_text(std::string text) {
        auto changed = note;
        changed.text = std::move(text);
        return changed;
    }
};

TEST_F(ThereAndBack, WhatTheMentorAddedComesBackAndOnlyThat) {
    Note request = sample::note(session.id);
    request.kind = NoteKind::test_request;
    request.test = TestKind::leak_down;
    request.tie = {.to = TiedTo::reading, .record = reading.id.uuid, .cylinder = {}, .finding = {}};
    ASSERT_TRUE(at(*mentor, save_note(request)));
    const auto what = preview(*desk, file_from(*mentor));
    EXPECT_EQ(what.added, (std::map<RecordKind, int>{{RecordKind::note, 1}}));
    ASSERT_EQ(what.new_records.size(), 1U);
    EXPECT_EQ(id_of(what.new_records[0]), request.id.uuid);
    EXPECT_TRUE(what.differences.empty());
    EXPECT_TRUE(what.brings_something());
    const auto done = give(*mentor, *desk);
    ASSERT_TRUE(done) << why(done);
    EXPECT_EQ(note_of(*desk, request.id).test, TestKind::leak_down);
    EXPECT_EQ(desk->engine(engine.id)->owner, engine.owner);  // left out of the file, kept here
    EXPECT_EQ(give(*mentor, *desk)->number, 0);               // twice changes nothing
    EXPECT_FALSE(preview(*desk, file_from(*mentor)).brings_something());
}

TEST_F(ThereAndBack, AChangeOnOneSideTakesItsPlaceAndAnOldFileTakesNothingBack) {
    const auto old = file_from(*mentor);
    ASSERT_TRUE(run(save_note(with_text("Knocks when warm"))));
    EXPECT_FALSE(preview(*desk, old).brings_something());
    EXPECT_EQ(at(*desk, bring_in(old))->number, 0);
    EXPECT_EQ(note_of(*desk, note.id).text, "Knocks when warm");

    const auto what = preview(*mentor, file_from(*desk));
    EXPECT_EQ(what.newer.at(RecordKind::note), 1);
    ASSERT_EQ(what.differences.size(), 1U);
    ASSERT_TRUE(give(*desk, *mentor));
    EXPECT_EQ(note_of(*mentor, note.id).text, "Knocks when warm");
}

TEST_F(ThereAndBack, AChangeOnBothSidesKeepsBothUntilOneIsChosen) {
    ASSERT_TRUE(run(save_note(with_text("mechanic"))));
    ASSERT_TRUE(at(*mentor, save_note(with_text("mentor"))));
    const auto what = preview(*desk, file_from(*mentor));
    EXPECT_EQ(what.conflicts.at(RecordKind::note), 1);
    const auto before = desk->dossier(engine.id);
    const auto brought = give(*mentor, *desk);
    ASSERT_TRUE(brought) << why(brought);
    const auto waiting = conflicts(*desk->dossier(engine.id));
    ASSERT_EQ(waiting.size(), 1U);
    ASSERT_EQ(versions(waiting[0]).size(), 2U);
    EXPECT_EQ(std::get<Note>(versions(waiting[0])[1]).text, "mechanic");

    ASSERT_TRUE(undo(brought->number));  // one step, with its way back
    EXPECT_EQ(desk->dossier(engine.id), before);
    ASSERT_TRUE(redo(brought->number));
    ASSERT_TRUE(give(*desk, *mentor));  // the mentor sees the same two
    EXPECT_EQ(mentor->dossier(engine.id)->visits, desk->dossier(engine.id)->visits);

    ASSERT_TRUE(run(settle(RecordKind::note, note.id.uuid, 1)));
    EXPECT_TRUE(conflicts(*desk->dossier(engine.id)).empty());
    EXPECT_EQ(note_of(*desk, note.id).text, "mechanic");
    ASSERT_TRUE(give(*desk, *mentor));
    EXPECT_EQ(note_of(*mentor, note.id).text, "mechanic");
    EXPECT_EQ(run(settle(RecordKind::note, note.id.uuid, 0)).error().code, "record.no_choice");
}

TEST_F(ThereAndBack, WhatWasTakenOutHereStaysOutUnlessWanted) {
    ASSERT_TRUE(run(remove_note(note.id)));
    auto what = preview(*desk, file_from(*mentor));
    EXPECT_EQ(what.removed_here.at(RecordKind::note), 1);
    EXPECT_FALSE(what.brings_something());
    EXPECT_EQ(give(*mentor, *desk)->number, 0);
    EXPECT_FALSE(desk->record(RecordKind::note, note.id.uuid));
    const auto back = at(*desk, bring_in(file_from(*mentor), RemovedHere::come_back));
    ASSERT_TRUE(back) << why(back);
    EXPECT_TRUE(desk->record(RecordKind::note, note.id.uuid));
    EXPECT_EQ(preview(*desk, file_from(*mentor)).removed_here.size(), 0U);
    // A file never takes anything away on the other side either.
    ASSERT_TRUE(run(remove_note(note.id)));
    ASSERT_TRUE(give(*desk, *mentor));
    EXPECT_TRUE(mentor->record(RecordKind::note, note.id.uuid));
}

TEST_F(ThereAndBack, AnAnswerToASessionThatWasTakenOutStaysOutWithIt) {
    ASSERT_TRUE(run(remove_session(session.id)));
    ASSERT_TRUE(at(*mentor, save_note(sample::note(session.id))));
    const auto what = preview(*desk, file_from(*mentor));
    EXPECT_EQ(Preview::total(what.removed_here), 4);  // session, reading and two notes
    EXPECT_EQ(give(*mentor, *desk)->number, 0);
    ASSERT_TRUE(at(*desk, bring_in(file_from(*mentor), RemovedHere::come_back)));
    EXPECT_EQ(desk->visit(session.id)->notes.size(), 2U);
}

TEST_F(ThereAndBack, OfAnEngineThatIsGoneEverythingComesBack) {
    ASSERT_TRUE(run(remove_engine(engine.id)));
    const auto what = preview(*desk, file_from(*mentor));
    EXPECT_TRUE(what.new_engine);
    EXPECT_TRUE(what.removed_here.empty());
    ASSERT_TRUE(give(*mentor, *desk));
    EXPECT_EQ(desk->visit(session.id)->readings.size(), 1U);
}

TEST_F(ThereAndBack, UndoingABringInIsNotTakingOut) {
    Note added = sample::note(session.id);
    ASSERT_TRUE(at(*mentor, save_note(added)));
    const auto done = give(*mentor, *desk);
    ASSERT_TRUE(undo(done->number));
    EXPECT_EQ(preview(*desk, file_from(*mentor)).added.at(RecordKind::note), 1);
}

TEST_F(ThereAndBack, AFileThatMovesASessionIsRefusedWhole) {
    auto dossier = file_from(*mentor);
    dossier.engine.id = EngineId::make(clock);
    for (auto& visit : dossier.visits)
        visit.session.engine = dossier.engine.id;
    const auto before = desk->dossier(engine.id);
    EXPECT_EQ(preview(*desk, dossier).refusal->code, "merge.moved");
    EXPECT_EQ(at(*desk, bring_in(dossier)).error().code, "merge.moved");
    EXPECT_EQ(desk->dossier(engine.id), before);
    EXPECT_EQ(desk->engines().size(), 1U);
}

TEST_F(ThereAndBack, TheOrderOfFilesDoesNotMatter) {
    const auto first = file_from(*mentor);
    ASSERT_TRUE(at(*mentor, save_note(with_text("mentor"))));
    ASSERT_TRUE(at(*mentor, keep_reading(sample::reading(session.id, TestKind::dry, 2))));
    const auto second = file_from(*mentor);
    ASSERT_TRUE(run(save_note(with_text("mechanic"))));
    const auto third = file_from(*desk);
    std::vector<const Dossier*> files{&first, &second, &third};
    std::ranges::sort(files);
    std::optional<Dossier> expected;
    do {
        const sample::Folder folder_here;
        auto here = std::move(Desk::open(folder_here.path(), clock)->desk);
        for (const auto* file : files)
            ASSERT_TRUE(at(*here, bring_in(*file)));
        const auto found = here->dossier(engine.id).value();
        if (!expected) expected = found;
        EXPECT_EQ(found, *expected);
    } while (std::ranges::next_permutation(files).found);
    EXPECT_EQ(conflicts(*expected).size(), 1U);
}

TEST_F(ThereAndBack, TheSignatureSaysWhoseItIs) {
    using Who = SignedBy::Who;
    EXPECT_EQ(signed_by(*desk, {}).who, Who::nobody);
    const auto theirs = signing_key(*mentor).value();
    const exchange::Signature good{exchange::SignatureState::unaltered, theirs.public_key()};
    EXPECT_EQ(signed_by(*desk, good).who, Who::unknown);
    EXPECT_FALSE(std::filesystem::exists(desk->folder() / "signing.key"));  // looking makes no key
    EXPECT_EQ(signed_by(*mentor, good).who, Who::this_library);
    desk->name_key(theirs.public_key(), "The mentor");
    desk->flush();
    EXPECT_EQ(signed_by(*desk, good),
              (SignedBy{Who::known, "The mentor", exchange::fingerprint(theirs.public_key())}));
    EXPECT_EQ(signed_by(*desk, {exchange::SignatureState::altered, theirs.public_key()}).who, Who::altered);
    EXPECT_EQ(signed_by(*desk, {exchange::SignatureState::unreadable, {}}).who, Who::unreadable);
}

TEST_F(ThereAndBack, KeysHaveNamesThatSurviveClosing) {
    const std::string key(64, 'a');
    EXPECT_EQ(desk->name_of_key(key), "");
    desk->name_key(key, "The mentor");
    desk->flush();
    EXPECT_EQ(desk->name_of_key(key), "The mentor");
    reopen();
    ASSERT_EQ(desk->named_keys().size(), 1U);
    EXPECT_EQ(desk->named_keys()[0].name, "The mentor");
    // Another name, and taken back after it was forgotten: still known since the same day.
    const auto since = desk->named_keys()[0].since;
    ASSERT_TRUE(since);
    clock.move_by(std::chrono::hours(24));
    desk->name_key(key, "Robin");
    desk->flush();
    EXPECT_EQ(desk->named_keys()[0].name, "Robin");
    EXPECT_EQ(desk->named_keys()[0].since, since);
    desk->name_key(key, "");
    desk->flush();
    EXPECT_TRUE(desk->named_keys().empty());
    desk->name_key(key, "Robin", {}, since);
    desk->flush();
    EXPECT_EQ(desk->named_keys()[0].since, since);
}

}  // namespace
}  // namespace lapwing::workflow
