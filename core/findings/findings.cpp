// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/findings.h"

#include <algorithm>

#include "core/findings/case.h"
#include "core/findings/touched.h"

namespace lapwing::findings {

Findings find(const Dossier& dossier, const Visit& visit, const Reference& reference,
              const FindingsOptions& options) {
    ModelCache own;
    FindingsOptions used = options;
    if (!used.models) used.models = &own;
    const Case at = case_of(dossier, visit, reference, used);
    Findings out;
    out.limits = at.limits;
    for (const int number : numbers_in_order(at.engine)) {
        CylinderFindings cylinder;
        cylinder.number = number;
        cylinder.dry = cranking_of(at, TestKind::dry, number);
        if (cylinder.dry) judge_dry(at, number, *cylinder.dry);
        cylinder.leak_down = leak_down_of(at, number);
        cylinder.wet = wet_of(at, number, cylinder.dry);
        ExitsNow exits = exits_now(at, number);
        cylinder.exits = std::move(exits.heard);
        doubt_joints(at, number, cylinder.exits);
        cylinder.heard_earlier = std::move(exits.earlier);
        cylinder.heard_earlier_tag = exits.earlier_tag;
        cylinder.clearances = clearances_of(at, number);
        add_questions(at, cylinder);
        out.cylinders.push_back(std::move(cylinder));
    }
    for (CylinderFindings& cylinder : out.cylinders)
        add_misfits(at, cylinder);
    out.spread = judge_spread(at, out.cylinders);
    out.leak_spread = judge_leak_spread(at, out.cylinders);
    out.crankcases = crankcases_of(at);
    add_rules_of_thumb(at, out.cylinders);
    for (CylinderFindings& cylinder : out.cylinders) {
        cylinder.state =
            worse(dry_state(cylinder), cylinder.leak_down ? cylinder.leak_down->state : State::none);
        cylinder.state = worse(cylinder.state, cylinder.clearances.state);
        cylinder.state = worse(cylinder.state, gasket_state(cylinder));
        add_contradictions(at, cylinder);
        add_photo_contradictions(at, cylinder);
        cylinder.headline = headline_of(at, cylinder);
        // Good clearances alone put nothing in range that a question hangs over, or that nobody tested.
        if (cylinder.state == State::good &&
            (asks_tdc(cylinder) || stands_in_the_way(cylinder) || (!cylinder.dry && !cylinder.leak_down)))
            cylinder.state = State::none;
        out.state = worse(out.state, cylinder.state);
    }
    for (const Crankcase& one : out.crankcases)
        out.state = worse(out.state, one.state);
    // What was not measured can't be in range: no fault so far is not all well.
    if (out.state == State::good && !std::ranges::all_of(out.cylinders, [](const CylinderFindings& cylinder) {
            return cylinder.dry || cylinder.leak_down;
        }))
        out.state = State::none;
    const bool wet = std::ranges::any_of(
        visit.readings, [](const Reading& reading) { return reading.test == TestKind::wet; });
    if (wet && at.engine.fuel == Fuel::diesel) out.questions.push_back(remark("question.wet_on_diesel"));
    const LeftOpen earlier = left_open_earlier(at, out);
    if (!earlier.faults.empty()) out.questions.push_back(remark("question.earlier_fault", earlier.faults));
    out.expectation = expectation_of(at);
    out.weakened_by = weakened_by(at);
    out.headline = headline_of(at, out);
    if (out.headline.code.starts_with("engine.low_but_seals") ||
        out.headline.code.starts_with("engine.low_everywhere"))
        out.contradictions.push_back(Remark{out.headline, {}});
    out.next = next_steps(at, out, earlier);
    return out;
}

}  // namespace lapwing::findings
