// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/base/apart.h"
#include "core/findings/instruments.h"

namespace lapwing::findings {

CrankcaseVerdict judge_crankcase(const CrankcaseLimits& limits, const Figure& end,
                                 const std::optional<TypedTime>& hold) {
    if (!limits.end_at_least) return {State::none, "crankcase.no_limit"};
    const double least = limits.end_at_least->si();
    if (is_below(end.si, least)) return {State::fault, "crankcase.loses"};
    if (limits.hold && hold && is_below(hold->si(), limits.hold->si()))
        return {State::borderline, "crankcase.too_short"};
    if (is_below(end.si, least + end.u95.value_or(0.0))) return {State::borderline, "crankcase.close"};
    return {State::good, hold ? "crankcase.holds" : "crankcase.holds_no_time"};
}

std::optional<Crankcase> crankcase_of(const Case& at) {
    auto readings = counted(at, TestKind::crankcase, 0);
    std::erase_if(readings, [](const Reading* reading) { return !reading->set || !reading->held; });
    if (readings.empty()) return std::nullopt;
    const Reading& last = *readings.back();
    const Tester* tester = tester_of(at, TestKind::crankcase, last.tester);
    const Gauge* dial = tester ? &tester->gauge : nullptr;
    Crankcase out;
    // Only the newest counts: how such a test repeats is not known, and not said.
    out.set = mean_of(at, {&last}, &Reading::set, dial, {});
    out.end = mean_of(at, {&last}, &Reading::held, dial, {});
    if (last.hold) {
        Derived hold;
        hold.figure = figure_of(*last.hold);
        hold.from.title = Word{"from:hold"};
        hold.from.source = say("source.typed");
        out.hold = std::move(hold);
    }
    const CrankcaseLimits& limits = at.engine.crankcase;
    const auto [state, code] = judge_crankcase(limits, out.end.figure, last.hold);
    out.state = state;
    if (!limits.end_at_least) {
        out.remark = last.hold ? remark("crankcase.no_limit_timed", out.set.figure, out.end.figure,
                                        figure_of(*last.hold))
                               : remark(code, out.set.figure, out.end.figure);
        return out;
    }
    const Figure least = figure_of(*limits.end_at_least);
    if (code == "crankcase.too_short")
        out.remark = remark(code, figure_of(*last.hold), figure_of(*limits.hold));
    else if (code == "crankcase.holds")
        out.remark = remark(code, out.end.figure, least, figure_of(*last.hold));
    else
        out.remark = remark(code, out.end.figure, least);
    out.remark.from = {out.end.from};
    out.remark.from.back().source = say("source.card", word_of(limits.origin), limits.note);
    return out;
}

}  // namespace lapwing::findings
