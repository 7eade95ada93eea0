// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/compare/measured.h"
#include "core/findings/leak_sums.h"
#include "core/findings/misfits.h"

namespace lapwing::compare {
namespace {

using findings::Dimension;
using physics::LeakLaw;
using physics::TesterPneumatics;

/// Leakage that `to` shows where `from` holds that pressure.
std::optional<double> leakage_on(const TesterPneumatics& from, double held_pa, const TesterPneumatics& to,
                                 LeakLaw law) {
    const auto held = physics::held_on_other_tester_gauge_pa(from, held_pa, to, law);
    if (!held) return std::nullopt;
    return 1.0 - *held / to.set_gauge_pa;
}

double restrictor_doubt(const Measured& of) {
    return findings::restrictor_doubt(*of.at, of.tester);
}

/// The same leak on the other tester, with the doubt of both restrictors and of the leak's law.
void convert(const Measured& from, const Measured& to, Crossed& out) {
    const TesterPneumatics& own = from.pneumatics;
    const TesterPneumatics& other = to.pneumatics;
    const auto as_hole = leakage_on(own, from.held_pa, other, LeakLaw::orifice);
    const auto as_gap = leakage_on(own, from.held_pa, other, LeakLaw::laminar);
    if (!as_hole || !as_gap) return;
    const double step_pa = 0.005 * own.set_gauge_pa;
    const double above_pa = std::min(from.held_pa + step_pa, own.set_gauge_pa);
    const double below_pa = std::max(from.held_pa - step_pa, 0.0);
    const auto above = leakage_on(own, above_pa, other, LeakLaw::orifice);
    const auto below = leakage_on(own, below_pa, other, LeakLaw::orifice);
    const double slope = above && below ? (*below - *above) * own.set_gauge_pa / (above_pa - below_pa) : 1.0;
    out.value = out.value.through(*as_hole, slope);
    out.converted = true;

    const auto with_restrictors = [&](double own_by, double other_by) {
        TesterPneumatics a = own;
        TesterPneumatics b = other;
        a.restrictor_cd *= 1.0 + own_by;
        b.restrictor_cd *= 1.0 + other_by;
        return leakage_on(a, from.held_pa, b, LeakLaw::orifice).value_or(*as_hole) - *as_hole;
    };
    // On one and the same tester the two moves cancel.
    out.value.by_source(from.tester_key + " restrictor", with_restrictors(restrictor_doubt(from), 0.0));
    out.value.by_source(to.tester_key + " restrictor", with_restrictors(0.0, restrictor_doubt(to)));
    out.value.by_source("law of cylinder " + std::to_string(from.cylinder),
                        from.at->reference.assumed("leak-law-doubt") * (*as_gap - *as_hole));
}

void testers(const Measured& from, const Measured& to, Crossed& out) {
    const bool one_visit = &from.at->visit == &to.at->visit;
    const bool known = from.tester && to.tester;
    if (!known && !one_visit)
        say_why(out, to, Treatment::not_noted, "compare.tester_unknown", findings::word_of(to.test));
    const bool same_tester = known ? from.tester == to.tester : !from.tester && !to.tester;
    const bool same_set = findings::same_set_pressure(from.pneumatics.set_gauge_pa,
                                                      to.pneumatics.set_gauge_pa, from.at->reference);
    const bool same_air = std::abs(from.pneumatics.ambient_pa / to.pneumatics.ambient_pa - 1.0) < 1e-3;
    if (same_tester && same_set && same_air) return;
    convert(from, to, out);
    if (known && !same_tester)
        say_why(out, to, Treatment::corrected, "compare.tester", from.tester->name, to.tester->name);
    if (!same_set)
        say_why(out, to, Treatment::corrected, "compare.set_pressure",
                findings::figure(Dimension::gauge_pressure, from.pneumatics.set_gauge_pa),
                findings::figure(Dimension::gauge_pressure, to.pneumatics.set_gauge_pa));
    if (!same_air)
        say_why(out, to, Treatment::corrected, "compare.air_pressure",
                findings::figure(Dimension::station_pressure, from.pneumatics.ambient_pa),
                findings::figure(Dimension::station_pressure, to.pneumatics.ambient_pa));
    if (!same_tester)
        for (const Measured* of : {&from, &to})
            if (of->tester && !of->tester->restrictor)
                say_why(out, to, Treatment::allowed, "compare.restrictor_unknown", of->tester->name);
}

bool tdc_in_question(const Measured& of) {
    return findings::tdc_in_question(*of.at, findings::tested(*of.at, of.cylinder));
}

}  // namespace

void cross_leak_down(const Measured& from, const Measured& to, Crossed& out) {
    testers(from, to, out);
    const EngineHeat was = from.session().conditions.heat;
    const EngineHeat is = to.session().conditions.heat;
    if (was == EngineHeat::unknown || is == EngineHeat::unknown) {
        // Neither visit may tell; within one it was the same engine.
        if (&from.at->visit != &to.at->visit) say_why(out, to, Treatment::not_noted, "compare.heat_unknown");
    } else if (was != is) {
        const double doubt = from.at->reference.assumed("leak-heat-doubt");
        out.value.by_source("heat " + from.session().id.text(), doubt * out.value.value);
        say_why(out, to, Treatment::allowed, "compare.heat_leak", findings::figure(Dimension::share, doubt));
    }
    using findings::OnRings;
    const OnRings then = findings::oil_on_rings(from.at->visit, from.newest());
    const OnRings now = findings::oil_on_rings(to.at->visit, to.newest());
    if ((then == OnRings::oiled) != (now == OnRings::oiled))
        say_why(out, to, Treatment::prevents,
                then == OnRings::oiled ? "compare.oil_earlier" : "compare.oil_later");
    else if (now == OnRings::unknown && to.newest().tag == Tag::after_repair)
        say_why(out, to, Treatment::not_noted, "compare.oil_unknown");
    if (tdc_in_question(from) || tdc_in_question(to)) say_why(out, to, Treatment::prevents, "compare.tdc");
}

}  // namespace lapwing::compare
