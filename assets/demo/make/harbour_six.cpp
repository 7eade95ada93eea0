// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "assets/demo/make/story.h"
#include "assets/demo/make/typed.h"
#include "assets/demo/make/workshop.h"

namespace lapwing::demo {
namespace {

using literals::operator""_mm2;

template <class T>
Sourced<T> from_handbook(T value) {
    return {std::move(value), Origin::manual, "invented handbook, engine data"};
}

void fill_card(Engine& engine) {
    engine.name = "Harbour six";
    engine.description = "In-line six car engine, 2993 cm3, invented for trying the app out";
    engine.tags = {"demo", "car"};
    engine.history = "Ran hot once last summer when the fan belt went.";
    engine.owner = {"Quayside Old Car Circle", "at the harbour office, ask for the key"};
    engine.arrangement = Arrangement::in_line;
    engine.cooling = Cooling::liquid;
    for (int number = 1; number <= 6; ++number)
        engine.cylinders.push_back({number, "", 0, 0, 0});
    lay_out(engine);
    engine.firing_order = {1, 5, 3, 6, 2, 4};
    engine.firing_intervals = even_intervals(engine);
    engine.joined_intakes = {{1, 2, 3, 4, 5, 6}};
    engine.joined_exhausts = {{1, 2, 3}, {4, 5, 6}};
    engine.bore = from_handbook(length("84mm"));
    engine.stroke = from_handbook(length("90mm"));
    engine.rod = from_handbook(length("140mm"));
    engine.compression_ratio = from_handbook(ratio("9.2"));
    ValveGear& valves = engine.valves;
    valves.adjuster = Adjuster::screw;
    valves.intake_clearance = from_handbook(ClearanceRange{length("0.20mm"), length("0.30mm")});
    valves.exhaust_clearance = from_handbook(ClearanceRange{length("0.30mm"), length("0.40mm")});
    valves.timing = ValveTiming::fixed;
    valves.intake_closing = from_handbook(angle("62deg"));
    valves.intake_closing_at = TimingAt::seat;
    valves.exhaust_opening = from_handbook(angle("60deg"));
    valves.exhaust_opening_at = TimingAt::seat;
    engine.decompressor = Decompressor::none;
    engine.plug_thread = "M14x1.25";
    engine.plug_reach = length("19mm");
    engine.limits.low = pressure("10.0bar");
    engine.limits.high = pressure("13.0bar");
    engine.limits.lowest = pressure("8.8bar");
    engine.limits.difference = pressure("1.5bar");
    engine.limits.origin = Origin::manual;
    engine.limits.note = "invented handbook, for sea level";
    engine.shop_altitude = length("5m");
}

/// Each cylinder's own small leaks, and one joint shared by 2 and 3.
Truth truth_of_the_engine() {
    const Area rings[] = {0.29_mm2, 0.32_mm2, 0.28_mm2, 0.34_mm2, 0.30_mm2, 0.27_mm2};
    const Area joint = 1.1_mm2;
    Truth out;
    for (int number = 1; number <= 6; ++number) {
        auto& ways = out[number];
        ways = {{Exit::intake, 0.005_mm2, {}},
                {Exit::exhaust, 0.01_mm2, {}},
                {Exit::breather, rings[number - 1], {}},
                {Exit::joint, Area{}, {}},
                {Exit::coolant, Area{}, {}}};
        for (const int neighbour : {number - 1, number + 1}) {
            if (neighbour < 1 || neighbour > 6) continue;
            const bool leaks = std::min(number, neighbour) == 2 && std::max(number, neighbour) == 3;
            ways.push_back({Exit::next_plug_hole, leaks ? joint : Area{}, neighbour});
        }
    }
    return out;
}

Visit as_found(Workshop& shop, const Tester& gauge, const Tester& leak_down) {
    const Truth truth = truth_of_the_engine();
    Visit visit = shop.open(gauge, leak_down, "As found");
    Session& session = visit.session;
    session.usage = usage("96400km");
    session.job_number = "Q-27";
    session.complaint.symptoms = {Symptom::misfire, Symptom::power_loss};
    session.complaint.text = "Shakes at idle since it ran hot.";
    Conditions& conditions = session.conditions;
    conditions.altitude = length("5m");
    conditions.air = temperature("16degC");
    conditions.heat = EngineHeat::warm;
    conditions.coolant = temperature("82degC");
    conditions.throttle = Throttle::held_open;
    conditions.induction = Induction::on;
    conditions.battery = voltage("12.5V");
    conditions.cranked_by = CrankedBy::remote_switch;
    conditions.cranking_speed = rotation("220rpm");
    conditions.crank_held_by = CrankHeldBy::second_person;
    shop.mark_prepare(visit, {{PrepareStep::bores_oiled, StepState::not_needed, "It runs."},
                              {PrepareStep::decompressor_off, StepState::not_needed, ""},
                              {PrepareStep::borescope, StepState::not_done, "None at hand."}});
    shop.measure_clearances(visit);
    shop.wait_minutes(60);
    shop.dry_test(visit, truth, Tag::as_found);
    shop.leak_down_test(visit, truth, Tag::as_found);
    shop.wet_test(visit, truth, {2, 3}, volume("10ml"));
    visit.notes.push_back(
        shop.note(visit, NoteKind::note, "Workshop",
                  "With the air on 2 it whistles out of plug hole 3, and the other way round."));
    PlanLine gasket = shop.plan_line(visit, PlanOption::strip, 2,
                                     "Head off, head and block checked for flatness, new gasket");
    gasket.parts = "head gasket set, head bolts";
    gasket.labour = duration("7h");
    gasket.price = Money{"380", "EUR"};
    gasket.reason = "Cylinders 2 and 3 blow into each other.";
    gasket.if_left = "The gap burns into the head and the block.";
    visit.plan.push_back(gasket);
    return visit;
}

}  // namespace

Dossier harbour_six() {
    Dossier out;
    Engine& engine = out.engine;
    Workshop shop(20250606, engine);
    shop.set_clock(moment("2025-06-06T08:10:00+02:00"));
    engine.id = EngineId{shop.id()};
    engine.made_at = shop.now();
    fill_card(engine);
    const Tester gauge = shop.compression_gauge(
        "Gauge 0-16 bar",
        {"M14 long reach", "M14x1.25", length("19mm"), volume("2.5cm3"), AdapterSeal::screwed});
    const Tester leak_down = shop.leak_down_tester("Leak-down tester, harbour");
    out.testers = {gauge, leak_down};
    shop.set_clock(moment("2025-06-06T08:30:00+02:00"));
    out.visits.push_back(as_found(shop, gauge, leak_down));
    return out;
}

}  // namespace lapwing::demo
