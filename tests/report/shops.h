// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>

#include "tests/core/report/sample.h"

/// Engines of every kind that a workshop meets, with a whole visit each. All figures are invented.
namespace lapwing::report::sample {

/// What most cards have.
inline void fill_card(Engine& engine, const char* bore, const char* stroke, const char* ratio) {
    engine.bore = Sourced<TypedLength>{mm(bore), Origin::manual, ""};
    engine.stroke = Sourced<TypedLength>{mm(stroke), Origin::manual, ""};
    engine.rod = Sourced<TypedLength>{mm("145"), Origin::guessed, ""};
    engine.compression_ratio = Sourced<TypedRatio>{*TypedRatio::make(ratio, units::one), Origin::manual, ""};
    engine.valves.intake_closing =
        Sourced<TypedAngle>{*TypedAngle::make("60", units::deg), Origin::guessed, ""};
    engine.cooling = Cooling::liquid;
    engine.decompressor = Decompressor::none;
    engine.shop_altitude = metres("120");
}

inline void fill_limits(Engine& engine, const char* low, const char* high, const char* lowest) {
    engine.limits.low = bar(low);
    engine.limits.high = bar(high);
    engine.limits.lowest = bar(lowest);
    engine.limits.origin = Origin::manual;
}

inline void fill_conditions(Session& session) {
    session.conditions.altitude = metres("120");
    session.conditions.air = *TypedTemperature::make("18", units::deg_c);
    session.conditions.heat = EngineHeat::cold;
    session.conditions.throttle = Throttle::held_open;
    session.conditions.cranked_by = CrankedBy::starter;
}

/// Photos of gauges, read by hand and by the app, and what a mentor says of it.
inline void add_evidence(Visit& visit) {
    for (const std::size_t i : {0U, 4U, 8U}) {
        const Reading& reading = visit.readings.at(i % visit.readings.size());
        Attachment photo;
        photo.session = visit.session.id;
        photo.tie = {TiedTo::reading, reading.id.uuid, {}, {}};
        photo.photo_of = PhotoOf::gauge;
        photo.sha256 = std::string(64, 'a');
        photo.media_type = "image/jpeg";
        photo.read_value = reading.final ? reading.final : reading.held;
        photo.read_uncertainty = bar("0.1");
        if (i == 4U) photo.caption = "Needle shook";
        visit.attachments.push_back(photo);
    }
    Note cause;
    cause.kind = NoteKind::other_cause;
    cause.cause = Cause::intake;
    cause.tie = {TiedTo::finding, {}, 3, "cylinder.leaks_at"};
    cause.author = "A mentor far away";
    cause.text = "The intake seat looks pitted on the photo.";
    cause.at = day("2026-03-16");
    Note request = cause;
    request.kind = NoteKind::test_request;
    request.cause.reset();
    request.test = TestKind::leak_down;
    request.tie = {TiedTo::reading, visit.readings.front().id.uuid, {}, {}};
    request.text = "Please once more with the valve staked.";
    visit.notes = {cause, request};
}

/// Cylinder 3 burns its exhaust valve; the others read the same within the gauge's doubt. With a plan and the
/// owner's answer.
inline Shop petrol_four() {
    Shop shop(4);
    Engine& engine = shop.dossier.engine;
    engine.name = "Valley four";
    engine.description = "Saloon car, 1998 cm³";
    engine.owner = {"Valley Garage Club", ""};
    engine.firing_order = {1, 3, 4, 2};
    fill_card(engine, "86", "86", "10");
    fill_limits(engine, "11.0", "14.0", "9.5");
    shop.shelve_testers();
    Visit& visit = shop.visit("2026-03-14", "As found");
    visit.session.job_number = "207";
    visit.session.usage = *TypedUsage::make("184000", units::km);
    visit.session.complaint = {{Symptom::misfire, Symptom::power_loss}, "Shakes at idle, worse when warm."};
    fill_conditions(visit.session);
    const std::array dry{"12.4", "12.1", "7.8", "12.3"};
    const std::array wet{"12.9", "12.6", "8.0", "12.8"};
    const std::array held{"5.1", "5.0", "3.1", "5.1"};
    for (int number = 1; number <= 4; ++number) {
        const auto i = static_cast<std::size_t>(number - 1);
        shop.dry(visit, number, dry[i]);
        shop.leak(visit, number, "5.5", held[i]);
        const bool burnt = number == 3;
        shop.hear(visit, number, Exit::exhaust, burnt ? Loudness::strong : Loudness::nothing);
        shop.hear(visit, number, Exit::intake, Loudness::nothing);
        shop.hear(visit, number, Exit::breather, Loudness::faint);
        shop.measure_clearance(visit, number, ValveSide::exhaust, 1, burnt ? "0.22" : "0.28");
        shop.measure_clearance(visit, number, ValveSide::intake, 1, "0.20");
    }
    for (int number = 1; number <= 4; ++number)
        shop.wet(visit, number, wet[static_cast<std::size_t>(number - 1)]);
    PlanLine strip;
    strip.session = visit.session.id;
    strip.option = PlanOption::strip;
    strip.cylinder = 3;
    strip.work = "Head off, exhaust valve and seat";
    strip.parts = "Valve, gasket set";
    strip.labour = *TypedTime::make("7.5", *Unit<TimeTag>::find("h"));
    strip.price = Money{"640", "EUR"};
    strip.if_left = "The seat burns away and the head is lost.";
    visit.plan = {strip};
    visit.session.owner_answer = OwnerAnswer::later;
    add_evidence(visit);
    return shop;
}

/// Cylinders 6 and 8 leak through the joint between them; nobody listened at the rest, which read the same
/// within the gauge's doubt.
inline Shop vee_eight() {
    Shop shop(8);
    Engine& engine = shop.dossier.engine;
    engine.name = "Quarry V8";
    engine.description = "Lorry, 5.7 l";
    engine.arrangement = Arrangement::vee;
    engine.bank_angle = *TypedAngle::make("90", units::deg);
    engine.firing_order = {1, 8, 4, 3, 6, 5, 7, 2};
    fill_card(engine, "101.6", "88.4", "9.4");
    for (Cylinder& cylinder : engine.cylinders)
        cylinder.bank = cylinder.number % 2 == 0;
    lay_out(engine);
    fill_limits(engine, "10.0", "13.0", "9.0");
    shop.shelve_testers();
    Visit& visit = shop.visit("2026-03-14", "As found");
    visit.session.usage = *TypedUsage::make("96000", units::km);
    visit.session.complaint = {{Symptom::misfire}, ""};
    fill_conditions(visit.session);
    const std::array dry{"11.8", "11.6", "11.4", "11.9", "11.7", "6.2", "11.5", "6.6"};
    for (int number = 1; number <= 8; ++number)
        shop.dry(visit, number, dry[static_cast<std::size_t>(number - 1)]);
    for (const int number : {6, 8}) {
        shop.leak(visit, number, "5.5", "2.7");
        shop.hear(visit, number, Exit::intake, Loudness::nothing);
        shop.hear(visit, number, Exit::exhaust, Loudness::nothing);
        shop.hear(visit, number, Exit::breather, Loudness::faint);
        shop.hear(visit, number, Exit::next_plug_hole, Loudness::strong);
        visit.exits.back().neighbour = number == 6 ? 8 : 6;
    }
    return shop;
}

/// Cylinder 3 is low, with most air at the exhaust; a tall gauge, glow-plug adapters, no wet test.
inline Shop diesel_four() {
    Shop shop(4);
    Engine& engine = shop.dossier.engine;
    engine.name = "Field tractor";
    engine.description = "Diesel, 3.9 l";
    engine.fuel = Fuel::diesel;
    engine.firing_order = {1, 3, 4, 2};
    fill_card(engine, "100", "125", "17.5");
    fill_limits(engine, "26", "34", "22");
    shop.shelve_testers();
    shop.dossier.testers[0].gauge.full_scale = bar("40");
    shop.dossier.testers[0].gauge.division = bar("0.5");
    Visit& visit = shop.visit("2026-03-14", "Smokes blue");
    visit.session.usage = *TypedUsage::make("6400", units::hour);
    visit.session.complaint = {{Symptom::hard_starting, Symptom::blue_smoke}, "Starts only with the heater."};
    fill_conditions(visit.session);
    visit.session.prepare = {{PrepareStep::plug_wells_blown_out, StepState::not_done, ""},
                             {PrepareStep::battery, StepState::not_done, "Charger was in use"}};
    const std::array dry{"28", "27", "18", "28"};
    const std::array held{"5.0", "4.9", "3.6", "5.0"};
    for (int number = 1; number <= 4; ++number) {
        const auto i = static_cast<std::size_t>(number - 1);
        shop.dry(visit, number, dry[i]);
        shop.leak(visit, number, "5.5", held[i]);
        const bool low = number == 3;
        shop.hear(visit, number, Exit::exhaust, low ? Loudness::clear : Loudness::nothing);
        shop.hear(visit, number, Exit::breather, low ? Loudness::clear : Loudness::faint);
        shop.hear(visit, number, Exit::intake, Loudness::nothing);
    }
    return shop;
}

/// An air-cooled two-stroke twin with its crankcase tested; cylinder 2 has worn rings.
inline Shop two_stroke_twin() {
    Shop shop(2);
    Engine& engine = shop.dossier.engine;
    engine.name = "Moor twin";
    engine.description = "Two-stroke motorcycle, 347 cm³";
    engine.cycle = StrokeCycle::two;
    engine.cylinders[0].name = "left";
    engine.cylinders[1].name = "right";
    engine.firing_order = {1, 2};
    fill_card(engine, "64", "54", "7.2");
    engine.cooling = Cooling::air;
    engine.valves = {};
    engine.valves.intake_valves = engine.valves.exhaust_valves = 0;
    engine.rod = Sourced<TypedLength>{mm("110"), Origin::guessed, ""};
    engine.exhaust_port_closing =
        Sourced<TypedAngle>{*TypedAngle::make("95", units::deg), Origin::measured, ""};
    fill_limits(engine, "8.0", "10.0", "6.5");
    shop.shelve_testers();
    Visit& visit = shop.visit("2026-03-14", "As found");
    visit.session.usage = *TypedUsage::make("21000", units::km);
    visit.session.complaint = {{Symptom::hard_starting, Symptom::power_loss}, ""};
    fill_conditions(visit.session);
    visit.session.conditions.cranked_by = CrankedBy::kick;
    shop.dry(visit, 1, "8.9");
    shop.dry(visit, 2, "6.1");
    shop.leak(visit, 1, "5.5", "5.0");
    shop.leak(visit, 2, "5.5", "3.4");
    for (const int number : {1, 2}) {
        shop.hear(visit, number, Exit::exhaust, number == 2 ? Loudness::strong : Loudness::faint);
        shop.hear(visit, number, Exit::joint, Loudness::nothing);
    }
    for (const int number : {1, 2}) {
        Reading& hold = shop.read(visit, TestKind::crankcase, number);
        hold.set = bar("0.5");
        hold.held = bar(number == 1 ? "0.48" : "0.35");
        hold.hold = *TypedTime::make("3", units::minute);
    }
    return shop;
}

inline Shop quay_six() {
    Shop shop(6);
    Engine& engine = shop.dossier.engine;
    engine.name = "Quay six";
    engine.description = "Launch engine, 2993 cm³";
    engine.firing_order = {1, 5, 3, 6, 2, 4};
    fill_card(engine, "84", "90", "9.2");
    fill_limits(engine, "10.0", "13.0", "8.8");
    shop.shelve_testers();
    return shop;
}

/// Cylinders 2 and 3 are low side by side: dry readings, one leak-down, and nobody listened.
inline Shop six_unheard() {
    Shop shop = quay_six();
    shop.dossier.engine.history = "Stood two winters in the boathouse.";
    Visit& visit = shop.visit("2026-03-14", "As found");
    fill_conditions(visit.session);
    const std::array dry{"11.8", "7.6", "7.4", "11.7", "11.8", "11.6"};
    for (int number = 1; number <= 6; ++number)
        shop.dry(visit, number, dry[static_cast<std::size_t>(number - 1)]);
    shop.leak(visit, 2, "5.5", "3.4");
    return shop;
}

/// A six at three visits: cylinder 2 loses from year to year, and four cylinders read the same at the end.
inline Shop six_over_years() {
    Shop shop = quay_six();
    const std::array titles{"As found", "After the repair", "A year later"};
    const std::array dates{"2024-03-14", "2024-05-02", "2026-03-14"};
    const std::array<std::array<const char*, 6>, 3> dry{{{"11.9", "8.1", "11.6", "11.8", "11.7", "11.9"},
                                                         {"11.9", "11.7", "11.8", "11.9", "11.8", "11.9"},
                                                         {"11.8", "10.1", "11.6", "11.8", "11.8", "11.8"}}};
    for (std::size_t i = 0; i < titles.size(); ++i) {
        Visit& visit = shop.visit(dates[i], titles[i]);
        fill_conditions(visit.session);
        visit.session.usage = *TypedUsage::make(std::to_string(1200 + 150 * i), units::hour);
        for (int number = 1; number <= 6; ++number) {
            const bool low = number == 2 && i != 1;
            shop.dry(visit, number, dry[i][static_cast<std::size_t>(number - 1)]);
            shop.leak(visit, number, "5.5", low ? "4.3" : "5.1");
            shop.hear(visit, number, Exit::breather, low ? Loudness::clear : Loudness::faint);
            shop.hear(visit, number, Exit::exhaust, Loudness::nothing);
            shop.hear(visit, number, Exit::intake, Loudness::nothing);
        }
    }
    return shop;
}

}  // namespace lapwing::report::sample
