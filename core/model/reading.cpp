// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/reading.h"

#include <algorithm>
#include <cmath>

#include "core/model/check.h"

namespace lapwing {
namespace {

using model::Check;

void need(Check& check, bool there, TestKind test, std::string_view what) {
    check.that(there, "reading.field_missing", "This {} reading has no {}: type it in.", word(test), what);
}

void forbid(Check& check, bool there, TestKind test, std::string_view what) {
    check.that(!there, "reading.field_out_of_place",
               "A {} reading has no {}: leave it out or choose the right test.", word(test), what);
}

void check_fields_of_test(Check& check, const Reading& reading) {
    const auto test = reading.test;
    const bool cranking = test == TestKind::dry || test == TestKind::wet;
    if (cranking) {
        need(check, reading.final.has_value(), test, "final reading");
        forbid(check, reading.set.has_value(), test, "set pressure");
        forbid(check, reading.held.has_value(), test, "held pressure");
    } else {
        need(check, reading.set.has_value(), test, "set pressure");
        need(check, reading.held.has_value(), test,
             test == TestKind::leak_down ? "held pressure" : "end pressure");
        forbid(check, reading.final.has_value(), test, "final reading");
        forbid(check, reading.first.has_value(), test, "first puff");
        forbid(check, reading.pulls.has_value(), test, "number of pulls");
        forbid(check, reading.cranked_by != CrankedBy::unknown, test, "way of cranking");
    }
    if (test == TestKind::crankcase)
        need(check, reading.hold.has_value(), test, "time held");
    else
        forbid(check, reading.hold.has_value(), test, "time held");
    if (test != TestKind::wet) {
        forbid(check, reading.oil_volume.has_value(), test, "oil volume");
        forbid(check, !reading.oil_name.empty(), test, "oil");
    }
}

void check_dial(Check& check, const Reading& reading) {
    if (!reading.dial_loss) return;
    if (reading.test != TestKind::leak_down) forbid(check, true, reading.test, "leakage on the dial");
    check.within(reading.dial_loss, 0.0, 1.0, "Leakage on the dial");
    if (!reading.set || !reading.held) return;
    const double stands_for = reading.set->si() * (1.0 - reading.dial_loss->si());
    check.that(std::abs(reading.held->si() - stands_for) <= reading.held->step_si(), "reading.dial_disagrees",
               "{} on the dial is not {} of {}: leave out one of the two.", reading.dial_loss->text(),
               reading.held->text(), reading.set->text());
}

/// Exits of a two-stroke's crankcase, which no one cylinder need own.
bool is_crankcase_exit(Exit exit) {
    return exit == Exit::crank_seals || exit == Exit::base_gasket || exit == Exit::reed ||
           exit == Exit::other;
}

}  // namespace

Result<Reading> checked(Reading reading) {
    Check check("reading");
    check.id(reading.id.uuid, "id");
    check.id(reading.session.uuid, "session");
    check.time(reading.taken_at, "Time");
    check.within(reading.cylinder, reading.test == TestKind::crankcase ? 0 : 1, 99, "Cylinder");
    check_fields_of_test(check, reading);
    check.gauge_pressure(reading.first, "First puff");
    check.gauge_pressure(reading.final, "Final reading");
    if (reading.pulls) check.within(*reading.pulls, 0, 99, "Pulls");
    check.gauge_pressure(reading.set, "Set pressure");
    if (reading.set && reading.test == TestKind::leak_down)
        check.positive(reading.set, model::highest_gauge_pa, "Set pressure");
    check.gauge_pressure(reading.held, "Held pressure");
    check_dial(check, reading);
    check.positive(reading.hold, 86'400.0, "Time held");
    check.within(reading.oil_volume, 0.0, 2e-3, "Oil volume");
    check.text(reading.oil_name, "Oil", 500);
    check.text(reading.adapter, "Adapter", 500);
    check.text(reading.note, "Note");
    check.that(!(reading.replaces == reading.id), "reading.replaces_itself",
               "The reading stands in for itself: record it again.");
    model::check_lineage(check, reading.lineage);
    return check.done(std::move(reading));
}

TypedPressure held_by_dial(const TypedPressure& set, const TypedRatio& loss) {
    const double step = std::abs(set.number()) * loss.step_si();
    const int decimals = step > 0.0 ? static_cast<int>(std::ceil(-std::log10(step))) + 1 : 0;
    return TypedPressure::from(set.value() * (1.0 - loss.si()), set.unit(), std::clamp(decimals, 0, 12));
}

double step_pa(const Reading& reading, std::optional<TypedPressure> Reading::*field) {
    if (field == &Reading::held && reading.dial_loss && reading.set)
        return reading.set->si() * reading.dial_loss->step_si();
    return (reading.*field)->step_si();
}

Result<ExitNote> checked(ExitNote note) {
    Check check("exit");
    check.id(note.id.uuid, "id");
    check.id(note.session.uuid, "session");
    check.time(note.at, "Time");
    check.within(note.cylinder, is_crankcase_exit(note.exit) ? 0 : 1, 99, "Cylinder");
    if (note.neighbour) {
        check.that(note.exit == Exit::next_plug_hole, "exit.neighbour_out_of_place",
                   "The exit \"{}\" names a neighbour (cylinder {}): only next cylinder's plug hole has one.",
                   word(note.exit), *note.neighbour);
        check.within(*note.neighbour, 1, 99, "Neighbour");
        check.that(*note.neighbour != note.cylinder, "exit.own_neighbour",
                   "Cylinder {} is named as its own neighbour: name the other one.", note.cylinder);
    }
    check.text(note.note, "Note");
    check.that(!(note.replaces == note.id), "exit.replaces_itself",
               "The exit stands in for itself: record it again.");
    model::check_lineage(check, note.lineage);
    return check.done(std::move(note));
}

Result<Clearance> checked(Clearance clearance) {
    Check check("clearance");
    check.id(clearance.id.uuid, "id");
    check.id(clearance.session.uuid, "session");
    check.time(clearance.at, "Time");
    check.within(clearance.cylinder, 1, 99, "Cylinder");
    check.within(clearance.valve, 1, 4, "Valve");
    check.that(clearance.found || clearance.left, "clearance.empty",
               "The clearance of the {} valve of cylinder {} has no figure: type it as found or as left.",
               word(clearance.side), clearance.cylinder);
    check.within(clearance.found, 0.0, 0.01, "Clearance found");
    check.within(clearance.left, 0.0, 0.01, "Clearance left");
    check.text(clearance.note, "Note");
    check.that(!(clearance.replaces == clearance.id), "clearance.replaces_itself",
               "The clearance stands in for itself: record it again.");
    model::check_lineage(check, clearance.lineage);
    return check.done(std::move(clearance));
}

}  // namespace lapwing
