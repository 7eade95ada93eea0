// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/session.h"

#include <algorithm>
#include <numbers>
#include <set>

#include "core/model/check.h"

namespace lapwing {
namespace {

using model::Check;

void check_conditions(Check& check, const Conditions& conditions) {
    constexpr double rpm = std::numbers::pi / 30.0;
    check.within(conditions.altitude, -500.0, 9000.0, "Altitude of the shop");
    check.within(conditions.station_pressure, 20'000.0, 120'000.0, "Air pressure at the shop");
    check.within(conditions.air, 203.15, 353.15, "Air temperature");
    check.within(conditions.coolant, 203.15, 573.15, "Coolant temperature");
    check.within(conditions.battery, 0.0, 100.0, "Battery voltage");
    check.within(conditions.cranking_speed, 0.0, 5000.0 * rpm, "Cranking speed");
}

}  // namespace

Result<Session> checked(Session session) {
    Check check("session");
    check.id(session.id.uuid, "id");
    check.id(session.engine.uuid, "engine");
    check.time(session.opened_at, "Time");
    check.text(session.title, "Title", 500);
    if (session.usage)
        check.that(session.usage->number() >= 0.0 && session.usage->number() <= 1e8, "session.usage",
                   "{} run by the engine is impossible: type the distance or hours since new, or leave it "
                   "empty.",
                   session.usage->text());
    check.text(session.job_number, "Job number", 500);
    check.text(session.complaint.text, "Complaint");
    std::set<Symptom> symptoms;
    for (const auto symptom : session.complaint.symptoms)
        check.that(symptoms.insert(symptom).second, "session.symptom_twice",
                   "The complaint names \"{}\" twice: once is enough.", word(symptom));
    check_conditions(check, session.conditions);
    std::set<PrepareStep> steps;
    for (const auto& mark : session.prepare) {
        check.that(steps.insert(mark.step).second, "session.step_twice",
                   "The step \"{}\" of Prepare is marked twice: keep one mark.", word(mark.step));
        check.text(mark.note, "Note of a step of Prepare");
    }
    if (session.owner_answered_at) check.time(*session.owner_answered_at, "Date of the owner's answer");
    if (session.retest_planned_for) check.time(*session.retest_planned_for, "Date of the planned retest");
    check.text(session.note, "Note");
    model::check_lineage(check, session.lineage);
    return check.done(std::move(session));
}

StepState step_state(const Session& session, PrepareStep step) {
    const auto mark = std::ranges::find(session.prepare, step, &PrepareMark::step);
    return mark == session.prepare.end() ? StepState::open : mark->state;
}

}  // namespace lapwing
