// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <cmath>

#include "core/findings/instruments.h"

namespace lapwing::findings {

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
    if (!limits.end_at_least) {
        out.remark = remark("crankcase.no_limit", out.set.figure, out.end.figure);
        return out;
    }
    const Figure least = figure_of(*limits.end_at_least);
    const double above = out.end.figure.si - least.si;
    if (above < 0.0) {
        out.state = State::fault;
        out.remark = remark("crankcase.loses", out.end.figure, least);
    } else if (limits.hold && last.hold && last.hold->si() < limits.hold->si()) {
        out.state = State::borderline;
        out.remark = remark("crankcase.too_short", figure_of(*last.hold), figure_of(*limits.hold));
    } else if (above < out.end.figure.u95.value_or(0.0)) {
        out.state = State::borderline;
        out.remark = remark("crankcase.close", out.end.figure, least);
    } else {
        out.state = State::good;
        out.remark = last.hold ? remark("crankcase.holds", out.end.figure, least, figure_of(*last.hold))
                               : remark("crankcase.holds_no_time", out.end.figure, least);
    }
    out.remark.from = {out.end.from};
    out.remark.from.back().source = say("source.card", word_of(limits.origin), limits.note);
    return out;
}

}  // namespace lapwing::findings
