// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <string>
#include <variant>
#include <vector>

#include "core/findings/case.h"
#include "core/report/make_report.h"

/// Invented engines with invented readings for reports.
namespace lapwing::report::sample {

/// Null when the report has no such section.
inline const Section* section(const Report& report, Label heading) {
    const auto found = std::ranges::find(report.sections, heading, &Section::heading);
    return found == report.sections.end() ? nullptr : &*found;
}

template <class Block>
std::vector<const Block*> blocks(const Section& section) {
    std::vector<const Block*> found;
    for (const auto& block : section.blocks)
        if (const auto* one = std::get_if<Block>(&block)) found.push_back(one);
    return found;
}

inline TypedPressure bar(const std::string& digits) {
    return *TypedPressure::make(digits, units::bar);
}
inline TypedLength mm(const std::string& digits) {
    return *TypedLength::make(digits, units::mm);
}
inline TypedLength metres(const std::string& digits) {
    return *TypedLength::make(digits, units::m);
}
inline Timestamp day(const char* date) {
    return *parse_rfc3339(std::string(date) + "T09:30:00+01:00");
}

class Shop {
public:
    Dossier dossier;

    explicit Shop(int cylinders) : clock_(day("2026-01-05")) {
        Engine& engine = dossier.engine;
        engine.id = EngineId::make(clock_);
        engine.name = "Bench engine";
        for (int number = 1; number <= cylinders; ++number) {
            Cylinder cylinder;
            cylinder.number = number;
            engine.cylinders.push_back(cylinder);
        }
        engine.valves.adjuster = Adjuster::screw;
    }

    /// The shop's two testers, both checked.
    void shelve_testers() {
        Tester gauge;
        gauge.id = TesterId::make(clock_);
        gauge.kind = TesterKind::compression_gauge;
        gauge.name = "Bench gauge";
        gauge.gauge = {bar("16"), AccuracyScheme::en_837_1, "1.6", bar("0.2"), {}, {}};
        gauge.hose_volume = *TypedVolume::make("12", units::cm3);
        gauge.check_valve_at = CheckValveAt::chamber_end;
        gauge.checks = {
            {TesterCheckKind::holds_after_cranking, day("2026-01-03"), CheckResult::passed, {}, {}, {}, ""},
            {TesterCheckKind::zero_at_rest, day("2026-01-04"), CheckResult::passed, {}, {}, {}, ""}};
        Tester leak;
        leak.id = TesterId::make(clock_);
        leak.kind = TesterKind::leak_down;
        leak.name = "Own build";
        leak.home_made = true;
        leak.gauge = {bar("10"), AccuracyScheme::en_837_1, "1.6", bar("0.1"), {}, {}};
        leak.supply_gauge = leak.gauge;
        leak.set_pressure = bar("5.5");
        leak.restrictor = mm("1.0");
        leak.checks = {
            {TesterCheckKind::outlet_blocked, day("2026-01-03"), CheckResult::passed, {}, {}, {}, ""}};
        dossier.testers = {gauge, leak};
    }

    Visit& visit(const char* date, const std::string& title) {
        Visit visit;
        visit.session.id = SessionId::make(clock_);
        visit.session.engine = dossier.engine.id;
        visit.session.opened_at = day(date);
        visit.session.title = title;
        for (const Tester& tester : dossier.testers)
            (tester.kind == TesterKind::leak_down ? visit.session.leak_down_tester
                                                  : visit.session.compression_gauge) = tester.id;
        dossier.visits.push_back(visit);
        return dossier.visits.back();
    }

    Reading& read(Visit& visit, TestKind test, int cylinder) {
        Reading reading;
        reading.id = ReadingId::make(clock_);
        reading.session = visit.session.id;
        reading.test = test;
        reading.cylinder = cylinder;
        clock_.move_by(std::chrono::minutes(1));
        reading.taken_at = clock_.now();
        visit.readings.push_back(reading);
        return visit.readings.back();
    }
    void dry(Visit& visit, int cylinder, const std::string& final, const std::string& first = "") {
        Reading& reading = read(visit, TestKind::dry, cylinder);
        reading.final = bar(final);
        if (!first.empty()) reading.first = bar(first);
    }
    void leak(Visit& visit, int cylinder, const std::string& set, const std::string& held) {
        Reading& reading = read(visit, TestKind::leak_down, cylinder);
        reading.set = bar(set);
        reading.held = bar(held);
        reading.oiled = Oiled::no;
    }
    void wet(Visit& visit, int cylinder, const std::string& final) {
        Reading& reading = read(visit, TestKind::wet, cylinder);
        reading.final = bar(final);
        reading.oiled = Oiled::fresh;
    }
    void hear(Visit& visit, int cylinder, Exit exit, Loudness loudness) {
        ExitNote note;
        note.id = ExitNoteId::make(clock_);
        note.session = visit.session.id;
        note.cylinder = cylinder;
        note.exit = exit;
        note.loudness = loudness;
        note.by = ListenedBy::hose;
        note.at = clock_.now();
        visit.exits.push_back(note);
    }
    void measure_clearance(Visit& visit, int cylinder, ValveSide side, int valve, const std::string& found) {
        Clearance clearance;
        clearance.id = ClearanceId::make(clock_);
        clearance.session = visit.session.id;
        clearance.cylinder = cylinder;
        clearance.side = side;
        clearance.valve = valve;
        clearance.found = mm(found);
        clearance.at = clock_.now();
        visit.clearances.push_back(clearance);
    }

    /// The report of the newest visit.
    [[nodiscard]] Report report(const Options& options = {true, false, day("2026-03-15"), nullptr,
                                                          true}) const {
        const findings::Reference reference = *findings::built_in_reference();
        const Visit& newest = dossier.visits.back();
        return make_report(dossier, newest, findings::find(dossier, newest, reference), reference, options);
    }

private:
    FixedClock clock_;
};

/// A V-twin with everything noted: a burnt exhaust valve in cylinder 1, worn rings in cylinder 2, and a visit
/// of the year before.
inline Shop orchard() {
    Shop shop(2);
    Engine& engine = shop.dossier.engine;
    engine.name = "Orchard V-twin";
    engine.description = "Liquid-cooled touring motorcycle";
    engine.owner = {"Mill Lane Engine Club", "bench@mill-lane.example"};
    engine.arrangement = Arrangement::vee;
    engine.cooling = Cooling::liquid;
    engine.bank_angle = *TypedAngle::make("90", units::deg);
    engine.cylinders[0].name = "front";
    engine.cylinders[1].name = "rear";
    engine.firing_order = {1, 2};
    engine.bore = Sourced<TypedLength>{mm("73.4"), Origin::manual, "page 3"};
    engine.stroke = Sourced<TypedLength>{mm("58.8"), Origin::manual, "page 3"};
    engine.rod = Sourced<TypedLength>{mm("118"), Origin::measured, ""};
    engine.compression_ratio = Sourced<TypedRatio>{*TypedRatio::make("8.6", units::one), Origin::manual, ""};
    engine.valves.intake_valves = engine.valves.exhaust_valves = 2;
    engine.valves.intake_clearance =
        Sourced<ClearanceRange>{{mm("0.10"), mm("0.15")}, Origin::manual, "page 41"};
    engine.valves.exhaust_clearance =
        Sourced<ClearanceRange>{{mm("0.15"), mm("0.20")}, Origin::manual, "page 41"};
    engine.valves.intake_closing =
        Sourced<TypedAngle>{*TypedAngle::make("65", units::deg), Origin::guessed, ""};
    engine.decompressor = Decompressor::none;
    engine.plug_thread = "M12x1.25";
    engine.shop_altitude = metres("240");
    engine.limits.low = bar("9.0");
    engine.limits.high = bar("11.5");
    engine.limits.lowest = bar("8.0");
    engine.limits.difference = bar("1.0");
    engine.limits.origin = Origin::manual;
    engine.limits.note = "page 12";
    shop.shelve_testers();

    Visit& before = shop.visit("2025-03-20", "Yearly look");
    shop.dry(before, 1, "9.6");
    shop.dry(before, 2, "8.9");

    Visit& visit = shop.visit("2026-03-14", "As found");
    visit.session.job_number = "114";
    visit.session.usage = *TypedUsage::make("8000", units::km);
    visit.session.complaint = {{Symptom::power_loss, Symptom::hard_starting}, "Lost power over one season."};
    visit.session.conditions.altitude = metres("240");
    visit.session.conditions.air = *TypedTemperature::make("9", units::deg_c);
    visit.session.conditions.heat = EngineHeat::cold;
    visit.session.conditions.throttle = Throttle::held_open;
    visit.session.conditions.cranked_by = CrankedBy::starter;
    visit.session.prepare = {{PrepareStep::all_plugs_out, StepState::done, ""},
                             {PrepareStep::battery, StepState::not_done, "Charger was in use"}};
    shop.dry(visit, 1, "6.1", "2.9");
    shop.dry(visit, 2, "7.7", "3.4");
    shop.leak(visit, 1, "5.5", "3.5");
    shop.leak(visit, 2, "5.5", "4.1");
    shop.hear(visit, 1, Exit::exhaust, Loudness::strong);
    shop.hear(visit, 1, Exit::breather, Loudness::faint);
    shop.hear(visit, 2, Exit::breather, Loudness::clear);
    shop.hear(visit, 2, Exit::exhaust, Loudness::nothing);
    shop.wet(visit, 1, "6.3");
    shop.wet(visit, 2, "9.4");
    for (int cylinder : {1, 2})
        for (int valve : {1, 2}) {
            shop.measure_clearance(visit, cylinder, ValveSide::intake, valve, "0.12");
            shop.measure_clearance(visit, cylinder, ValveSide::exhaust, valve, "0.18");
        }
    PlanLine line;
    line.session = visit.session.id;
    line.option = PlanOption::strip;
    line.cylinder = 1;
    line.work = "Head off, exhaust valves and seats";
    line.parts = "Valve set, gasket set";
    line.labour = *TypedTime::make("6", *Unit<TimeTag>::find("h"));
    line.price = Money{"420", "EUR"};
    line.if_left = "The seat burns away and the head is lost.";
    line.predicted_low = bar("9.0");
    line.predicted_high = bar("10.2");
    visit.plan = {line};
    visit.session.owner_answer = OwnerAnswer::yes;
    visit.session.owner_answered_at = day("2026-03-15");
    return shop;
}

/// Any number of cylinders, each with every test; every third one is low. `words` go wherever somebody can
/// write.
inline Shop row_of(int cylinders, const std::string& words = "") {
    Shop shop(cylinders);
    shop.shelve_testers();
    Engine& engine = shop.dossier.engine;
    engine.name = words.empty() ? "Bench row of " + std::to_string(cylinders) : words;
    engine.description = engine.history = engine.limits.note = engine.owner.name = words;
    engine.limits.low = bar("10.0");
    engine.limits.high = bar("13.0");
    engine.limits.lowest = bar("8.8");
    for (Cylinder& cylinder : engine.cylinders)
        cylinder.name = words.substr(0, 24);
    for (Tester& tester : shop.dossier.testers)
        tester.note = words;
    Visit& visit = shop.visit("2026-03-14", words.empty() ? "As found" : words);
    visit.session.complaint.text = visit.session.note = visit.session.job_number = words;
    if (!words.empty()) visit.session.prepare = {{PrepareStep::battery, StepState::not_done, words}};
    for (int number = 1; number <= cylinders; ++number) {
        const bool low = number % 3 == 0;
        shop.dry(visit, number, low ? "7.4" : "11.2", low ? "3.0" : "5.1");
        shop.leak(visit, number, "5.5", low ? "3.2" : "5.2");
        shop.hear(visit, number, Exit::intake, low ? Loudness::clear : Loudness::nothing);
        shop.hear(visit, number, Exit::exhaust, Loudness::nothing);
        shop.hear(visit, number, Exit::breather, Loudness::faint);
        shop.hear(visit, number, Exit::joint, Loudness::nothing);
        shop.wet(visit, number, low ? "7.6" : "11.6");
        shop.measure_clearance(visit, number, ValveSide::intake, 1, "0.12");
        shop.measure_clearance(visit, number, ValveSide::exhaust, 1, "0.18");
        if (!words.empty()) {
            PlanLine line;
            line.cylinder = number;
            line.work = line.reason = line.if_left = words;
            visit.plan.push_back(line);
        }
    }
    return shop;
}

/// Made-up odds of a cylinder: a burnt valve beside some air past the rings, or one that seals well.
inline odds::CylinderOdds cylinder_odds(int number, bool burnt) {
    using findings::Path;
    odds::CylinderOdds out;
    out.number = number;
    out.measured = true;
    if (!burnt) {
        out.seals_well = out.main_chance = 0.9;
        out.paths = {{Path::rings, {1.0, 1.0, 1.0}, 0.1, 0.1}};
        return out;
    }
    out.paths = {{Path::rings, {0.196, 0.1, 0.3}, 0.05, 0.1},
                 {Path::exhaust, {0.8, 0.7, 0.9}, 0.95, 0.97},
                 {Path::gasket, {0.004, 0.0, 0.01}, 0.0, 0.02}};
    out.main = Path::exhaust;
    out.main_chance = 0.95;
    out.expected_after = {{Path::exhaust, 9.6e5, 9.0e5, 10.2e5, true, {}, {}, 0.0, 0.0, {}},
                          {Path::rings, 7e5, 6e5, 8e5, false, {}, {}, 0.0, 0.0, {}}};
    out.reasons.push_back(findings::say("odds.clearance_first", number, findings::word_of(Path::exhaust)));
    return out;
}

inline odds::WhereItLeaks odds_with(std::vector<odds::CylinderOdds> cylinders) {
    odds::WhereItLeaks out;
    out.assumptions_version = 7;
    out.seed = 3;
    out.cylinders = std::move(cylinders);
    out.reasons.push_back(findings::say("odds.working_assumptions"));
    return out;
}

inline odds::WhereItLeaks odds_of_orchard() {
    return odds_with({cylinder_odds(1, true), cylinder_odds(2, false)});
}

/// To go with row_of: every third cylinder is burnt.
inline odds::WhereItLeaks odds_of_row(int cylinders) {
    std::vector<odds::CylinderOdds> all;
    for (int number = 1; number <= cylinders; ++number)
        all.push_back(cylinder_odds(number, number % 3 == 0));
    return odds_with(std::move(all));
}

}  // namespace lapwing::report::sample
