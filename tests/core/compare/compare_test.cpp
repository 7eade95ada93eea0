// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/compare.h"

#include <rapidcheck.h>

#include <cmath>

#include "core/physics/leakdown.h"
#include "core/uncertainty/monte_carlo.h"
#include "tests/core/compare/years.h"

namespace lapwing::compare {
namespace {

/// Two visits with one dry reading each.
Years dry_twice(const std::string& before, const std::string& after) {
    Years years;
    years.dry(years.open(), before);
    years.dry(years.open(), after);
    return years;
}
/// Two visits with one leak-down reading each, at 80 psi.
Years leak_twice(const std::string& before, const std::string& after) {
    Years years;
    years.leak(years.open(), "80psi", before);
    years.leak(years.open(), "80psi", after);
    return years;
}

TEST(Compare, OneGaugeByHand) {
    // EN 837-1 class 1.6 on 0-16 bar: limit 0.256 bar, as a rectangular distribution 0.1478 bar. Shares of
    // its variance (assets/reference): 40 % offset, 20 % gain at full scale, the rest local. 9.1 and 10.0
    // bar, written to 0.1 bar, one reading each.
    const double whole = 0.256 * 0.256 / 3.0;
    const auto local = [&](double p) { return whole * (1.0 - 0.4 - 0.2 * (p / 16.0) * (p / 16.0)); };
    const double gain = std::sqrt(0.2 * whole) * (10.0 - 9.1) / 16.0;  // the offset is gone
    const double written = 0.05 * 0.05 / 3.0;                          // half a step to either side
    const double scatter = 0.015 * 0.015 * (10.0 * 10.0 + 9.1 * 9.1);  // 1.5 % of each
    const double day = 0.02 * 0.02 * (10.0 * 10.0 + 9.1 * 9.1);        // 2 % of each, speed noted
    const double u = std::sqrt(local(10.0) + local(9.1) + gain * gain + 2.0 * written + scatter + day);

    const Comparison found = dry_twice("9.1bar", "10.0bar").compare();
    const Change& change = *found.cylinders.front().dry;
    EXPECT_NEAR(change.difference->figure.si, 0.9 * bar, 1e-6);
    EXPECT_NEAR(change.u, u * bar, 1e-6 * bar);
    EXPECT_NEAR(*change.difference->figure.u95, 2.0 * u * bar, 1e-6 * bar);
    EXPECT_EQ(change.verdict, Verdict::better);  // 0.9 is 2.4 times 0.373
    EXPECT_FALSE(change.before->converted);
    EXPECT_TRUE(found.comparable());
    EXPECT_TRUE(found.reasons.empty());
}

TEST(Compare, TwoGaugesByHand) {
    // The same with another gauge of the same class: offset and gain of both count, nothing cancels, and how
    // far the two hoses read apart is worked out (alike here, so nothing).
    Years years = dry_twice("9.1bar", "10.0bar");
    years.dossier.visits[1].session.compression_gauge =
        years.add_tester(TesterKind::compression_gauge, "16bar").id;
    const double whole = 0.256 * 0.256 / 3.0;
    const double others = 2.0 * 0.05 * 0.05 / 3.0 + (0.015 * 0.015 + 0.02 * 0.02) * (10.0 * 10.0 + 9.1 * 9.1);
    const Comparison found = years.compare();
    EXPECT_NEAR(found.cylinders.front().dry->u, std::sqrt(2.0 * whole + others) * bar, 1e-6 * bar);
    ASSERT_NE(reason(found.reasons, "compare.gauge"), nullptr);
    EXPECT_EQ(reason(found.reasons, "compare.gauge")->treatment, Treatment::corrected);
}

TEST(Compare, AGaugeThatNobodyNamedIsNotKnownToBeTheSame) {
    Years years = dry_twice("9.1bar", "10.0bar");
    const double same = years.compare().cylinders.front().dry->u;
    for (Visit& visit : years.dossier.visits)
        visit.session.compression_gauge.reset();
    const Comparison found = years.compare();
    EXPECT_GT(found.cylinders.front().dry->u, same);
    ASSERT_NE(reason(found.reasons, "compare.tester_unknown"), nullptr);
    EXPECT_TRUE(found.comparable());
}

TEST(Compare, RepeatsCountWithTheirScatter) {
    // 6.8 and 6.4 bar: their squares, 2 x 0.2^2, are pooled with a usual scatter of 1.5 % of 6.6 bar that is
    // worth 10 (assets/reference; JCGM 100, H.3.6): (10 x 0.099^2 + 0.08) / 11, halved for the mean of two.
    Years years;
    Visit& before = years.open();
    years.dry(before, "6.8bar");
    years.dry(before, "6.4bar");
    years.dry(years.open(), "10.4bar");
    const Change change = *years.compare().cylinders.front().dry;
    EXPECT_NEAR(change.difference->figure.si, 3.8 * bar, 1e-6);
    EXPECT_EQ(change.before->repeats, 2);
    EXPECT_EQ(change.verdict, Verdict::better_beyond_doubt);
    const double whole = 0.256 * 0.256 / 3.0;
    const auto local = [&](double p) { return whole * (0.6 - 0.2 * (p / 16.0) * (p / 16.0)); };
    const double gain = std::sqrt(0.2 * whole) * 3.8 / 16.0;
    const double pooled = (10.0 * 0.099 * 0.099 + 0.08) / 11.0 / 2.0;
    const double variance = local(6.6) + local(10.4) + gain * gain + 2.0 * 0.05 * 0.05 / 3.0 + pooled +
                            std::pow(0.015 * 10.4, 2) + 0.02 * 0.02 * (6.6 * 6.6 + 10.4 * 10.4);
    // Over 2000 effective degrees of freedom (JCGM 100, G.4.1): Student's t adds less than 0.2 %.
    EXPECT_GT(variance * variance / (pooled * pooled / 11.0), 2000.0);
    EXPECT_NEAR(change.u, std::sqrt(variance) * bar, 0.002 * std::sqrt(variance) * bar);
}

TEST(Compare, VerdictsStandAtTheirThresholds) {
    // u is about 0.37 bar (above), 2 u = 0.75, 3 u = 1.1 bar.
    const auto verdict = [](const char* before, const char* after) {
        return dry_twice(before, after).compare().cylinders.front().dry->verdict;
    };
    EXPECT_EQ(verdict("9.5bar", "10.0bar"), Verdict::no_real_change);
    EXPECT_EQ(verdict("9.1bar", "10.0bar"), Verdict::better);
    EXPECT_EQ(verdict("10.0bar", "9.1bar"), Verdict::worse);
    EXPECT_EQ(verdict("6.8bar", "10.0bar"), Verdict::better_beyond_doubt);
    EXPECT_TRUE(dry_twice("10.0bar", "6.8bar").compare().cylinders.front().dry->beyond_doubt);
    EXPECT_FALSE(dry_twice("10.0bar", "9.1bar").compare().cylinders.front().dry->beyond_doubt);
}

TEST(Compare, LessLeakageIsBetter) {
    EXPECT_EQ(leak_twice("50psi", "76psi").compare().cylinders.front().leak_down->verdict,
              Verdict::better_beyond_doubt);
    const Change worse = *leak_twice("76psi", "50psi").compare().cylinders.front().leak_down;
    EXPECT_EQ(worse.verdict, Verdict::worse);
    // (80 - 50)/80 less (80 - 76)/80
    EXPECT_NEAR(worse.difference->figure.si, 0.375 - 0.05, 1e-12);
    EXPECT_EQ(leak_twice("76psi", "76psi").compare().cylinders.front().leak_down->verdict,
              Verdict::no_real_change);
}

TEST(Compare, AltitudeIsConvertedAndSaid) {
    // Magazine letter: 120 psi at sea level is about 100 psi at 5000 ft; 99.85 by absolute scaling (ISO
    // 2533).
    Years years = dry_twice("120psi", "100psi");
    years.dossier.visits[1].session.conditions.station_pressure.reset();
    years.dossier.visits[1].session.conditions.altitude = Years::of<LengthTag>("5000ft");
    const Comparison found = years.compare();
    const Change& change = *found.cylinders.front().dry;
    EXPECT_NEAR(change.before->compared.si / psi, 99.85, 0.03);
    EXPECT_NEAR(change.before->as_measured.si / psi, 120.0, 1e-4);
    EXPECT_EQ(change.verdict, Verdict::no_real_change);
    ASSERT_NE(reason(found.reasons, "compare.air_pressure"), nullptr);
    EXPECT_TRUE(found.comparable());
}

TEST(Compare, LeakDownIsConvertedToTheLaterTester) {
    // One leak: 80/60 behind 0.040 in shows as 36.34/50, and behind 0.060 in as 75.3/80 (isentropic nozzle
    // flow, computed apart from this code).
    Years years;
    years.leak(years.open(), "50psi", "36.34psi");
    years.leak(years.open(), "80psi", "60psi");
    Comparison found = years.compare();
    const Change* change = found.cylinders.front().of(TestKind::leak_down);
    EXPECT_NEAR(change->before->compared.si, 0.25, 2e-4);
    EXPECT_NEAR(change->before->as_measured.si, 1.0 - 36.34 / 50.0, 1e-12);
    EXPECT_EQ(change->verdict, Verdict::no_real_change);
    ASSERT_NE(reason(found.reasons, "compare.set_pressure"), nullptr);

    Tester& wide = years.add_tester(TesterKind::leak_down, "10bar");
    wide.restrictor = Years::of<LengthTag>("1.524mm");
    wide.supply_gauge = wide.gauge;
    Visit& third = years.open();
    third.session.leak_down_tester = wide.id;
    years.leak(third, "80psi", "75.3psi");
    found = years.compare(1, 2);
    change = found.cylinders.front().of(TestKind::leak_down);
    EXPECT_NEAR(change->before->compared.si, 1.0 - 75.3 / 80.0, 5e-4);
    EXPECT_EQ(change->verdict, Verdict::no_real_change);
    ASSERT_NE(reason(found.reasons, "compare.tester"), nullptr);
}

TEST(Compare, RawPercentOfTwoTestersWouldMislead) {
    // 40 % at 35 psi is about 33 % at 80 psi behind the same restrictor (isentropic nozzle flow, computed
    // apart from this code): no improvement.
    Years years;
    years.leak(years.open(), "35psi", "21psi");
    years.leak(years.open(), "80psi", "53.6psi");
    const Change change = *years.compare().cylinders.front().leak_down;
    EXPECT_NEAR(change.before->compared.si, 0.33, 0.005);
    EXPECT_EQ(change.verdict, Verdict::no_real_change);
}

TEST(Compare, LeakDownDoubtAgreesWithTrials) {
    // JCGM 101: every error drawn, the conversion run in full. The law is left at its two examples: half of
    // the way from hole to gap is one standard uncertainty (assets/reference).
    Years years;
    years.leak(years.open(), "50psi", "36psi");
    Tester& other = years.add_tester(TesterKind::leak_down, "7bar");
    other.restrictor = Years::of<LengthTag>("1.3mm");
    Visit& later = years.open();
    later.session.leak_down_tester = other.id;
    years.leak(later, "80psi", "64psi");
    const auto gauge = [](double span_bar) {
        return uncertainty::Gauge{.span_pa = span_bar * bar,
                                  .accuracy = uncertainty::en837_class(1.6).value(),
                                  .readable_step_pa = psi,
                                  .zero_limit_pa = 0.0,
                                  .shares = {0.4, 0.2}};
    };
    const auto trial = [&](uncertainty::Draws& draws) {
        const auto moved = [&](const uncertainty::Gauge& of, double pa, double zero, double gain) {
            const auto by = uncertainty::errors_at(of, pa);
            return pa + zero * by.offset_pa + gain * by.gain_pa + draws.normal(0.0, by.local_pa) +
                   draws.normal(0.0, by.resolution_pa);
        };
        const auto normal = [&] { return draws.standard_normal(); };
        physics::TesterPneumatics one{moved(gauge(10), 50 * psi, normal(), normal()),
                                      1.016e-3 * std::sqrt(1.0 + 0.08 * normal())};
        const double held = moved(gauge(10), 36 * psi, normal(), normal());
        const double area = physics::leakdown(one, held)->leak_area_m2 * (1.0 + 0.10 * normal());
        // Held pressure of that area on the same tester again, by halving.
        double low = 0.0;
        double high = one.set_gauge_pa;
        for (int i = 0; i < 50; ++i)
            (physics::leakdown(one, (low + high) / 2.0)->leak_area_m2 > area ? low : high) =
                (low + high) / 2.0;
        const double zero = normal();
        const double gain = normal();
        const double restrictor = 1.3e-3 * std::sqrt(1.0 + 0.08 * normal());
        // One gauge after the restrictor: set and held share it, and the regulator may sag by 3 %.
        const double set = moved(gauge(7), 80 * psi, zero, gain) + draws.rectangular(0.0, 0.03 * 80 * psi);
        const double now = moved(gauge(7), 64 * psi, zero, gain);
        const physics::TesterPneumatics two{80 * psi, restrictor};
        const auto on_two = [&](physics::LeakLaw law) {
            return 1.0 - *physics::held_on_other_tester_gauge_pa(one, low, two, law) / (80 * psi);
        };
        const double as_hole = on_two(physics::LeakLaw::orifice);
        const double as_gap = on_two(physics::LeakLaw::laminar);
        const double before = as_hole + 0.5 * normal() * (as_gap - as_hole);
        const auto after = physics::leakdown({80 * psi, 1.3e-3}, 64 * psi);
        const auto more = physics::leakdown({80 * psi, 1.3e-3}, 64 * psi - 100.0);
        const double by_area = (more->leakage - after->leakage) /
                               std::log(more->leak_area_m2 / after->leak_area_m2) * 0.10 * normal();
        return 1.0 - now / set + by_area - before;
    };
    const auto trials = uncertainty::monte_carlo(trial, 5, 20'000).value();
    const Change change = *years.compare().cylinders.front().leak_down;
    EXPECT_NEAR(change.difference->figure.si, trials.mean, 0.1 * trials.u);
    EXPECT_NEAR(change.u / trials.u, 1.0, 0.05);
}

TEST(Compare, ColdAgainstWarmIsConvertedByTheModel) {
    // Thermo King manual: a cold engine reads about 10 % lower.
    Years years = dry_twice("155psi", "170psi");
    years.dossier.visits[0].session.conditions.heat = EngineHeat::cold;
    const Comparison found = years.compare();
    const Change& change = *found.cylinders.front().dry;
    EXPECT_NEAR(change.before->as_measured.si / change.before->compared.si, 0.90, 0.03);
    EXPECT_EQ(change.verdict, Verdict::no_real_change);
    EXPECT_EQ(reason(found.reasons, "compare.heat")->treatment, Treatment::corrected);
    // Without the engine's data there is nothing to convert by.
    years.dossier.engine.bore.reset();
    EXPECT_EQ(years.compare().cylinders.front().dry->verdict, Verdict::not_comparable);
    EXPECT_FALSE(years.compare().comparable());
}

TEST(Compare, AnotherHoseIsConvertedByTheModel) {
    // This engine: 172 psi with the check valve at the plug hole, 130 with 8 cm3 of hose before it (computed
    // by an independent implementation): the engine did not change.
    Years years = dry_twice("130psi", "172psi");
    Tester& long_hose = years.add_tester(TesterKind::compression_gauge, "16bar");
    long_hose.check_valve_at = CheckValveAt::gauge_end;
    long_hose.hose_volume = Years::of<VolumeTag>("8cm3");
    years.dossier.visits[0].session.compression_gauge = long_hose.id;
    for (Visit& visit : years.dossier.visits)
        visit.session.conditions.heat = EngineHeat::cold;
    const Comparison found = years.compare();
    EXPECT_NEAR(found.cylinders.front().dry->before->compared.si / psi, 172.0, 1.5);
    EXPECT_EQ(found.cylinders.front().dry->verdict, Verdict::no_real_change);
    // 30 % of a correction of 42 psi is its doubt (assets/reference).
    EXPECT_GT(found.cylinders.front().dry->u / psi, 0.3 * 42.0);
}

TEST(Compare, WhatWasMeasuredOnlyOnceHasNoVerdict) {
    Years years;
    years.dry(years.open(), "9.0bar");
    years.leak(years.open(), "80psi", "60psi");
    const Comparison found = years.compare();
    EXPECT_EQ(found.cylinders.front().dry->verdict, Verdict::not_measured);
    EXPECT_FALSE(found.cylinders.front().dry->after.has_value());
    EXPECT_FALSE(found.cylinders.front().leak_down->before.has_value());
    EXPECT_FALSE(found.cylinders.front().leak_down->difference.has_value());
    EXPECT_FALSE(found.cylinders.front().wet.has_value());
}

TEST(Compare, AsFoundAgainstAdjustedWithinOneVisit) {
    Years years;
    Visit& visit = years.open();
    years.dry(visit, "6.0bar");
    years.dry(visit, "6.9bar", 1, Tag::after_adjustment);
    const Comparison found =
        compare(years.dossier, {&visit, Tag::as_found}, {&visit, Tag::after_adjustment}, Years::reference());
    const Change& change = *found.cylinders.front().dry;
    EXPECT_NEAR(change.difference->figure.si, 0.9 * bar, 1e-6);
    EXPECT_TRUE(found.reasons.empty());
    // One day: what it does to readings falls out but for its share of the difference. By hand as above.
    const double whole = 0.256 * 0.256 / 3.0;
    const auto local = [&](double p) { return whole * (0.6 - 0.2 * (p / 16.0) * (p / 16.0)); };
    const double u =
        std::sqrt(local(6.0) + local(6.9) + 0.2 * whole * std::pow(0.9 / 16.0, 2) + 2.0 * 0.05 * 0.05 / 3.0 +
                  0.015 * 0.015 * (6.0 * 6.0 + 6.9 * 6.9) + std::pow(0.02 * 0.9, 2));
    EXPECT_NEAR(change.u, u * bar, 1e-6 * bar);
}

TEST(Compare, TurnedRoundTheDifferenceTurnsItsSign) {
    EXPECT_TRUE(rc::check([] {
        const auto bars = [] {
            return std::to_string(*rc::gen::inRange(1, 16)) + '.' + std::to_string(*rc::gen::inRange(0, 10)) +
                   "bar";
        };
        Years years = dry_twice(bars(), bars());
        const Change there = *years.compare(0, 1).cylinders.front().dry;
        const Change back = *years.compare(1, 0).cylinders.front().dry;
        RC_ASSERT(std::abs(there.difference->figure.si + back.difference->figure.si) < 1e-6);
        RC_ASSERT(std::abs(there.u - back.u) < 1e-6);
        RC_ASSERT(there.beyond_doubt == back.beyond_doubt);
        RC_ASSERT((there.verdict == Verdict::no_real_change) == (back.verdict == Verdict::no_real_change));
    }));
}

}  // namespace
}  // namespace lapwing::compare
