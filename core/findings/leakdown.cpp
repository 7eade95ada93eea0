// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/findings/instruments.h"
#include "core/findings/leak_sums.h"

namespace lapwing::findings {
namespace {

/// Repeats at the newest set pressure; other set pressures are readings of their own.
std::vector<const Reading*> at_one_set_pressure(const Case& at, int cylinder) {
    auto readings = counted(at, TestKind::leak_down, cylinder);
    std::erase_if(readings, [](const Reading* reading) { return !reading->held || !reading->set; });
    if (readings.empty()) return readings;
    const double set = readings.back()->set->si();
    constexpr double same = 0.02;  // the regulator is never set twice to the same needle's width
    std::erase_if(readings,
                  [&](const Reading* reading) { return std::abs(reading->set->si() - set) > same * set; });
    return readings;
}

void add_areas(LeakDown& out, const HeldOfSet& shown) {
    const auto leak = physics::leakdown(shown.tester, shown.held.figure.si);
    if (!leak || leak->state == physics::LeakState::wide_open) return;
    const double u = shown.leakage.figure.u95.value_or(0.0) * shown.tester.set_gauge_pa;
    const double held = shown.held.figure.si;
    const auto more = physics::leakdown(shown.tester, std::max(held - u, 0.0));
    const auto less = physics::leakdown(shown.tester, std::min(held + u, shown.tester.set_gauge_pa));
    const auto half = [&](double physics::Leakdown::*field) -> std::optional<double> {
        if (!more || !less) return std::nullopt;
        const double width = 0.5 * std::abs((*more).*field - (*less).*field);
        return std::isfinite(width) ? std::optional(width) : std::nullopt;
    };
    const auto derived = [&](const char* title, const char* symbols, Dimension dimension,
                             double physics::Leakdown::*field) {
        Derived number;
        number.figure = figure(dimension, (*leak).*field, half(field));
        number.from.title = Word{title};
        number.from.symbols = symbols;
        number.from.inputs = {
            input("set", "p₁", shown.set.figure), input("held", "p₂", shown.held.figure),
            input("restrictor", "d", figure(Dimension::length, shown.tester.restrictor_diameter_m)),
            input("cd", "C", figure(Dimension::number, shown.tester.restrictor_cd)),
            input("ambient", "p₀", figure(Dimension::station_pressure, shown.tester.ambient_pa))};
        number.from.source = say("source.physics", std::string("isentropic nozzle flow; ISO 8778"));
        number.from.notes = {say("note.cd_assumed"), say("note.hot")};
        return number;
    };
    out.leak_area = derived("from:leak_area", "A = C π/4 d² p₁ ψ(p₂/p₁) / (p₂ ψ(p₀/p₂))", Dimension::area,
                            &physics::Leakdown::leak_area_m2);
    out.leak_hole =
        derived("from:leak_hole", "√(4 A / π)", Dimension::length, &physics::Leakdown::leak_hole_m);
    out.flow = derived("from:flow", "A p₂ ψ(p₀/p₂) / (√(R T) rho)", Dimension::flow,
                       &physics::Leakdown::flow_anr_m3_s);
}

void add_bands(LeakDown& out, const HeldOfSet& shown, const Reference& reference) {
    struct Done {
        Pressure set;
        Length restrictor;
        std::optional<double> leakage;
    };
    std::vector<Done> done;  // most bands share one tester
    for (const LeakageBand& band : reference.leakage) {
        auto known = std::ranges::find_if(
            done, [&](const Done& one) { return one.set == band.set && one.restrictor == band.restrictor; });
        if (known == done.end()) {
            done.push_back({band.set, band.restrictor, leakage_on(shown, band.set, band.restrictor)});
            known = std::prev(done.end());
        }
        if (known->leakage) out.bands.push_back({band.id, band.judge(*known->leakage), *known->leakage});
    }
}

}  // namespace

std::optional<LeakDown> leak_down_of(const Case& at, int cylinder) {
    const auto readings = at_one_set_pressure(at, cylinder);
    if (readings.empty()) return std::nullopt;
    const Tester* tester = tester_of(at, TestKind::leak_down, readings.back()->tester);
    const Gauge* after = tester ? &tester->gauge : nullptr;
    const Gauge* before = tester && tester->supply_gauge ? &*tester->supply_gauge : after;
    const Derived set = mean_of(at, readings, &Reading::set, before);
    const Derived held = mean_of(at, readings, &Reading::held, after);
    const auto shown = held_of_set(at, tester, set, held, readings.back()->held->step_si());
    if (!shown) return std::nullopt;
    LeakDown out;
    out.set = set;
    out.held = held;
    out.leakage = shown->leakage;
    out.repeats = static_cast<int>(readings.size());
    out.tag = readings.back()->tag;
    out.oiled = readings.back()->oiled;
    for (const Reading* reading : readings)
        out.readings.push_back(reading->id);
    if (auto makers = on_makers_tester(at, *shown)) out.on_testers.push_back(std::move(*makers));
    for (const ReferenceTester& reference : at.reference.testers)
        if (auto converted = on_tester(*shown, reference.set, reference.restrictor, at.reference))
            out.on_testers.push_back(std::move(*converted));
    out.state = judge_leak(at, *shown, out.on_testers, out.why);
    add_areas(out, *shown);
    add_bands(out, *shown, at.reference);
    return out;
}

}  // namespace lapwing::findings
