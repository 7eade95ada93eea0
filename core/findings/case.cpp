// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/case.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/base/apart.h"
#include "core/findings/crank_way.h"
#include "core/findings/leak_sums.h"
#include "core/physics/atmosphere.h"
#include "core/physics/cranking.h"

namespace lapwing::findings {

Figure figure(Dimension dimension, double si, std::optional<double> u95) {
    return Figure{dimension, si, u95, {}, {}};
}

Figure figure_of(const TypedPressure& typed, std::optional<double> u95) {
    return Figure{Dimension::gauge_pressure, typed.si(), u95, typed.digits(),
                  std::string(typed.unit().symbol())};
}

Figure figure_of(const TypedLength& typed, Dimension dimension) {
    return Figure{dimension, typed.si(), {}, typed.digits(), std::string(typed.unit().symbol())};
}

Figure figure_of(const TypedTime& typed) {
    return Figure{Dimension::time, typed.si(), {}, typed.digits(), std::string(typed.unit().symbol())};
}

Figure figure_of(const TypedRatio& typed, Dimension dimension) {
    return Figure{dimension, typed.si(), {}, typed.digits(), std::string(typed.unit().symbol())};
}

Input input(std::string_view name, std::string symbol, Arg value) {
    return Input{Word{"input:" + std::string(name)}, std::move(symbol), std::move(value)};
}

Message source_of(const Basis& basis) {
    switch (basis.kind) {
        case BasisKind::published:
            return say("source.published", basis.source);
        case BasisKind::common_practice:
            return say("source.common_practice");
        case BasisKind::assumption:
            return say("source.assumption", basis.comment);
    }
    return {};
}

Message source_of_card(const FactoryLimits& limits) {
    return say("source.card", word_of(limits.origin), limits.note);
}

bool decompressor_works(const Engine& engine, const Session& session) {
    if (engine.decompressor == Decompressor::none || engine.decompressor == Decompressor::unknown)
        return false;
    return step_state(session, PrepareStep::decompressor_off) != StepState::done;
}

bool throttle_closed(const Session& session, const Engine& engine) {
    const Conditions& conditions = session.conditions;
    if (conditions.induction == Induction::off || engine.fuel == Fuel::diesel) return false;
    if (conditions.throttle != Throttle::unknown) return conditions.throttle == Throttle::closed;
    return step_state(session, PrepareStep::throttle_open) == StepState::not_done;
}

bool battery_weak(const Conditions& conditions, const Reference& reference) {
    if (!conditions.battery) return false;
    const double volts = conditions.battery->si();
    const double flat = reference.assumed("battery-low");
    const bool flat_12 = volts > reference.assumed("battery-least") && volts < flat;
    const bool flat_24 = volts > reference.assumed("battery-double") && volts < 2.0 * flat;
    return flat_12 || flat_24;
}

Case case_of(const Dossier& dossier, const Visit& visit, const Reference& reference,
             const FindingsOptions& options) {
    Case out{dossier,   dossier.engine, visit,
             reference, options,        site_of(dossier.engine, visit.session, reference),
             {}};
    out.limits = limits_at(dossier.engine, out.site);
    return out;
}

bool is_large_bore(const Engine& engine, const Reference& reference) {
    return engine.bore && !is_below(engine.bore->value.si(), reference.assumed("large-bore"));
}

double usual_restrictor_m(const Engine& engine, const Reference& reference) {
    const bool large = is_large_bore(engine, reference);
    return reference.assumed(large ? "restrictor-diameter-large" : "restrictor-diameter");
}

namespace {

std::vector<const Reading*> of_one_tag(const Case& at, TestKind test, int cylinder) {
    auto readings = standing(at.visit.readings, test, cylinder);
    if (readings.empty()) return readings;
    const Tag tag = at.options.tag.value_or(readings.back()->tag);
    std::erase_if(readings, [&](const Reading* reading) { return reading->tag != tag; });
    return readings;
}

bool holds_over_set(const Reading* reading) {
    return reading->set && reading->held && is_above(reading->held->si(), reading->set->si());
}

/// Of these readings, those over oiled rings, where some are from before the oil.
std::vector<const Reading*> over_oil_among(const Case& at, std::vector<const Reading*> readings) {
    const auto oiled = [&](const Reading* reading) {
        return oil_on_rings(at.visit, *reading) == OnRings::oiled;
    };
    if (std::ranges::all_of(readings, oiled)) return {};
    std::erase_if(readings, [&](const Reading* reading) { return !oiled(reading); });
    return readings;
}

void leave_out(std::vector<const Reading*>& readings, const std::vector<const Reading*>& these) {
    std::erase_if(readings,
                  [&](const Reading* reading) { return std::ranges::find(these, reading) != these.end(); });
}

VeryLow very_low_among(const Case& at, const std::vector<const Reading*>& readings) {
    VeryLow out;
    const double very_low = at.reference.assumed("very-low-held");
    const double not_low = at.reference.assumed("not-low-held");
    for (const Reading* reading : readings) {
        if (!reading->set || !reading->held || !(reading->set->si() > 0.0)) continue;
        const double held = reading->held->si() / reading->set->si();
        if (held < very_low) out.readings.push_back(reading);
        if (held >= not_low) out.against = reading;
    }
    if (!out.against) out.readings.clear();
    return out;
}

std::vector<const Reading*> odd_among(const Case& at, TestKind test, std::vector<const Reading*> readings) {
    if (readings.size() < 3) return {};
    const Reading& newest = *readings.back();
    const auto odd = [&](const Reading* reading) { return far_apart(at, test, *reading, newest); };
    if (std::ranges::count_if(readings, odd) > std::ssize(readings) - 2) return {};
    std::erase_if(readings, [&](const Reading* reading) { return !odd(reading); });
    return readings;
}

/// What counts before anything is said of readings that are wildly apart.
std::vector<const Reading*> comparable(const Case& at, TestKind test, int cylinder) {
    auto readings = of_one_tag(at, test, cylinder);
    if (test == TestKind::wet) return readings;
    if (test == TestKind::leak_down) std::erase_if(readings, holds_over_set);
    leave_out(readings, over_oil_among(at, readings));
    if (test == TestKind::leak_down) leave_out(readings, very_low_among(at, readings).readings);
    return readings;
}

}  // namespace

bool far_apart(const Case& at, TestKind test, const Reading& one, const Reading& other) {
    const double limit = at.reference.assumed("repeats-apart");
    if (test == TestKind::dry) {
        if (!one.final || !other.final) return false;
        const double a = one.final->si(), b = other.final->si();
        // What can't be told from nothing is for another question.
        const double steps = one.final->step_si() + other.final->step_si();
        return std::abs(a - b) > std::max(limit * std::max(a, b), steps);
    }
    if (test != TestKind::leak_down || !one.set || !other.set || !one.held || !other.held ||
        !(one.set->si() > 0.0) || !same_set_pressure(one.set->si(), other.set->si(), at.reference))
        return false;
    return std::abs(one.held->si() / one.set->si() - other.held->si() / other.set->si()) > limit;
}

bool wildly_apart(const Case& at, TestKind test, const std::vector<const Reading*>& readings) {
    return readings.size() > 1 && std::all_of(readings.begin(), readings.end() - 1, [&](const Reading* one) {
               return far_apart(at, test, *one, *readings.back());
           });
}

std::vector<const Reading*> odd_ones(const Case& at, TestKind test, int cylinder) {
    return odd_among(at, test, comparable(at, test, cylinder));
}

std::vector<const Reading*> counted(const Case& at, TestKind test, int cylinder) {
    auto readings = comparable(at, test, cylinder);
    if (test == TestKind::dry || test == TestKind::leak_down)
        leave_out(readings, odd_among(at, test, readings));
    return readings;
}

VeryLow very_low_beside(const Case& at, int cylinder) {
    return very_low_among(at, of_one_tag(at, TestKind::leak_down, cylinder));
}

std::vector<const Reading*> over_set(const Case& at, int cylinder) {
    auto readings = of_one_tag(at, TestKind::leak_down, cylinder);
    std::erase_if(readings, [](const Reading* reading) { return !holds_over_set(reading); });
    return readings;
}

std::vector<const Reading*> after_oil(const Case& at, TestKind test, int cylinder) {
    if (test == TestKind::wet) return {};
    auto readings = of_one_tag(at, test, cylinder);
    if (test == TestKind::leak_down) std::erase_if(readings, holds_over_set);
    return over_oil_among(at, std::move(readings));
}

const Tester* tester_of(const Case& at, TestKind test, const std::optional<TesterId>& own) {
    if (own) return find_tester(at.dossier, own);
    const Session& session = at.visit.session;
    switch (test) {
        case TestKind::dry:
        case TestKind::wet:
            return find_tester(at.dossier, session.compression_gauge);
        case TestKind::leak_down:
            return find_tester(at.dossier, session.leak_down_tester);
        case TestKind::crankcase:
            return find_tester(at.dossier, session.crankcase_tester);
    }
    return nullptr;
}

std::vector<std::pair<int, int>> neighbours(const Engine& engine) {
    std::vector<const Cylinder*> row;
    for (const Cylinder& cylinder : engine.cylinders)
        row.push_back(&cylinder);
    std::ranges::sort(row, {},
                      [](const Cylinder* c) { return std::tuple(c->bank, c->row, c->column, c->number); });
    std::vector<std::pair<int, int>> out;
    for (std::size_t i = 1; i < row.size(); ++i)
        if (row[i - 1]->bank == row[i]->bank) out.emplace_back(row[i - 1]->number, row[i]->number);
    return out;
}

bool companions(const Engine& engine, const Reference& reference, int a, int b) {
    const auto& order = engine.firing_order;
    if (engine.cycle == StrokeCycle::two || order.empty()) return false;
    const auto intervals =
        engine.firing_intervals.size() == order.size() ? engine.firing_intervals : even_intervals(engine);
    std::optional<double> at_a, at_b;
    double turned = 0.0;
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (order[i] == a) at_a = turned;
        if (order[i] == b) at_b = turned;
        turned += units::deg.number(intervals[i].value());
    }
    const double overlap_deg = reference.assumed("companions-apart") / physics::degree;
    return at_a && at_b && std::abs(std::abs(*at_a - *at_b) - 360.0) < overlap_deg;
}

bool is_valve(Path path) {
    return path == Path::intake || path == Path::exhaust;
}

bool asks(const CylinderFindings& cylinder, std::string_view code) {
    return std::ranges::any_of(cylinder.questions,
                               [&](const Remark& question) { return question.message.code == code; });
}

const Heard* loudest(const CylinderFindings& cylinder) {
    if (cylinder.exits.empty()) return nullptr;
    const Heard& first = cylinder.exits.front();
    if (first.loudness == Loudness::nothing || !first.path) return nullptr;
    // Two exits may be equally loud as long as they mean the same path.
    return equally_loud(cylinder) ? nullptr : &first;
}

std::optional<int> heard_neighbour(const CylinderFindings& cylinder) {
    const Heard* found = nullptr;
    for (const Heard& heard : cylinder.exits) {
        if (heard.exit != Exit::next_plug_hole || heard.loudness == Loudness::nothing) continue;
        if (!found)
            found = &heard;
        else if (heard.loudness == found->loudness && heard.neighbour != found->neighbour)
            return std::nullopt;
    }
    return found ? found->neighbour : std::nullopt;
}

std::optional<int> doubted_joint(const CylinderFindings& cylinder) {
    if (cylinder.exits.empty()) return std::nullopt;
    const Heard& first = cylinder.exits.front();
    if (first.exit != Exit::next_plug_hole || first.loudness == Loudness::nothing || first.path)
        return std::nullopt;
    return heard_neighbour(cylinder);
}

bool may_not_leak(Path path) {
    return path == Path::coolant || path == Path::gasket || path == Path::next_cylinder;
}

const Heard* gasket_air(const CylinderFindings& cylinder) {
    if (asks_tdc(cylinder) || stands_in_the_way(cylinder) == TestKind::leak_down) return nullptr;
    const auto found = std::ranges::find_if(cylinder.exits, [](const Heard& heard) {
        return heard.loudness != Loudness::nothing && heard.path && may_not_leak(*heard.path);
    });
    return found == cylinder.exits.end() ? nullptr : &*found;
}

State gasket_state(const CylinderFindings& cylinder) {
    const Heard* air = gasket_air(cylinder);
    if (!air) return State::none;
    return air->loudness >= Loudness::clear ? State::fault : State::borderline;
}

std::optional<std::pair<const Heard*, const Heard*>> equally_loud(const CylinderFindings& cylinder) {
    if (cylinder.exits.empty() || cylinder.exits.front().loudness == Loudness::nothing) return std::nullopt;
    const Heard& first = cylinder.exits.front();
    for (const Heard& other : cylinder.exits)
        if (other.loudness == first.loudness && other.path != first.path) return std::pair{&first, &other};
    return std::nullopt;
}

bool reads_above(const CylinderFindings& cylinder) {
    return cylinder.dry && std::ranges::any_of(cylinder.dry->why, [](const Remark& why) {
               return why.message.code == "why.above_high";
           });
}

bool held_over_set_alone(const CylinderFindings& cylinder) {
    return !cylinder.leak_down && asks(cylinder, "question.over_set");
}

bool seals_well(const CylinderFindings& cylinder) {
    return cylinder.leak_down && cylinder.leak_down->state == State::good;
}

std::pair<Figure, Figure> OnTester::range() const {
    const auto reach = [](const Figure& of, double side) { return of.si + side * of.u95.value_or(0.0); };
    const Figure &one = orifice.figure, &other = laminar.figure;
    return {figure(Dimension::share, std::clamp(std::min(reach(one, -1.0), reach(other, -1.0)), 0.0, 1.0)),
            figure(Dimension::share, std::clamp(std::max(reach(one, 1.0), reach(other, 1.0)), 0.0, 1.0))};
}

const CylinderFindings* Findings::cylinder(int number) const {
    const auto at = std::ranges::find(cylinders, number, &CylinderFindings::number);
    return at == cylinders.end() ? nullptr : &*at;
}

const Crankcase* Findings::crankcase(int cylinder) const {
    const auto at = std::ranges::find(crankcases, cylinder, &Crankcase::cylinder);
    return at == crankcases.end() ? nullptr : &*at;
}

}  // namespace lapwing::findings
