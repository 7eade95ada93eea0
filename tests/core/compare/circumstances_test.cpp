// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <cmath>

#include "tests/core/compare/years.h"

// What becomes of circumstances that were not the same twice.
namespace lapwing::compare {
namespace {

/// Two visits with one leak-down reading each, at 80 psi.
Years leak_twice(const std::string& before, const std::string& after) {
    Years years;
    years.leak(years.open(), "80psi", before);
    years.leak(years.open(), "80psi", after);
    return years;
}

struct Circumstance {
    const char* code;
    Treatment treatment;
    void (*change)(Years&);
};

class Circumstances : public testing::TestWithParam<Circumstance> {};

TEST_P(Circumstances, AreSaid) {
    Years years;
    Visit& before = years.open();
    years.dry(before, "9.0bar");
    years.wet(before, "10.0bar", "5ml");
    Visit& after = years.open();
    years.dry(after, "9.0bar");
    years.wet(after, "10.0bar", "5ml");
    const double u = years.compare().cylinders.front().dry->u;
    EXPECT_TRUE(years.compare().reasons.empty());
    const auto& [code, treatment, change] = GetParam();
    change(years);
    const Comparison found = years.compare();
    const Reason* said = reason(found.reasons, code);
    ASSERT_NE(said, nullptr);
    EXPECT_EQ(said->treatment, treatment);
    EXPECT_EQ(found.comparable(), treatment != Treatment::prevents);
    const bool of_dry = std::ranges::find(said->tests, TestKind::dry) != said->tests.end();
    const Change& dry = *found.cylinders.front().dry;
    if (of_dry && treatment == Treatment::prevents) {
        EXPECT_EQ(dry.verdict, Verdict::not_comparable);
    }
    if (of_dry && treatment == Treatment::allowed) {
        EXPECT_GT(dry.u, u);
    }
    if (treatment == Treatment::corrected) {
        EXPECT_NE(dry.before->compared.si, dry.before->as_measured.si);
    }
}

Conditions& later(Years& years) {
    return years.dossier.visits[1].session.conditions;
}
Conditions& earlier(Years& years) {
    return years.dossier.visits[0].session.conditions;
}

INSTANTIATE_TEST_SUITE_P(
    All, Circumstances,
    testing::Values(
        Circumstance{"compare.throttle", Treatment::prevents,
                     [](Years& of) { later(of).throttle = Throttle::closed; }},
        Circumstance{"compare.throttle_unknown", Treatment::not_noted,
                     [](Years& of) { later(of).throttle = Throttle::unknown; }},
        Circumstance{"compare.throttle_unknown", Treatment::not_noted,
                     [](Years& of) {
                         earlier(of).throttle = Throttle::unknown;
                         later(of).throttle = Throttle::unknown;
                     }},
        Circumstance{"compare.induction", Treatment::allowed,
                     [](Years& of) { later(of).induction = Induction::off; }},
        Circumstance{"compare.heat", Treatment::corrected,
                     [](Years& of) { later(of).heat = EngineHeat::cold; }},
        Circumstance{"compare.heat_unknown", Treatment::not_noted,
                     [](Years& of) { later(of).heat = EngineHeat::unknown; }},
        Circumstance{"compare.heat_unknown", Treatment::not_noted,
                     [](Years& of) {
                         earlier(of).heat = EngineHeat::unknown;
                         later(of).heat = EngineHeat::unknown;
                     }},
        Circumstance{"compare.speed", Treatment::corrected,
                     [](Years& of) { later(of).cranking_speed = Years::of<RotationTag>("150rpm"); }},
        Circumstance{"compare.speed_unknown", Treatment::not_noted,
                     [](Years& of) { later(of).cranking_speed.reset(); }},
        Circumstance{"compare.cranked_by", Treatment::prevents,
                     [](Years& of) {
                         later(of).cranking_speed.reset();
                         later(of).cranked_by = CrankedBy::kick;
                     }},
        Circumstance{"compare.battery", Treatment::allowed,
                     [](Years& of) {
                         earlier(of).cranking_speed.reset();
                         later(of).cranking_speed.reset();
                         later(of).battery = Years::of<VoltageTag>("11.0V");
                     }},
        Circumstance{"compare.air_pressure", Treatment::corrected,
                     [](Years& of) { later(of).station_pressure = Years::of<PressureTag>("950hPa"); }},
        Circumstance{"compare.altitude_unknown", Treatment::not_noted,
                     [](Years& of) { later(of).station_pressure.reset(); }},
        Circumstance{"compare.oil_later", Treatment::prevents,
                     [](Years& of) { of.dossier.visits[1].readings[0].oiled = Oiled::before; }},
        Circumstance{"compare.oil_later", Treatment::prevents,
                     [](Years& of) { of.dossier.visits[1].readings[0].tag = Tag::after_oil_soak; }},
        Circumstance{"compare.oil_earlier", Treatment::prevents,
                     [](Years& of) { of.dossier.visits[0].readings[0].oiled = Oiled::before; }},
        Circumstance{"compare.oil_unknown", Treatment::not_noted,
                     [](Years& of) {
                         of.dossier.visits[1].readings[0].oiled = Oiled::unknown;
                         of.dossier.visits[1].readings[0].tag = Tag::after_repair;
                     }},
        Circumstance{
            "compare.oil_amount", Treatment::prevents,
            [](Years& of) { of.dossier.visits[1].readings[1].oil_volume = Years::of<VolumeTag>("15ml"); }},
        Circumstance{"compare.oil_amount_unknown", Treatment::not_noted,
                     [](Years& of) { of.dossier.visits[1].readings[1].oil_volume.reset(); }},
        Circumstance{"compare.decompressor", Treatment::prevents,
                     [](Years& of) {
                         of.dossier.engine.decompressor = Decompressor::manual;
                         of.dossier.visits[1].session.prepare.push_back(
                             {PrepareStep::decompressor_off, StepState::done, ""});
                     }},
        Circumstance{"compare.pulls", Treatment::corrected,
                     [](Years& of) {
                         of.dossier.visits[0].readings[0].pulls = 3;
                         of.dossier.visits[1].readings[0].pulls = 8;
                     }},
        Circumstance{"compare.gauge_as_it_is", Treatment::allowed, [](Years& of) {
                         Tester& other = of.add_tester(TesterKind::compression_gauge, "16bar");
                         other.hose_volume.reset();
                         of.dossier.visits[1].session.compression_gauge = other.id;
                     }}));

TEST(CircumstancesOf, LeakDownOfAnEngineNobodyCalledWarmOrColdAreTakenAsAlike) {
    Years years = leak_twice("70psi", "75psi");
    EXPECT_EQ(reason(years.compare().reasons, "compare.heat_unknown"), nullptr);
    for (Visit& visit : years.dossier.visits)
        visit.session.conditions.heat = EngineHeat::unknown;
    const Comparison found = years.compare();
    const Reason* said = reason(found.reasons, "compare.heat_unknown");
    ASSERT_NE(said, nullptr);
    EXPECT_EQ(said->treatment, Treatment::not_noted);
    EXPECT_TRUE(found.comparable());
}

TEST(CircumstancesOf, OilBeforeLeakDownAndWrongTdcPrevent) {
    Years years = leak_twice("50psi", "70psi");
    years.dossier.visits[1].readings[0].oiled = Oiled::fresh;
    EXPECT_NE(reason(years.compare().reasons, "compare.oil_later"), nullptr);
    EXPECT_EQ(years.compare().cylinders.front().leak_down->verdict, Verdict::not_comparable);

    years = leak_twice("5psi", "70psi");
    years.hear(years.dossier.visits[0], Exit::intake, Loudness::strong);
    years.hear(years.dossier.visits[0], Exit::exhaust, Loudness::strong);
    EXPECT_NE(reason(years.compare().reasons, "compare.tdc"), nullptr);
    EXPECT_EQ(years.compare().cylinders.front().leak_down->verdict, Verdict::not_comparable);
}

TEST(CircumstancesOf, WarmAgainstColdWidensALeakDown) {
    Years years = leak_twice("60psi", "70psi");
    const double alike = years.compare().cylinders.front().leak_down->u;
    later(years).heat = EngineHeat::cold;
    const Comparison found = years.compare();
    EXPECT_EQ(reason(found.reasons, "compare.heat_leak")->treatment, Treatment::allowed);
    // 20 % of 25 % (assets/reference)
    EXPECT_NEAR(found.cylinders.front().leak_down->u, std::hypot(alike, 0.2 * 0.25), 1e-9);
}

TEST(CircumstancesOf, AnAdapterThatWasNotNotedIsTheOneOfTheOtherVisit) {
    Years years;
    years.tester(years.gauge).adapters = {
        {"long", "", {}, Years::of<VolumeTag>("4cm3"), AdapterSeal::screwed},
        {"short", "", {}, Years::of<VolumeTag>("1cm3"), AdapterSeal::screwed}};
    years.dry(years.open(), "9.0bar").adapter = "long";
    Reading& now = years.dry(years.open(), "9.0bar");
    const Comparison alike = years.compare();
    EXPECT_EQ(reason(alike.reasons, "compare.adapter"), nullptr);
    EXPECT_DOUBLE_EQ(alike.cylinders.front().dry->before->compared.si,
                     alike.cylinders.front().dry->before->as_measured.si);
    now.adapter = "short";
    const Comparison other = years.compare();
    EXPECT_NE(reason(other.reasons, "compare.adapter"), nullptr);
    EXPECT_GT(other.cylinders.front().dry->before->compared.si,
              other.cylinders.front().dry->before->as_measured.si);
}

TEST(CircumstancesOf, AReasonNamesItsCylindersOnce) {
    Years years(3);
    Visit& before = years.open();
    Visit& after = years.open();
    for (int number = 1; number <= 3; ++number) {
        years.dry(before, "9.0bar", number);
        years.dry(after, "9.0bar", number);
    }
    after.readings[1].oiled = Oiled::before;
    after.readings[2].oiled = Oiled::before;
    const Comparison found = years.compare();
    ASSERT_EQ(found.reasons.size(), 1U);
    EXPECT_EQ(found.reasons.front().cylinders, (findings::CylinderList{2, 3}));
    EXPECT_EQ(found.cylinders[0].dry->verdict, Verdict::no_real_change);
    EXPECT_EQ(found.cylinders[1].dry->verdict, Verdict::not_comparable);
}

}  // namespace
}  // namespace lapwing::compare
