// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/calculators/calculators.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/calculators/tester_check.h"
#include "core/physics/leakdown.h"

namespace lapwing::calculators {
namespace {

constexpr double psi_pa = 6894.757;  // NIST SP 811

const findings::Reference& reference() {
    static const findings::Reference built_in = findings::built_in_reference().value();
    return built_in;
}

TypedPressure psi(const std::string& digits) {
    return *TypedPressure::make(digits, units::psi);
}
TypedLength inches(const std::string& digits) {
    return *TypedLength::make(digits, units::inch);
}
TypedLength mm(const std::string& digits) {
    return *TypedLength::make(digits, units::mm);
}
TypedVolume cm3(const std::string& digits) {
    return *TypedVolume::make(digits, units::cm3);
}
Sourced<TypedLength> on_card(TypedLength length) {
    return {std::move(length), Origin::manual, {}};
}

Answer answer(Calculator calculator, const Worksheet& sheet) {
    auto out = work_out(calculator, sheet, reference());
    if (!out) throw std::runtime_error(out.error().english);
    return *out;
}
std::string refusal(Calculator calculator, const Worksheet& sheet) {
    const auto out = work_out(calculator, sheet, reference());
    return out ? std::string() : out.error().code;
}
// By value, since a test often asks an answer that lives no longer than the question.
Line line(const Answer& of, const std::string& name) {
    const auto at =
        std::ranges::find_if(of.lines, [&](const Line& one) { return one.name.code == "calc:" + name; });
    if (at == of.lines.end()) throw std::runtime_error("no line " + name);
    return *at;
}
findings::Derived derived(const Answer& of, const std::string& name) {
    return std::get<findings::Derived>(line(of, name).value);
}
findings::DerivedRange range(const Answer& of, const std::string& name) {
    return std::get<findings::DerivedRange>(line(of, name).value);
}

Worksheet leak(const char* set, const char* held) {
    Worksheet sheet = empty_worksheet();
    sheet.set = psi(set);
    sheet.held = psi(held);
    return sheet;
}

/// 70 x 65 mm, rod 125 mm, compression ratio 9, intake closing 65 degrees after BDC at the seat.
Worksheet small_car() {
    Worksheet sheet = empty_worksheet();
    sheet.engine.bore = on_card(mm("70"));
    sheet.engine.stroke = on_card(mm("65"));
    sheet.engine.rod = on_card(mm("125"));
    sheet.engine.compression_ratio =
        Sourced<TypedRatio>{*TypedRatio::make("9", units::one), Origin::manual, {}};
    sheet.engine.valves.intake_closing =
        Sourced<TypedAngle>{*TypedAngle::make("65", units::deg), Origin::manual, {}};
    return sheet;
}

TEST(LeakageSum, IsTheManuals) {
    // Jeep service manual 1982: 80 to 60 psi is 25 %.
    EXPECT_NEAR(derived(answer(Calculator::leakage, leak("80", "60")), "leakage").figure.si, 0.25, 1e-12);
    // Kohler ECV940 service manual, chart for 80 psi.
    for (const auto& [held, per_cent] : {std::pair{"72", 10}, {"64", 20}, {"56", 30}, {"48", 40}, {"40", 50}})
        EXPECT_NEAR(derived(answer(Calculator::leakage, leak("80", held)), "leakage").figure.si,
                    per_cent / 100.0, 1e-12);
    // Rotax 914 maintenance manual: 6 to 4.5 bar is 25 %.
    Worksheet bar = empty_worksheet();
    bar.set = *TypedPressure::make("6", units::bar);
    bar.held = *TypedPressure::make("4.5", units::bar);
    EXPECT_NEAR(derived(answer(Calculator::leakage, bar), "leakage").figure.si, 0.25, 1e-12);
}

TEST(LeakageSum, CarriesItsUncertaintyAndWhereItComesFrom) {
    const Answer out = answer(Calculator::leakage, leak("80", "60"));
    EXPECT_GT(derived(out, "leakage").figure.u95.value_or(0.0), 0.0);
    for (const Line& one : out.lines)
        EXPECT_FALSE(std::get<findings::Derived>(one.value).from.title.code.empty()) << one.name.code;
}

TEST(OtherTesterSum, SameLeakBehindOtherRestrictors) {
    // Computed (isentropic nozzle): 80/60 behind 0.040 in is 75.3/80 behind 0.060 in, 75.78/100 and 36.34/50
    // behind 0.040 in.
    Worksheet sheet = leak("80", "60");
    sheet.session.conditions.station_pressure = *TypedPressure::make("1013.25", units::hpa);
    const auto held = [&](const char* set, const char* restrictor) {
        sheet.other_set = psi(set);
        sheet.other_restrictor = inches(restrictor);
        const double lost = derived(answer(Calculator::other_tester, sheet), "on_other_hole").figure.si;
        return std::stod(set) * (1.0 - lost);
    };
    EXPECT_NEAR(held("80", "0.060"), 75.3, 0.05);
    EXPECT_NEAR(held("100", "0.040"), 75.78, 0.01);
    EXPECT_NEAR(held("50", "0.040"), 36.34, 0.01);
    EXPECT_NEAR(held("80", "0.040"), 60.0, 1e-6);
}

TEST(LeakageSum, ARestrictorThatNobodyTypedIsNotKnown) {
    // By itself the area of the leak goes as that of the restrictor: its doubt is at least the restrictor's.
    Worksheet sheet = leak("80", "60");
    const auto open = derived(answer(Calculator::leakage, sheet), "leak_area").figure;
    const double area = 1.0 + 2.0 * reference().assumed("restrictor-unknown-doubt");
    EXPECT_GT(*open.u95 / open.si, 0.5 * (area - 1.0 / area));  // as a factor to either side
    sheet.tester.restrictor = inches("0.040");
    const auto typed = derived(answer(Calculator::leakage, sheet), "leak_area").figure;
    EXPECT_NEAR(typed.si, open.si, 1e-12);  // the usual one is assumed
    EXPECT_LT(*typed.u95, 0.7 * *open.u95);
}

TEST(RestrictorSum, EqualHolesHoldWhatEqualAreasHold) {
    // Equal areas at 80 psi set and 14.696 psi ambient hold 61.77 psi (isentropic nozzle, computed).
    Worksheet sheet = leak("80", "61.77");
    sheet.session.conditions.station_pressure = *TypedPressure::make("14.696", units::psi);
    sheet.hole = inches("0.040");
    const Answer out = answer(Calculator::restrictor, sheet);
    EXPECT_NEAR(derived(out, "restrictor").figure.si, 1.016e-3, 1e-6);
    EXPECT_GT(derived(out, "restrictor").figure.u95.value_or(0.0), 0.0);
}

TEST(AltitudeSum, FollowsTheStandardAtmosphere) {
    // ISO 2533: 850 hPa at 1457 m, 700 at 3012.
    Worksheet sheet = empty_worksheet();
    for (const auto& [height, hpa] : {std::pair{"1457", 850.0}, {"3012", 700.0}}) {
        sheet.session.conditions.altitude = *TypedLength::make(height, units::m);
        EXPECT_NEAR(derived(answer(Calculator::altitude, sheet), "station_pressure").figure.si, hpa * 100,
                    6.0);
    }
    // 120 psi at sea level is about 100 psi at 5000 ft (letter in a magazine; 99.85 by absolute scaling).
    sheet.session.conditions.altitude = *TypedLength::make("5000", units::ft);
    sheet.limit = psi("120");
    EXPECT_NEAR(derived(answer(Calculator::altitude, sheet), "limit_here").figure.si, 100 * psi_pa,
                0.5 * psi_pa);
    sheet.session.conditions.station_pressure = *TypedPressure::make("700", units::hpa);
    EXPECT_NEAR(derived(answer(Calculator::altitude, sheet), "altitude").figure.si, 3012, 1.0);
}

TEST(LawSum, TellsAHoleFromANarrowGapOrLeavesItOpen) {
    // Held behind equal effective areas (isentropic nozzle at 14.696 psi ambient, computed): a hole that
    // holds 61.77 of 80 psi holds what physics::leakdown says it does of 30.
    Worksheet sheet = leak("80", "61.77");
    sheet.session.conditions.station_pressure = *TypedPressure::make("14.696", units::psi);
    sheet.tester.restrictor = inches("0.040");
    sheet.tester.gauge.full_scale = psi("100");
    sheet.tester.gauge.scheme = AccuracyScheme::en_837_1;
    sheet.tester.gauge.accuracy = "0.1";
    sheet.tester.supply_gauge = sheet.tester.gauge;
    EXPECT_EQ(refusal(Calculator::law, sheet), "calculator.needs");
    sheet.second_set = psi("30");
    physics::TesterPneumatics low;
    low.set_gauge_pa = 30 * psi_pa;
    low.ambient_pa = 14.696 * psi_pa;
    physics::TesterPneumatics high = low;
    high.set_gauge_pa = 80 * psi_pa;
    const auto held_at_30 = [&](physics::LeakLaw law) {
        const double pa = physics::held_on_other_tester_gauge_pa(high, 61.77 * psi_pa, low, law).value();
        return TypedPressure::from(Pressure::from_si(pa), units::psi, 2);
    };
    sheet.second_held = held_at_30(physics::LeakLaw::orifice);
    const Answer hole = answer(Calculator::law, sheet);
    EXPECT_EQ(hole.lines.front().name.code, "calc:law_exponent");
    EXPECT_NEAR(derived(hole, "law_exponent").figure.si, 0.0, 0.01);
    EXPECT_EQ(hole.notes.front().code, "law.hole");
    EXPECT_NEAR(derived(hole, "second_leak_area").figure.si, derived(hole, "leak_area").figure.si,
                0.01 * derived(hole, "leak_area").figure.si);
    sheet.second_held = held_at_30(physics::LeakLaw::laminar);
    const Answer gap = answer(Calculator::law, sheet);
    EXPECT_EQ(gap.notes.front().code, "law.gap");
    EXPECT_GT(derived(gap, "law_exponent").figure.si, 0.3);
    // A gauge of class 2.5 that sags unseen can't tell them apart (physics: about 1.5 psi at a small leak).
    sheet.tester.gauge.accuracy = "2.5";
    sheet.tester.supply_gauge.reset();
    EXPECT_EQ(answer(Calculator::law, sheet).notes.front().code, "law.undecided");
    sheet.second_set = psi("79");
    sheet.second_held = psi("61");
    EXPECT_EQ(refusal(Calculator::law, sheet), "calculator.law");
    sheet.second_held = psi("90");
    EXPECT_EQ(refusal(Calculator::law, sheet), "leakdown.held_above_set");
}

TEST(TurningSum, SlowerAndWithLessAirACylinderReadsLess) {
    Worksheet sheet = small_car();
    sheet.session.conditions.cranking_speed = *TypedRotation::make("250", units::rpm);
    sheet.session.conditions.heat = EngineHeat::warm;
    const auto healthy = range(answer(Calculator::healthy, sheet), "healthy");
    sheet.slow = *TypedRotation::make("120", units::rpm);
    const Answer slow = answer(Calculator::turning, sheet);
    EXPECT_EQ(range(slow, "healthy").low.si, healthy.low.si);
    EXPECT_GT(derived(slow, "speed_loss").figure.si, 0.01);
    EXPECT_LT(derived(slow, "speed_loss").figure.si, 0.25);
    EXPECT_LT(range(slow, "slow_reading").high.si, healthy.high.si);
    EXPECT_LT(range(slow, "slow_reading").low.si, healthy.low.si);
    // At the speed that it turned at nothing is taken off.
    sheet.slow = *TypedRotation::make("250", units::rpm);
    EXPECT_NEAR(derived(answer(Calculator::turning, sheet), "speed_loss").figure.si, 0.0, 2e-3);
    // Turned faster it reads more.
    sheet.slow = *TypedRotation::make("400", units::rpm);
    EXPECT_LT(derived(answer(Calculator::turning, sheet), "speed_loss").figure.si, 0.0);

    // With nothing typed the throttle is shut, as far as the working assumptions have it.
    const auto shut = range(slow, "throttle_loss");
    EXPECT_LT(shut.low.si, shut.high.si);
    EXPECT_GT(shut.low.si, 0.0);
    // A cylinder that closes at 70 % of the air's pressure compresses 70 % of the air: the absolute peak goes
    // in proportion (p V^n), the gauge reading by a little more.
    sheet.fill = *TypedRatio::make("70", *Unit<RatioTag>::find("%"));
    const auto partly = range(answer(Calculator::turning, sheet), "throttle_loss");
    EXPECT_GT(0.5 * (partly.low.si + partly.high.si), 0.28);
    EXPECT_LT(0.5 * (partly.low.si + partly.high.si), 0.38);
    sheet.fill = *TypedRatio::make("100", *Unit<RatioTag>::find("%"));
    EXPECT_NEAR(range(answer(Calculator::turning, sheet), "throttle_loss").high.si, 0.0, 1e-6);

    sheet.fill = *TypedRatio::make("1", *Unit<RatioTag>::find("%"));
    EXPECT_EQ(refusal(Calculator::turning, sheet), "cranking.fill");
    sheet.fill.reset();
    sheet.slow = *TypedRotation::make("0", units::rpm);
    EXPECT_EQ(refusal(Calculator::turning, sheet), "cranking.speed");
}

TEST(HealthySum, MeetsWhatMakersAskPerUnitOfRatio) {
    // Makers' ranges: 17 to 21 psi per unit of compression ratio (makers' manuals, several).
    const auto& expected = range(answer(Calculator::healthy, small_car()), "healthy");
    EXPECT_LT(expected.low.si, 9 * 21 * psi_pa);
    EXPECT_GT(expected.high.si, 9 * 17 * psi_pa);
}

TEST(HoseSum, PutsBackWhatTheHoseTakes) {
    // 172 psi without, 130 with 8 cm3 before the check valve: computed by an independent implementation, no
    // published source.
    Worksheet sheet = small_car();
    sheet.gauge.check_valve_at = CheckValveAt::gauge_end;
    sheet.gauge.hose_volume = cm3("8");
    sheet.reading = psi("130");
    const Answer out = answer(Calculator::hose, sheet);
    EXPECT_EQ(out.lines.front().name.code, "calc:without_hose");
    EXPECT_NEAR(derived(out, "without_hose").figure.si, 172 * psi_pa, 3 * psi_pa);
    EXPECT_GT(derived(out, "without_hose").figure.u95.value_or(0.0), 0.0);
    EXPECT_GT(derived(out, "correction").figure.u95.value_or(0.0), 0.0);
    sheet.gauge.check_valve_at = CheckValveAt::chamber_end;
    EXPECT_EQ(refusal(Calculator::hose, sheet), "calculator.no_hose");
}

TEST(OilSum, WarnsBeforeItRefuses) {
    // pi/4 0.7^2 0.65 / 8 dm3 = 31.3 cm3 of chamber (arithmetic).
    Worksheet sheet = small_car();
    sheet.oil = cm3("10");
    EXPECT_TRUE(answer(Calculator::oil, sheet).notes.empty());
    sheet.oil = cm3("22");
    EXPECT_EQ(answer(Calculator::oil, sheet).notes.front().code, "pad.oil_locks");
    sheet.oil = cm3("40");
    EXPECT_EQ(refusal(Calculator::oil, sheet), "calculator.oil_locks");
}

TEST(OilSum, IsARange) {
    // 1.5 cm3 kept gives 183 psi, 5 cm3 214, against 172: computed by an independent implementation, no
    // published source. Of 5 cm3, 0 to 70 % stay.
    Worksheet sheet = small_car();
    sheet.oil = cm3("5");
    sheet.reading = psi("172");
    const Answer out = answer(Calculator::oil, sheet);
    EXPECT_NEAR(range(out, "oil_rise").low.si, 0.0, 1e-9);
    EXPECT_GT(range(out, "wet_reading").high.si, 183 * psi_pa);
    EXPECT_LT(range(out, "wet_reading").high.si, 214 * psi_pa);
    // One part at a time: with a reading that is known exactly the oil alone, 172 times the rise; and a gauge
    // of which nothing is known is in doubt by more than its class alone.
    const auto& parts = range(out, "wet_reading").from.parts;
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_EQ(parts[0].of.code, "doubt:oil_kept");
    EXPECT_NEAR(parts[0].width.si,
                172 * psi_pa * (range(out, "oil_rise").high.si - range(out, "oil_rise").low.si), 1.0);
    EXPECT_EQ(parts[1].of.code, "doubt:reading");
    const double wide = range(out, "wet_reading").high.si - range(out, "wet_reading").low.si;
    EXPECT_NEAR(wide, std::hypot(parts[0].width.si, parts[1].width.si), 1.0);
}

TEST(OilSum, RefusesWhatIsDangerous) {
    Worksheet sheet = small_car();
    sheet.oil = cm3("100");
    EXPECT_EQ(refusal(Calculator::oil, sheet), "calculator.oil_locks");
    sheet.engine.fuel = Fuel::diesel;
    EXPECT_EQ(refusal(Calculator::oil, sheet), "calculator.oil_diesel");
}

TEST(TorqueSum, AtEightyPsi) {
    // Bore 4.0 in, stroke 3.48, rod 5.7: 4.50 N m at 1 degree, 9.00 at 2, 22.5 at 5, 44.7 at 10 (virtual
    // work, computed).
    Worksheet sheet = empty_worksheet();
    sheet.engine.bore = on_card(inches("4.0"));
    sheet.engine.stroke = on_card(inches("3.48"));
    sheet.engine.rod = on_card(inches("5.7"));
    sheet.held = psi("80");
    for (const auto& [angle, nm] : {std::pair{"1", 4.50}, {"2", 9.00}, {"5", 22.5}, {"10", 44.7}}) {
        sheet.off_tdc = *TypedAngle::make(angle, units::deg);
        EXPECT_NEAR(derived(answer(Calculator::torque, sheet), "torque").figure.si, nm, 0.06) << angle;
    }
    sheet.bar = mm("500");
    const Answer held = answer(Calculator::torque, sheet);
    EXPECT_NEAR(derived(held, "force").figure.si, 44.7 / 0.5, 0.2);
    // "10 degrees" is known to half a degree either way: 0.58 degrees at 95 % where the torque grows by 4.4 N
    // m a degree, 2.6 N m; a gauge of twice 80 psi and class 2.5 may be out by 4 psi, 2.6 N m at 95 % (by
    // hand).
    EXPECT_NEAR(*derived(held, "torque").figure.u95, std::hypot(2.6, 2.6), 0.25);
    EXPECT_NEAR(*derived(held, "force").figure.u95, *derived(held, "torque").figure.u95 / 0.5, 0.2);
}

TEST(EverySum, GivesEachFigureWithItsDoubtAndItsFormula) {
    Worksheet sheet = small_car();
    sheet.gauge.check_valve_at = CheckValveAt::gauge_end;
    sheet.held = psi("60");
    sheet.hole = inches("0.040");
    sheet.reading = psi("150");
    sheet.oil = cm3("5");
    sheet.limit = psi("120");
    sheet.off_tdc = *TypedAngle::make("5", units::deg);
    sheet.bar = mm("500");
    sheet.session.conditions.altitude = *TypedLength::make("240", units::m);
    sheet.second_set = psi("30");
    sheet.second_held = psi("20");
    for (const Calculator one :
         {Calculator::leakage, Calculator::other_tester, Calculator::law, Calculator::restrictor,
          Calculator::hose, Calculator::oil, Calculator::altitude, Calculator::healthy, Calculator::turning,
          Calculator::torque}) {
        for (const Line& shown : answer(one, sheet).lines) {
            if (const auto* number = std::get_if<findings::Derived>(&shown.value)) {
                EXPECT_GT(number->figure.u95.value_or(0.0), 0.0) << shown.name.code;
                EXPECT_FALSE(number->from.doubts.empty()) << shown.name.code;
                EXPECT_FALSE(number->from.symbols.empty()) << shown.name.code;
                EXPECT_FALSE(number->from.inputs.empty()) << shown.name.code;
                EXPECT_FALSE(number->from.source.code.empty()) << shown.name.code;
                continue;
            }
            const auto& range = std::get<findings::DerivedRange>(shown.value);
            EXPECT_LT(range.low.si, range.high.si) << shown.name.code;
            EXPECT_FALSE(range.from.symbols.empty()) << shown.name.code;
            EXPECT_FALSE(range.from.parts.empty()) << shown.name.code;
        }
    }
}

TEST(UnitsSum, AreThoseOfTheStandard) {
    // NIST SP 811: 1 psi = 6.894757 kPa, 1 kgf/cm2 = 98.0665 kPa.
    const auto in_unit = [](const Worksheet& sheet, const std::string& unit) -> std::string {
        for (const Line& one : answer(Calculator::units, sheet).lines)
            if (const auto& written = std::get<Written>(one.value); written.unit == unit)
                return written.digits;
        return {};
    };
    Worksheet sheet = empty_worksheet();
    sheet.pressure = psi("1");
    EXPECT_EQ(in_unit(sheet, "kPa"), "6.89476");
    sheet.pressure = *TypedPressure::make("1", units::kgf_cm2);
    EXPECT_EQ(in_unit(sheet, "kPa"), "98.0665");
}

TEST(Sums, SayWhatIsStillToBeTyped) {
    const Worksheet nothing = empty_worksheet();
    for (const Calculator calculator :
         {Calculator::leakage, Calculator::other_tester, Calculator::law, Calculator::restrictor,
          Calculator::hose, Calculator::oil, Calculator::altitude, Calculator::healthy, Calculator::turning,
          Calculator::torque, Calculator::units}) {
        const auto out = work_out(calculator, nothing, reference());
        ASSERT_FALSE(out.has_value()) << word(calculator);
        EXPECT_EQ(out.error().code, "calculator.needs") << word(calculator);
    }
}

TEST(Sums, ImpossibleValuesGetASentence) {
    EXPECT_EQ(refusal(Calculator::leakage, leak("60", "80")), "leakdown.held_above_set");
    EXPECT_EQ(refusal(Calculator::leakage, leak("0", "0")), "leakdown.set");
    Worksheet sheet = small_car();
    sheet.engine.rod = on_card(mm("20"));
    EXPECT_EQ(refusal(Calculator::healthy, sheet), "calculator.refused");
    sheet = small_car();
    sheet.engine.compression_ratio->value = *TypedRatio::make("19", units::one);
    EXPECT_EQ(refusal(Calculator::healthy, sheet), "calculator.above_ratio");
    sheet = empty_worksheet();
    sheet.session.conditions.altitude = *TypedLength::make("90", *Unit<LengthTag>::find("km"));
    EXPECT_EQ(refusal(Calculator::altitude, sheet), "atmosphere.altitude");
}

TEST(Worksheets, ASessionFillsThem) {
    Dossier dossier;
    dossier.engine = small_car().engine;
    dossier.engine.limits.lowest = psi("120");
    Tester tester;
    tester.kind = TesterKind::leak_down;
    tester.id = TesterId{*Uuid::parse("00000000-0000-7000-8000-00000000000a")};
    tester.set_pressure = psi("90");
    dossier.testers = {tester};
    Visit visit;
    visit.session.leak_down_tester = tester.id;
    Reading reading;
    reading.test = TestKind::leak_down;
    reading.set = psi("90");
    reading.held = psi("72");
    visit.readings = {reading};
    const Worksheet sheet = worksheet_of(dossier, visit);
    EXPECT_NEAR(derived(answer(Calculator::leakage, sheet), "leakage").figure.si, 0.2, 1e-12);
    EXPECT_EQ(sheet.limit, psi("120"));
    EXPECT_EQ(sheet.engine.bore, dossier.engine.bore);
}

TEST(Sums, StartFromASetPressureInTheUnitOfTheDial) {
    EXPECT_EQ(usual_set().text(), "80 psi");
    EXPECT_EQ(usual_set(units::bar).text(), "5.5 bar");
    EXPECT_EQ(usual_set(units::kpa).text(), "550 kPa");
    // Where a session has no tester that says another.
    EXPECT_EQ(worksheet_of(Dossier{}, Visit{}, usual_set(units::bar)).set, usual_set(units::bar));
}

RC_GTEST_PROP(Sums, NothingTypedBringsThemDown, (int set, int held, int bore, int ratio, int oil)) {
    Worksheet sheet = small_car();
    sheet.set = psi(std::to_string(set % 2000));
    sheet.held = psi(std::to_string(held % 2000));
    sheet.engine.bore = on_card(mm(std::to_string(bore % 500)));
    sheet.engine.compression_ratio->value = *TypedRatio::make(std::to_string(ratio % 40), units::one);
    sheet.oil = cm3(std::to_string(oil % 200));
    sheet.second_set = psi(std::to_string(held % 2000));
    sheet.second_held = psi(std::to_string(set % 1000));
    sheet.slow = *TypedRotation::make(std::to_string(bore % 3000), units::rpm);
    sheet.fill = *TypedRatio::make(std::to_string(oil % 150), *Unit<RatioTag>::find("%"));
    for (const Calculator calculator :
         {Calculator::leakage, Calculator::other_tester, Calculator::law, Calculator::hose, Calculator::oil,
          Calculator::healthy, Calculator::turning, Calculator::torque}) {
        const auto out = work_out(calculator, sheet, reference());
        if (out)
            RC_ASSERT(!out->lines.empty());
        else
            RC_ASSERT(!out.error().english.empty());
    }
}

TEST(TesterCheckSays, WhatTheFiguresComeTo) {
    // EN 837-1: class 1.6 of 10 bar may be out by 0.16 bar.
    Tester tester;
    tester.kind = TesterKind::leak_down;
    tester.gauge.full_scale = *TypedPressure::make("10", units::bar);
    tester.gauge.scheme = AccuracyScheme::en_837_1;
    tester.gauge.accuracy = "1.6";
    const auto says = [&](TesterCheckKind kind, const char* set, const char* shown,
                          const char* hole = nullptr) {
        TesterCheck check;
        check.kind = kind;
        if (set) check.set = *TypedPressure::make(set, units::bar);
        if (shown) check.shown = *TypedPressure::make(shown, units::bar);
        if (hole) check.hole = *TypedLength::make(hole, units::mm);
        return check_says(tester, check, reference());
    };
    using Kind = TesterCheckKind;
    EXPECT_TRUE(says(Kind::against_reference, "5.00", "5.10")->passes);
    EXPECT_FALSE(says(Kind::against_reference, "5.00", "5.40")->passes);
    EXPECT_TRUE(says(Kind::zero_at_rest, nullptr, "0")->passes);
    EXPECT_FALSE(says(Kind::zero_at_rest, nullptr, "0.5")->passes);
    EXPECT_TRUE(says(Kind::outlet_blocked, "5.5", "5.5")->passes);
    EXPECT_EQ(says(Kind::outlet_blocked, "5.5", "4.9")->remark.message.code, "check.outlet_leaks");
    // A hole of the restrictor's own size: equal areas at 80 psi (5.516 bar) hold 61.77 psi (4.259 bar), from
    // the formula of the project's physics.
    tester.restrictor = *TypedLength::make("1.016", units::mm);
    const auto alike = says(Kind::drilled_hole, "5.516", "4.259", "1.016");
    EXPECT_TRUE(alike->passes);
    // Hole and restrictor of one coefficient of discharge.
    EXPECT_NEAR(std::get<findings::Figure>(alike->remark.message.args.front()).si, 1.016e-3, 2e-5);
    tester.restrictor = *TypedLength::make("0.6", units::mm);
    EXPECT_EQ(says(Kind::drilled_hole, "5.516", "4.259", "1.016")->remark.message.code,
              "check.restrictor_off");
    EXPECT_FALSE(says(Kind::drilled_hole, "5.516", nullptr, "1.016").has_value());
    EXPECT_FALSE(says(Kind::holds_after_cranking, nullptr, nullptr).has_value());
}

}  // namespace
}  // namespace lapwing::calculators
