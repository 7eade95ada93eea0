// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

/// Each tester has errors, a restrictor and a hose of its own, and one that failed its check is not believed.
/// All readings here are made up.

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/findings/case.h"
#include "core/findings/crank_model.h"
#include "core/odds/engine_model.h"
#include "core/odds/verdict.h"
#include "tests/core/odds/bench.h"

namespace lapwing::odds {
namespace {

using findings::Path;

bool says(const std::vector<findings::Message>& messages, std::string_view code) {
    return std::ranges::find(messages, code, &findings::Message::code) != messages.end();
}

Evidence evidence_in(Odds& bench) {
    return evidence_of(bench.dossier, bench.visit(), Odds::reference(), *built_in_assumptions(), {});
}

double width(const Interval& area) {
    return std::log(area.hi / area.lo);
}

TesterCheck failed_outlet() {
    return {TesterCheckKind::outlet_blocked, {}, CheckResult::failed, {}, {}, {}, {}};
}

// ---- A leak-down tester that failed its check

/// Two cylinders, the first of them low; strong air at its exhaust.
Odds low_and_heard(const char* low) {
    Odds bench(2);
    bench.dossier.testers.back().restrictor = Odds::mm("1.016");
    bench.dry_all({low, "9.6"}, "bar");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.hear(1, Exit::intake, Loudness::nothing);
    bench.hear(1, Exit::breather, Loudness::nothing);
    return bench;
}

bool doubts_the_air(const WhereItLeaks& leaks) {
    return says(leaks.reasons, "odds.heard_failed");
}

struct SoundAndFailed {
    CylinderOdds sound, failed;
};

/// The same read on a sound leak-down tester, and on one that failed its check.
SoundAndFailed on_both(const char* low, const char* held) {
    Odds bench = low_and_heard(low);
    bench.leak(1, "5.50", held, "bar");
    const auto sound = bench.odds();
    bench.dossier.testers.back().checks = {failed_outlet()};
    const auto failed = bench.odds();
    EXPECT_FALSE(doubts_the_air(sound));
    EXPECT_TRUE(doubts_the_air(failed));
    return {sound.cylinders.front(), failed.cylinders.front()};
}

double width(const CylinderOdds& of, Path path) {
    const Interval& share = of.path(path)->share;
    return share.hi - share.lo;
}

TEST(FailedTester, ItsAirTellsWhereAndNotHowMuch) {
    const auto [sound, failed] = on_both("6.8", "3.40");
    // Where: it still counts.
    EXPECT_EQ(failed.main, Path::exhaust);
    EXPECT_TRUE(has_verdict(failed));
    // How much: less sure than with a sound tester.
    EXPECT_LT(failed.main_chance, sound.main_chance);
    EXPECT_GT(width(failed, Path::exhaust), 1.3 * width(sound, Path::exhaust));
    EXPECT_GT(width(failed.leak_area_m2), 1.2 * width(sound.leak_area_m2));
}

TEST(FailedTester, WhatTheDryTestLeavesOpenItsAirDoesNotSettle) {
    const auto [sound, failed] = on_both("8.2", "4.20");
    EXPECT_EQ(shown_percent(sound.main_chance), 95);
    EXPECT_LT(shown_percent(failed.main_chance), 95);
    EXPECT_GT(width(failed, Path::exhaust), 1.5 * width(sound, Path::exhaust));
    EXPECT_GT(failed.seals_well, sound.seals_well);
}

TEST(FailedTester, ThatNothingWasReadOnIsNoBetter) {
    Odds bench = low_and_heard("6.8");
    bench.dossier.testers.back().checks = {failed_outlet()};
    EXPECT_TRUE(doubts_the_air(bench.odds()));
    // A reading on another one: what was heard goes with that.
    const TesterId failed = bench.dossier.testers.back().id;
    const TesterId other = bench.tester(TesterKind::leak_down, "7", "bar", "1.6").id;
    bench.session().leak_down_tester = failed;
    bench.leak(1, "5.50", "3.40", "bar").tester = other;
    EXPECT_FALSE(doubts_the_air(bench.odds()));
    // Nothing heard, nothing to doubt.
    bench.visit().exits.clear();
    bench.visit().readings.pop_back();
    EXPECT_FALSE(doubts_the_air(bench.odds()));
}

// ---- Two leak-down testers

TEST(TwoLeakDownTesters, AreNotOutTogether) {
    Odds bench(1);
    const TesterId one = bench.dossier.testers.back().id;
    const TesterId two = bench.tester(TesterKind::leak_down, "7", "bar", "1.6").id;
    bench.session().leak_down_tester = one;
    bench.leak(1, "5.50", "3.40", "bar");
    bench.leak(1, "5.50", "3.40", "bar");
    const double on_one = width(bench.first().leak_area_m2);
    EXPECT_EQ(evidence_in(bench).leak_testers.size(), 1U);
    bench.visit().readings.back().tester = two;
    const Evidence evidence = evidence_in(bench);
    ASSERT_EQ(evidence.leak_testers.size(), 2U);
    ASSERT_EQ(evidence.cylinders.front().leaks.size(), 2U);
    // Whoever repeats on another tester learns more than who repeats on the same one: neither's restrictor is
    // well known here.
    EXPECT_LT(width(bench.first().leak_area_m2), 0.9 * on_one);
}

TEST(TwoLeakDownTesters, EachHasItsOwnErrors) {
    Odds bench(1);
    const TesterId one = bench.dossier.testers.back().id;
    Tester& two = bench.tester(TesterKind::leak_down, "7", "bar", "1.6");
    two.supply_gauge = two.gauge;  // set and held on gauges of their own
    bench.session().leak_down_tester = one;
    bench.leak(1, "5.50", "3.40", "bar");
    bench.leak(1, "5.50", "3.40", "bar").tester = two.id;
    const Evidence evidence = evidence_in(bench);
    const auto assumptions = *built_in_assumptions();
    const EngineModel model(evidence, assumptions, {});
    std::vector<double> z(model.size());
    const auto shown = [&](std::size_t reading) {
        EngineModel::SharedState shared;
        model.shared(z, shared);
        return model
            .held(z, shared, model.cylinders().front(), model.leaks(z, 0),
                  evidence.cylinders.front().leaks[reading])
            .shown_pa;
    };
    const double first = shown(0);
    const double second = shown(1);
    // Offset, gain, set and restrictor: whichever of the shared unknowns moves, it moves one of the two.
    int of_first = 0, of_second = 0;
    for (std::size_t place = 0; place < model.shared_end(); ++place) {
        z[place] = 1.0;
        const bool moves_first = shown(0) != first;
        const bool moves_second = shown(1) != second;
        EXPECT_FALSE(moves_first && moves_second) << place;
        of_first += moves_first ? 1 : 0;
        of_second += moves_second ? 1 : 0;
        z[place] = 0.0;
    }
    EXPECT_EQ(of_first, 3);  // its gain cancels: one gauge shows both
    EXPECT_EQ(of_second, 4);
}

// ---- Two hoses

/// Another gauge, its check valve at its own end of 8 cm3 of hose: it reads a quarter lower in a sound
/// engine.
TesterId add_long_hose(Odds& bench) {
    const auto session = bench.session().compression_gauge;
    Tester& other = bench.tester(TesterKind::compression_gauge, "16", "bar", "1.6");
    other.hose_volume = *TypedVolume::make("10", units::cm3);
    other.check_valve_at = CheckValveAt::gauge_end;
    const TesterId id = other.id;
    bench.session().compression_gauge = session;
    return id;
}

/// What the cranking model itself reads on a reading's own tester.
double modelled_pa(Odds& bench, const Reading& reading, const Evidence& evidence, double leak_m2) {
    const Tester* tester =
        find_tester(bench.dossier, reading.tester ? reading.tester : bench.session().compression_gauge);
    auto with = evidence.cranking->at({}, leak_m2, 0.0);
    with.tester = findings::cranking_case(
                      findings::model_inputs(bench.engine(), bench.session(), Odds::reference(), tester))
                      .tester;
    return physics::crank(with)->last_gauge_pa;
}

std::vector<std::shared_ptr<const CrankSurface>> fits_of(const Evidence& evidence) {
    std::vector<std::shared_ptr<const CrankSurface>> out;
    for (const SurfaceRange& range : evidence.surfaces())
        out.push_back(*Odds::surfaces().surface(range));
    return out;
}

TEST(TwoHoses, EachReadingIsModelledThroughItsOwn) {
    Odds bench(2);
    const TesterId other = add_long_hose(bench);
    bench.dry(1, "9.6", "bar");
    bench.dry(2, "7.4", "bar").tester = other;
    const Evidence evidence = evidence_in(bench);
    ASSERT_EQ(evidence.hoses.size(), 2U);
    const auto fits = fits_of(evidence);
    const auto assumptions = *built_in_assumptions();
    const EngineModel model(evidence, assumptions, {fits[0].get(), fits[1].get()});
    const std::vector<double> z(model.size());
    EngineModel::SharedState shared;
    model.shared(z, shared);
    double lowest = 1.0;
    for (const double leak_mm2 : {0.02, 0.2, 0.5, 1.0, 2.0}) {
        std::array<double, 2> read{};
        for (std::size_t c = 0; c < 2; ++c) {
            EngineModel::Leaks leaks;
            leaks.cranking_m2 = leaks.standing_m2 = 1e-6 * leak_mm2;
            read[c] =
                model.reading(z, shared, model.cylinders()[c], leaks, *evidence.cylinders[c].dry).final_pa;
            const double truth = modelled_pa(bench, bench.visit().readings[c], evidence, 1e-6 * leak_mm2);
            EXPECT_NEAR(read[c], truth, 0.003 * truth) << leak_mm2;  // as Surface.* has it
        }
        lowest = std::min(lowest, read[1] / read[0]);
    }
    EXPECT_LT(lowest, 0.85);  // the hoses do differ
}

TEST(TwoHoses, WhatReadsLowThroughALongOneNeedNotLeak) {
    Odds bench(2);
    const TesterId other = add_long_hose(bench);
    bench.dry(1, "9.6", "bar");
    const Evidence evidence = evidence_in(bench);
    Reading& through = bench.dry(2, "9.6", "bar");
    through.tester = other;
    const double sound = modelled_pa(bench, bench.visit().readings[0], evidence, 0.0);
    const double share = modelled_pa(bench, through, evidence, 0.0) / sound;
    through.final = TypedPressure::from(Pressure::from_si(9.6e5 * share), units::bar, 2);
    const auto with = bench.odds();
    EXPECT_GT(with.cylinders[1].seals_well, with.cylinders[0].seals_well - 0.15);
    // The very same reading on the first gauge does.
    through.tester.reset();
    EXPECT_LT(bench.odds().cylinders[1].seals_well, with.cylinders[1].seals_well - 0.3);
}

TEST(TwoHoses, OfRepeatsOnBothTheMeanIsModelledAsOne) {
    Odds bench(1);
    const TesterId other = add_long_hose(bench);
    bench.dry(1, "9.6", "bar").first = Odds::pressure("5.5", "bar");
    bench.dry(1, "7.4", "bar").tester = other;
    bench.dry(1, "9.6", "bar");
    const Evidence evidence = evidence_in(bench);
    const CrankEvidence& mean = *evidence.cylinders.front().dry;
    ASSERT_EQ(mean.other_hoses.size(), 1U);
    EXPECT_NEAR(mean.other_hoses.front().second, 1.0 / 3.0, 1e-12);
    EXPECT_FALSE(mean.first_pa);  // of the one hose only
    const auto fits = fits_of(evidence);
    const auto assumptions = *built_in_assumptions();
    const EngineModel model(evidence, assumptions, {fits[0].get(), fits[1].get()});
    const std::vector<double> z(model.size());
    EngineModel::SharedState shared;
    model.shared(z, shared);
    double sum = 0.0;
    for (const Reading& reading : bench.visit().readings)
        sum += modelled_pa(bench, reading, evidence, 0.2e-6) / 3.0;
    EXPECT_NEAR(EngineModel::through_hoses(shared, mean, 0.2e-6, 0.0).final_pa, sum, 0.003 * sum);
    // That they read apart is the hoses' doing, no scatter.
    Odds alike(1);
    const TesterId same = alike.tester(TesterKind::compression_gauge, "16", "bar", "1.6").id;
    for (const char* digits : {"9.6", "7.4", "9.6"})
        alike.dry(1, digits, "bar");
    alike.visit().readings[1].tester = same;
    EXPECT_LT(mean.apart_pa, 0.5 * evidence_in(alike).cylinders.front().dry->apart_pa);
}

// ---- Readings that don't fit together, as only the odds find

TEST(WhatDoesNotFit, IsReadAgainBeforeAnythingElse) {
    Odds bench(2);
    // The same share of two set pressures can't be one leak's.
    bench.leak(1, "5.50", "3.40", "bar");
    bench.leak(1, "2.00", "1.70", "bar");
    bench.leak(2, "5.50", "5.20", "bar");
    const auto leaks = bench.odds();
    ASSERT_TRUE(says(leaks.cylinders[0].contradictions, "odds.does_not_fit"));
    const auto steps = steps_by_worth(bench.find(), leaks, Odds::reference());
    EXPECT_EQ(steps.front().action, findings::Action::leak_down);
    EXPECT_EQ(steps.front().cylinder, 1);
    EXPECT_EQ(steps.front().reason, findings::say("next.again", 1, findings::word_of(TestKind::leak_down)));
}

}  // namespace
}  // namespace lapwing::odds
