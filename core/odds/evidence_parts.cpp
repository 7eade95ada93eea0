// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/evidence_parts.h"

#include <algorithm>
#include <cmath>

#include "core/findings/case.h"
#include "core/findings/instruments.h"

namespace lapwing::odds {
namespace {

using findings::Path;

constexpr double rectangular = 1.7320508075688772;  // half width over standard deviation, JCGM 100, 4.3.7

/// A gain is told as a share of the reading; far down the scale that would be a share of nothing.
double gain_of(double gain_pa, double reading_pa, double span_pa, const findings::Reference& reference) {
    return gain_pa / std::max(reading_pa, reference.assumed("gain-lowest") * span_pa);
}

class Sources {
public:
    Sources(const SourceContext& context, const CylinderEvidence& cylinder)
        : context_(context), cylinder_(cylinder), self_(context.so_far.cylinders.size()) {}

    std::vector<Source> of(Exit exit, std::optional<int> neighbour) {
        const bool two = context_.engine.cycle == StrokeCycle::two;
        const double by_exhaust = context_.assumptions.at("two-stroke-exhaust");
        switch (exit) {
            case Exit::intake:
                two ? own(Path::rings, 1.0 - by_exhaust) : own(Path::intake, 1.0);
                break;
            case Exit::exhaust:
                two ? own(Path::rings, by_exhaust) : own(Path::exhaust, 1.0);
                break;
            case Exit::breather:
                if (!two) own(Path::rings, 1.0);
                break;
            case Exit::joint:
                own(Path::gasket, 1.0);
                break;
            case Exit::coolant:
                own(Path::coolant, 1.0);
                break;
            case Exit::decompressor:
                own(Path::decompressor, 1.0);
                break;
            case Exit::next_plug_hole:
                if (neighbour) plug_hole(*neighbour);
                break;
            case Exit::crank_seals:
            case Exit::base_gasket:
            case Exit::reed:
            case Exit::other:
                break;
        }
        return std::move(out_);
    }

private:
    void own(Path path, double share) {
        const auto found = std::ranges::find(cylinder_.paths, path);
        if (found != cylinder_.paths.end())
            out_.push_back({false, static_cast<std::size_t>(found - cylinder_.paths.begin()), share});
    }

    void plug_hole(int neighbour) {
        const auto numbers = numbers_in_order(context_.engine);
        const auto other = static_cast<std::size_t>(std::ranges::find(numbers, neighbour) - numbers.begin());
        for (const std::size_t joint : cylinder_.joints) {
            const auto& [a, b] = context_.so_far.joints[joint];
            if ((a == self_ && b == other) || (b == self_ && a == other)) out_.push_back({true, joint, 1.0});
        }
        if (!findings::companions(context_.engine, context_.reference, cylinder_.number, neighbour)) return;
        // A companion on overlap lets a valve's leak out through a joined manifold; where the card does not
        // say what is joined, it may be.
        const auto joined = [&](const std::vector<std::vector<int>>& groups) {
            return groups.empty() || std::ranges::any_of(groups, [&](const std::vector<int>& group) {
                       return std::ranges::find(group, neighbour) != group.end() &&
                              std::ranges::find(group, cylinder_.number) != group.end();
                   });
        };
        const double share = context_.assumptions.at("companion-talk");
        if (joined(context_.engine.joined_intakes)) own(Path::intake, share);
        if (joined(context_.engine.joined_exhausts)) own(Path::exhaust, share);
    }

    const SourceContext& context_;
    const CylinderEvidence& cylinder_;
    const std::size_t self_;
    std::vector<Source> out_;
};

}  // namespace

std::vector<double> clearance_odds(const findings::Case& visit, const CylinderEvidence& cylinder,
                                   const Assumptions& assumptions) {
    const auto clearances = findings::clearances_of(visit, cylinder.number);
    std::vector<double> out;
    for (const Path path : cylinder.paths) {
        double odds = 1.0;
        const bool intake = path == Path::intake;
        if (findings::is_valve(path)) {
            const bool small = intake ? clearances.small_intake : clearances.small_exhaust;
            // One that there is nothing to hold against says nothing.
            const bool recorded = intake ? clearances.recorded_intake && !clearances.unjudged_intake
                                         : clearances.recorded_exhaust && !clearances.unjudged_exhaust;
            if (small)
                odds = assumptions.at("clearance-none-odds");
            else if (recorded)
                odds = assumptions.at("clearance-good-odds");
        }
        out.push_back(odds);
    }
    return out;
}

CrankEvidence crank_evidence(const Tester* tester, double final_pa, double step_pa,
                             const findings::Reference& reference) {
    const auto gauge = findings::instrument_of(tester ? &tester->gauge : nullptr, std::max(final_pa, 1.0),
                                               step_pa, reference)
                           .gauge;
    const auto errors = uncertainty::errors_at(gauge, std::clamp(final_pa, 0.0, gauge.span_pa));
    CrankEvidence out;
    out.final_pa = final_pa;
    out.noise_pa = std::hypot(errors.local_pa, errors.resolution_pa);
    out.offset_pa = errors.offset_pa;
    out.gain = gain_of(errors.gain_pa, final_pa, gauge.span_pa, reference);
    return out;
}

LeakEvidence leak_evidence(const Tester* tester, double set_pa, double held_pa, double step_pa,
                           const findings::Reference& reference) {
    LeakEvidence out;
    out.set_pa = set_pa;
    out.held_pa = held_pa;
    const auto after =
        findings::instrument_of(tester ? &tester->gauge : nullptr, set_pa, step_pa, reference).gauge;
    const auto errors = uncertainty::errors_at(after, std::clamp(held_pa, 0.0, after.span_pa));
    out.offset_pa = errors.offset_pa;
    out.half_step_pa = 0.5 * std::max(step_pa, after.readable_step_pa);
    out.one_gauge = !tester || !tester->supply_gauge;
    if (out.one_gauge) {
        // Set was read on the same gauge: its local error comes in as well.
        out.noise_pa = std::hypot(errors.local_pa * std::hypot(1.0, held_pa / set_pa), errors.resolution_pa);
        out.set_spread = reference.assumed("droop") / rectangular;
    } else {
        const auto before = findings::instrument_of(&*tester->supply_gauge, set_pa, step_pa, reference).gauge;
        out.noise_pa = std::hypot(errors.local_pa, errors.resolution_pa);
        out.gain = gain_of(errors.gain_pa, held_pa, after.span_pa, reference);
        out.set_spread = uncertainty::u_reading_pa(before, std::min(set_pa, before.span_pa)) / set_pa;
    }
    return out;
}

std::vector<Source> exit_sources(const SourceContext& context, const CylinderEvidence& cylinder, Exit exit,
                                 std::optional<int> neighbour) {
    return Sources(context, cylinder).of(exit, neighbour);
}

}  // namespace lapwing::odds
