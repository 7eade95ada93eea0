// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/findings/asked.h"
#include "core/findings/case.h"
#include "core/findings/touched.h"

/// What is worth doing next, by simple rules in the order in which a careful mechanic works: doubts about the
/// measurement first, then what costs nothing (clearance), then air, oil last since it stays on the rings. It
/// weighs no odds.
namespace lapwing::findings {
namespace {

class Steps {
public:
    void add(Action action, std::optional<int> cylinder, std::string_view reason) {
        add(action, cylinder, cylinder ? say(reason, *cylinder) : say(reason));
    }
    void add(Action action, std::optional<int> cylinder, Message reason) {
        steps_.push_back({action, cylinder, std::move(reason)});
    }
    [[nodiscard]] bool empty() const { return steps_.empty(); }
    [[nodiscard]] bool has(Action action, std::optional<int> cylinder) const {
        return std::ranges::any_of(steps_, [&](const NextStep& step) {
            return step.action == action && (!step.cylinder || step.cylinder == cylinder);
        });
    }
    std::vector<NextStep> take() { return std::move(steps_); }

private:
    std::vector<NextStep> steps_;
};

void add_tester_checks(const Findings& findings, std::string_view code, Steps& steps) {
    for (const Remark& weak : findings.weakened_by)
        if (weak.message.code == code)
            steps.add(Action::tester_check, {},
                      Message{code == "weak.self_check_failed" ? "next.tester_failed" : "next.tester_check",
                              weak.message.args});
}

/// Clearance work that stands before any more testing of this cylinder. True when there is some.
bool add_clearance_work(const Case& at, const CylinderFindings& cylinder, Steps& steps) {
    if (cylinder.state < State::borderline) return false;
    const Heard* heard = loudest(cylinder);
    const auto tie = equally_loud(cylinder);
    const auto points_at = [&](Path valve) {
        return heard ? heard->path == valve
                     : tie && (tie->first->path == valve || tie->second->path == valve);
    };
    for (const Path valve : {Path::intake, Path::exhaust}) {
        switch (clearance_need(at, cylinder, valve)) {
            case ClearanceNeed::adjust:
                steps.add(Action::adjust, cylinder.number, "next.adjust");
                return true;
            case ClearanceNeed::siblings:
                steps.add(Action::adjust, cylinder.number, "next.clearance_siblings");
                return true;
            case ClearanceNeed::retest:
                steps.add(cylinder.leak_down ? Action::leak_down : Action::dry, cylinder.number,
                          "next.retest_adjusted");
                return true;
            case ClearanceNeed::record:
                if (points_at(valve)) {
                    steps.add(Action::clearances, cylinder.number,
                              say("next.clearances", cylinder.number, word_of(valve)));
                    return true;
                }
                break;
            case ClearanceNeed::wanted:
                if (points_at(valve)) {
                    steps.add(Action::clearances, cylinder.number,
                              say("next.clearance_wanted", cylinder.number, word_of(valve)));
                    return true;
                }
                break;
            case ClearanceNeed::none:
                break;
        }
    }
    return false;
}

/// A hydraulic lifter can hold its valve open, and lets go of it by itself: one more leak-down tells.
bool lifter_in_question(const Case& at, const CylinderFindings& cylinder) {
    const auto points_at = cylinder.points_at;
    return at.engine.valves.adjuster == Adjuster::hydraulic && points_at &&
           (*points_at == Path::intake || *points_at == Path::exhaust) &&
           cylinder.leak_down->readings.size() == 1;
}

/// Oil on the rings flattered its leak-down.
void add_after_oil(const Findings& findings, Steps& steps) {
    for (const CylinderFindings& cylinder : findings.cylinders)
        if (asks(cylinder, "question.oil_before_leak_down"))
            steps.add(Action::leak_down, cylinder.number, "next.after_oil");
}

/// A head comes off for it, so it is made sure of first.
void add_gasket_work(const CylinderFindings& cylinder, Steps& steps) {
    const Heard* air = gasket_air(cylinder);
    if (!air) return;
    if (gasket_state(cylinder) != State::fault)
        steps.add(Action::listen, cylinder.number,
                  say("next.watch_trace", cylinder.number, word_of(air->exit)));
    else if (air->path == Path::coolant)
        steps.add(Action::plan, cylinder.number, "next.coolant_sure");
    else
        steps.add(Action::plan, cylinder.number,
                  say("next.gasket_sure", cylinder.number, word_of(*air->path)));
}

/// What one cylinder alone may have in it, a wrong gauge or limit shows in all: once for the engine.
void add_above(Steps& steps) {
    if (!steps.has(Action::tester_check, {})) steps.add(Action::tester_check, {}, "next.reads_above");
}

/// @param low_everywhere its leak-down is asked for with every other cylinder's
void add_for_cylinder(const Case& at, const CylinderFindings& cylinder, bool low_everywhere, Steps& steps) {
    const int number = cylinder.number;
    if (asks_tdc(cylinder) || asks(cylinder, "question.very_low_last")) {
        steps.add(Action::turn_once, number, "next.turn_once");
        return;
    }
    const auto again = [&](TestKind test) {
        steps.add(action_of(test), number, say("next.again", number, word_of(test)));
    };
    if (const auto test = stands_in_the_way(cylinder)) return again(*test);
    if (held_over_set_alone(cylinder)) return again(TestKind::leak_down);
    if (cylinder.leak_down && cylinder.leak_down->does_not_fit) again(TestKind::leak_down);
    if (add_clearance_work(at, cylinder, steps)) return;
    const bool low = cylinder.dry && cylinder.dry->state >= State::borderline;
    const bool leaks = cylinder.leak_down && cylinder.leak_down->state >= State::borderline;
    if (!cylinder.leak_down && cylinder.headline.code == "cylinder.ask_decompressor")
        steps.add(Action::leak_down, number, "next.leak_down_decompressor");
    else if (low && reads_above(cylinder) && !leaks)
        add_above(steps);
    else if (low && !cylinder.leak_down && !low_everywhere)
        steps.add(Action::leak_down, number, "next.leak_down_low");
    else if (leaks && cylinder.leak_down->superseded)
        steps.add(Action::leak_down, number,
                  say("next.leak_down_before", number, word_of(cylinder.leak_down->tag)));
    else if (leaks && lifter_in_question(at, cylinder))
        steps.add(Action::leak_down, number, "next.lifter");
    else if (leaks && !cylinder.heard_earlier.empty())
        steps.add(Action::listen, number,
                  say("next.listen_again", number, word_of(cylinder.heard_earlier_tag)));
    else if (leaks && cylinder.exits.empty())
        steps.add(Action::listen, number, "next.listen");
    else if (const auto other = doubted_joint(cylinder); leaks && other)
        steps.add(Action::listen, number, say("next.listen_valves", number, *other));
    else if (leaks && !cylinder.wet && !cylinder.points_at && cylinder.dry &&
             at.engine.fuel == Fuel::petrol && !at.decompressor_works())
        steps.add(Action::wet, number, "next.wet");
    for (const TestKind test : cylinder.again)
        if (!steps.has(action_of(test), number)) again(test);
    add_gasket_work(cylinder, steps);
    if (low && !dry_counts(cylinder))
        steps.add(Action::dry, number, say("next.dry_before", number, word_of(cylinder.dry->tag)));
}

/// What lowered every dry reading and can be put right: a shut throttle before anything is made of them, cold
/// after what tells more.
/// A later visit did the dry test again with the throttle held open.
bool repeated_open(const Case& at) {
    return std::ranges::any_of(at.dossier.visits, [&](const Visit& later) {
        return at.visit.session.opened_at < later.session.opened_at &&
               later.session.conditions.throttle == Throttle::held_open &&
               std::ranges::any_of(later.readings,
                                   [](const Reading& one) { return one.test == TestKind::dry; });
    });
}

void add_repeat(const Case& at, const Findings& findings, bool first, Steps& steps) {
    const bool dry = std::ranges::any_of(findings.cylinders,
                                         [](const CylinderFindings& cylinder) { return !!cylinder.dry; });
    if (!dry || at.decompressor_works()) return;
    const bool cold = at.visit.session.conditions.heat == EngineHeat::cold;
    const bool doubtful = std::ranges::any_of(findings.cylinders, [](const CylinderFindings& cylinder) {
        return cylinder.dry && cylinder.dry->state >= State::borderline;
    });
    const bool shut = throttle_closed(at.visit.session, at.engine);
    if (shut && first && repeated_open(at)) {
        steps.add(Action::dry, {}, "next.repeated_open");
        return;
    }
    if (shut == first && (first || (cold && doubtful)))
        steps.add(Action::dry, {},
                  !first ? "next.repeat_warm"
                  : cold ? "next.repeat_open_warm"
                         : "next.repeat_open");
}

void add_missing_dry(const Case& at, const Findings& findings, Steps& steps) {
    std::vector<int> missing;
    for (const CylinderFindings& cylinder : findings.cylinders)
        if (!cylinder.dry) missing.push_back(cylinder.number);
    if (missing.empty()) return;
    const bool leak_down_everywhere = std::ranges::all_of(
        findings.cylinders, [](const CylinderFindings& cylinder) { return cylinder.leak_down.has_value(); });
    if (leak_down_everywhere) return;  // air says more than cranking
    const bool wet = std::ranges::any_of(
        findings.cylinders, [](const CylinderFindings& cylinder) { return cylinder.wet && !cylinder.dry; });
    if (wet && missing.size() == at.engine.cylinders.size())
        steps.add(Action::dry, {}, "next.dry_after_wet");
    else if (missing.size() == at.engine.cylinders.size())
        steps.add(Action::dry, {}, missing.size() == 1 ? "next.dry_one" : "next.dry_all");
    else
        for (const int number : missing)
            steps.add(Action::dry, number, "next.dry");
}

/// Chambers that were not held yet. One that was held as one, as older visits have it, is not asked for
/// again.
void add_missing_crankcases(const Case& at, const Findings& findings, Steps& steps) {
    if (!at.two_stroke()) return;
    if (findings.crankcases.empty()) return steps.add(Action::crankcase, {}, "next.crankcase");
    if (findings.crankcases.front().cylinder == 0) return;
    for (const int number : crankcase_chambers(at.engine))
        if (number > 0 &&
            std::ranges::find(findings.crankcases, number, &Crankcase::cylinder) == findings.crankcases.end())
            steps.add(Action::crankcase, number, "next.crankcase_of");
}

/// Work was ticked, and nothing was tested since, here or at a later visit.
bool asks_for_retest(const Case& at) {
    std::optional<Timestamp> done;
    for (const PlanLine& line : at.visit.plan)
        if (line.done_at && (!done || *done < *line.done_at)) done = line.done_at;
    if (!done) return false;
    const auto tested_since = [&](const Visit& visit) {
        return std::ranges::any_of(visit.readings,
                                   [&](const Reading& reading) { return *done < reading.taken_at; });
    };
    return !tested_since(at.visit) && std::ranges::none_of(at.dossier.visits, tested_since);
}

}  // namespace

std::vector<NextStep> next_steps(const Case& at, const Findings& findings, const LeftOpen& earlier) {
    Steps steps;
    add_tester_checks(findings, "weak.self_check_failed", steps);
    add_repeat(at, findings, true, steps);
    add_missing_dry(at, findings, steps);
    std::vector<const CylinderFindings*> worst_first;
    for (const CylinderFindings& cylinder : findings.cylinders)
        worst_first.push_back(&cylinder);
    std::ranges::stable_sort(worst_first, std::greater{},
                             [](const CylinderFindings* cylinder) { return cylinder->state; });
    if (std::ranges::any_of(findings.cylinders, [](const CylinderFindings& cylinder) {
            return cylinder.headline.code == "cylinder.leaks_tester_first";
        }))
        steps.add(Action::tester_check, {}, "next.name_tester");
    const bool low_everywhere = findings.headline.code.starts_with("engine.low_everywhere");
    if (low_everywhere) steps.add(Action::leak_down, {}, "next.leak_down_all");
    for (const CylinderFindings* cylinder : worst_first)
        add_for_cylinder(at, *cylinder, low_everywhere, steps);
    add_missing_crankcases(at, findings, steps);
    if (!findings.crankcases.empty() && !at.engine.crankcase.end_at_least)
        steps.add(Action::plan, {}, "next.crankcase_limit");
    const bool doubtful = findings.state >= State::borderline;
    if (doubtful) add_tester_checks(findings, "weak.self_check_missing", steps);
    add_repeat(at, findings, false, steps);
    for (const NextStep& step : earlier.steps)
        if (!steps.has(step.action, step.cylinder)) steps.add(step.action, step.cylinder, step.reason);
    if (steps.empty() && findings.headline.code == "engine.no_limit")
        steps.add(Action::leak_down, {}, "next.leak_down_unjudged");
    if (steps.empty() && at.visit.plan.empty()) add_after_oil(findings, steps);
    if (steps.empty())
        steps.add(Action::plan, {},
                  asks_for_retest(at)              ? "next.retest"
                  : !doubtful                      ? "next.nothing"
                  : !at.visit.plan.empty()         ? "next.planned"
                  : findings.state == State::fault ? "next.plan"
                                                   : "next.watch");
    return steps.take();
}

}  // namespace lapwing::findings
