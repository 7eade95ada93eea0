// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/base/apart.h"
#include "core/findings/instruments.h"
#include "core/findings/told_apart.h"
#include "core/findings/touched.h"
#include "core/physics/atmosphere.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::findings {
namespace {

/// One cylinder's reading, put right where something stood in its way.
struct Level {
    int cylinder = 0;
    double pa = 0.0;
    double raw_pa = 0.0;       ///< as the gauge showed it
    double factor = 1.0;       ///< pa over it
    double scatter_u95 = 0.0;  ///< of pa
    double right_u95 = 0.0;    ///< what putting it right brings
    const Tester* tester = nullptr;
};

struct Levels {
    std::vector<Level> all;
    Level lowest, highest;
    double average = 0.0;
    uncertainty::Gauge gauge;  ///< of the highest
    uncertainty::Gauge other;  ///< of the lowest, where that is another one
    bool put_right = false;

    [[nodiscard]] bool one_gauge() const { return lowest.tester == highest.tester; }
};

/// The tester that a cylinder was read on last.
const Tester* tester_behind(const Case& at, const Cranking& dry) {
    const auto last = std::ranges::find_if(at.visit.readings, [&](const Reading& reading) {
        return !dry.readings.empty() && reading.id == dry.readings.back();
    });
    return tester_of(at, TestKind::dry, last == at.visit.readings.end() ? std::nullopt : last->tester);
}

Level level_of(const CylinderFindings& cylinder, bool put_right) {
    const Cranking& dry = *cylinder.dry;
    const Figure& raw = dry.final.figure;
    if (!put_right || !dry.put_right || !(raw.si > 0.0))
        return {cylinder.number, raw.si, raw.si, 1.0, dry.scatter_u95, 0.0};
    const Figure& right = dry.put_right->figure;
    const double factor = right.si / raw.si;
    const double both = right.u95.value_or(0.0);
    const double reading = raw.u95.value_or(0.0) * factor;
    return {cylinder.number,
            right.si,
            raw.si,
            factor,
            factor * dry.scatter_u95,
            std::sqrt(std::max(0.0, both * both - reading * reading))};
}

/// What is to be done again, and what was read before something was done to the cylinder, is held against no
/// other one. A reading above its range shows no sound cylinder: the others are not blamed for it.
bool is_compared(const CylinderFindings& cylinder, bool with_those_above) {
    return dry_counts(cylinder) && !does_again(cylinder, TestKind::dry) &&
           (with_those_above || !reads_above(cylinder));
}

/// @param put_right as a factory limit means it; else as read
Levels levels_of(const Case& at, const std::vector<CylinderFindings>& cylinders, bool put_right) {
    const bool above = std::ranges::none_of(
        cylinders, [](const CylinderFindings& cylinder) { return is_compared(cylinder, false); });
    Levels out;
    for (const CylinderFindings& cylinder : cylinders) {
        if (!is_compared(cylinder, above)) continue;
        out.all.push_back(level_of(cylinder, put_right));
        out.all.back().tester = tester_behind(at, *cylinder.dry);
        out.put_right = out.put_right || (put_right && cylinder.dry->put_right);
    }
    if (out.all.empty()) return out;
    out.lowest = *std::ranges::min_element(out.all, {}, &Level::pa);
    out.highest = *std::ranges::max_element(out.all, {}, &Level::pa);
    for (const Level& level : out.all)
        out.average += level.pa / static_cast<double>(out.all.size());
    double step = 0.0;
    for (const Reading& reading : at.visit.readings)
        if (reading.test == TestKind::dry && reading.final) step = std::max(step, reading.final->step_si());
    const auto gauge_of = [&](const Level& level) {
        return instrument_of(level.tester ? &level.tester->gauge : nullptr, out.highest.raw_pa, step,
                             at.reference)
            .gauge;
    };
    out.gauge = gauge_of(out.highest);
    out.other = gauge_of(out.lowest);
    return out;
}

/// What the doubt of a number worked out from two of them is made of, 95 %.
struct Doubt {
    double gauge = 0.0;
    double scatter = 0.0;
    double model = 0.0;

    [[nodiscard]] double all() const { return std::hypot(gauge, scatter, model); }
    [[nodiscard]] std::vector<DoubtShare> shares() const {
        return doubt_shares({{"gauge", gauge}, {"scatter", scatter}, {"model", model}});
    }
};

/// Of the quotient. What put both right is out by for both alike, and cancels as far as it does; so does what
/// one gauge is out by. Of two gauges nothing cancels.
Doubt ratio_doubt(const Levels& of) {
    const Level &low = of.lowest, &high = of.highest;
    const double two_gauges = uncertainty::expanded(
        std::hypot(uncertainty::u_reading_pa(of.other, low.raw_pa),
                   low.raw_pa / high.raw_pa * uncertainty::u_reading_pa(of.gauge, high.raw_pa)) /
        high.raw_pa);
    const double gauge = of.one_gauge() ? u95_quotient(of.gauge, low.raw_pa, high.raw_pa) : two_gauges;
    return {gauge * low.factor / high.factor,
            with_scatter(0.0, low.pa, low.scatter_u95, high.pa, high.scatter_u95),
            std::abs(low.right_u95 / high.pa - low.pa / high.pa * high.right_u95 / high.pa)};
}
Doubt difference_doubt(const Levels& of) {
    const Level &low = of.lowest, &high = of.highest;
    const double two_gauges = uncertainty::expanded(
        uncertainty::u_difference_two_gauges_pa(of.gauge, high.raw_pa, of.other, low.raw_pa));
    const double gauge = of.one_gauge() ? u95_difference(of.gauge, high.raw_pa, low.raw_pa) : two_gauges;
    return {gauge * high.factor, std::hypot(low.scatter_u95, high.scatter_u95),
            std::abs(high.right_u95 - low.right_u95)};
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
    out.doubts = ratio_doubt(levels).shares();
    out.source = std::move(source);
    if (levels.put_right) out.notes.push_back(say("note.put_right"));
    return out;
}

template <class Fails>
CylinderList failing(const Levels& levels, Fails fails) {
    CylinderList out;
    for (const Level& level : levels.all)
        if (fails(level.pa)) out.push_back(level.cylinder);
    return out;
}

RuleVerdict judge_lowest(const SpreadRule& rule, const Levels& levels) {
    RuleVerdict out{rule.id, true, State::none, {}, {}};
    const double ratio = levels.lowest.pa / levels.highest.pa;
    const double least = rule.share * levels.highest.pa;
    const Figure shown = share(ratio, ratio_doubt(levels).all());
    out.failing = failing(levels, [&](double pa) { return is_below(pa, least); });
    out.remark =
        out.failing.empty()
            ? remark("spread.ratio_holds", shown, share(rule.share), rule.basis.source)
            : remark(rule.gives == State::borderline ? "spread.ratio_look_again" : "spread.ratio_fails",
                     out.failing, shown, share(rule.share), rule.basis.source);
    if (out.failing.empty() && rule.at_least) {
        const double floor = rule.at_least->si();
        out.failing = failing(levels, [&](double pa) { return is_below(pa, floor); });
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
    out.failing = failing(levels, [&](double pa) { return !is_above(pa, least); });
    out.holds = out.failing.empty();
    // The gauge is out for all of them alike, scatter and rounding are not.
    const auto count = static_cast<double>(levels.all.size());
    double scatter = 0.0;
    for (const Level& level : levels.all)
        scatter = std::hypot(scatter, level.scatter_u95 / count);
    const double by_gauge = uncertainty::expanded(uncertainty::u_reading_pa(levels.gauge, levels.average));
    Figure average = pressure(levels.average);
    average.u95 = std::hypot(by_gauge, scatter, levels.highest.right_u95);
    out.remark = out.holds ? remark("spread.average_holds", share(rule.share), average, rule.basis.source)
                           : remark("spread.average_fails", out.failing, share(rule.share), average,
                                    rule.basis.source);
    Derivation from;
    from.title = Word{"from:average"};
    from.symbols = "p < (1 − s) Σ p_i / n";
    for (const Level& level : levels.all)
        from.inputs.push_back(input("reading", "p_i", pressure(level.pa)));
    from.doubts =
        doubt_shares({{"gauge", by_gauge}, {"scatter", scatter}, {"model", levels.highest.right_u95}});
    from.source = source_of(rule.basis);
    if (levels.put_right) from.notes.push_back(say("note.put_right"));
    out.remark.from.push_back(std::move(from));
    return out;
}

/// The engine's own most difference between cylinders. A hose or a cold engine takes from a high reading more
/// than from a low one, and so from their difference: it is judged as the limit means it.
RuleVerdict judge_difference(const Case& at, const Levels& levels) {
    const Derived& limit = *at.limits.difference;
    RuleVerdict out{"own-difference", true, State::fault, {}, {}};
    const double difference = levels.highest.pa - levels.lowest.pa;
    const Doubt doubt = difference_doubt(levels);
    const double both = std::hypot(doubt.all(), limit.figure.u95.value_or(0.0));
    const Figure shown = figure(Dimension::pressure_difference, difference, doubt.all());
    out.failing =
        failing(levels, [&](double pa) { return is_above(levels.highest.pa - pa, limit.figure.si); });
    out.holds = out.failing.empty();
    const bool close = std::abs(difference - limit.figure.si) < both;
    const bool near = close && lies_close(at.reference, difference - limit.figure.si, levels.highest.pa);
    // What the model had to put right first fails only where its doubt leaves no other way.
    if (close && levels.put_right) out.gives = State::borderline;
    const bool lowered =
        !levels.put_right && lowered_by_who_knows(at, tester_of(at, TestKind::dry, {})).has_value();
    out.remark = out.holds ? remark(lowered ? "spread.difference_lowered" : "spread.difference_holds", shown,
                                    limit.figure)
                 : near    ? remark("spread.difference_close", out.failing, shown, limit.figure)
                 : close   ? remark("spread.difference_unsure", out.failing, shown, limit.figure,
                                    figure(Dimension::pressure_difference, both), what_narrows(doubt.shares()))
                           : remark("spread.difference_fails", out.failing, shown, limit.figure);
    Derivation from;
    from.title = Word{"from:difference"};
    from.symbols = "p_max − p_min";
    from.inputs = {input("highest", "p_max", pressure(levels.highest.pa)),
                   input("lowest", "p_min", pressure(levels.lowest.pa))};
    from.doubts = doubt.shares();
    from.source = source_of_card(at.engine.limits);
    if (levels.put_right) from.notes.push_back(say("note.put_right"));
    out.remark.from = {std::move(from), limit.from};
    return out;
}

RuleVerdict judge_own_ratio(const Case& at, const Levels& levels) {
    const double least = at.engine.limits.least_ratio->si();
    RuleVerdict out{"own-ratio", true, State::fault, {}, {}};
    const double ratio = levels.lowest.pa / levels.highest.pa;
    const Figure shown = share(ratio, ratio_doubt(levels).all());
    out.failing = failing(levels, [&](double pa) { return is_below(pa, least * levels.highest.pa); });
    out.holds = out.failing.empty();
    out.remark = out.holds ? remark("spread.own_ratio_holds", shown, share(least))
                           : remark("spread.own_ratio_fails", out.failing, shown, share(least));
    out.remark.from.push_back(ratio_derivation(levels, source_of_card(at.engine.limits)));
    return out;
}

/// A rule that holds makes a reading good that nothing else was there to judge by; not one that a shut
/// throttle or a decompressor lowered, since alike says nothing of how high.
void apply(const Case& at, const RuleVerdict& verdict, State gives,
           std::vector<CylinderFindings>& cylinders) {
    const bool lowered = throttle_closed(at.visit.session, at.engine) || at.decompressor_works();
    const State holds = lowered ? State::none : State::good;
    // No two decompressors let out the same.
    if (at.decompressor_works()) gives = std::min(gives, State::borderline);
    for (CylinderFindings& cylinder : cylinders) {
        if (!is_compared(cylinder, true)) continue;
        const bool fails = std::ranges::find(verdict.failing, cylinder.number) != verdict.failing.end();
        cylinder.dry->state = worse(cylinder.dry->state, fails ? gives : holds);
        if (fails) cylinder.dry->why.push_back(verdict.remark);
    }
}

/// Alike says nothing of how high. Where nothing else judges a petrol four-stroke's readings, what lies below
/// the floor that makers of other such engines ask is looked at again, not called in range.
void apply_floor(const Case& at, const CylinderList& unjudged, const Levels& levels,
                 std::vector<CylinderFindings>& cylinders) {
    if (at.two_stroke() || at.decompressor_works() || at.limits.lowest ||
        throttle_closed(at.visit.session, at.engine))
        return;
    for (const SpreadRule& rule : at.reference.spread) {
        if (!rule.at_least || (rule.fuel && rule.fuel != at.engine.fuel)) continue;
        const double floor = rule.at_least->si() * at.site.ambient_pa / physics::sea_level_pa;
        CylinderList under = failing(levels, [&](double pa) { return is_below(pa, floor); });
        std::erase_if(under,
                      [&](int number) { return std::ranges::find(unjudged, number) == unjudged.end(); });
        const Remark remark =
            findings::remark("spread.ratio_under", under, pressure(floor), rule.basis.source);
        for (CylinderFindings& cylinder : cylinders) {
            if (std::ranges::find(under, cylinder.number) == under.end()) continue;
            cylinder.dry->state = worse(cylinder.dry->state, State::borderline);
            cylinder.dry->why.push_back(remark);
        }
    }
}

}  // namespace

std::vector<RuleVerdict> judge_spread(const Case& at, std::vector<CylinderFindings>& cylinders) {
    std::vector<RuleVerdict> out;
    const Levels levels = levels_of(at, cylinders, true);
    if (levels.all.size() < 2 || !(levels.highest.pa > 0.0)) return out;
    CylinderList unjudged;
    for (const CylinderFindings& cylinder : cylinders)
        if (cylinder.dry && cylinder.dry->state == State::none &&
            !(cylinder.leak_down && cylinder.leak_down->state == State::good))
            unjudged.push_back(cylinder.number);
    const bool own = at.limits.difference || at.engine.limits.least_ratio;
    if (at.limits.difference) {
        out.push_back(judge_difference(at, levels));
        apply(at, out.back(), out.back().gives, cylinders);
    }
    if (at.engine.limits.least_ratio) {
        out.push_back(judge_own_ratio(at, levels));
        apply(at, out.back(), State::fault, cylinders);
    }
    for (const SpreadRule& rule : at.reference.spread) {
        if (rule.fuel && rule.fuel != at.engine.fuel) continue;
        out.push_back(rule.kind == SpreadKind::lowest_of_highest ? judge_lowest(rule, levels)
                                                                 : judge_average(rule, levels));
        // The maker's own figure wins over rules made for other engines.
        if (!own) out.back().gives = rule.gives;
        if (out.back().gives != State::none) apply(at, out.back(), rule.gives, cylinders);
    }
    apply_floor(at, unjudged, levels, cylinders);
    const Levels read = levels_of(at, cylinders, false);
    const double difference = read.highest.pa - read.lowest.pa;
    const double doubt = difference_doubt(read).all();
    if (difference > 0.0 && difference <= doubt) {
        RuleVerdict verdict{"within-gauge", true, State::none, {}, {}};
        verdict.remark = remark("spread.within_gauge", figure(Dimension::pressure_difference, difference),
                                figure(Dimension::pressure_difference, doubt));
        out.push_back(std::move(verdict));
    }
    return out;
}

}  // namespace lapwing::findings
