// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/contradictions.h"

#include <algorithm>
#include <cmath>

#include "core/findings/instruments.h"

namespace lapwing::odds {
namespace {

using findings::Dimension;
using findings::figure;
using findings::say;

findings::Figure gauge(double pa) {
    return figure(Dimension::gauge_pressure, pa);
}

double leakage(const LeakEvidence& leak) {
    return (leak.set_pa - leak.held_pa) / leak.set_pa;
}

bool heard(const CylinderEvidence& cylinder, Exit exit) {
    return std::ranges::any_of(cylinder.exits, [&](const ExitEvidence& one) {
        return one.exit == exit && one.loudness != Loudness::nothing;
    });
}

/// Whether somebody listened at every place where most of a large leak must come out.
bool listened_everywhere(const CylinderEvidence& cylinder) {
    return std::ranges::none_of(cylinder.to_hear, [](const ExitEvidence& exit) {
        return exit.exit == Exit::intake || exit.exit == Exit::exhaust || exit.exit == Exit::breather;
    });
}

void drop_air(CylinderEvidence& cylinder) {
    cylinder.leaks.clear();
    cylinder.exits.clear();
}

/// Both valves open on overlap let nearly everything out: nothing was measured of how the cylinder seals.
void suspect_wrong_tdc(const findings::Case& state, CylinderEvidence& cylinder) {
    if (state.two_stroke()) return;
    const double very_low = state.reference.assumed("very-low-held");
    const bool low = std::ranges::any_of(
        cylinder.leaks, [&](const LeakEvidence& leak) { return leak.held_pa < very_low * leak.set_pa; });
    if (!low || !heard(cylinder, Exit::intake) || !heard(cylinder, Exit::exhaust)) return;
    cylinder.wrong_tdc_suspected = true;
    cylinder.reasons.push_back(say("odds.tdc_first", cylinder.number));
    drop_air(cylinder);
}

void compare_wet_and_dry(const Assumptions& assumptions, CylinderEvidence& cylinder) {
    if (!cylinder.dry || !cylinder.wet) return;
    const double dry = cylinder.dry->final_pa;
    const double wet = cylinder.wet->final_pa;
    const double scatter = assumptions.at("reading-scatter");
    const double doubt = std::hypot(std::hypot(cylinder.dry->noise_pa, cylinder.wet->noise_pa),
                                    scatter * std::hypot(dry, wet));
    const double beyond_chance = assumptions.at("beyond-chance");
    // Oil can fill up, seal, and cost a little speed; it can't lower a reading by much.
    const double far_above = assumptions.at("wet-far-above");
    if (wet < dry - beyond_chance * doubt) {
        cylinder.contradictions.push_back(say("odds.wet_below_dry", cylinder.number, gauge(dry), gauge(wet)));
        cylinder.wet.reset();
    } else if (dry > 0.0 && wet > far_above * dry + beyond_chance * doubt) {
        cylinder.contradictions.push_back(say("odds.wet_far_above", cylinder.number, gauge(dry), gauge(wet),
                                              figure(Dimension::share, far_above - 1.0)));
        cylinder.wet.reset();
    }
}

void compare_air_and_sound(const Assumptions& assumptions, CylinderEvidence& cylinder) {
    const auto nothing_held = std::ranges::find_if(
        cylinder.leaks, [](const LeakEvidence& leak) { return leak.held_pa <= leak.half_step_pa; });
    if (nothing_held != cylinder.leaks.end()) {
        cylinder.contradictions.push_back(
            say("odds.held_nothing", cylinder.number, gauge(nothing_held->set_pa)));
        drop_air(cylinder);
        return;
    }
    if (cylinder.leaks.empty() || cylinder.exits.empty()) return;
    const double lost = leakage(cylinder.leaks.back());
    const auto listened = [](const ExitEvidence& exit) {
        return exit.by != ListenedBy::bubbles && exit.by != ListenedBy::soapy_water;
    };
    const auto strong = std::ranges::count_if(cylinder.exits, [&](const ExitEvidence& exit) {
        return listened(exit) && exit.loudness == Loudness::strong;
    });
    if (lost < assumptions.at("loud-but-tight") && strong >= std::lround(assumptions.at("loud-exits"))) {
        cylinder.contradictions.push_back(
            say("odds.loud_but_tight", cylinder.number, figure(Dimension::share, lost)));
        drop_air(cylinder);
    } else if (lost > assumptions.at("silent-but-leaks") && listened_everywhere(cylinder) &&
               std::ranges::all_of(cylinder.exits, [](const ExitEvidence& exit) {
                   return exit.loudness == Loudness::nothing;
               })) {
        cylinder.contradictions.push_back(
            say("odds.silent_but_leaks", cylinder.number, figure(Dimension::share, lost)));
        drop_air(cylinder);
    }
}

}  // namespace

void sort_out_contradictions(const findings::Case& state, const Assumptions& assumptions,
                             CylinderEvidence& cylinder) {
    suspect_wrong_tdc(state, cylinder);
    compare_wet_and_dry(assumptions, cylinder);
    compare_air_and_sound(assumptions, cylinder);
}

}  // namespace lapwing::odds
