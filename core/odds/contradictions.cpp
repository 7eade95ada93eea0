// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/contradictions.h"

#include <algorithm>
#include <cmath>

#include "core/findings/misfits.h"

namespace lapwing::odds {
namespace {

using findings::figure;
using findings::Misfit;
using findings::say;

findings::Figure gauge(double pa) {
    return figure(findings::Dimension::gauge_pressure, pa);
}
findings::Figure leakage(const LeakEvidence& leak) {
    return figure(findings::Dimension::share, (leak.set_pa - leak.held_pa) / leak.set_pa);
}

void drop_air(CylinderEvidence& cylinder) {
    cylinder.leaks.clear();
    cylinder.exits.clear();
}

/// Leaves out what is to be done again, and says so. Nothing where the odds don't rest on it anyway.
std::optional<findings::Message> leave_out(Misfit misfit, CylinderEvidence& cylinder) {
    const int number = cylinder.number;
    const auto& leaks = cylinder.leaks;
    const auto air = [&](std::string_view code, const findings::Figure& shown) {
        auto out = say(code, number, shown);
        drop_air(cylinder);
        return out;
    };
    const auto wet = [&](std::string_view code) {
        auto out = say(code, number, gauge(cylinder.dry->final_pa), gauge(cylinder.wet->final_pa));
        cylinder.wet.reset();
        return out;
    };
    switch (misfit) {
        case Misfit::held_nothing:
            if (!leaks.empty()) return air("odds.held_nothing", gauge(leaks.back().set_pa));
            break;
        case Misfit::loud_but_tight:
            if (!leaks.empty()) return air("odds.loud_but_tight", leakage(leaks.back()));
            break;
        case Misfit::silent_but_leaks:
            if (!leaks.empty()) return air("odds.silent_but_leaks", leakage(leaks.back()));
            break;
        case Misfit::held_apart:
            if (leaks.empty()) break;
            drop_air(cylinder);
            return say("odds.held_apart", number);
        case Misfit::dry_apart:
            if (!cylinder.dry) break;
            cylinder.dry.reset();
            cylinder.wet.reset();
            return say("odds.dry_apart", number);
        case Misfit::built_nothing:
            if (!cylinder.dry) break;
            cylinder.dry.reset();
            cylinder.wet.reset();
            return say("odds.built_nothing", number);
        case Misfit::wet_below_dry:
            if (cylinder.dry && cylinder.wet) return wet("odds.wet_below_dry");
            break;
        case Misfit::wet_far_above:
            if (cylinder.dry && cylinder.wet) return wet("odds.wet_far_above");
            break;
    }
    return std::nullopt;
}

}  // namespace

void sort_out_contradictions(const findings::Case& state, CylinderEvidence& cylinder) {
    const findings::CylinderFindings tested = findings::tested(state, cylinder.number);
    // At the wrong TDC nothing was measured of how the cylinder seals.
    if (findings::tdc_in_question(state, tested)) {
        cylinder.wrong_tdc_suspected = true;
        cylinder.reasons.push_back(say("odds.tdc_first", cylinder.number));
        drop_air(cylinder);
    }
    for (const Misfit misfit : findings::misfits_of(state, tested))
        if (auto said = leave_out(misfit, cylinder)) cylinder.contradictions.push_back(std::move(*said));
}

}  // namespace lapwing::odds
