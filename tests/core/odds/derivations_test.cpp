// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/derivations.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/odds/bench.h"

namespace lapwing::odds {
namespace {

using findings::Path;

Odds burnt_valve() {
    Odds bench(1);
    bench.dry(1, "6.5", "bar");
    bench.leak(1, "5.50", "3.20", "bar");
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.hear(1, Exit::breather, Loudness::faint);
    return bench;
}

AfterRepair after(const CylinderOdds& odds, Path repair) {
    return *std::ranges::find(odds.expected_after, repair, &AfterRepair::repair);
}

double share(const AfterRepair& of, std::string_view what) {
    const auto found =
        std::ranges::find(of.doubts, findings::Word{std::string(what)}, &findings::DoubtShare::of);
    return found == of.doubts.end() ? -1.0 : found->share;
}

double input(const findings::Derivation& from, std::string_view name) {
    const auto found =
        std::ranges::find(from.inputs, findings::Word{"input:" + std::string(name)}, &findings::Input::name);
    return found == from.inputs.end() ? NAN : std::get<findings::Figure>(found->value).si;
}

TEST(AfterRepair, NamesTheLeaksThatItIsMadeOf) {
    const CylinderOdds odds = burnt_valve().first();
    const AfterRepair valve = after(odds, Path::exhaust);
    // Part and rest are the whole leak; the few draws that readings are worked out for scatter a little.
    EXPECT_NEAR(valve.part_m2.mean + valve.rest_m2, odds.leak_area_m2.mean, 0.1 * odds.leak_area_m2.mean);
    EXPECT_GT(valve.part_m2.mean, valve.rest_m2);
    // 90 % of sound exhaust valves, as odds.json has their median for a bore of 75 mm and its spread.
    const double median = 0.01e-6 * 78.0 / 75.0;
    EXPECT_NEAR(std::log(valve.sound_m2.lo / median), -1.645 * 0.9, 0.25);
    EXPECT_NEAR(std::log(valve.sound_m2.hi / median), 1.645 * 0.9, 0.25);
    // As it is it reads what was read, within the gauge's class of 1.6 % of 16 bar.
    EXPECT_NEAR(valve.now_pa, 6.5e5, 0.3e5);
}

TEST(AfterRepair, IsDoubtfulByItsParts) {
    const AfterRepair valve = after(burnt_valve().first(), Path::exhaust);
    double sum = 0.0, last = 1.0;
    for (const findings::DoubtShare& doubt : valve.doubts) {
        sum += doubt.share;
        EXPECT_LE(doubt.share, last);
        last = doubt.share;
    }
    EXPECT_NEAR(sum, 1.0, 1e-9);
    // The day's 3 % and the gauge of class 1.6 against the width of the range, a normal one at 90 %.
    const double spread = (valve.hi_pa - valve.lo_pa) / (2.0 * 1.645);
    EXPECT_NEAR(share(valve, "doubt:day"), std::pow(0.03 * valve.value_pa / spread, 2), 0.1);

    Odds coarse = burnt_valve();
    for (Tester& tester : coarse.dossier.testers)
        if (tester.kind == TesterKind::compression_gauge) tester.gauge.accuracy = "4.0";
    EXPECT_GT(share(after(coarse.first(), Path::exhaust), "doubt:gauge_and_test"),
              1.5 * share(valve, "doubt:gauge_and_test"));
}

TEST(AfterRepair, DerivesItsRange) {
    const AfterRepair rings = after(burnt_valve().first(), Path::rings);
    const findings::Derivation from = after_repair_from(1, rings);
    EXPECT_EQ(from.title.code, "from:after_repair");
    EXPECT_DOUBLE_EQ(input(from, "expected_least"), rings.lo_pa);
    EXPECT_DOUBLE_EQ(input(from, "expected_most"), rings.hi_pa);
    EXPECT_DOUBLE_EQ(input(from, "leak_now"), rings.rest_m2 + rings.part_m2.mean);
    EXPECT_EQ(from.doubts, rings.doubts);
    EXPECT_EQ(from.source.code, "source.assumption");
    ASSERT_EQ(from.notes.size(), 1U);
    EXPECT_EQ(from.notes.front().code, "odds.fresh_hone");
}

}  // namespace
}  // namespace lapwing::odds
