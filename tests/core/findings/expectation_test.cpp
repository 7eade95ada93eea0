// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <chrono>

#include "tests/core/findings/small_car.h"

namespace lapwing::findings {
namespace {

const CylinderFindings& first(const Findings& found) {
    return found.cylinders.front();
}

TEST(Expectation, StandsInForAFactoryFigureWithDoubt) {
    // The model's reading of this engine is 172 psi (computed by an independent implementation, no published
    // source).
    SmallCar car;
    car.dry(1, "172");
    Findings found = car.find();
    EXPECT_EQ(first(found).dry->state, State::good);
    EXPECT_TRUE(says(first(found).dry->why, "why.within_expected"));
    EXPECT_EQ(first(found).headline.code, "cylinder.reads_as_expected");
    EXPECT_TRUE(says(found.expectation, "model.healthy"));

    SmallCar worn;
    worn.dry(1, "90");
    found = worn.find();
    EXPECT_EQ(first(found).dry->state, State::borderline);  // doubtful, never a fault
    EXPECT_TRUE(says(first(found).dry->why, "why.below_expected"));
    EXPECT_EQ(first(found).headline.code, "cylinder.reads_below_expected");

    SmallCar carboned;
    carboned.dry(1, "240");
    EXPECT_TRUE(says(first(carboned.find()).dry->why, "why.above_expected"));
}

TEST(Expectation, AFactoryFigureWins) {
    SmallCar car;
    car.engine().limits.lowest = Bench::pressure("80", "psi");
    car.dry(1, "90");
    const Findings found = car.find();
    EXPECT_EQ(first(found).dry->state, State::good);
    EXPECT_FALSE(first(found).dry->expected.has_value());
    EXPECT_TRUE(found.expectation.empty());
}

TEST(Expectation, AHoseThatTakesReadingsDownIsTakenOffBeforeALimitJudges) {
    // A sound cylinder of this engine reads 172 psi, and 130 behind 8 cm3 of hose before the check valve
    // (computed by an independent implementation, no published source).
    SmallCar car;
    Tester& gauge = car.tester(TesterKind::compression_gauge, "300", "psi", "1.0");
    gauge.hose_volume = cm3("8");
    gauge.check_valve_at = CheckValveAt::gauge_end;
    car.engine().limits.lowest = Bench::pressure("140", "psi");
    car.dry(1, "130");
    EXPECT_NE(first(car.find()).dry->state, State::fault);
    EXPECT_TRUE(says(first(car.find()).dry->why, "why.put_right_hose"));
    // The list of engines, which asks no more than states rest on, says the same.
    ModelCache models;
    const Findings glance = find(car.dossier, car.visit(), car.reference(), {{}, &models, false});
    EXPECT_EQ(glance.cylinders.front().dry->state, first(car.find()).dry->state);

    car.visit().readings.front().final = Bench::pressure("70", "psi");  // no hose explains that
    EXPECT_EQ(first(car.find()).dry->state, State::fault);

    // The same 130 psi with the check valve at the plug hole is what the manual means.
    car.visit().readings.front().final = Bench::pressure("130", "psi");
    car.dossier.testers.front().check_valve_at = CheckValveAt::chamber_end;
    EXPECT_EQ(first(car.find()).dry->state, State::fault);
    EXPECT_FALSE(says(first(car.find()).dry->why, "why.put_right_hose"));
}

TEST(Expectation, WhatLoweredAReadingWithoutASizeLeavesItOpen) {
    Bench bench(1);  // no bore, stroke or compression ratio
    bench.engine().limits.lowest = Bench::pressure("140", "psi");
    bench.session().conditions.throttle = Throttle::closed;
    bench.dry(1, "120");
    EXPECT_EQ(first(bench.find()).dry->state, State::borderline);
    EXPECT_TRUE(says(first(bench.find()).dry->why, "why.lowered_throttle"));
    bench.session().conditions.throttle = Throttle::held_open;
    EXPECT_EQ(first(bench.find()).dry->state, State::fault);
}

TEST(Expectation, AColdEngineIsNotAFault) {
    // Thermo King manual: a cold engine reads about 10 % lower.
    SmallCar car;
    car.engine().limits.lowest = Bench::pressure("150", "psi");
    car.session().conditions.heat = EngineHeat::cold;
    car.dry(1, "145");
    EXPECT_NE(first(car.find()).dry->state, State::fault);
    car.session().conditions.heat = EngineHeat::warm;
    EXPECT_EQ(first(car.find()).dry->state, State::fault);
}

TEST(Expectation, RepeatsThatScatterWidenALeakage) {
    Bench alike(1), apart(1), once(1);
    for (const char* held : {"50", "50", "50"})
        alike.leak(1, "80", held);
    for (const char* held : {"60", "40", "50"})
        apart.leak(1, "80", held);
    once.leak(1, "80", "50");
    const auto doubt = [](Bench& bench) { return *first(bench.find()).leak_down->leakage.figure.u95; };
    // Standard deviation of 60, 40, 50 is 10 psi; of the mean of three 5.8; of 80 psi 7 %: by hand. The
    // gauges' own doubt comes on top.
    EXPECT_GT(doubt(apart), 0.07);
    EXPECT_LT(doubt(alike), doubt(apart));
    EXPECT_GT(doubt(once), doubt(alike));
    const auto hole = [](Bench& bench) { return *first(bench.find()).leak_down->leak_hole->figure.u95; };
    EXPECT_LT(hole(alike), hole(apart));
}

TEST(Expectation, TheWetRuleIsSilentOnASoundCylinder) {
    Bench bench(1);
    bench.engine().limits.lowest = Bench::pressure("130", "psi");
    bench.dry(1, "180");
    bench.wet(1, "189");
    EXPECT_FALSE(says(first(bench.find()).rules_of_thumb, "thumb.wet_no_rise"));
    bench.engine().limits.lowest = Bench::pressure("200", "psi");
    EXPECT_TRUE(says(first(bench.find()).rules_of_thumb, "thumb.wet_no_rise"));
}

TEST(Expectation, AboveFourteenThereIsNoneAndItSaysWhy) {
    // Diesels: 350 to 430 psi (makers' manuals, several).
    SmallCar car;
    car.engine().fuel = Fuel::diesel;
    car.ratio("21");
    car.dry(1, "400");
    const Findings found = car.find();
    EXPECT_TRUE(says(found.expectation, "model.above_ratio"));
    EXPECT_TRUE(says(first(found).dry->why, "model.above_ratio"));
    EXPECT_TRUE(says(first(found).dry->why, "why.within_typical"));
    EXPECT_EQ(first(found).dry->state, State::good);
}

TEST(Expectation, WithAWorkingDecompressorReadingsOnlyCompareCylinders) {
    // 57 to 85 psi with one at work (small-engine maker's manual).
    SmallCar car(2);
    car.engine().decompressor = Decompressor::automatic;
    car.engine().limits.lowest = Bench::pressure("120", "psi");
    car.dry_all({"100", "98"});
    const Findings found = car.find();
    for (const CylinderFindings& cylinder : found.cylinders) {
        // Below the factory limit and yet no fault; alike, and that is all.
        EXPECT_LT(cylinder.dry->state, State::borderline);
        EXPECT_TRUE(says(cylinder.dry->why, "why.decompressor"));
        EXPECT_FALSE(cylinder.points_at.has_value());
    }
    EXPECT_FALSE(found.spread.empty());
    EXPECT_TRUE(says(found.expectation, "model.decompressor"));
}

TEST(Expectation, AClosedThrottleIsNotHeldAgainstTheCylinder) {
    SmallCar car;
    car.session().conditions.throttle = Throttle::closed;
    car.dry(1, "110");
    const Findings found = car.find();
    EXPECT_EQ(first(found).dry->state, State::none);
    EXPECT_TRUE(says(first(found).dry->why, "why.throttle_closed"));
    EXPECT_TRUE(says(found.weakened_by, "weak.throttle_closed_by"));
    EXPECT_FALSE(says(found.weakened_by, "weak.throttle_closed"));
}

TEST(Expectation, ThrottleStepLeftOutCountsAsClosed) {
    SmallCar car;
    car.session().prepare.push_back({PrepareStep::throttle_open, StepState::not_done, {}});
    car.dry(1, "110");
    EXPECT_TRUE(says(car.find().weakened_by, "weak.throttle_closed_by"));
}

TEST(Expectation, CircumstancesAreSized) {
    SmallCar car;
    Tester& gauge = car.tester(TesterKind::compression_gauge, "300", "psi", "1.6");
    gauge.check_valve_at = CheckValveAt::gauge_end;
    gauge.hose_volume = cm3("8");
    gauge.check_valve_core = CheckValveCore::tyre;
    car.session().conditions.battery = *TypedVoltage::make("11.2", units::volt);
    car.session().conditions.heat = EngineHeat::cold;
    car.session().conditions.induction = Induction::off;
    car.dry(1, "110");
    const Findings found = car.find();
    for (const char* code : {"weak.battery_by", "weak.cold_by", "weak.hose", "weak.tyre_core"})
        EXPECT_TRUE(says(found.weakened_by, code)) << code;
    for (const Remark& remark : found.weakened_by)
        if (remark.message.code == "weak.hose") {
            EXPECT_FALSE(remark.from.empty());
        }
    EXPECT_TRUE(says(found.expectation, "model.induction_off"));
    // The correction is of the reading itself.
    EXPECT_GT(first(found).dry->without_hose->figure.si, 110 * psi_pa * 1.15);
}

TEST(Expectation, ASmallRiseSaysLittleOfTheRings) {
    // 1.5 cm3 of oil that stays raises 172 psi to 183 by its volume alone (computed by an independent
    // implementation, no published source): 6 % of rise is well within what 15 ml explain.
    SmallCar car;
    car.dry(1, "120");
    car.wet(1, "135").oil_volume = cm3("15");
    Findings found = car.find();
    ASSERT_TRUE(first(found).wet->volume_rise.has_value());
    EXPECT_TRUE(says(first(found).rules_of_thumb, "thumb.wet_rings"));  // the published rule keeps its words
    EXPECT_TRUE(says(first(found).rules_of_thumb, "thumb.wet_volume_explains"));
    // Far more than the volume explains: the rule of thumb stands alone.
    SmallCar worn;
    worn.dry(1, "80");
    worn.wet(1, "135").oil_volume = cm3("1");
    found = worn.find();
    EXPECT_FALSE(says(first(found).rules_of_thumb, "thumb.wet_volume_explains"));
}

TEST(Expectation, NoOilRangeForADiesel) {
    SmallCar car;
    car.engine().fuel = Fuel::diesel;
    car.dry(1, "120");
    car.wet(1, "130");
    EXPECT_FALSE(first(car.find()).wet->volume_rise.has_value());
}

TEST(Expectation, IsTheSameWithAndWithoutACache) {
    SmallCar car;
    car.dry(1, "150");
    ModelCache cache;
    FindingsOptions options;
    options.models = &cache;
    const auto with = find(car.dossier, car.visit(), Bench::reference(), options);
    const auto again = find(car.dossier, car.visit(), Bench::reference(), options);
    const auto without = car.find();
    for (const Findings* found : {&again, &without}) {
        EXPECT_EQ(first(*found).headline, first(with).headline);
        EXPECT_EQ(first(*found).dry->expected->low, first(with).dry->expected->low);
    }
}

TEST(Expectation, StatesAloneAreTheSameWithoutWhatStandsBeside) {
    FindingsOptions states_only;
    states_only.beside = false;
    for (const char* reading : {"172", "90"}) {
        SmallCar car;
        car.dry(1, reading);
        const auto bare = find(car.dossier, car.visit(), Bench::reference(), states_only);
        EXPECT_EQ(bare.state, car.find().state);
        EXPECT_EQ(first(bare).headline, first(car.find()).headline);
    }
}

TEST(LeakLaw, TwoSetPressuresTellAHoleWhereTheGaugesAreGood) {
    // The same hole: 80/60 behind 0.040 in is 30/20.56 (isentropic nozzle, computed). Read on a fine gauge.
    Bench bench(1);
    Tester& tester = bench.tester(TesterKind::leak_down, "100", "psi", "0.1");
    tester.supply_gauge = tester.gauge;
    for (int time = 0; time < 4; ++time)
        bench.leak(1, "80.00", "60.00");
    for (int time = 0; time < 4; ++time)
        bench.leak(1, "30.00", "20.56");
    const auto found = bench.find();
    const auto& law = *first(found).leak_down->law;
    EXPECT_EQ(law.message.code, "law.hole");
    // The readings at the other pressure are no repeats, and it is said what they were.
    EXPECT_EQ(first(found).leak_down->repeats, 4);
    const auto& why = first(found).leak_down->why;
    const auto said =
        std::ranges::find(why, "why.leak_other_set", [](const Remark& one) { return one.message.code; });
    ASSERT_NE(said, why.end());
    EXPECT_NEAR(std::get<Figure>(said->message.args[0]).si, 80 * 6894.757, 1.0);
    EXPECT_NEAR(std::get<Figure>(said->message.args[2]).si, 0.25, 1e-9);
    EXPECT_NEAR(std::get<Figure>(law.message.args[0]).si, 0.0, 0.01);
    EXPECT_FALSE(law.from.empty());
}

TEST(LeakLaw, OneReadingEachCanNotTellFromTheLeaksOwnScatter) {
    // 60/44.22 (isentropic nozzle, computed): so near to 80 that a tenth more or less of the leak looks like
    // a gap.
    Bench bench(1);
    Tester& tester = bench.tester(TesterKind::leak_down, "100", "psi", "0.1");
    tester.supply_gauge = tester.gauge;
    bench.leak(1, "80.00", "60.00");
    bench.leak(1, "60.00", "44.22");
    const auto found = bench.find();
    const auto& law = *first(found).leak_down->law;
    EXPECT_EQ(law.message.code, "law.undecided");
    // u(n) = sqrt(2) 0.1 / ln(60/44.22) = 0.46, and more by Student's t for what ten readings know of a
    // scatter.
    const double u95 = std::get<Figure>(law.message.args[0]).u95.value();
    EXPECT_GT(u95, 2 * 0.46);
    EXPECT_LT(u95, 2 * 0.46 * 1.25);
    EXPECT_EQ(law.from.front().doubts.front().of.code, "doubt:leak_repeat");
    EXPECT_GT(law.from.front().doubts.front().share, 0.9);
}

TEST(LeakLaw, AWorkshopGaugeCanNotTell) {
    Bench bench(1);
    bench.tester(TesterKind::leak_down, "100", "psi", "2.5");
    // At 5 % leakage a hole and a gap differ by about 1.5 psi held: less than such a gauge can tell.
    bench.leak(1, "80", "76");
    bench.leak(1, "30", "28.5");
    const auto found = bench.find();
    EXPECT_EQ(first(found).leak_down->law->message.code, "law.undecided");
}

TEST(LeakLaw, OneSetPressureSaysNothing) {
    Bench bench(1);
    bench.leak(1, "80", "60");
    bench.leak(1, "80", "61");
    EXPECT_FALSE(first(bench.find()).leak_down->law.has_value());
    EXPECT_EQ(first(bench.find()).leak_down->repeats, 2);
}

}  // namespace
}  // namespace lapwing::findings
