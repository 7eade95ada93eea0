// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/base/apart.h"
#include "core/findings/instruments.h"
#include "core/findings/told_apart.h"

namespace lapwing::findings {

CrankcaseVerdict judge_crankcase(const CrankcaseLimits& limits, const Figure& end,
                                 const std::optional<TypedTime>& hold) {
    if (!limits.end_at_least) return {State::none, "no_limit"};
    const double least = limits.end_at_least->si();
    if (is_below(end.si, least)) return {State::fault, "loses"};
    if (limits.hold && hold && is_below(hold->si(), limits.hold->si()))
        return {State::borderline, "too_short"};
    if (is_below(end.si, least + end.u95.value_or(0.0))) return {State::borderline, "close"};
    return {State::good, hold ? "holds" : "holds_no_time"};
}

namespace {

/// What is said of it, of the engine or of a cylinder's chamber.
template <class... Args>
Remark remark_of(const Case& at, int cylinder, std::string_view what, const Args&... args) {
    return cylinder == 0 || at.engine.cylinders.size() == 1
               ? remark("crankcase." + std::string(what), args...)
               : remark("chamber." + std::string(what), cylinder, args...);
}

std::optional<Crankcase> crankcase_of(const Case& at, int cylinder) {
    auto readings = counted(at, TestKind::crankcase, cylinder);
    std::erase_if(readings, [](const Reading* reading) { return !reading->set || !reading->held; });
    if (readings.empty()) return std::nullopt;
    const Reading& last = *readings.back();
    const Tester* tester = tester_of(at, TestKind::crankcase, last.tester);
    const Gauge* dial = tester ? &tester->gauge : nullptr;
    Crankcase out;
    out.cylinder = cylinder;
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
    const auto [state, what] = judge_crankcase(limits, out.end.figure, last.hold);
    out.state = state;
    if (!limits.end_at_least) {
        out.remark = last.hold ? remark_of(at, cylinder, "no_limit_timed", out.set.figure, out.end.figure,
                                           figure_of(*last.hold))
                               : remark_of(at, cylinder, what, out.set.figure, out.end.figure);
        return out;
    }
    const Figure least = figure_of(*limits.end_at_least);
    if (what == "close" && !lies_close(at.reference, out.end.figure.si - least.si, least.si))
        out.remark = remark_of(at, cylinder, "unsure", out.end.figure, least,
                               figure(Dimension::pressure_difference, out.end.figure.u95.value_or(0.0)),
                               what_narrows(out.end, least));
    else if (what == "too_short")
        out.remark = remark_of(at, cylinder, what, figure_of(*last.hold), figure_of(*limits.hold));
    else if (what == "holds")
        out.remark = remark_of(at, cylinder, what, out.end.figure, least, figure_of(*last.hold));
    else
        out.remark = remark_of(at, cylinder, what, out.end.figure, least);
    out.remark.from = {out.end.from};
    out.remark.from.back().source = say("source.card", word_of(limits.origin), limits.note);
    return out;
}

}  // namespace

std::vector<Crankcase> crankcases_of(const Case& at) {
    std::vector<Crankcase> out;
    const auto look = [&](int cylinder) {
        if (auto one = crankcase_of(at, cylinder)) out.push_back(std::move(*one));
    };
    look(0);
    for (const int number : numbers_in_order(at.engine))
        look(number);
    return out;
}

}  // namespace lapwing::findings
