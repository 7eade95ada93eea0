// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/codes.h"

#include <rapidcheck.h>

#include <cmath>

#include "tests/core/compare/years.h"
#include "tests/core/findings/letters.h"

namespace lapwing::compare {
namespace {

void expect_listed(const findings::Message& message) {
    findings::expect_listed_in(codes::all, message);
}

template <class Enum>
Enum any_of() {
    return static_cast<Enum>(*rc::gen::inRange<int>(0, static_cast<int>(Words<Enum>::list.size())));
}

bool sometimes() {
    return *rc::gen::inRange(0, 3) == 0;
}

std::string number(int low, int high, const char* unit) {
    return std::to_string(*rc::gen::inRange(low, high)) + unit;
}

void shuffle_conditions(Conditions& conditions) {
    if (sometimes()) conditions.heat = any_of<EngineHeat>();
    if (sometimes()) conditions.throttle = any_of<Throttle>();
    if (sometimes()) conditions.induction = any_of<Induction>();
    if (sometimes()) conditions.cranked_by = any_of<CrankedBy>();
    if (sometimes()) conditions.cranking_speed.reset();
    if (sometimes()) conditions.cranking_speed = Years::of<RotationTag>(number(60, 500, "rpm"));
    if (sometimes()) conditions.battery = Years::of<VoltageTag>(number(10, 15, "V"));
    if (sometimes()) conditions.station_pressure.reset();
    if (sometimes()) conditions.station_pressure = Years::of<PressureTag>(number(700, 1050, "hPa"));
}

Years any_years() {
    Years years(*rc::gen::inRange(1, 4));
    Engine& engine = years.dossier.engine;
    if (sometimes()) engine.bore.reset();
    engine.decompressor = sometimes() ? Decompressor::manual : Decompressor::none;
    engine.fuel = any_of<Fuel>();
    engine.cycle = any_of<StrokeCycle>();
    const auto other_gauge = years.add_tester(TesterKind::compression_gauge, "10bar").id;
    const auto other_tester = years.add_tester(TesterKind::leak_down, "7bar").id;
    const int visits = *rc::gen::inRange(1, 6);
    for (int i = 0; i < visits; ++i) {
        Visit& visit = years.open(*rc::gen::inRange(1, 400));
        shuffle_conditions(visit.session.conditions);
        if (sometimes()) visit.session.compression_gauge = other_gauge;
        if (sometimes()) visit.session.leak_down_tester = other_tester;
        if (sometimes()) visit.session.compression_gauge.reset();
        if (sometimes()) visit.session.leak_down_tester.reset();
        for (const Cylinder& cylinder : engine.cylinders) {
            const Tag tag = any_of<Tag>();
            if (!sometimes()) {
                Reading& dry = years.dry(visit, number(0, 16, "bar"), cylinder.number, tag);
                dry.oiled = any_of<Oiled>();
                if (sometimes()) dry.pulls = *rc::gen::inRange(1, 12);
            }
            if (!sometimes()) {
                const int set = *rc::gen::inRange(1, 8);
                years
                    .leak(visit, std::to_string(set) + "bar", number(0, set + 1, "bar"), cylinder.number, tag)
                    .oiled = any_of<Oiled>();
            }
            if (sometimes())
                years.wet(visit, number(0, 16, "bar"), sometimes() ? "" : number(1, 20, "ml"),
                          cylinder.number);
            if (sometimes()) years.hear(visit, any_of<Exit>(), any_of<Loudness>(), cylinder.number, tag);
            if (sometimes()) {
                PlanLine& line = years.done(visit, cylinder.number, *rc::gen::inRange(1, 60));
                line.predicted_low = Years::of<PressureTag>("8bar");
                line.predicted_high = Years::of<PressureTag>("10bar");
            }
        }
    }
    return years;
}

TEST(Codes, EverythingSaidOfAnyYearsIsListedWithItsArguments) {
    EXPECT_TRUE(rc::check([] {
        const Years years = any_years();
        const History history = history_of(years.dossier, Years::reference());
        for (const Reason& reason : history.reasons)
            expect_listed(reason.message);
        for (const CylinderHistory& cylinder : history.cylinders) {
            for (const Series& series : cylinder.series)
                if (series.trend) expect_listed(series.trend->says);
            if (!cylinder.since_repair) continue;
            expect_listed(cylinder.since_repair->message);
            for (const auto& evidence : cylinder.since_repair->evidence)
                expect_listed(evidence);
        }
        const auto proofs = proofs_of(years.dossier, Years::reference());
        for (const Proof& proof : proofs)
            expect_listed(proof.says);
        for (const Proof& proof : proofs)
            if (proof.why_apart) expect_listed(*proof.why_apart);
        const HitRate rate = hit_rate(proofs, Years::reference());
        expect_listed(rate.says);
        if (rate.says_apart) expect_listed(*rate.says_apart);
        if (years.dossier.visits.size() < 2) return;
        const Comparison found = years.compare(0, years.dossier.visits.size() - 1);
        for (const Reason& reason : found.reasons)
            expect_listed(reason.message);
        for (const CylinderChange& cylinder : found.cylinders)
            for (const TestKind test : {TestKind::dry, TestKind::leak_down, TestKind::wet}) {
                const Change* change = cylinder.of(test);
                if (!change || !change->difference) continue;
                // Whatever was entered, the figures are figures.
                RC_ASSERT(std::isfinite(change->difference->figure.si));
                RC_ASSERT(std::isfinite(change->u) && change->u > 0.0);
                for (const auto& note : change->difference->from.notes)
                    expect_listed(note);
            }
    }));
}

}  // namespace
}  // namespace lapwing::compare
