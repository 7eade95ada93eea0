// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What an earlier visit left open is still open at the next one. Expected advice: the trade's common
// practice, no source.

#include "core/findings/asked.h"
#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

/// The bench's own visit is the later one; what `before` puts down happened a day earlier.
class Again {
public:
    explicit Again(int cylinders) : bench(cylinders) {
        bench.session().id = SessionId::make(clock_);
        bench.session().opened_at = clock_.now();
    }

    template <class Put>
    void before(Put put) {
        Visit now = std::move(bench.visit());
        bench.visit() = Visit{};
        bench.session().id = SessionId::make(clock_);
        bench.session().opened_at = Timestamp{now.session.opened_at.unix_ms - 86'400'000, 60};
        put(bench);
        bench.dossier.visits.insert(bench.dossier.visits.begin(), std::move(now));
    }

    Bench bench;

private:
    FixedClock clock_{Timestamp{1'773'480'600'000, 60}};
};

bool gives_reason(const Findings& found, std::string_view code) {
    return std::ranges::any_of(found.next, [&](const NextStep& step) { return step.reason.code == code; });
}

TEST(EarlierVisits, AFaultInAirStaysOpenUntilAirIsPutOnAgain) {
    Again again(2);
    again.bench.dry_all({"150", "152"});
    again.before([](Bench& then) { then.leak(1, "80", "48"); });
    const Findings found = again.bench.find();
    EXPECT_FALSE(gives_reason(found, "next.nothing"));
    EXPECT_TRUE(gives_reason(found, "next.earlier_leak"));
    EXPECT_TRUE(next_is(found, Action::leak_down, 1));
    EXPECT_TRUE(says(found.questions, "question.earlier_fault"));
    // Its own readings are judged as ever.
    EXPECT_EQ(found.cylinder(1)->state, State::good);
    // A leak-down of this visit settles it, whatever it says.
    again.bench.leak(1, "80", "76");
    const Findings settled = again.bench.find();
    EXPECT_FALSE(gives_reason(settled, "next.earlier_leak"));
    EXPECT_FALSE(says(settled.questions, "question.earlier_fault"));
}

TEST(EarlierVisits, OneBetweenThatPutAirOnAnswersForTheOneBefore) {
    Again again(1);
    again.bench.dry(1, "150");
    again.before([](Bench& then) { then.leak(1, "80", "76"); });
    // Older still: inserted before both.
    Visit oldest = again.bench.dossier.visits.back();
    oldest.session.id = SessionId{};
    oldest.session.opened_at = Timestamp{oldest.session.opened_at.unix_ms - 86'400'000, 60};
    oldest.readings.front().held = Bench::pressure("40", "psi");
    again.bench.dossier.visits.push_back(oldest);
    EXPECT_FALSE(gives_reason(again.bench.find(), "next.earlier_leak"));
}

TEST(EarlierVisits, ATestThatSomebodyAskedForIsStillToDo) {
    Again again(2);
    again.bench.dry_all({"150", "152"});
    again.before([](Bench& then) {
        then.dry_all({"150", "151"});
        Note note;
        note.kind = NoteKind::test_request;
        note.test = TestKind::leak_down;
        note.tie.to = TiedTo::cylinder;
        note.tie.cylinder = 2;
        then.visit().notes.push_back(note);
    });
    EXPECT_TRUE(gives_reason(again.bench.find(), "next.earlier_request_of"));
    EXPECT_TRUE(next_is(again.bench.find(), Action::leak_down, 2));
    again.bench.leak(2, "80", "76");
    EXPECT_FALSE(gives_reason(again.bench.find(), "next.earlier_request_of"));
    // Ticked as carried out: nothing to do either.
    again.bench.visit().readings.pop_back();
    again.bench.dossier.visits.back().notes.front().done = true;
    EXPECT_FALSE(gives_reason(again.bench.find(), "next.earlier_request_of"));
}

TEST(Requests, WhatAMentorAskedForAtThisVisitIsToDo) {
    Bench bench(2);
    bench.dry_all({"150", "152"});
    Note note;
    note.kind = NoteKind::test_request;
    note.test = TestKind::leak_down;
    note.session = bench.session().id;
    note.at = Timestamp{bench.visit().readings.back().taken_at.unix_ms + 1'000, 0};
    note.tie.to = TiedTo::cylinder;
    note.tie.cylinder = 2;
    bench.visit().notes.push_back(note);
    EXPECT_TRUE(next_is(bench.find(), Action::leak_down, 2));
    EXPECT_TRUE(gives_reason(bench.find(), "next.request_of"));
    EXPECT_FALSE(gives_reason(bench.find(), "next.nothing"));
    bench.leak(2, "80", "76").taken_at = Timestamp{note.at.unix_ms + 1'000, 0};
    EXPECT_FALSE(gives_reason(bench.find(), "next.request_of"));
}

TEST(Requests, ACrankcaseThatSomebodyAskedForIsEveryChambers) {
    Bench bench(2, StrokeCycle::two);
    Note note;
    note.kind = NoteKind::test_request;
    note.test = TestKind::crankcase;
    const auto hold = [&](int cylinder) {
        Reading& reading = bench.add(TestKind::crankcase, cylinder);
        reading.set = Bench::pressure("0.5", "bar");
        reading.held = Bench::pressure("0.45", "bar");
    };
    const auto done = [&] { return has_what_was_asked(note, {}, bench.engine(), bench.visit(), {}); };
    EXPECT_FALSE(done());
    hold(1);
    EXPECT_FALSE(done());
    EXPECT_TRUE(has_what_was_asked(note, 1, bench.engine(), bench.visit(), {}));
    hold(2);
    EXPECT_TRUE(done());
    bench.visit().readings.clear();
    hold(0);  // held as one
    EXPECT_TRUE(done());
}

TEST(EarlierVisits, ACheckThatSomebodyAskedForIsStillToDo) {
    const auto asked = [](AskedCheck check, std::optional<int> cylinder) {
        return [=](Bench& then) {
            then.dry_all({"150", "151"});
            Note note;
            note.kind = NoteKind::test_request;
            note.check = check;
            note.tie.to = cylinder ? TiedTo::cylinder : TiedTo::session;
            note.tie.cylinder = cylinder;
            then.visit().notes.push_back(note);
        };
    };
    const auto open = [](const Findings& found) {
        return gives_reason(found, "next.earlier_request") || gives_reason(found, "next.earlier_request_of");
    };
    Again hunt(2);
    hunt.bench.dry_all({"150", "152"});
    hunt.before(asked(AskedCheck::leak_hunt, 2));
    EXPECT_TRUE(next_is(hunt.bench.find(), Action::listen, 2));
    hunt.bench.hear(1, Exit::intake, Loudness::nothing);
    EXPECT_TRUE(open(hunt.bench.find()));  // the other cylinder
    hunt.bench.hear(2, Exit::intake, Loudness::nothing);
    EXPECT_FALSE(open(hunt.bench.find()));

    Again gaps(2);
    gaps.bench.dry_all({"150", "152"});
    gaps.before(asked(AskedCheck::clearances, {}));
    EXPECT_TRUE(next_is(gaps.bench.find(), Action::clearances, {}));
    for (const int cylinder : {1, 2}) {
        gaps.bench.clearance(cylinder, ValveSide::intake, "0.10");
        EXPECT_TRUE(open(gaps.bench.find()));  // every valve of every cylinder
        gaps.bench.clearance(cylinder, ValveSide::exhaust, "0.15");
    }
    EXPECT_FALSE(open(gaps.bench.find()));

    Again struck(2);
    struck.bench.dry_all({"150", "152"});
    struck.before(asked(AskedCheck::staking, {}));
    EXPECT_TRUE(next_is(struck.bench.find(), Action::listen, {}));
    struck.bench.leak(2, "80", "70").tag = Tag::after_staking;
    EXPECT_FALSE(open(struck.bench.find()));

    Again tester(1);
    tester.bench.dry(1, "150");
    tester.before(asked(AskedCheck::tester_check, {}));
    // Of the visit where it was asked for, and of the one after it.
    Tester& gauge = tester.bench.tester(TesterKind::compression_gauge, "300", "psi", "1.6");
    tester.bench.dossier.visits.back().session.compression_gauge = gauge.id;
    EXPECT_TRUE(next_is(tester.bench.find(), Action::tester_check, {}));
    TesterCheck check;
    check.at = tester.bench.session().opened_at;
    gauge.checks.push_back(check);
    EXPECT_FALSE(open(tester.bench.find()));
}

TEST(EarlierVisits, WhatTheNewestOneAskedForIsNotForgotten) {
    Again again(2);
    again.bench.dry_all({"150", "152"});
    again.before([](Bench& then) {
        then.wanted_clearances();
        then.dry_all({"150", "80"});
        then.leak(2, "80", "40");
        then.hear(2, Exit::exhaust, Loudness::strong);
    });
    EXPECT_TRUE(gives_reason(again.bench.find(), "next.earlier_clearances"));
    again.bench.clearance(2, ValveSide::exhaust, "0.15");
    EXPECT_FALSE(gives_reason(again.bench.find(), "next.earlier_clearances"));
    // A low cylinder that never had air on it.
    Again low(2);
    low.bench.dry_all({"150", "152"});
    low.before([](Bench& then) { then.dry_all({"150", "80"}); });
    EXPECT_TRUE(gives_reason(low.bench.find(), "next.earlier_leak_down"));
}

TEST(EarlierVisits, WhatComesLaterOrLeftNothingOpenAsksForNothing) {
    Again again(2);
    again.bench.dry_all({"150", "152"});
    again.before([](Bench& then) { then.dry_all({"150", "151"}); });
    EXPECT_EQ(again.bench.find().next.front().reason.code, "next.nothing");
    // The earlier visit is not asked about the later one.
    again.bench.leak(1, "80", "40");
    const Findings then = find(again.bench.dossier, again.bench.dossier.visits.back(), Bench::reference());
    EXPECT_EQ(then.next.front().reason.code, "next.nothing");
}

}  // namespace
}  // namespace lapwing::findings
