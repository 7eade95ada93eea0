// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/base/apart.h"
#include "core/findings/case.h"
#include "core/findings/prepare_word.h"
#include "core/findings/tester_checks.h"

namespace lapwing::findings {
namespace {

bool did(const Visit& visit, TestKind test) {
    return std::ranges::any_of(visit.readings, [&](const Reading& reading) { return reading.test == test; });
}

/// Whether a condition noted elsewhere already answers a step of Prepare.
bool answered(const Conditions& conditions, PrepareStep step) {
    switch (step) {
        case PrepareStep::throttle_open:
            return conditions.throttle != Throttle::unknown || conditions.induction == Induction::off;
        case PrepareStep::temperature_noted:
            return true;  // weak.heat_unknown says it
        case PrepareStep::battery:
            return conditions.battery.has_value();
        default:
            return false;
    }
}

/// Whether a step of Prepare says anything about the readings of this visit.
bool step_matters(const Case& at, const PrepareReason& step) {
    const bool fits =
        (step.two_stroke || !at.two_stroke()) && (step.diesel || at.engine.fuel != Fuel::diesel);
    const bool matters = std::ranges::any_of(step.tests, [&](TestKind test) { return did(at.visit, test); });
    if (!fits || !matters || step.if_not_done.empty() || answered(at.visit.session.conditions, step.step))
        return false;
    // The decompressor step is about engines that have one.
    return step.step != PrepareStep::decompressor_off || at.decompressor_works();
}

void add_steps(const Case& at, std::vector<Remark>& out) {
    if (step_state(at.visit.session, PrepareStep::bores_oiled) == StepState::done &&
        (did(at.visit, TestKind::dry) || did(at.visit, TestKind::leak_down)))
        out.push_back(remark("weak.bores_oiled"));
    for (const PrepareReason& step : at.reference.prepare)
        if (step_matters(at, step) && step_state(at.visit.session, step.step) == StepState::not_done)
            out.push_back(remark("weak.step", word_of(step.step, at.engine), step.if_not_done));
    if (const auto open = steps_left_open(at); !open.empty())
        out.push_back(remark("weak.steps_open", static_cast<int>(open.size())));
}

/// Readings whose gauge may not have come to rest.
void add_pulls(const Case& at, std::vector<Remark>& out) {
    for (const int number : numbers_in_order(at.engine))
        for (const Reading* reading : counted(at, TestKind::dry, number)) {
            if (!reading->final || !reading->pulls) continue;
            const auto model = at.options.beside ? model_of(at, TestKind::dry, number) : std::nullopt;
            const auto rising = still_rising(at, *reading->pulls, model ? &*model : nullptr);
            if (!rising) continue;
            Remark said = *rising;
            said.message.code =
                rising->message.code == "fact.few_pulls" ? "weak.few_pulls" : "weak.still_rising";
            std::vector<Arg> args{number};
            args.insert(args.end(), rising->message.args.begin(), rising->message.args.end());
            said.message.args = std::move(args);
            out.push_back(std::move(said));
            break;
        }
}

int rpm(double rad_s) {
    return static_cast<int>(std::lround(units::rpm.number(Rotation::from_si(rad_s))));
}

void add_conditions(const Case& at, std::vector<Remark>& out) {
    if (!did(at.visit, TestKind::dry) && !did(at.visit, TestKind::wet)) return;
    const Conditions& conditions = at.visit.session.conditions;
    const auto model = model_of_visit(at);
    const auto because = [&](Remark said, const Derivation& from) {
        said.from = {from};
        out.push_back(std::move(said));
    };
    if (model && model->throttle_loss)
        because(remark("weak.throttle_closed_by", model->throttle_loss->low, model->throttle_loss->high),
                model->throttle_loss->from);
    else if (throttle_closed(at.visit.session, at.engine))
        out.push_back(remark("weak.throttle_closed"));
    if (conditions.heat == EngineHeat::unknown) out.push_back(remark("weak.heat_unknown"));
    if (model && model->cold_loss)
        because(remark("weak.cold_by", model->cold_loss->figure), model->cold_loss->from);
    if (battery_weak(conditions, at.reference)) {
        const Figure battery = figure(Dimension::voltage, conditions.battery->si());
        if (model && model->slow_loss)
            because(remark("weak.battery_by", battery, model->slow_loss->figure), model->slow_loss->from);
        else
            out.push_back(remark("weak.battery", battery));
    }
    if (conditions.cranking_speed &&
        is_below(conditions.cranking_speed->si(), at.reference.assumed("slow-cranking")))
        out.push_back(remark("weak.slow_cranking", rpm(conditions.cranking_speed->si()),
                             rpm(at.reference.assumed("slow-cranking"))));
    if (model && model->hose_loss)
        because(remark("weak.hose", model->hose_loss->figure), model->hose_loss->from);
    if (model && model->core_loss)
        because(remark("weak.tyre_core", model->core_loss->figure), model->core_loss->from);
}

/// The cylinder that came first, measured again after others: what changed meanwhile is not the cylinder's
/// doing.
void add_drift(const Case& at, std::vector<Remark>& out) {
    std::vector<const Reading*> dry;
    for (const CylinderList numbers = numbers_in_order(at.engine); const int number : numbers)
        for (const Reading* reading : counted(at, TestKind::dry, number))
            if (reading->final) dry.push_back(reading);
    std::ranges::stable_sort(dry, {}, [](const Reading* reading) { return reading->taken_at.unix_ms; });
    if (dry.size() < 3 || dry.front()->cylinder != dry.back()->cylinder) return;
    const bool others = std::ranges::any_of(
        dry, [&](const Reading* reading) { return reading->cylinder != dry.front()->cylinder; });
    const double first = dry.front()->final->si();
    if (!others || !(first > 0.0)) return;
    const double change = dry.back()->final->si() / first - 1.0;
    if (std::abs(change) >= at.reference.assumed("drift"))
        out.push_back(remark(change < 0.0 ? "weak.drift_lower" : "weak.drift_higher", dry.front()->cylinder,
                             figure(Dimension::share, std::abs(change))));
}

/// What the checks of the visit's own day and before say of its readings.
void add_check(const Case& at, const Tester& tester, TesterCheckKind kind, bool wanted,
               std::vector<Remark>& out) {
    bool failed = false;
    bool checked = false;
    for (const Reading& reading : at.visit.readings) {
        if (tester_of(at, reading.test, reading.tester) != &tester) continue;
        failed = failed || speaks_against(tester, kind, reading.taken_at, at.reference);
        checked = checked || is_checked(tester, kind, reading.taken_at, at.reference);
    }
    if (failed)
        out.push_back(remark("weak.self_check_failed", tester.name, word_of(kind)));
    else if (!checked && wanted)
        out.push_back(remark("weak.self_check_missing", tester.name, word_of(kind)));
}

void add_tester(const Case& at, const Tester& tester, std::vector<Remark>& out) {
    const bool leak_down = tester.kind == TesterKind::leak_down;
    const bool cranking = tester.kind == TesterKind::compression_gauge;
    add_check(at, tester, TesterCheckKind::outlet_blocked, leak_down, out);
    add_check(at, tester, TesterCheckKind::holds_after_cranking, cranking, out);
    add_check(at, tester, TesterCheckKind::zero_at_rest, false, out);
    add_check(at, tester, TesterCheckKind::drilled_hole, false, out);
    add_check(at, tester, TesterCheckKind::against_reference, false, out);
    if (tester.gauge.scheme == AccuracyScheme::unknown || tester.gauge.accuracy.empty())
        out.push_back(remark("weak.class_unknown", tester.name,
                             figure(Dimension::share, at.reference.assumed("gauge-class"))));
    if (leak_down && !tester.supply_gauge) out.push_back(remark("weak.one_gauge", tester.name));
    if (leak_down && !tester.restrictor)
        out.push_back(remark("weak.restrictor_unknown", tester.name,
                             figure(Dimension::length, usual_restrictor_m(at.engine, at.reference))));
}

void add_testers(const Case& at, std::vector<Remark>& out) {
    std::vector<const Tester*> seen;
    for (const TestKind test : {TestKind::dry, TestKind::leak_down, TestKind::wet, TestKind::crankcase}) {
        if (!did(at.visit, test)) continue;
        std::vector<const Tester*> used;
        for (const Reading& reading : at.visit.readings) {
            const Tester* tester = tester_of(at, test, reading.tester);
            if (reading.test == test && std::ranges::find(used, tester) == used.end()) used.push_back(tester);
        }
        if (std::ranges::find(used, nullptr) != used.end())
            out.push_back(remark("weak.tester_unknown", word_of(test)));
        if (test == TestKind::dry && used.size() > 1) out.push_back(remark("weak.gauges_differ"));
        for (const Tester* tester : used) {
            if (!tester || std::ranges::find(seen, tester) != seen.end()) continue;
            seen.push_back(tester);
            add_tester(at, *tester, out);
        }
    }
}

}  // namespace

std::vector<PrepareStep> steps_left_open(const Case& at) {
    std::vector<PrepareStep> out;
    for (const PrepareReason& step : at.reference.prepare)
        if (step_matters(at, step) && step_state(at.visit.session, step.step) == StepState::open)
            out.push_back(step.step);
    return out;
}

std::vector<Remark> weakened_by(const Case& at) {
    std::vector<Remark> out;
    add_conditions(at, out);
    add_pulls(at, out);
    add_drift(at, out);
    add_testers(at, out);
    add_steps(at, out);
    return out;
}

}  // namespace lapwing::findings
