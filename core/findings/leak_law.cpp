// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/leak_law.h"

#include <algorithm>
#include <cmath>

#include "core/findings/instruments.h"
#include "core/findings/leak_sums.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::findings {
namespace {

std::string_view code_of(uncertainty::LeakLawVerdict verdict) {
    using enum uncertainty::LeakLawVerdict;
    switch (verdict) {
        case undecided:
            return "law.undecided";
        case hole:
            return "law.hole";
        case narrow_gap:
            return "law.gap";
        case seats:
            return "law.seats";
        case opens:
            return "law.opens";
        case between:
            return "law.between";
    }
    return "law.undecided";
}

}  // namespace

std::optional<Remark> leak_law(const Case& at, const Tester* tester, const HeldOfSet& one,
                               const HeldOfSet& other) {
    const double highest = std::max(one.tester.set_gauge_pa, other.tester.set_gauge_pa);
    const bool two_gauges = tester && tester->supply_gauge;
    const Instrument after = instrument_of(tester ? &tester->gauge : nullptr, highest, 0.0, at.reference);
    const Instrument before =
        two_gauges ? instrument_of(&*tester->supply_gauge, highest, 0.0, at.reference) : after;
    const double droop = two_gauges ? 0.0 : at.reference.assumed("droop") * highest;
    const auto fit_with = [&](const uncertainty::LeakLawScatter& scatter) {
        return uncertainty::leak_law(before.gauge, after.gauge, !two_gauges, {one.tester, one.held.figure.si},
                                     {other.tester, other.held.figure.si}, scatter);
    };
    const auto fit = fit_with({droop, one.scatter_pa, other.scatter_pa});
    if (!fit) return std::nullopt;
    Figure exponent = figure(Dimension::number, fit->exponent);
    if (std::isfinite(fit->u)) exponent.u95 = uncertainty::expanded(fit->u);
    Derivation from;
    from.title = Word{"from:leak_law"};
    from.symbols = "n = ln(A / A′) / ln(p / p′)";
    from.inputs = {input("set", "", one.set.figure), input("held", "p", one.held.figure),
                   input("other_set_pressure", "", other.set.figure),
                   input("other_held", "p′", other.held.figure),
                   input("gap_exponent", "", figure(Dimension::number, fit->gap_exponent))};
    if (std::isfinite(fit->u)) {
        // What is left with one part after the other taken away.
        const auto u_with = [&](const uncertainty::LeakLawScatter& scatter) {
            const auto less = fit_with(scatter);
            return less ? std::min(less->u, fit->u) : fit->u;
        };
        const auto brought = [](double with, double without) {
            return std::sqrt(std::max(0.0, with * with - without * without));
        };
        const double steady = u_with({droop, 0.0, 0.0});
        const double by_gauge = std::min(u_with({}), steady);
        from.doubts = doubt_shares({{"gauge", by_gauge},
                                    {"droop", brought(steady, by_gauge)},
                                    {"leak_repeat", brought(fit->u, steady)}});
    }
    if (one.scatter_pa > 0.0 || other.scatter_pa > 0.0)
        from.notes.push_back(
            say("note.leak_repeat", figure(Dimension::share, at.reference.assumed("leak-repeat"))));
    from.source = say("source.physics", std::string("isentropic nozzle flow; a narrow gap between plates"));
    Remark out = remark(code_of(fit->verdict), exponent);
    out.from = {std::move(from)};
    return out;
}

}  // namespace lapwing::findings
