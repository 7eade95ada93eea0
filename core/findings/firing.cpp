// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/firing.h"

#include <algorithm>
#include <cmath>

#include "core/physics/holding_torque.h"
#include "core/units/quantity.h"

namespace lapwing::findings {
namespace {

/// Degrees to either side of what a valve does.
struct Between {
    double least = 0.0;
    double most = 0.0;
};

double assumed_deg(const Reference& reference, std::string_view id) {
    return units::deg.number(Angle::from_si(reference.assumed(id)));
}

/// A phaser may stand anywhere in its reach.
Between widened(Between of, const Engine& engine, const Reference& reference) {
    if (engine.valves.timing != ValveTiming::variable) return of;
    const double reach = assumed_deg(reference, "variable-timing-doubt");
    return {of.least - reach, of.most + reach};
}

/// After bottom dead centre, at the seat.
Between intake_closing(const Engine& engine, const Reference& reference) {
    const auto& stated = engine.valves.intake_closing;
    if (!stated)
        return widened({assumed_deg(reference, "intake-closes-earliest"),
                        assumed_deg(reference, "intake-closes-latest")},
                       engine, reference);
    const double at = units::deg.number(stated->value.value());
    const double doubt = assumed_deg(reference, "closing-known-doubt");
    Between out{at - doubt, at + doubt};
    if (engine.valves.intake_closing_at != TimingAt::seat) {
        // Quoted at a lift, it touches its seat later.
        if (engine.valves.intake_closing_at != TimingAt::unknown)
            out.least += assumed_deg(reference, "lift-to-seat-least");
        out.most += assumed_deg(reference, "lift-to-seat-most");
    }
    return widened(out, engine, reference);
}

/// Before bottom dead centre; `most` is the earliest. No card has it.
Between exhaust_opening(const Engine& engine, const Reference& reference) {
    return widened(
        {assumed_deg(reference, "exhaust-opens-latest"), assumed_deg(reference, "exhaust-opens-earliest")},
        engine, reference);
}

/// Where the card does not say what is joined, they may be.
bool joined(const std::vector<std::vector<int>>& groups, int one, int other) {
    return groups.empty() || std::ranges::any_of(groups, [&](const std::vector<int>& group) {
               return std::ranges::count(group, one) && std::ranges::count(group, other);
           });
}

}  // namespace

bool fires_evenly_as_assumed(const Engine& engine) {
    return engine.firing_intervals.empty() && engine.arrangement == Arrangement::in_line &&
           engine.firing_order.size() >= 3 && engine.firing_order.size() == engine.cylinders.size();
}

std::optional<double> turn_to_fire_deg(const Engine& engine, int from, int to) {
    std::vector<double> intervals;
    for (const TypedAngle& interval :
         fires_evenly_as_assumed(engine) ? even_intervals(engine) : engine.firing_intervals)
        intervals.push_back(units::deg.number(interval.value()));
    const auto turn = physics::turn_to_compression_tdc_deg(engine.firing_order, intervals, from, to);
    return turn ? std::optional(*turn) : std::nullopt;
}

Neighbour neighbour_while_tested(const Engine& engine, const Reference& reference, int tested,
                                 int neighbour) {
    Neighbour out;
    if (engine.cycle == StrokeCycle::two || tested == neighbour) return out;
    const auto turn = turn_to_fire_deg(engine, tested, neighbour);
    if (!turn) return out;
    // It fires that much later, so it stands that much before its own.
    out.past_tdc_deg = *turn > 360.0 ? 720.0 - *turn : -*turn;
    const double at = out.past_tdc_deg;
    const Between closing = intake_closing(engine, reference);
    const Between opening = exhaust_opening(engine, reference);
    const bool overlap = 360.0 - std::abs(at) < assumed_deg(reference, "companions-apart");
    const bool intake_may = overlap || at < closing.most - 180.0;
    const bool exhaust_may = overlap || at > 180.0 - opening.most;
    out.by_intake = intake_may && joined(engine.joined_intakes, tested, neighbour);
    out.by_exhaust = exhaust_may && joined(engine.joined_exhausts, tested, neighbour);
    if (overlap)
        out.valves = NeighbourValves::overlap;
    else if (!intake_may && !exhaust_may)
        out.valves = NeighbourValves::shut;
    else if (at < closing.least - 180.0 || at > 180.0 - opening.least)
        out.valves = NeighbourValves::open;
    else
        out.valves = NeighbourValves::either;
    return out;
}

}  // namespace lapwing::findings
