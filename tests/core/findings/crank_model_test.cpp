// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/crank_model.h"

#include <chrono>

#include "tests/core/findings/small_car.h"

namespace lapwing::findings {
namespace {

bool notes(const Derivation& from, std::string_view code) {
    return std::ranges::find(from.notes, code, &Message::code) != from.notes.end();
}

TEST(CrankModel, ExpectsARangeAroundTheModelsReading) {
    SmallCar car;
    const ModelFacts facts = car.facts();
    // 172 psi: computed by an independent implementation, no published source.
    EXPECT_LT(facts.healthy->low.si, 172 * psi_pa);
    EXPECT_GT(facts.healthy->high.si, 172 * psi_pa);
    // The level of a dry reading carries +-22 % where nothing is noted (working assumption of the project).
    EXPECT_LT(facts.healthy->high.si - facts.healthy->low.si, 0.44 * 172 * psi_pa);
    EXPECT_EQ(facts.healthy_says.message.code, "model.healthy");
    EXPECT_FALSE(facts.healthy->from.inputs.empty());
    EXPECT_EQ(facts.healthy->from.source.code, "source.physics");
}

TEST(CrankModel, WhatIsNotedNarrowsTheRange) {
    SmallCar car;
    const auto width = [&] {
        const ModelFacts facts = car.facts();
        return facts.healthy->high.si - facts.healthy->low.si;
    };
    const double nothing_noted = width();
    car.session().conditions.cranking_speed = *TypedRotation::make("250", units::rpm);
    const double speed_noted = width();
    car.session().conditions.heat = EngineHeat::cold;
    const double both_noted = width();
    EXPECT_LT(speed_noted, nothing_noted);
    EXPECT_LT(both_noted, speed_noted);
}

TEST(CrankModel, AWarmEngineThatCrankedFastIsNotAboveTheRangeWhereNeitherIsNoted) {
    // A sound engine, warm, at 350 rpm, by the model itself at both ends: what is not noted has to be in the
    // range.
    SmallCar car;
    const ModelFacts facts = car.facts();
    physics::CrankingCase warm = cranking_case(facts.inputs);
    warm.wall_k = 353.15;
    warm.speed_rad_s *= 350.0 / 250.0 * facts.inputs.speed_dip;
    EXPECT_LT(physics::crank(warm)->last_gauge_pa, facts.healthy->high.si);
    physics::CrankingCase slow = cranking_case(facts.inputs);
    slow.speed_rad_s *= 150.0 / 250.0 * facts.inputs.speed_dip;
    EXPECT_GT(physics::crank(slow)->last_gauge_pa, facts.healthy->low.si);
}

TEST(CrankModel, MoreOilThanTheChamberHoldsIsNoSum) {
    // 70 x 65 mm at 9:1: pi/4 0.7^2 0.65 / 8 dm3 = 31.3 cm3 of chamber (arithmetic).
    SmallCar car;
    EXPECT_FALSE(car.facts(nullptr, {}, cm3("40")).oil_rise.has_value());
    EXPECT_NEAR(car.facts(nullptr, {}, cm3("40")).oil_fill->figure.si, 40.0 / 31.27, 0.01);
    EXPECT_TRUE(car.facts(nullptr, {}, cm3("10")).oil_rise.has_value());
    // A moped's cylinder: a teaspoon would nearly fill it.
    car.engine().bore = Sourced<TypedLength>{Bench::mm("38"), Origin::measured, ""};
    car.engine().stroke = Sourced<TypedLength>{Bench::mm("43"), Origin::measured, ""};
    car.ratio("10");
    EXPECT_LE(car.facts().oil_fill->figure.si, 0.5 + 1e-9);
}

TEST(CrankModel, RangeCoversWhatMakersAskPerUnitOfRatio) {
    // Makers' ranges are about 17 to 21 psi per unit of compression ratio (makers' manuals, several): the two
    // ranges have to meet wherever the model speaks of a road engine.
    SmallCar car;
    for (const char* ratio : {"7.5", "8.5", "9.5", "10.5"}) {
        car.ratio(ratio);
        const ModelFacts facts = car.facts();
        const double cr = std::stod(ratio);
        EXPECT_LT(facts.healthy->low.si, cr * 21 * psi_pa) << ratio;
        EXPECT_GT(facts.healthy->high.si, cr * 17 * psi_pa) << ratio;
    }
}

TEST(CrankModel, UnknownTimingWidensTheRange) {
    SmallCar car;
    const auto known = *car.facts().healthy;
    car.engine().valves.intake_closing.reset();
    const auto unknown = *car.facts().healthy;
    EXPECT_LT(unknown.low.si, known.low.si);
    EXPECT_GT(unknown.high.si, known.high.si);
    EXPECT_TRUE(notes(unknown.from, "note.closing_assumed"));
    EXPECT_FALSE(notes(known.from, "note.closing_assumed"));
}

TEST(CrankModel, TimingAtALiftClosesLaterOnTheSeat) {
    // Quoted at 1 mm the valve closes 15 to 25 degrees later on its seat (working assumption).
    SmallCar car;
    const auto at_seat = car.inputs();
    car.engine().valves.intake_closing_at = TimingAt::lift_1_mm;
    const auto at_lift = car.inputs();
    EXPECT_NEAR(units::deg.number(Angle::from_si(at_lift.closing_rad - at_seat.closing_rad)), 20.0, 1e-9);
    EXPECT_GT(at_lift.closing_doubt_rad, at_seat.closing_doubt_rad);
}

TEST(CrankModel, GuessesARodAndSaysSo) {
    SmallCar car;
    car.engine().rod.reset();
    const auto facts = car.facts();
    EXPECT_NEAR(facts.inputs.rod_m, 1.7 * 65e-3, 1e-12);  // working assumption
    EXPECT_TRUE(notes(facts.healthy->from, "note.rod_guessed"));
}

TEST(CrankModel, NamesWhatIsMissing) {
    SmallCar car;
    car.engine().bore.reset();
    car.engine().compression_ratio.reset();
    const ModelFacts facts = car.facts();
    EXPECT_FALSE(facts.healthy.has_value());
    EXPECT_EQ(facts.healthy_says.message.code, "model.missing_two");
    EXPECT_EQ(std::get<Word>(facts.healthy_says.message.args[0]).code, "input:bore");
    EXPECT_EQ(std::get<Word>(facts.healthy_says.message.args[1]).code, "input:compression_ratio");
}

TEST(CrankModel, ExpectsNothingAboveFourteen) {
    // Makers print 350 to 430 psi for diesels (makers' manuals); the model reads far more.
    SmallCar car;
    car.ratio("21");
    const ModelFacts facts = car.facts();
    EXPECT_FALSE(facts.healthy.has_value());
    EXPECT_FALSE(facts.oil_rise.has_value());
    EXPECT_EQ(facts.healthy_says.message.code, "model.above_ratio");
}

TEST(CrankModel, ExpectsNothingOfAWorkingDecompressor) {
    SmallCar car;
    car.engine().decompressor = Decompressor::automatic;
    EXPECT_EQ(car.facts().healthy_says.message.code, "model.decompressor");
    car.session().prepare.push_back({PrepareStep::decompressor_off, StepState::done, {}});
    EXPECT_TRUE(car.facts().healthy.has_value());
}

TEST(CrankModel, ScalesTheRangeByAirPressure) {
    SmallCar car;
    const double sea = car.facts().healthy->low.si;
    car.session().conditions.station_pressure = Bench::pressure("850", "hPa");
    // ISO 2533: sea level 1013.25 hPa.
    EXPECT_NEAR(car.facts().healthy->low.si, sea * 850.0 / 1013.25, 1.0);
}

TEST(CrankModel, OilsVolumeIsARange) {
    SmallCar car;
    // 70 % of 5 cm3 kept lies between 1.5 and 5 cm3 kept: 183 and 214 psi against 172 (computed by an
    // independent implementation, no published source).
    const auto rise = *car.facts(nullptr, {}, cm3("5")).oil_rise;
    EXPECT_NEAR(rise.low.si, 0.0, 1e-9);
    EXPECT_GT(rise.high.si, 183.0 / 172.0 - 1.0);
    EXPECT_LT(rise.high.si, 214.0 / 172.0 - 1.0);
    // Ford Probe 1997, GM 2006: 15 ml, one tablespoon, for a car cylinder; assumed where none is noted.
    EXPECT_DOUBLE_EQ(car.facts().oil_rise->high.si, car.facts(nullptr, {}, cm3("15")).oil_rise->high.si);
    EXPECT_TRUE(notes(car.facts().oil_rise->from, "note.oil_assumed"));
    EXPECT_FALSE(notes(rise.from, "note.oil_assumed"));
}

TEST(CrankModel, HoseBeforeTheCheckValveIsCorrected) {
    SmallCar car;
    Tester& gauge = car.tester(TesterKind::compression_gauge, "300", "psi", "1.6");
    gauge.hose_volume = cm3("8");
    gauge.check_valve_at = CheckValveAt::chamber_end;
    EXPECT_FALSE(car.facts(&gauge).hose_loss.has_value());
    gauge.check_valve_at = CheckValveAt::gauge_end;
    // Thermo King manual: the check valve belongs at the chamber end, or the gauge reads low. 130 against 172
    // psi: computed by an independent implementation, no published source.
    const ModelFacts facts = car.facts(&gauge);
    EXPECT_NEAR(facts.hose_loss->figure.si, 1.0 - 130.0 / 172.0, 0.02);
    EXPECT_NEAR(facts.hose_correction, 172.0 / 130.0, 0.03);
    // What is expected is what this gauge shows.
    EXPECT_LT(facts.healthy->high.si, car.facts().healthy->high.si * 140.0 / 172.0);
}

TEST(CrankModel, AnAdaptersVolumeCountsOnlyWhereItWasUsed) {
    SmallCar car;
    Tester& gauge = car.tester(TesterKind::compression_gauge, "300", "psi", "1.6");
    gauge.check_valve_at = CheckValveAt::chamber_end;
    gauge.adapters.push_back({"long reach", "M10", {}, cm3("4"), AdapterSeal::screwed});
    EXPECT_FALSE(car.facts(&gauge).hose_loss.has_value());
    EXPECT_GT(car.facts(&gauge, "long reach").hose_loss->figure.si, 0.05);
}

TEST(CrankModel, TheOnlyAdapterForTheEnginesPlugsIsTheOneInUse) {
    SmallCar car;
    Tester& gauge = car.tester(TesterKind::compression_gauge, "300", "psi", "1.6");
    gauge.check_valve_at = CheckValveAt::chamber_end;
    gauge.adapters = {{"long reach", "M12x1.25", {}, cm3("4"), AdapterSeal::screwed},
                      {"scooter", "M10x1", {}, cm3("2"), AdapterSeal::screwed}};
    EXPECT_FALSE(car.facts(&gauge).hose_loss.has_value());  // which plugs the engine has is not noted
    car.engine().plug_thread = "m12 x 1,25";
    EXPECT_DOUBLE_EQ(car.facts(&gauge).hose_loss->figure.si,
                     car.facts(&gauge, "long reach").hose_loss->figure.si);
    EXPECT_LT(car.facts(&gauge, "scooter").hose_loss->figure.si, car.facts(&gauge).hose_loss->figure.si);
    car.engine().plug_thread = "M14x1.25";
    EXPECT_FALSE(car.facts(&gauge).hose_loss.has_value());
    car.engine().plug_thread = "M12x1.25";
    gauge.adapters[1].thread = "M12x1.25";
    EXPECT_FALSE(car.facts(&gauge).hose_loss.has_value());  // it may be either
}

TEST(CrankModel, TyreValveCoreReadsLow) {
    SmallCar car;
    Tester& gauge = car.tester(TesterKind::compression_gauge, "300", "psi", "1.6");
    gauge.check_valve_core = CheckValveCore::tyre;
    const ModelFacts facts = car.facts(&gauge);
    const double with_core = 172.0 * facts.core_loss->figure.si;
    // 11 to 19 psi low (working assumption of the model's description, no published source).
    EXPECT_GT(with_core, 8.0);
    EXPECT_LT(with_core, 19.0);
}

TEST(CrankModel, ColdEngineReadsAboutATenthLower) {
    // Thermo King manual: a cold engine reads about 10 % lower.
    SmallCar car;
    EXPECT_FALSE(car.facts().cold_loss.has_value());
    car.session().conditions.heat = EngineHeat::cold;
    EXPECT_NEAR(car.facts().cold_loss->figure.si, 0.10, 0.05);
}

TEST(CrankModel, ClosedThrottleAndFlatBatteryAreSized) {
    SmallCar car;
    EXPECT_FALSE(car.facts().throttle_loss.has_value());
    EXPECT_FALSE(car.facts().slow_loss.has_value());
    car.session().conditions.throttle = Throttle::closed;
    car.session().conditions.battery = *TypedVoltage::make("11.2", units::volt);
    const ModelFacts facts = car.facts();
    EXPECT_GT(facts.throttle_loss->low.si, 0.05);
    EXPECT_LT(facts.throttle_loss->low.si, facts.throttle_loss->high.si);
    EXPECT_GT(facts.slow_loss->figure.si, 0.01);
    EXPECT_LT(facts.slow_loss->figure.si, 0.3);
    // With the induction off there is no throttle in the way.
    car.session().conditions.induction = Induction::off;
    EXPECT_FALSE(car.facts().throttle_loss.has_value());
}

TEST(CrankModel, CacheGivesWhatTheModelGives) {
    SmallCar car;
    ModelCache cache;
    const ModelInputs inputs = car.inputs();
    EXPECT_FALSE(cache.known(inputs).has_value());
    const ModelFacts first = cache.facts(inputs);
    ASSERT_TRUE(cache.known(inputs).has_value());
    EXPECT_EQ(cache.known(inputs)->healthy->low, first.healthy->low);
    car.ratio("10");
    EXPECT_FALSE(cache.known(car.inputs()).has_value());
    EXPECT_GT(cache.facts(car.inputs()).healthy->low.si, first.healthy->low.si);
    for (int i = 0; i < 40; ++i) {
        car.ratio("8." + std::to_string(10 + i));
        (void)cache.facts(car.inputs());
    }
    EXPECT_FALSE(cache.known(inputs).has_value());  // it doesn't grow without end
}

TEST(PadFacts, SayWhatToExpectBeforeAnythingIsTyped) {
    SmallCar car;
    const PadEntry nothing_yet;
    EXPECT_TRUE(car.judge(nothing_yet).facts.empty());
    const ModelFacts model =
        model_facts(model_inputs(car.dossier, car.visit(), Bench::reference(), nothing_yet));
    const auto judged = judge_entry(car.dossier, car.visit(), Bench::reference(), nothing_yet, &model);
    ASSERT_EQ(judged.facts.size(), 1U);
    EXPECT_EQ(judged.facts[0].message.code, "model.healthy");
    EXPECT_FALSE(judged.facts[0].from.empty());
}

TEST(PadFacts, FactoryRangeComesBeforeTheModels) {
    SmallCar car;
    car.engine().limits.low = Bench::pressure("150", "psi");
    car.engine().limits.high = Bench::pressure("180", "psi");
    const ModelFacts model = car.facts();
    const auto judged = judge_entry(car.dossier, car.visit(), Bench::reference(), {}, &model);
    EXPECT_TRUE(says(judged.facts, "fact.limit_range"));
    EXPECT_FALSE(says(judged.facts, "model.healthy"));
}

TEST(PadFacts, FirstPuffIsHeldAgainstWhatThisGaugeShows) {
    SmallCar car;
    PadEntry entry;
    entry.final = Bench::pressure("172", "psi");
    const ModelFacts model = car.facts();
    const double usual = model.healthy_first_share->figure.si;
    const auto code_at = [&](double share) {
        entry.first = TypedPressure::from(Pressure::from_si(172 * psi_pa * share), units::psi, 1);
        return judge_entry(car.dossier, car.visit(), Bench::reference(), entry, &model)
            .facts.back()
            .message.code;
    };
    EXPECT_EQ(code_at(usual), "fact.first_usual");
    EXPECT_EQ(code_at(0.5 * usual), "fact.first_slow");
    EXPECT_EQ(code_at(0.99), usual < 0.79 ? "fact.first_stays" : "fact.first_usual");
}

TEST(PadFacts, WetEntrySaysWhatOilsVolumeExplains) {
    SmallCar car;
    PadEntry entry;
    entry.test = TestKind::wet;
    entry.oil_volume = cm3("15");
    const ModelFacts model = model_facts(model_inputs(car.dossier, car.visit(), Bench::reference(), entry));
    const auto judged = judge_entry(car.dossier, car.visit(), Bench::reference(), entry, &model);
    ASSERT_TRUE(says(judged.facts, "fact.oil_volume"));
    EXPECT_NEAR(std::get<Figure>(judged.facts[0].message.args[0]).si, 15e-6, 1e-12);
}

TEST(PadFacts, LeakHasAHole) {
    Bench bench(1);
    PadEntry entry;
    entry.test = TestKind::leak_down;
    entry.set = Bench::pressure("80", "psi");
    entry.held = Bench::pressure("60", "psi");
    // A_leak / A_restrictor is 1.0586 at 80/60 (isentropic nozzle, computed); 0.040 in and Cd 0.85 behind it.
    EXPECT_NEAR(bench.judge(entry).leak_hole->figure.si, 1.016e-3 * std::sqrt(0.85 * 1.0586), 1e-6);
}

}  // namespace
}  // namespace lapwing::findings
