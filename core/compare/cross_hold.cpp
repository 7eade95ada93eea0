// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/compare/measured.h"
#include "core/findings/leak_sums.h"
#include "core/physics/hold.h"

namespace lapwing::compare {
namespace {

using findings::Dimension;
using physics::Hold;
using physics::LeakLaw;

Hold hold_of(const Measured& of, double seconds) {
    return {of.set_pa, seconds, of.at->site.ambient_pa};
}

/// What the earlier leak leaves in the later hold, with the doubt of the leak's law. Nothing where how fast
/// it leaked isn't known.
bool convert(const Measured& from, const Measured& to, Crossed& out) {
    // Where a time is missing both are taken as the same: then it drops out.
    constexpr double any_s = 60.0;
    const bool timed = from.hold_s && to.hold_s;
    const Hold then = hold_of(from, timed ? *from.hold_s : any_s);
    const Hold now = hold_of(to, timed ? *to.hold_s : any_s);
    const double end_pa = from.newest().held->si();
    const auto at = [&](double end, LeakLaw law) {
        return physics::held_in_other_hold_gauge_pa(then, std::clamp(end, 0.0, then.set_gauge_pa), now, law);
    };
    const auto as_hole = at(end_pa, LeakLaw::orifice);
    const auto as_gap = at(end_pa, LeakLaw::laminar);
    if (!as_hole || !as_gap) return false;
    const double step_pa = 0.005 * then.set_gauge_pa;
    const double above_pa = std::min(end_pa + step_pa, then.set_gauge_pa);
    const double below_pa = std::max(end_pa - step_pa, 0.5 * end_pa);
    const auto above = at(above_pa, LeakLaw::orifice);
    const auto below = at(below_pa, LeakLaw::orifice);
    const double slope = above && below ? (*above - *below) / (above_pa - below_pa) : 1.0;
    out.value = out.value.through(*as_hole, slope);
    out.converted = true;
    out.value.by_source("law of chamber " + std::to_string(from.cylinder),
                        from.at->reference.assumed("leak-law-doubt") * (*as_gap - *as_hole));
    return true;
}

}  // namespace

void cross_hold(const Measured& from, const Measured& to, Crossed& out) {
    const bool one_visit = &from.at->visit == &to.at->visit;
    const bool known = from.tester && to.tester;
    if (known && from.tester != to.tester)
        say_why(out, to, Treatment::allowed, "compare.crankcase_tester", from.tester->name, to.tester->name);
    else if (!known && !one_visit)
        say_why(out, to, Treatment::not_noted, "compare.tester_unknown", findings::word_of(to.test));

    constexpr double alike_s = 1.0;
    const bool timed = from.hold_s && to.hold_s;
    const bool same_set = findings::same_set_pressure(from.set_pa, to.set_pa, from.at->reference);
    const bool same_time = !timed || std::abs(*from.hold_s - *to.hold_s) < alike_s;
    const bool same_air = std::abs(from.at->site.ambient_pa / to.at->site.ambient_pa - 1.0) < 1e-3;
    if (!timed) say_why(out, to, Treatment::not_noted, "compare.hold_unknown");
    // Pumped up to nearly the same is converted too, and not worth a word.
    const bool as_it_is = from.set_pa == to.set_pa && same_time && same_air;
    if (!as_it_is && !convert(from, to, out)) {
        say_why(out, to, Treatment::prevents, "compare.emptied");
    } else {
        if (!same_set)
            say_why(out, to, Treatment::corrected, "compare.set_pressure",
                    findings::figure(Dimension::gauge_pressure, from.set_pa),
                    findings::figure(Dimension::gauge_pressure, to.set_pa));
        if (!same_time)
            say_why(out, to, Treatment::corrected, "compare.hold", findings::figure_of(*from.newest().hold),
                    findings::figure_of(*to.newest().hold));
        if (!same_air)
            say_why(out, to, Treatment::corrected, "compare.air_pressure",
                    findings::figure(Dimension::station_pressure, from.at->site.ambient_pa),
                    findings::figure(Dimension::station_pressure, to.at->site.ambient_pa));
    }
    const EngineHeat was = from.session().conditions.heat;
    const EngineHeat is = to.session().conditions.heat;
    if (was == is) return;
    if (was == EngineHeat::unknown || is == EngineHeat::unknown)
        return say_why(out, to, Treatment::not_noted, "compare.heat_unknown");
    const double doubt = from.at->reference.assumed("leak-heat-doubt");
    out.value.by_source("heat " + from.session().id.text(), doubt * (to.set_pa - out.value.value));
    say_why(out, to, Treatment::allowed, "compare.heat_leak", findings::figure(Dimension::share, doubt));
}

}  // namespace lapwing::compare
