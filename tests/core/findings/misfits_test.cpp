// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Readings that can't all be right, and the wrong TDC. Expected verdicts: the trade's common practice, no
// source.

#include "core/findings/misfits.h"

#include "tests/core/findings/bench.h"

namespace lapwing::findings {
namespace {

/// No verdict on the cylinder, the contradiction is named, and the test comes first among what is to be done.
void expect_again(Bench& bench, std::string_view misfit, Action action) {
    const Findings found = bench.find();
    const CylinderFindings& cylinder = *found.cylinder(1);
    EXPECT_TRUE(says(cylinder.contradictions, misfit)) << misfit;
    EXPECT_EQ(cylinder.headline.code, "cylinder.does_not_fit") << misfit;
    EXPECT_NE(cylinder.state, State::fault) << misfit;
    EXPECT_EQ(found.headline.code, "engine.questions_first") << misfit;
    EXPECT_EQ(found.next.front().action, action) << misfit;
    EXPECT_EQ(found.next.front().reason.code, "next.again") << misfit;
}

Bench leaking(const std::string& held) {
    Bench bench(1);
    bench.leak(1, "80", held);
    return bench;
}

TEST(Misfits, NothingHeldIsNoLeak) {
    Bench bench = leaking("0");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    expect_again(bench, "misfit.held_nothing", Action::leak_down);
    EXPECT_FALSE(says(bench.find().cylinder(1)->questions, "question.tdc_held"));
}

TEST(Misfits, LoudAtSeveralExitsIsNotTight) {
    Bench bench = leaking("78");
    for (const Exit exit : {Exit::intake, Exit::exhaust, Exit::breather})
        bench.hear(1, exit, Loudness::strong);
    expect_again(bench, "misfit.loud_but_tight", Action::leak_down);
}

TEST(Misfits, ALargeLeakIsHeardSomewhere) {
    Bench bench = leaking("30");
    for (const Exit exit : {Exit::intake, Exit::exhaust, Exit::breather})
        bench.hear(1, exit, Loudness::nothing);
    expect_again(bench, "misfit.silent_but_leaks", Action::leak_down);
    // Where one of them was not listened at, it may be there.
    Bench unheard = leaking("30");
    for (const Exit exit : {Exit::intake, Exit::exhaust})
        unheard.hear(1, exit, Loudness::nothing);
    EXPECT_FALSE(says(unheard.find().cylinder(1)->contradictions, "misfit.silent_but_leaks"));
}

TEST(Misfits, WhatHoldsAirBuildsUpSomething) {
    for (const char* dry : {"0.0", "0.1"}) {
        Bench bench = leaking("50");
        bench.engine().limits.low = Bench::pressure("100", "psi");
        bench.dry(1, dry, "bar");
        expect_again(bench, "misfit.built_nothing", Action::dry);
        EXPECT_FALSE(bench.find().cylinder(1)->points_at) << dry;
    }
    // What holds next to nothing builds up nothing either.
    Bench hole = leaking("5");
    hole.dry(1, "0.0", "bar");
    EXPECT_FALSE(says(hole.find().cylinder(1)->contradictions, "misfit.built_nothing"));
}

// What cranking showed by itself is not in doubt because the air was read badly; why it is low is.
TEST(Misfits, ALowDryReadingStandsBesideALeakDownThatTellsNothing) {
    Bench bench(2);
    bench.engine().limits.lowest = Bench::pressure("100", "psi");
    bench.dry(1, "60", "psi");
    bench.dry(2, "130", "psi");
    bench.leak(1, "80", "0");
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.low_but_unfit");
    EXPECT_EQ(found.cylinder(1)->state, State::fault);
    EXPECT_EQ(found.headline.code, "engine.questions_first");
    EXPECT_EQ(found.next.front().reason.code, "next.again");
}

// Oil can't have done that: either of the two may be the slip, so the low one is no fault yet.
TEST(Misfits, ALowDryReadingThatItsWetOneContradictsIsNoFaultYet) {
    for (const char* wet : {"30", "150"}) {
        Bench bench(2);
        bench.engine().limits.lowest = Bench::pressure("100", "psi");
        bench.dry(1, "60", "psi");
        bench.dry(2, "130", "psi");
        bench.wet(1, wet, "psi");
        const Findings found = bench.find();
        EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.does_not_fit") << wet;
        EXPECT_EQ(found.cylinder(1)->state, State::borderline) << wet;
    }
}

// Once may be a slip; twice, and the air stays in: its valves don't move.
TEST(Misfits, ACylinderThatSealsAndBuildsUpNothingAgainHasItsOwnSentence) {
    Bench bench = leaking("79");
    bench.engine().limits.lowest = Bench::pressure("100", "psi");
    bench.engine().decompressor = Decompressor::none;
    bench.dry(1, "0.0", "bar");
    expect_again(bench, "misfit.built_nothing", Action::dry);
    bench.dry(1, "0.0", "bar");
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.seals_but_builds_nothing");
    EXPECT_EQ(found.cylinder(1)->state, State::fault);
    EXPECT_FALSE(says(found.cylinder(1)->contradictions, "contra.low_but_seals"));
    EXPECT_FALSE(next_is(found, Action::dry, 1));
}

TEST(Misfits, RepeatsThatAreWildlyApartAreNotAveraged) {
    Bench bench(2);
    bench.engine().limits.lowest = Bench::pressure("8", "bar");
    bench.dry(1, "11.0", "bar");
    bench.dry(2, "11.0", "bar");
    bench.dry(1, "5.0", "bar");
    expect_again(bench, "misfit.dry_apart", Action::dry);
    // What is to be done again blames no other cylinder, and is not blamed beside one.
    for (const RuleVerdict& rule : bench.find().spread)
        EXPECT_TRUE(rule.failing.empty()) << rule.rule;
    // Two that agree count, and the odd one is named.
    bench.dry(1, "10.8", "bar");
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.cylinder(1)->questions, "question.odd_one"));
    EXPECT_FALSE(says(found.cylinder(1)->contradictions, "misfit.dry_apart"));
    EXPECT_NEAR(found.cylinder(1)->dry->final.figure.si, 10.9e5, 1.0);
    EXPECT_EQ(found.cylinder(1)->state, State::good);

    Bench air = leaking("40");
    air.leak(1, "80", "76");
    expect_again(air, "misfit.held_apart", Action::leak_down);
    air.leak(1, "80", "75");
    EXPECT_NEAR(air.find().cylinder(1)->leak_down->leakage.figure.si, 0.056, 0.001);
    // Usual scatter is no slip.
    Bench usual = leaking("70");
    usual.leak(1, "80", "74");
    EXPECT_TRUE(usual.find().cylinder(1)->contradictions.empty());
}

TEST(Misfits, OilLowersNoReading) {
    Bench bench(1);
    bench.dry(1, "90");
    bench.wet(1, "40");
    expect_again(bench, "misfit.wet_below_dry", Action::wet);
    const Findings found = bench.find();
    for (const Remark& rule : found.cylinder(1)->rules_of_thumb)
        EXPECT_FALSE(rule.message.code.starts_with("thumb.wet")) << rule.message.code;
}

TEST(Misfits, OilDoublesNoReadingThatWasOne) {
    Bench bench(1);
    bench.dry(1, "60");
    bench.wet(1, "150");
    expect_again(bench, "misfit.wet_far_above", Action::wet);
    Bench none(1);
    none.dry(1, "0.0", "bar");
    none.wet(1, "7.1", "bar");
    expect_again(none, "misfit.wet_far_above", Action::wet);
}

TEST(Misfits, WhatAirSaidStandsWhateverOilDid) {
    Bench bench = leaking("40");
    bench.hear(1, Exit::breather, Loudness::strong);
    bench.dry(1, "90");
    bench.wet(1, "40");
    const Findings found = bench.find();
    EXPECT_TRUE(says(found.cylinder(1)->contradictions, "misfit.wet_below_dry"));
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.leaks_at");
    EXPECT_TRUE(next_is(found, Action::wet, 1));
}

TEST(Misfits, NothingAtAllBuildsUpLikeNoRule) {
    Bench bench(2);
    bench.dry(1, "0.0", "bar").first = Bench::pressure("0.0", "bar");
    bench.dry(2, "10.0", "bar");
    bench.wet(1, "0.2", "bar");
    const CylinderFindings cylinder = *bench.find().cylinder(1);
    EXPECT_TRUE(cylinder.rules_of_thumb.empty());
    EXPECT_FALSE(cylinder.points_at);
    EXPECT_EQ(cylinder.state, State::fault);  // low it is all the same
}

/// Held 12 of 80 psi, once, with these exits.
bool asks_at(const std::vector<std::pair<Exit, Loudness>>& exits) {
    Bench bench = leaking("12");
    for (const auto& [exit, loudness] : exits)
        bench.hear(1, exit, loudness);
    return asks_tdc(*bench.find().cylinder(1));
}

TEST(WrongTdc, IsAskedBeforeAnyVerdictOnAVeryLowHeldPressure) {
    using enum Loudness;
    EXPECT_TRUE(asks_at({}));
    EXPECT_TRUE(asks_at({{Exit::exhaust, strong}}));
    EXPECT_TRUE(asks_at({{Exit::intake, strong}}));
    EXPECT_TRUE(asks_at({{Exit::intake, clear}, {Exit::exhaust, strong}}));
    // With one valve known to be shut and the air heard elsewhere it is not on overlap.
    EXPECT_FALSE(asks_at({{Exit::intake, nothing}, {Exit::exhaust, strong}}));
    EXPECT_FALSE(asks_at({{Exit::intake, nothing}, {Exit::exhaust, nothing}, {Exit::breather, strong}}));

    Bench bench = leaking("12");
    bench.hear(1, Exit::exhaust, strong);
    const Findings found = bench.find();
    EXPECT_EQ(found.cylinder(1)->headline.code, "cylinder.ask_tdc");
    EXPECT_EQ(found.cylinder(1)->state, State::none);
    EXPECT_EQ(found.next.front().action, Action::turn_once);
    // Turned, and as little again: it is the cylinder.
    bench.leak(1, "80", "12");
    EXPECT_FALSE(asks_tdc(*bench.find().cylinder(1)));
    EXPECT_EQ(bench.find().cylinder(1)->state, State::fault);
}

TEST(Misfits, WhatIsToBeDoneAgainIsHeldAgainstNoOtherCylinder) {
    const auto compared = [](const char* first) {
        Bench bench(2);
        bench.leak(1, "80", first);
        bench.leak(2, "80", "76");
        return !bench.find().leak_spread.empty();
    };
    EXPECT_TRUE(compared("60"));
    EXPECT_FALSE(compared("0"));   // held nothing
    EXPECT_FALSE(compared("12"));  // perhaps the wrong TDC
}

// Bent valves leak at both: the crank was turned on, and it held as little.
TEST(WrongTdc, IsNotAskedForEverWhereBothValvesLeak) {
    Bench bench = leaking("12");
    bench.hear(1, Exit::intake, Loudness::strong);
    bench.hear(1, Exit::exhaust, Loudness::strong);
    EXPECT_TRUE(asks_tdc(*bench.find().cylinder(1)));
    bench.leak(1, "80", "11");
    EXPECT_FALSE(asks_tdc(*bench.find().cylinder(1)));
    EXPECT_EQ(bench.find().cylinder(1)->state, State::fault);
}

TEST(WrongTdc, IsAskedWhereTheDryTestSaysThatItSeals) {
    Bench bench = leaking("12");
    bench.hear(1, Exit::intake, Loudness::nothing);
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.engine().limits.low = Bench::pressure("100", "psi");
    bench.dry(1, "20");
    EXPECT_FALSE(asks_tdc(*bench.find().cylinder(1)));
    Bench sound = leaking("12");
    sound.hear(1, Exit::intake, Loudness::nothing);
    sound.hear(1, Exit::exhaust, Loudness::strong);
    sound.engine().limits.low = Bench::pressure("100", "psi");
    sound.dry(1, "140");
    EXPECT_TRUE(asks_tdc(*sound.find().cylinder(1)));
}

TEST(WrongTdc, NeedsValves) {
    Bench bench = leaking("12");
    bench.engine().cycle = StrokeCycle::two;
    EXPECT_FALSE(asks_tdc(*bench.find().cylinder(1)));
}

}  // namespace
}  // namespace lapwing::findings
