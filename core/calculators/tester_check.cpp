// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/calculators/tester_check.h"

#include <algorithm>
#include <cmath>

#include "core/calculators/pieces.h"
#include "core/findings/instruments.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::calculators {
namespace {

using findings::Dimension;
using findings::remark;

/// Largest error that the gauge's class allows, and what can't be read off it.
double most_off_pa(const Tester& tester, const TesterCheck& check, const findings::Reference& reference) {
    const double at = std::max(check.shown->si(), 0.0);
    const auto gauge =
        findings::instrument_of(&tester.gauge, std::max(at, 1.0), check.shown->step_si(), reference).gauge;
    return gauge.accuracy.limit(at / gauge.span_pa) * gauge.span_pa + 0.5 * gauge.readable_step_pa;
}

CheckSays at_rest(const Tester& tester, const TesterCheck& check, const findings::Reference& reference) {
    const double off = std::abs(check.shown->si());
    const bool passes = off <= most_off_pa(tester, check, reference);
    return {off > 0.0 ? remark("check.zero_off", figure(Dimension::pressure_difference, off))
                      : remark("check.zero"),
            passes};
}

CheckSays against_reference(const Tester& tester, const TesterCheck& check,
                            const findings::Reference& reference) {
    const double apart = check.shown->si() - check.set->si();
    const double most = most_off_pa(tester, check, reference);
    const bool passes = std::abs(apart) <= most;
    return {
        remark(passes ? "check.reference_within" : "check.reference_off",
               figure(Dimension::pressure_difference, apart), figure(Dimension::pressure_difference, most)),
        passes};
}

std::optional<CheckSays> outlet_blocked(const Tester& tester, const TesterCheck& check,
                                        const findings::Reference& reference) {
    if (!(check.set->si() > 0.0)) return std::nullopt;
    const double set = check.set->si(), shown = check.shown->si(), lost = set - shown;
    // Read off one dial most of its error is the same both times; off two nothing cancels.
    const auto dial = [&](const Gauge& gauge) {
        return findings::instrument_of(&gauge, set, check.shown->step_si(), reference).gauge;
    };
    const auto after = dial(tester.gauge);
    const double most = tester.supply_gauge ? uncertainty::expanded(uncertainty::u_difference_two_gauges_pa(
                                                  dial(*tester.supply_gauge), set, after, shown))
                                            : findings::u95_difference(after, set, shown);
    const bool passes = std::abs(lost) <= most;
    return CheckSays{remark(passes ? "check.outlet_holds" : "check.outlet_leaks",
                            figure(Dimension::pressure_difference, lost),
                            figure(Dimension::share, lost / check.set->si())),
                     passes};
}

std::optional<CheckSays> drilled_hole(const Tester& tester, const TesterCheck& check,
                                      const findings::Reference& reference) {
    Worksheet sheet;
    sheet.tester = tester;
    sheet.set = check.set;
    sheet.held = check.shown;
    sheet.hole = check.hole;
    const auto answer = restrictor(sheet, reference);
    if (!answer) return std::nullopt;
    const auto& found = std::get<findings::Derived>(answer->lines.front().value);
    CheckSays out{remark("check.restrictor", found.figure), true};
    if (tester.restrictor) {
        out.passes = std::abs(found.figure.si - tester.restrictor->si()) <= found.figure.u95.value_or(0.0);
        out.remark = remark(out.passes ? "check.restrictor_as_card" : "check.restrictor_off", found.figure,
                            findings::figure_of(*tester.restrictor));
    }
    out.remark.from = {found.from};
    return out;
}

}  // namespace

std::optional<CheckSays> check_says(const Tester& tester, const TesterCheck& check,
                                    const findings::Reference& reference) {
    if (!check.shown) return std::nullopt;
    if (check.kind == TesterCheckKind::zero_at_rest) return at_rest(tester, check, reference);
    if (!check.set) return std::nullopt;
    switch (check.kind) {
        case TesterCheckKind::against_reference:
            return against_reference(tester, check, reference);
        case TesterCheckKind::outlet_blocked:
            return outlet_blocked(tester, check, reference);
        case TesterCheckKind::drilled_hole:
            return check.hole ? drilled_hole(tester, check, reference) : std::nullopt;
        default:
            return std::nullopt;
    }
}

}  // namespace lapwing::calculators
