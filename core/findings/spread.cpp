// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/findings/instruments.h"

namespace lapwing::findings {
namespace {

struct Level {
    int cylinder;
    double pa;
    double scatter_u95;
};

struct Levels {
    std::vector<Level> all;
    Level lowest, highest;
    double average = 0.0;
    uncertainty::Gauge gauge;
};

Levels levels_of(const Case& at, const std::vector<CylinderFindings>& cylinders) {
    Levels out;
    for (const CylinderFindings& cylinder : cylinders)
        if (cylinder.dry)
            out.all.push_back({cylinder.number, cylinder.dry->final.figure.si, cylinder.dry->scatter_u95});
    if (out.all.empty()) return out;
    out.lowest = *std::ranges::min_element(out.all, {}, &Level::pa);
    out.highest = *std::ranges::max_element(out.all, {}, &Level::pa);
    for (const Level& level : out.all)
        out.average += level.pa / static_cast<double>(out.all.size());
    double step = 0.0;
    for (const Reading& reading : at.visit.readings)
        if (reading.test == TestKind::dry && reading.final) step = std::max(step, reading.final->step_si());
    const Tester* tester = tester_of(at, TestKind::dry, {});
    out.gauge = instrument_of(tester ? &tester->gauge : nullptr, out.highest.pa, step, at.reference).gauge;
    return out;
}

double ratio_u95(const Levels& levels) {
    return with_scatter(u95_quotient(levels.gauge, levels.lowest.pa, levels.highest.pa), levels.lowest.pa,
                        levels.lowest.scatter_u95, levels.highest.pa, levels.highest.scatter_u95);
}
double difference_u95(const Levels& levels) {
    return std::hypot(u95_difference(levels.gauge, levels.highest.pa, levels.lowest.pa),
                      levels.lowest.scatter_u95, levels.highest.scatter_u95);
}

Figure pressure(double pa) {
    return figure(Dimension::gauge_pressure, pa);
}
Figure share(double value, std::optional<double> u95 = {}) {
    return figure(Dimension::share, value, u95);
}

Derivation ratio_derivation(const Levels& levels, Message source) {
    Derivation out;
    out.title = Word{"from:lowest_of_highest"};
    out.symbols = "p_min / p_max";
    out.inputs = {input("lowest", "p_min", pressure(levels.lowest.pa)),
                  input("highest", "p_max", pressure(levels.highest.pa))};
    out.source = std::move(source);
    return out;
}

template <class Fails>
CylinderList failing(const Levels& levels, Fails fails) {
    CylinderList out;
    for (const Level& level : levels.all)
        if (fails(level.pa)) out.push_back(level.cylinder);
    return out;
}

// Readings and rules come in whole psi or tenths of a bar: 75 % of 100 is met by 75.
constexpr double hair = 1e-9;

RuleVerdict judge_lowest(const SpreadRule& rule, const Levels& levels) {
    RuleVerdict out{rule.id, true, State::none, {}, {}};
    const double ratio = levels.lowest.pa / levels.highest.pa;
    const double least = rule.share * levels.highest.pa;
    const Figure shown = share(ratio, ratio_u95(levels));
    out.failing = failing(levels, [&](double pa) { return pa < least * (1.0 - hair); });
    out.remark = out.failing.empty()
                     ? remark("spread.ratio_holds", shown, share(rule.share), rule.basis.source)
                     : remark("spread.ratio_fails", out.failing, shown, share(rule.share), rule.basis.source);
    if (out.failing.empty() && rule.at_least) {
        const double floor = rule.at_least->si();
        out.failing = failing(levels, [&](double pa) { return pa < floor * (1.0 - hair); });
        if (!out.failing.empty())
            out.remark = remark("spread.ratio_under", out.failing, pressure(floor), rule.basis.source);
    }
    out.holds = out.failing.empty();
    out.remark.from.push_back(ratio_derivation(levels, source_of(rule.basis)));
    return out;
}

RuleVerdict judge_average(const SpreadRule& rule, const Levels& levels) {
    RuleVerdict out{rule.id, true, State::none, {}, {}};
    const double least = (1.0 - rule.share) * levels.average;
    out.failing = failing(levels, [&](double pa) { return pa <= least * (1.0 + hair); });
    out.holds = out.failing.empty();
    const Figure average = pressure(levels.average);
    out.remark = out.holds ? remark("spread.average_holds", share(rule.share), average, rule.basis.source)
                           : remark("spread.average_fails", out.failing, share(rule.share), average,
                                    rule.basis.source);
    Derivation from;
    from.title = Word{"from:average"};
    from.symbols = "p < (1 − s) Σ p_i / n";
    for (const Level& level : levels.all)
        from.inputs.push_back(input("reading", "p_i", pressure(level.pa)));
    from.source = source_of(rule.basis);
    out.remark.from.push_back(std::move(from));
    return out;
}

/// The engine's own most difference between cylinders.
RuleVerdict judge_difference(const Case& at, const Levels& levels) {
    const Derived& limit = *at.limits.difference;
    RuleVerdict out{"own-difference", true, State::fault, {}, {}};
    const double difference = levels.highest.pa - levels.lowest.pa;
    const double doubt = difference_u95(levels);
    const Figure shown = figure(Dimension::pressure_difference, difference, doubt);
    out.failing =
        failing(levels, [&](double pa) { return levels.highest.pa - pa > limit.figure.si * (1.0 + hair); });
    out.holds = out.failing.empty();
    out.remark = out.holds ? remark("spread.difference_holds", shown, limit.figure)
                 : std::abs(difference - limit.figure.si) < doubt
                     ? remark("spread.difference_close", out.failing, shown, limit.figure)
                     : remark("spread.difference_fails", out.failing, shown, limit.figure);
    Derivation from;
    from.title = Word{"from:difference"};
    from.symbols = "p_max − p_min";
    from.inputs = {input("highest", "p_max", pressure(levels.highest.pa)),
                   input("lowest", "p_min", pressure(levels.lowest.pa))};
    from.source = source_of_card(at.engine.limits);
    out.remark.from = {std::move(from), limit.from};
    return out;
}

RuleVerdict judge_own_ratio(const Case& at, const Levels& levels) {
    const double least = at.engine.limits.least_ratio->si();
    RuleVerdict out{"own-ratio", true, State::fault, {}, {}};
    const double ratio = levels.lowest.pa / levels.highest.pa;
    const Figure shown = share(ratio, ratio_u95(levels));
    out.failing = failing(levels, [&](double pa) { return pa < least * levels.highest.pa * (1.0 - hair); });
    out.holds = out.failing.empty();
    out.remark = out.holds ? remark("spread.own_ratio_holds", shown, share(least))
                           : remark("spread.own_ratio_fails", out.failing, shown, share(least));
    out.remark.from.push_back(ratio_derivation(levels, source_of_card(at.engine.limits)));
    return out;
}

void apply(const RuleVerdict& verdict, State gives, std::vector<CylinderFindings>& cylinders) {
    for (CylinderFindings& cylinder : cylinders) {
        if (!cylinder.dry) continue;
        const bool fails = std::ranges::find(verdict.failing, cylinder.number) != verdict.failing.end();
        cylinder.dry->state = worse(cylinder.dry->state, fails ? gives : State::good);
        if (fails) cylinder.dry->why.push_back(verdict.remark);
    }
}

}  // namespace

std::vector<RuleVerdict> judge_spread(const Case& at, std::vector<CylinderFindings>& cylinders) {
    std::vector<RuleVerdict> out;
    const Levels levels = levels_of(at, cylinders);
    if (levels.all.size() < 2 || !(levels.highest.pa > 0.0)) return out;
    const bool own = at.limits.difference || at.engine.limits.least_ratio;
    if (at.limits.difference) {
        out.push_back(judge_difference(at, levels));
        apply(out.back(), State::fault, cylinders);
    }
    if (at.engine.limits.least_ratio) {
        out.push_back(judge_own_ratio(at, levels));
        apply(out.back(), State::fault, cylinders);
    }
    for (const SpreadRule& rule : at.reference.spread) {
        out.push_back(rule.kind == SpreadKind::lowest_of_highest ? judge_lowest(rule, levels)
                                                                 : judge_average(rule, levels));
        // The maker's own figure wins over rules made for other engines.
        if (!own) out.back().gives = rule.gives;
        if (out.back().gives != State::none) apply(out.back(), rule.gives, cylinders);
    }
    const double difference = levels.highest.pa - levels.lowest.pa;
    const double doubt = difference_u95(levels);
    if (difference > 0.0 && difference <= doubt) {
        RuleVerdict verdict{"within-gauge", true, State::none, {}, {}};
        verdict.remark = remark("spread.within_gauge", figure(Dimension::pressure_difference, difference),
                                figure(Dimension::pressure_difference, doubt));
        out.push_back(std::move(verdict));
    }
    return out;
}

}  // namespace lapwing::findings
