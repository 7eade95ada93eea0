// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/where_it_leaks.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/odds/verdict.h"
#include "tests/core/odds/bench.h"

namespace lapwing::odds {
namespace {

using findings::Action;
using findings::Path;

double main_of(const CylinderOdds& odds, Path path) {
    const PathOdds* found = odds.path(path);
    return found ? found->main : 0.0;
}

bool says(const std::vector<findings::Message>& messages, std::string_view code) {
    return std::ranges::any_of(messages, [&](const auto& message) { return message.code == code; });
}

double largest_path(const CylinderOdds& odds) {
    double out = 0.0;
    for (const PathOdds& path : odds.paths)
        out = std::max(out, path.main);
    return out;
}

TEST(WhereItLeaks, OutcomesAndSharesAddUpToOne) {
    Odds bench(2);
    bench.dry_all({"9.5", "6.5"}, "bar");
    bench.leak(2, "5.50", "3.20", "bar");
    for (const CylinderOdds& odds : bench.odds().cylinders) {
        double main = odds.seals_well;
        double share = 0.0;
        for (const PathOdds& path : odds.paths) {
            main += path.main;
            share += path.share.mean;
            EXPECT_LE(path.share.lo, path.share.hi);
            EXPECT_GE(path.fault, 0.0);
            EXPECT_LE(path.fault, 1.0);
        }
        EXPECT_NEAR(main, 1.0, 1e-9);
        EXPECT_NEAR(share, 1.0, 1e-5);
    }
}

TEST(WhereItLeaks, IsTheSameForTheSameSeed) {
    Odds bench(1);
    bench.dry(1, "6.0", "bar");
    const auto a = bench.odds(7);
    OddsOptions afresh;
    afresh.seed = 7;  // without the remembered surface
    const auto b = *where_it_leaks(bench.dossier, bench.visit(), Odds::reference(), afresh);
    for (std::size_t i = 0; i < a.cylinders[0].paths.size(); ++i) {
        EXPECT_EQ(a.cylinders[0].paths[i].share.mean, b.cylinders[0].paths[i].share.mean);
        EXPECT_EQ(a.cylinders[0].paths[i].main, b.cylinders[0].paths[i].main);
    }
    EXPECT_EQ(a.next_tests.front().gain_bits, b.next_tests.front().gain_bits);
    // Another seed agrees within what chance leaves.
    EXPECT_NEAR(bench.odds(8).cylinders[0].seals_well, a.cylinders[0].seals_well, 0.08);
}

TEST(WhereItLeaks, OneReadingTellsLittle) {
    Odds bench(1);
    bench.dry(1, "6.0", "bar");
    const auto odds = bench.first();
    EXPECT_TRUE(odds.measured);
    EXPECT_LT(odds.main_chance, 0.85);
    EXPECT_LT(odds.path(Path::rings)->share.lo, 0.2);
    EXPECT_GT(odds.path(Path::rings)->share.hi, 0.8);
    EXPECT_TRUE(says(odds.reasons, "odds.no_air"));
    EXPECT_FALSE(says(odds.reasons, "odds.not_listened"));
    bench.leak(1, "5.50", "3.20", "bar");
    EXPECT_FALSE(says(bench.first().reasons, "odds.no_air"));
    EXPECT_FALSE(says(Odds(1).first().reasons, "odds.no_air"));
}

TEST(WhereItLeaks, NoReadingIsThePrior) {
    Odds bench(1);
    const auto odds = bench.first();
    EXPECT_FALSE(odds.measured);
    EXPECT_TRUE(says(odds.reasons, "odds.nothing_measured"));
    const auto assumptions = *built_in_assumptions();
    EXPECT_NEAR(odds.path(Path::rings)->fault, assumptions.at("rings-fault"), 0.05);
    EXPECT_NEAR(odds.path(Path::exhaust)->fault, assumptions.at("exhaust-fault"), 0.05);
}

TEST(WhereItLeaks, AClearanceFarBelowItsSiblingsStandsBeforeAnyVerdict) {
    Odds bench(3);
    bench.dry_all({"10.0", "10.1", "6.0"}, "bar");
    bench.leak(3, "5.50", "3.20", "bar");
    EXPECT_FALSE(says(bench.odds().cylinders[2].reasons, "odds.clearance_siblings"));
    for (int number : {1, 2, 3})
        bench.clearance(number, ValveSide::exhaust, number == 3 ? "0.05" : "0.50");
    const auto odds = bench.odds();
    EXPECT_EQ(headline_of(odds.cylinders[2], bench.reference()).code, "odds.clearance_siblings");
    EXPECT_FALSE(has_verdict(odds.cylinders[2]));
    EXPECT_FALSE(says(odds.cylinders[0].reasons, "odds.clearance_siblings"));
}

TEST(WhereItLeaks, ListeningDecides) {
    Odds bench(1);
    bench.dry(1, "6.5", "bar");
    bench.leak(1, "5.50", "3.20", "bar");
    const auto unheard = bench.odds();
    EXPECT_TRUE(says(unheard.cylinders[0].reasons, "odds.not_listened"));
    EXPECT_EQ(headline_of(unheard.cylinders[0], bench.reference()).code, "odds.not_listened");
    EXPECT_EQ(unheard.next_tests.front().test, Action::listen);
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.hear(1, Exit::intake, Loudness::nothing);
    bench.hear(1, Exit::breather, Loudness::faint);
    const auto heard = bench.first();
    EXPECT_EQ(heard.main, Path::exhaust);
    EXPECT_EQ(headline_of(heard, bench.reference()).code, "odds.main_clearance");
    EXPECT_GT(heard.main_chance, 0.9);
    EXPECT_GT(heard.path(Path::exhaust)->fault, 0.95);
    EXPECT_TRUE(says(heard.reasons, "odds.clearance_first"));
    EXPECT_GT(heard.main_chance, unheard.cylinders[0].main_chance);
}

TEST(WhereItLeaks, NotListenedIsNotNothing) {
    Odds quiet(1);
    quiet.leak(1, "5.50", "3.80", "bar");
    Odds unasked(1);
    unasked.leak(1, "5.50", "3.80", "bar");
    quiet.hear(1, Exit::intake, Loudness::nothing);
    EXPECT_LT(main_of(quiet.first(), Path::intake), 0.5 * main_of(unasked.first(), Path::intake));
}

TEST(WhereItLeaks, ARepairedValveBringsTheReadingBack) {
    Odds bench(1);
    bench.dry(1, "6.5", "bar");
    bench.leak(1, "5.50", "3.20", "bar");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.hear(1, Exit::breather, Loudness::faint);
    const auto odds = bench.first();
    const auto after = [&](Path repair) {
        return *std::ranges::find(odds.expected_after, repair, &AfterRepair::repair);
    };
    EXPECT_GT(after(Path::exhaust).value_pa, 7.5e5);
    EXPECT_NEAR(after(Path::intake).value_pa, 6.5e5, 0.6e5);
    EXPECT_LT(after(Path::exhaust).lo_pa, after(Path::exhaust).value_pa);
    EXPECT_FALSE(after(Path::rings).comparable_at_once);
    EXPECT_TRUE(after(Path::exhaust).comparable_at_once);
}

TEST(WhereItLeaks, ASealedCylinderSealsWell) {
    Odds bench(1);
    bench.dry(1, "10.0", "bar");
    bench.leak(1, "5.50", "5.40", "bar");
    const auto odds = bench.first();
    EXPECT_GT(odds.seals_well, 0.95);
    EXPECT_FALSE(odds.main);
}

TEST(WhereItLeaks, NeighboursBothLowRaiseTheJoint) {
    Odds one(3);
    one.dry_all({"10.0", "6.0", "10.0"}, "bar");
    Odds both(3);
    both.dry_all({"10.0", "6.0", "6.1"}, "bar");
    const double alone = main_of(one.odds().cylinders[1], Path::next_cylinder);
    const double together = main_of(both.odds().cylinders[1], Path::next_cylinder);
    EXPECT_GT(together, 2.0 * alone);
}

TEST(WhereItLeaks, ACompanionsPlugHoleIsNoProofOfTheJoint) {
    const auto heard = [](bool companions) {
        Odds bench(2);
        bench.engine().firing_order = {1, 2};
        if (!companions)
            bench.engine().firing_intervals = {*TypedAngle::make("180", units::deg),
                                               *TypedAngle::make("540", units::deg)};
        bench.leak(1, "5.50", "3.20", "bar");
        bench.hear(1, Exit::next_plug_hole, Loudness::clear, 2);
        return bench.odds().cylinders.front();
    };
    const auto companion = heard(true);
    EXPECT_TRUE(says(companion.reasons, "odds.companion"));
    EXPECT_LT(main_of(companion, Path::next_cylinder), main_of(heard(false), Path::next_cylinder) - 0.1);
}

TEST(WhereItLeaks, TheWrongTdcIsAskedFirst) {
    Odds bench(1);
    bench.dry(1, "10.0", "bar");
    bench.leak(1, "5.50", "0.60", "bar");
    bench.hear(1, Exit::intake, Loudness::strong);
    bench.hear(1, Exit::exhaust, Loudness::strong);
    const auto odds = bench.first();
    EXPECT_TRUE(says(odds.reasons, "odds.tdc_first"));
    EXPECT_TRUE(odds.unsure);
    // What is left is the dry reading, which is a sound cylinder's.
    EXPECT_LT(main_of(odds, Path::exhaust), 0.3);
}

TEST(WhereItLeaks, NonsenseIsNamedAndNotBuiltOn) {
    Odds below(1);
    below.dry(1, "9.0", "bar");
    below.wet(1, "5.0", "bar");
    EXPECT_TRUE(says(below.first().contradictions, "odds.wet_below_dry"));

    Odds nothing(1);
    nothing.leak(1, "5.50", "0.00", "bar");
    nothing.hear(1, Exit::breather, Loudness::strong);
    EXPECT_TRUE(says(nothing.first().contradictions, "odds.held_nothing"));

    Odds loud(1);
    loud.leak(1, "5.50", "5.33", "bar");
    for (const Exit exit : {Exit::intake, Exit::exhaust, Exit::breather})
        loud.hear(1, exit, Loudness::strong);
    EXPECT_TRUE(says(loud.first().contradictions, "odds.loud_but_tight"));

    Odds silent(1);
    silent.leak(1, "5.50", "1.60", "bar");
    for (const Exit exit : {Exit::intake, Exit::exhaust, Exit::breather})
        silent.hear(1, exit, Loudness::nothing);
    EXPECT_TRUE(says(silent.first().contradictions, "odds.silent_but_leaks"));

    for (Odds* bench : {&below, &nothing, &loud, &silent}) {
        EXPECT_TRUE(bench->first().unsure);
        EXPECT_LT(largest_path(bench->first()), 0.7);
    }
}

/// What contradicts what is a matter of assumptions.json, not of code: with other numbers there nothing does.
TEST(WhereItLeaks, ContradictionsGoByTheWorkingAssumptions) {
    const findings::Reference built_in = *findings::built_in_reference();
    findings::Reference lenient = built_in;
    const auto set = [&](std::string_view id, double value) {
        std::ranges::find(lenient.assumptions, id, &findings::Assumption::id)->value = value;
    };
    const auto under = [&](const Odds& bench, const findings::Reference& reference) {
        OddsOptions options;
        options.surfaces = &Odds::surfaces();
        const auto odds = where_it_leaks(bench.dossier, bench.dossier.visits.front(), reference, options);
        return odds.value().cylinders.front().contradictions;
    };
    Odds wet(1);
    wet.dry(1, "4.0", "bar");
    wet.wet(1, "9.8", "bar");
    EXPECT_TRUE(says(under(wet, built_in), "odds.wet_far_above"));
    set("wet-far-above", 3.0);
    EXPECT_FALSE(says(under(wet, lenient), "odds.wet_far_above"));

    Odds loud(1);
    loud.leak(1, "5.50", "5.33", "bar");
    for (const Exit exit : {Exit::intake, Exit::exhaust})
        loud.hear(1, exit, Loudness::strong);
    EXPECT_TRUE(says(under(loud, built_in), "odds.loud_but_tight"));
    set("loud-exits", 3.0);
    EXPECT_FALSE(says(under(loud, lenient), "odds.loud_but_tight"));
    set("loud-exits", 2.0);
    set("loud-but-tight", 2.0);
    EXPECT_FALSE(says(under(loud, lenient), "odds.loud_but_tight"));

    Odds silent(1);
    silent.leak(1, "5.50", "1.60", "bar");
    for (const Exit exit : {Exit::intake, Exit::exhaust, Exit::breather})
        silent.hear(1, exit, Loudness::nothing);
    EXPECT_TRUE(says(under(silent, built_in), "odds.silent_but_leaks"));
    set("silent-but-leaks", 80.0);
    EXPECT_FALSE(says(under(silent, lenient), "odds.silent_but_leaks"));
}

TEST(WhereItLeaks, ATwoStrokeHasItsOwnPaths) {
    Odds bench(1, StrokeCycle::two);
    bench.engine().valves.intake_valves = bench.engine().valves.exhaust_valves = 0;
    bench.engine().decompressor = Decompressor::manual;
    bench.visit().session.prepare.push_back({PrepareStep::decompressor_off, StepState::done, {}});
    bench.dry(1, "5.0", "bar");
    bench.leak(1, "5.50", "3.20", "bar");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    const auto odds = bench.first();
    EXPECT_EQ(odds.path(Path::exhaust), nullptr);
    EXPECT_NE(odds.path(Path::decompressor), nullptr);
    EXPECT_EQ(odds.main, Path::rings);  // ring air leaves by the exhaust port
    EXPECT_GT(odds.main_chance, 0.8);
}

TEST(WhereItLeaks, AWorkingDecompressorMakesCrankingReadingsWorthless) {
    Odds bench(1);
    bench.engine().decompressor = Decompressor::automatic;
    bench.dry(1, "4.5", "bar");
    const auto odds = bench.odds();
    EXPECT_TRUE(says(odds.reasons, "odds.decompressor"));
    EXPECT_TRUE(odds.cylinders[0].expected_after.empty());
    Odds unread(1);
    unread.engine().decompressor = Decompressor::automatic;
    EXPECT_NEAR(odds.cylinders[0].seals_well, unread.first().seals_well, 0.06);
    EXPECT_NE(odds.next_tests.front().test, Action::wet);
}

TEST(WhereItLeaks, ADieselsReadingsCompareOnly) {
    const auto diesel = [](const std::string& low) {
        Odds bench(4);
        bench.engine().fuel = Fuel::diesel;
        bench.engine().compression_ratio = {*TypedRatio::make("18.0", units::one), Origin::manual, {}};
        bench.dry_all({"26.0", low, "26.5", "26.0"}, "bar");
        return bench.odds();
    };
    const auto even = diesel("26.0");
    const auto uneven = diesel("17.0");
    EXPECT_TRUE(says(uneven.reasons, "odds.compare_only_ratio"));
    EXPECT_TRUE(uneven.cylinders[1].expected_after.empty());
    EXPECT_LT(uneven.cylinders[1].seals_well, 0.5 * even.cylinders[1].seals_well);
    for (const NextTest& test : uneven.next_tests)
        EXPECT_NE(test.test, Action::wet);
}

TEST(WhereItLeaks, AValveWithoutClearanceIsSuspected) {
    Odds bench(1);
    bench.wanted_clearances();
    bench.leak(1, "5.50", "3.20", "bar");
    const double before = main_of(bench.first(), Path::exhaust);
    bench.clearance(1, ValveSide::exhaust, "0.00");
    EXPECT_GT(main_of(bench.first(), Path::exhaust), before + 0.1);
}

TEST(WhereItLeaks, AStateIsNotItsPredecessor) {
    Odds bench(1);
    bench.leak(1, "5.50", "2.50", "bar");
    bench.leak(1, "5.50", "5.35", "bar").tag = Tag::after_staking;
    const auto now = bench.first();
    EXPECT_GT(now.seals_well, 0.9);
    OddsOptions as_found;
    as_found.tag = Tag::as_found;
    const auto then = *where_it_leaks(bench.dossier, bench.visit(), Odds::reference(), as_found);
    EXPECT_LT(then.cylinders[0].seals_well, 0.05);
}

TEST(WhereItLeaks, OilOnTheRingsIsReckonedWith) {
    // Little is lost either way; behind oil there may be a ring leak that does not show.
    Odds dry(1);
    dry.leak(1, "5.50", "5.20", "bar").oiled = Oiled::no;
    Odds oiled(1);
    oiled.leak(1, "5.50", "5.20", "bar").oiled = Oiled::fresh;
    EXPECT_GT(oiled.first().path(Path::rings)->fault, dry.first().path(Path::rings)->fault + 0.02);
}

TEST(WhereItLeaks, BubblesProveAFaultHoweverSmall) {
    Odds bench(1);
    bench.leak(1, "5.50", "4.00", "bar");
    bench.hear(1, Exit::breather, Loudness::strong);
    bench.hear(1, Exit::coolant, Loudness::clear);
    bench.visit().exits.back().by = ListenedBy::bubbles;
    const auto odds = bench.first();
    EXPECT_GT(odds.path(Path::coolant)->fault, 0.8);
    EXPECT_LT(odds.path(Path::coolant)->share.mean, 0.15);
    EXPECT_LT(main_of(odds, Path::coolant), 0.1);
}

TEST(WhereItLeaks, AHalfEmptyCardIsEnough) {
    Odds bench(2);
    bench.engine().bore.reset();
    bench.engine().compression_ratio.reset();
    bench.engine().valves.intake_closing.reset();
    bench.dry_all({"9.5", "5.0"}, "bar");
    const auto odds = bench.odds();
    // The stroke is on the card: what is missing is named, and nothing else.
    const findings::Message missing{
        "odds.compare_only_data_two",
        {findings::Word{"input:bore"}, findings::Word{"input:compression_ratio"}}};
    EXPECT_EQ(std::ranges::count(odds.reasons, missing), 1);
    EXPECT_LT(odds.cylinders[1].seals_well, odds.cylinders[0].seals_well);
}

/// A range that reaches down to today's reading calls a repair without effect a success.
TEST(WhereItLeaks, ExpectsNothingOfARepairWhereTodaysReadingWouldDo) {
    Odds bench(1);
    bench.engine().compression_ratio.reset();
    bench.dry(1, "6.7", "bar");
    bench.leak(1, "5.50", "4.00", "bar");
    bench.hear(1, Exit::breather, Loudness::clear);
    const auto odds = bench.first();
    for (const AfterRepair& after : odds.expected_after)
        EXPECT_GT(after.lo_pa, after.now_pa);
    EXPECT_TRUE(says(odds.reasons, "odds.no_expectation"));
}

TEST(WhereItLeaks, WhatDependsOnAssumptionsIsToldWithBothAnswers) {
    Odds bench(1);
    bench.dry(1, "6.0", "bar");
    Assumptions rare = *built_in_assumptions();
    rare.others.front().change = {{"rings-fault", 0.001}, {"exhaust-fault", 0.9}};
    rare.others.resize(1);
    OddsOptions options;
    options.seed = 1;
    options.assumptions = &rare;
    const auto odds = *where_it_leaks(bench.dossier, bench.visit(), Odds::reference(), options);
    const CylinderOdds& cylinder = odds.cylinders.front();
    ASSERT_EQ(cylinder.main, Path::rings);
    ASSERT_EQ(cylinder.under_others.front().main, Path::exhaust);
    EXPECT_TRUE(cylinder.depends_on_assumptions);
    const auto said =
        std::ranges::find(cylinder.reasons, "odds.depends_on_assumptions", &findings::Message::code);
    ASSERT_NE(said, cylinder.reasons.end());
    EXPECT_EQ(std::get<findings::Word>(said->args[1]), findings::Word{"path:rings"});
    EXPECT_EQ(std::get<findings::Word>(said->args[2]), findings::Word{"path:exhaust"});
}

TEST(WhereItLeaks, AFarPriorThatFewDrawsStandBehindMakesItUnsure) {
    Odds bench(1);
    bench.dry(1, "6.5", "bar");
    bench.leak(1, "5.50", "3.20", "bar");
    bench.hear(1, Exit::breather, Loudness::strong);
    bench.hear(1, Exit::intake, Loudness::nothing);
    bench.hear(1, Exit::exhaust, Loudness::nothing);
    EXPECT_FALSE(bench.first().unsure);
    Assumptions far = *built_in_assumptions();
    far.others.front().change = {{"rings-fault", 1e-6}};
    OddsOptions options;
    options.seed = 1;
    options.assumptions = &far;
    const auto odds = *where_it_leaks(bench.dossier, bench.visit(), Odds::reference(), options);
    EXPECT_LT(odds.cylinders[0].under_others.front().effective_samples, 100.0);
    EXPECT_GT(odds.cylinders[0].under_others.back().effective_samples, 100.0);
    EXPECT_TRUE(odds.cylinders[0].unsure);
    EXPECT_TRUE(says(odds.cylinders[0].reasons, "odds.unsure_numbers"));
}

TEST(WhereItLeaks, NextTestsAreSortedByWhatTheyTell) {
    Odds bench(2);
    bench.dry_all({"10.6", "6.0"}, "bar");
    const auto next = bench.odds().next_tests;
    ASSERT_FALSE(next.empty());
    EXPECT_EQ(next.front().cylinder, 2);
    for (std::size_t i = 1; i < next.size(); ++i)
        EXPECT_GE(next[i - 1].gain_bits, next[i].gain_bits);
    for (const NextTest& test : next) {
        EXPECT_GE(test.gain_bits, 0.0);
        EXPECT_LE(test.gain_bits, 3.0);
        EXPECT_NE(test.test, Action::wet);  // leak-down before oil
    }
}

TEST(WhereItLeaks, StopsWhenAsked) {
    Odds bench(1);
    bench.dry(1, "6.0", "bar");
    std::stop_source stop;
    stop.request_stop();
    OddsOptions options;
    options.cancel = stop.get_token();
    const auto out = where_it_leaks(bench.dossier, bench.visit(), Odds::reference(), options);
    ASSERT_FALSE(out);
    EXPECT_EQ(out.error().code, "odds.cancelled");
}

TEST(ShownPercent, IsRoundedAndNeverCertain) {
    EXPECT_EQ(shown_percent(0.0), 0);
    EXPECT_EQ(shown_percent(0.001), 5);
    EXPECT_EQ(shown_percent(0.42), 40);
    EXPECT_EQ(shown_percent(0.43), 45);
    EXPECT_EQ(shown_percent(0.999), 95);
    EXPECT_EQ(shown_percent(1.0), 95);
}

}  // namespace
}  // namespace lapwing::odds
