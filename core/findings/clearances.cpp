// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <vector>

#include "core/base/apart.h"
#include "core/findings/case.h"
#include "core/findings/clearance_fit.h"
#include "core/findings/touched.h"

namespace lapwing::findings {

const std::optional<Sourced<ClearanceRange>>& wanted_clearance(const Engine& engine, ValveSide side) {
    return side == ValveSide::intake ? engine.valves.intake_clearance : engine.valves.exhaust_clearance;
}

Fit fit_of(const TypedLength& clearance, const std::optional<Sourced<ClearanceRange>>& wanted) {
    if (clearance.si() <= 0.0) return Fit::none;
    if (!wanted) return Fit::unknown;
    if (is_below(clearance.si(), wanted->value.low.si())) return Fit::small;
    return is_above(clearance.si(), wanted->value.high.si()) ? Fit::large : Fit::right;
}

Fit fit_of(const Engine& engine, const Clearance& clearance) {
    const auto& now = clearance.left ? clearance.left : clearance.found;
    return now ? fit_of(*now, wanted_clearance(engine, clearance.side)) : Fit::unknown;
}

State state_of(Fit fit) {
    switch (fit) {
        case Fit::none:
        case Fit::small:
            return State::fault;
        case Fit::large:
            return State::borderline;  // noise and a late opening, but the valve seats
        case Fit::right:
            return State::good;
        case Fit::unknown:
            return State::none;
    }
    return State::none;
}

bool too_small(Fit fit) {
    return fit == Fit::none || fit == Fit::small;
}

namespace {

const std::optional<TypedLength>& last_of(const Clearance& valve) {
    return valve.left ? valve.left : valve.found;
}

/// Values aren't empty.
double median(std::vector<double> values) {
    std::ranges::sort(values);
    const std::size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : 0.5 * (values[middle - 1] + values[middle]);
}

}  // namespace

std::optional<double> siblings_far_above(const Engine& engine, const Visit& visit, const Reference& reference,
                                         const Clearance& valve, const TypedLength& clearance) {
    // None at all is no question any more.
    if (clearance.si() <= 0.0 || wanted_clearance(engine, valve.side) ||
        engine.valves.adjuster == Adjuster::hydraulic || engine.cycle == StrokeCycle::two)
        return std::nullopt;
    std::vector<double> others;
    for (const Cylinder& one : engine.cylinders)
        for (const Clearance* other : standing(visit.clearances, one.number)) {
            const bool same = other->cylinder == valve.cylinder && other->valve == valve.valve;
            if (other->side == valve.side && !same && last_of(*other))
                others.push_back(last_of(*other)->si());
        }
    if (others.empty() ||
        is_below(static_cast<double>(others.size()), reference.assumed("clearance-beside-least")))
        return std::nullopt;
    const double usual = median(std::move(others));
    const bool far = is_below(clearance.si(), reference.assumed("clearance-beside-share") * usual) &&
                     !is_below(usual - clearance.si(), reference.assumed("clearance-beside-less"));
    return far ? std::optional(usual) : std::nullopt;
}

std::optional<FarBelow> far_below_siblings(const Engine& engine, const Visit& visit,
                                           const Reference& reference, int cylinder, ValveSide side) {
    std::optional<FarBelow> out;
    for (const Clearance* valve : standing(visit.clearances, cylinder)) {
        if (valve->side != side || !last_of(*valve)) continue;
        const auto siblings = siblings_far_above(engine, visit, reference, *valve, *last_of(*valve));
        if (siblings && (!out || last_of(*valve)->si() < out->now().si())) out = FarBelow{valve, *siblings};
    }
    return out;
}

bool was_put_right(const Case& at, const Clearance& valve) {
    if (!valve.found || !valve.left) return false;
    const auto& wanted = wanted_clearance(at.engine, valve.side);
    const auto small = [&](const TypedLength& one) {
        return too_small(fit_of(one, wanted)) ||
               siblings_far_above(at.engine, at.visit, at.reference, valve, one).has_value();
    };
    return small(*valve.found) && !small(*valve.left);
}

Clearances clearances_of(const Case& at, int cylinder) {
    Clearances out;
    for (const Clearance* valve : standing(at.visit.clearances, cylinder)) {
        const bool intake = valve->side == ValveSide::intake;
        const auto& wanted = wanted_clearance(at.engine, valve->side);
        const auto& last = last_of(*valve);
        if (!last) continue;
        (intake ? out.recorded_intake : out.recorded_exhaust) = true;
        const Fit now = fit_of(*last, wanted);
        const auto siblings = siblings_far_above(at.engine, at.visit, at.reference, *valve, *last);
        if (now == Fit::unknown && siblings) {
            out.state = worse(out.state, State::borderline);
            out.remarks.push_back(remark("clearance.siblings", cylinder, word_of(valve->side), valve->valve,
                                         figure_of(*last), figure(Dimension::length, *siblings)));
        }
        if (now == Fit::unknown && !siblings && at.engine.valves.adjuster != Adjuster::hydraulic) {
            auto& least = intake ? out.unjudged_intake : out.unjudged_exhaust;
            if (!least || last->si() < least->si) least = figure_of(*last);
            out.remarks.push_back(
                remark("clearance.no_range", cylinder, word_of(valve->side), valve->valve, figure_of(*last)));
        }
        out.state = worse(out.state, state_of(now));
        const Word side = word_of(valve->side);
        if (too_small(now)) (intake ? out.small_intake : out.small_exhaust) = true;
        if (was_put_right(at, *valve)) {
            (intake ? out.put_right_intake : out.put_right_exhaust) = true;
            out.remarks.push_back(remark("clearance.adjusted", cylinder, side, valve->valve));
        }
        if (now == Fit::none) out.remarks.push_back(remark("clearance.none", cylinder, side, valve->valve));
        if (now == Fit::small)
            out.remarks.push_back(remark("clearance.too_small", cylinder, side, valve->valve,
                                         figure_of(*last), figure_of(wanted->value.low)));
        if (now == Fit::large)
            out.remarks.push_back(remark("clearance.too_large", cylinder, side, valve->valve,
                                         figure_of(*last), figure_of(wanted->value.high)));
    }
    return out;
}

ClearanceNeed clearance_need(const Case& at, const CylinderFindings& cylinder, Path path) {
    if (!is_valve(path) || at.two_stroke() || at.engine.valves.adjuster == Adjuster::hydraulic)
        return ClearanceNeed::none;
    const Clearances& known = cylinder.clearances;
    const bool intake = path == Path::intake;
    if (intake ? known.small_intake : known.small_exhaust) return ClearanceNeed::adjust;
    if (far_below_siblings(at.engine, at.visit, at.reference, cylinder.number,
                           intake ? ValveSide::intake : ValveSide::exhaust))
        return ClearanceNeed::siblings;
    if (!(intake ? known.recorded_intake : known.recorded_exhaust)) return ClearanceNeed::record;
    // Put right after the air was on: the leak that was heard may be gone.
    const auto readings =
        counted(at, cylinder.leak_down ? TestKind::leak_down : TestKind::dry, cylinder.number);
    if (!readings.empty() &&
        put_right_since(at, cylinder.number, intake ? ValveSide::intake : ValveSide::exhaust,
                        readings.back()->tag, readings.back()->taken_at))
        return ClearanceNeed::retest;
    return (intake ? known.unjudged_intake : known.unjudged_exhaust) ? ClearanceNeed::wanted
                                                                     : ClearanceNeed::none;
}

std::optional<Path> retest_of(const Case& at, const CylinderFindings& cylinder) {
    for (const Path valve : {Path::exhaust, Path::intake})
        if (clearance_need(at, cylinder, valve) == ClearanceNeed::retest) return valve;
    return std::nullopt;
}

}  // namespace lapwing::findings
