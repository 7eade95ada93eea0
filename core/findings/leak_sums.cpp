// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/leak_sums.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include "core/base/apart.h"
#include "core/findings/instruments.h"
#include "core/findings/told_apart.h"
#include "core/uncertainty/coverage.h"
#include "core/uncertainty/leakage.h"

namespace lapwing::findings {
namespace {

Figure share(double value, std::optional<double> u95 = {}) {
    return figure(Dimension::share, value, u95);
}

physics::TesterPneumatics other(const HeldOfSet& shown, Pressure set, Length restrictor) {
    physics::TesterPneumatics out = shown.tester;
    out.set_gauge_pa = set.si();
    out.restrictor_diameter_m = restrictor.si();
    return out;
}

/// 95 % uncertainty of something worked out from a leakage: not a number where the sums fail.
struct Carried {
    double by_reading = 0.0;  ///< from that of held, the set pressure's doubt folded into it
    double by_restrictor = 0.0;

    [[nodiscard]] double both() const { return std::hypot(by_reading, by_restrictor); }
    [[nodiscard]] std::optional<double> known() const {
        return std::isfinite(both()) ? std::optional(both()) : std::nullopt;
    }
    /// What a leakage's doubt is made of, and the restrictor's beside it.
    [[nodiscard]] std::vector<DoubtShare> shares(const std::vector<DoubtShare>& of_leakage) const {
        if (!known() || !(both() > 0.0)) return {};
        const double reading = std::pow(by_reading / both(), 2);
        std::vector<DoubtShare> out;
        for (const DoubtShare& one : of_leakage)
            out.push_back({one.of, one.share * reading});
        if (by_restrictor > 0.0) out.push_back({Word{"doubt:restrictor"}, 1.0 - reading});
        std::erase_if(out, [](const DoubtShare& one) { return one.share < 0.005; });
        std::ranges::stable_sort(out, std::greater{}, &DoubtShare::share);
        return out;
    }
};

/// Of `value(tester, held)`.
template <class Value>
Carried carried(const HeldOfSet& shown, double restrictor_doubt, Value value) {
    const double u = shown.leakage.figure.u95.value_or(0.0) * shown.tester.set_gauge_pa;
    const double held = shown.held.figure.si;
    const auto half = [](const std::optional<double>& one, const std::optional<double>& other) {
        return one && other ? 0.5 * std::abs(*one - *other) : std::numeric_limits<double>::quiet_NaN();
    };
    const auto with_area = [&](double factor) {
        physics::TesterPneumatics tester = shown.tester;
        tester.restrictor_diameter_m *= std::sqrt(factor);
        return value(tester, held);
    };
    const double area = restrictor_reach(restrictor_doubt);
    const double by_gauge = half(value(shown.tester, std::min(held + u, shown.tester.set_gauge_pa)),
                                 value(shown.tester, std::max(held - u, 0.0)));
    return {by_gauge, half(with_area(area), with_area(1.0 / area))};
}

std::vector<Input> conversion_inputs(const HeldOfSet& shown, Pressure set, Length restrictor) {
    return {
        input("set", "p₁", shown.set.figure),
        input("held", "p₂", shown.held.figure),
        input("restrictor", "d", figure(Dimension::length, shown.tester.restrictor_diameter_m)),
        input("ambient", "p₀", figure(Dimension::station_pressure, shown.tester.ambient_pa)),
        input("other_set", "p₁′", figure(Dimension::gauge_pressure, set.si())),
        input("other_restrictor", "d′", figure(Dimension::length, restrictor.si())),
    };
}

}  // namespace

physics::TesterPneumatics pneumatics(const Case& at, const Tester* tester, double set_pa) {
    physics::TesterPneumatics out;
    out.set_gauge_pa = set_pa;
    out.ambient_pa = at.site.ambient_pa;
    out.restrictor_diameter_m =
        tester && tester->restrictor ? tester->restrictor->si() : usual_restrictor_m(at.engine, at.reference);
    out.restrictor_cd =
        tester && tester->restrictor_cd ? tester->restrictor_cd->si() : at.reference.assumed("restrictor-cd");
    return out;
}

double restrictor_doubt(const Case& at, const Tester* tester) {
    if (tester && tester->restrictor) return at.reference.assumed("restrictor-doubt");
    // For a large bore it may be either of two that lie far apart.
    return at.reference.assumed(is_large_bore(at.engine, at.reference) ? "restrictor-unknown-doubt-large"
                                                                       : "restrictor-unknown-doubt");
}

double restrictor_reach(double restrictor_doubt) {
    return 1.0 + 2.0 * restrictor_doubt;
}

std::optional<HeldOfSet> held_of_set(const Case& at, const Tester* tester,
                                     const std::vector<const Reading*>& readings) {
    const Gauge* dial = tester ? &tester->gauge : nullptr;
    const bool two_gauges = tester && tester->supply_gauge;
    const int cylinder = readings.front()->cylinder;
    // The regulator is set by hand each time: that it differs is no doubt of what it was set to.
    const uncertainty::Repeatability by_hand{0.0, at.reference.assumed("repeat-scatter-weight")};
    HeldOfSet out;
    out.set = mean_of(at, readings, &Reading::set, two_gauges ? &*tester->supply_gauge : dial, by_hand);
    out.held = mean_of(at, readings, &Reading::held, dial, by_hand);
    out.restrictor_known = tester && tester->restrictor;
    out.restrictor_doubt = restrictor_doubt(at, tester);
    const double set_pa = out.set.figure.si;
    const double held_pa = out.held.figure.si;
    const auto leakage = physics::leakage(set_pa, held_pa);
    if (!leakage) return std::nullopt;
    out.tester = pneumatics(at, tester, set_pa);
    const auto usual = usual_leak_scatter(at, out, cylinder);
    // The needle moves with the leak, and most where about half is lost: that is no error of the gauge.
    out.held = mean_of(at, readings, &Reading::held, dial, {set_pa * usual.standard_pa, usual.freedom},
                       "leak_repeat");
    std::erase_if(out.held.from.notes, [](const Message& note) { return note.code == "note.one_reading"; });
    if (usual.standard_pa > 0.0)
        out.held.from.notes.push_back(
            say("note.leak_moves", figure(Dimension::pressure_difference, set_pa * usual.standard_pa)));
    const double typed_step_pa = step_pa(*readings.back(), &Reading::held);
    const Instrument after = instrument_of(dial, set_pa, typed_step_pa, at.reference);
    const uncertainty::Gauge before =
        two_gauges ? instrument_of(&*tester->supply_gauge, set_pa, typed_step_pa, at.reference).gauge
                   : after.gauge;
    const double droop = two_gauges ? 0.0 : at.reference.assumed("droop") * set_pa;
    const auto by_gauge = two_gauges ? uncertainty::leakage_two_gauges(before, set_pa, after.gauge, held_pa)
                                     : uncertainty::leakage_one_gauge(after.gauge, set_pa, held_pa, 0.0);
    const double by_set = held_pa / set_pa / set_pa;
    const double by_droop = by_set * droop / std::sqrt(3.0);
    const double by_scatter = 0.5 * scatter_u95(shares_held(readings), usual);
    out.scatter_pa = by_scatter * set_pa;
    out.leakage.figure = share(*leakage);
    Derivation& from = out.leakage.from;
    if (by_gauge) {
        out.leakage.figure.u95 = uncertainty::expanded(std::hypot(by_gauge->u, by_droop, by_scatter));
        from.doubts =
            doubt_shares({{"gauge", by_gauge->u}, {"droop", by_droop}, {"leak_repeat", by_scatter}});
    }
    const auto at_set = uncertainty::errors_at(before, set_pa);
    const auto at_held = uncertainty::errors_at(after.gauge, held_pa);
    const double own_set = by_set * std::hypot(at_set.local_pa, at_set.resolution_pa);
    const double own_held = std::hypot(at_held.local_pa, at_held.resolution_pa) / set_pa;
    out.own_u95 = uncertainty::expanded(std::hypot(std::hypot(own_set, own_held), by_droop, by_scatter));
    from.title = Word{"from:leakage"};
    from.symbols = "(p₁ − p₂) / p₁";
    from.inputs = {input("set", "p₁", out.set.figure), input("held", "p₂", out.held.figure)};
    from.source = say("source.typed");
    from.notes = after.notes;
    if (!(held_pa > 0.0)) from.notes.push_back(say("note.wide_open"));
    if (!(*leakage > 0.0)) from.notes.push_back(say("note.none_lost"));
    if (!two_gauges) from.notes.push_back(say("note.droop", share(at.reference.assumed("droop"))));
    if (readings.size() == 1 && by_scatter > 0.0)
        from.notes.push_back(say("note.leak_repeat", share(at.reference.assumed("leak-repeat"))));
    return out;
}

std::optional<LeakageOn> leakage_on(const HeldOfSet& shown, Pressure set, Length restrictor) {
    const physics::TesterPneumatics to = other(shown, set, restrictor);
    const auto leakage = [&](const physics::TesterPneumatics& from, double held_pa) -> std::optional<double> {
        const auto held =
            physics::held_on_other_tester_gauge_pa(from, held_pa, to, physics::LeakLaw::orifice);
        return held ? std::optional(1.0 - *held / set.si()) : std::nullopt;
    };
    const auto value = leakage(shown.tester, shown.held.figure.si);
    if (!value) return std::nullopt;
    const auto u = carried(shown, shown.restrictor_doubt, leakage);
    LeakageOn out{*value, u.both(), 0.0};
    const double all = shown.leakage.figure.u95.value_or(0.0);
    if (all > 0.0) out.own_u95 = u.by_reading * shown.own_u95 / all;
    return out;
}

std::optional<OnTester> on_tester(const Case& at, const HeldOfSet& shown, Pressure set, Length restrictor) {
    const physics::TesterPneumatics to = other(shown, set, restrictor);
    const auto converted = [&](physics::LeakLaw law) -> std::optional<Derived> {
        const auto leakage = [&](const physics::TesterPneumatics& from,
                                 double held_pa) -> std::optional<double> {
            const auto held = physics::held_on_other_tester_gauge_pa(from, held_pa, to, law);
            if (!held) return std::nullopt;
            return 1.0 - *held / set.si();
        };
        const auto value = leakage(shown.tester, shown.held.figure.si);
        if (!value) return std::nullopt;
        // Limits and bands are meant for any tester that is built like theirs.
        const double alike = at.reference.assumed("restrictor-alike");
        const double diameter = shown.tester.restrictor_diameter_m;
        const bool built_alike = shown.restrictor_known &&
                                 same_set_pressure(shown.tester.set_gauge_pa, set.si(), at.reference) &&
                                 std::abs(diameter - restrictor.si()) <= alike * diameter;
        Derived out;
        const Carried u = carried(shown, built_alike ? 0.0 : shown.restrictor_doubt, leakage);
        out.figure = share(*value, u.known());
        out.from.doubts = u.shares(shown.leakage.from.doubts);
        const bool orifice = law == physics::LeakLaw::orifice;
        out.from.title = Word{orifice ? "from:converted" : "from:converted_laminar"};
        out.from.symbols = orifice
                               ? "A = A_r p₁ ψ(p₂/p₁) / (p₂ ψ(p₀/p₂));  p₁′ ψ(p₂′/p₁′) A_r′ = p₂′ ψ(p₀/p₂′) A"
                               : "k = A_r p₁ ψ(p₂/p₁) / (p₂² − p₀²);  p₁′ ψ(p₂′/p₁′) A_r′ = k (p₂′² − p₀²)";
        out.from.inputs = conversion_inputs(shown, set, restrictor);
        out.from.source = say("source.physics", std::string("isentropic nozzle flow, continuity"));
        out.from.notes.push_back(say("note.law_range"));
        if (!shown.restrictor_known)
            out.from.notes.push_back(say("note.restrictor_unknown",
                                         figure(Dimension::length, shown.tester.restrictor_diameter_m)));
        return out;
    };
    auto orifice = converted(physics::LeakLaw::orifice);
    auto laminar = converted(physics::LeakLaw::laminar);
    if (!orifice || !laminar) return std::nullopt;
    return OnTester{set, restrictor, std::move(*orifice), std::move(*laminar)};
}

std::optional<OnTester> on_makers_tester(const Case& at, const HeldOfSet& shown) {
    const FactoryLimits& card = at.engine.limits;
    if (!card.leakage_set) return std::nullopt;
    const Length restrictor = card.leakage_restrictor
                                  ? card.leakage_restrictor->value()
                                  : Length::from_si(usual_restrictor_m(at.engine, at.reference));
    return on_tester(at, shown, card.leakage_set->value(), restrictor);
}

namespace {

/// How leaks differ from one reading to the next is in limits and bands already: it neither hides one nor
/// does less of it help.
Remark not_told_apart(const Reference& reference, const Derived& leakage, const Figure& limit, double doubt,
                      std::string_view close, std::string_view unsure) {
    if (lies_close(reference, leakage.figure.si - limit.si, 1.0)) return remark(close, leakage.figure, limit);
    auto doubts = leakage.from.doubts;
    std::erase_if(doubts, [](const DoubtShare& part) { return part.of.code == "doubt:leak_repeat"; });
    return remark(unsure, leakage.figure, limit, share(doubt), what_narrows(doubts));
}

}  // namespace

State judge_leak(const Case& at, const HeldOfSet& shown, const std::vector<OnTester>& testers,
                 std::vector<Remark>& why) {
    const auto& most = at.engine.limits.most_leakage;
    if (most) {
        // Without a set pressure on the card, the reading is held against the limit as it stands.
        const auto makers = on_makers_tester(at, shown);
        const Derived& leakage = makers ? makers->orifice : shown.leakage;
        const double over = leakage.figure.si - most->si();
        Remark because = remark("why.leak_maker", leakage.figure, figure_of(*most));
        because.from = {leakage.from};
        why.push_back(std::move(because));
        // That leaks differ from one reading to the next is in the maker's figure already.
        const double doubt = u95_without(leakage, "leak_repeat");
        const bool close = std::abs(over) < doubt;
        if (close)
            why.push_back(not_told_apart(at.reference, leakage, figure_of(*most), doubt, "why.leak_close",
                                         "why.leak_unsure"));
        if (is_above(leakage.figure.si, most->si())) return State::fault;
        return close ? State::borderline : State::good;
    }
    const LeakageBand& band = at.reference.deciding_band();
    std::optional<Derived> leakage;
    for (const OnTester& tester : testers)
        if (tester.set == band.set && tester.restrictor == band.restrictor) leakage = tester.orifice;
    if (!leakage) {
        const auto converted = on_tester(at, shown, band.set, band.restrictor);
        if (!converted) return State::none;
        leakage = converted->orifice;
    }
    Remark because = remark("why.leak_band", leakage->figure, share(band.good), share(band.borderline),
                            figure(Dimension::gauge_pressure, band.set.si()));
    because.from = {leakage->from};
    because.from.back().source = source_of(band.basis);
    why.push_back(std::move(because));
    // The trade's bands are round figures: a gauge's doubt does not move a state, it is said.
    const double doubt = u95_without(*leakage, "leak_repeat");
    for (const double edge : {band.good, band.borderline})
        if (std::abs(leakage->figure.si - edge) < doubt)
            why.push_back(not_told_apart(at.reference, *leakage, share(edge), doubt, "why.leak_close_to_band",
                                         "why.leak_unsure_of_band"));
    const State state = band.judge(leakage->figure.si);
    // Through a restrictor that nobody measured the leak may as well be one of a good cylinder: then it is
    // the tester that is to be known first.
    const double least = leakage->figure.si - leakage->figure.u95.value_or(0.0);
    if (state != State::fault || shown.restrictor_known || !is_below(least, band.good)) return state;
    why.push_back(remark("why.leak_tester_unknown", share(band.good)));
    return State::borderline;
}

LeakSizes leak_sizes(const HeldOfSet& shown) {
    const auto leak = physics::leakdown(shown.tester, shown.held.figure.si);
    if (!leak || leak->state == physics::LeakState::wide_open) return {};
    const auto half = [&](double physics::Leakdown::*field) {
        return carried(shown, shown.restrictor_doubt,
                       [&](const physics::TesterPneumatics& tester, double held_pa) {
                           const auto sized = physics::leakdown(tester, held_pa);
                           return sized ? std::optional((*sized).*field) : std::nullopt;
                       });
    };
    const auto derived = [&](const char* title, const char* symbols, Dimension dimension,
                             double physics::Leakdown::*field) {
        Derived number;
        const Carried u = half(field);
        number.figure = figure(dimension, (*leak).*field, u.known());
        number.from.doubts = u.shares(shown.leakage.from.doubts);
        number.from.title = Word{title};
        number.from.symbols = symbols;
        number.from.inputs = {
            input("set", "p₁", shown.set.figure), input("held", "p₂", shown.held.figure),
            input("restrictor", "d", figure(Dimension::length, shown.tester.restrictor_diameter_m)),
            input("cd", "C", figure(Dimension::number, shown.tester.restrictor_cd)),
            input("ambient", "p₀", figure(Dimension::station_pressure, shown.tester.ambient_pa))};
        number.from.source = say("source.physics", std::string("isentropic nozzle flow; ISO 8778"));
        number.from.notes = {say("note.restrictor_doubt", share(2.0 * shown.restrictor_doubt)),
                             say("note.cd_assumed"), say("note.hot")};
        return number;
    };
    LeakSizes out;
    out.area = derived("from:leak_area", "A = C π/4 d² p₁ ψ(p₂/p₁) / (p₂ ψ(p₀/p₂))", Dimension::area,
                       &physics::Leakdown::leak_area_m2);
    out.hole = derived("from:leak_hole", "√(4 A / π)", Dimension::length, &physics::Leakdown::leak_hole_m);
    out.flow = derived("from:flow", "A p₂ ψ(p₀/p₂) / (√(R T) rho)", Dimension::flow,
                       &physics::Leakdown::flow_anr_m3_s);
    return out;
}

}  // namespace lapwing::findings
