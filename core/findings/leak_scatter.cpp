// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/findings/leak_sums.h"

/// How leak-down readings of one cylinder scatter: rings find another place, a valve another seat.
namespace lapwing::findings {
namespace {

double mean_of(const std::vector<double>& values) {
    double out = 0.0;
    for (const double value : values)
        out += value / static_cast<double>(values.size());
    return out;
}

}  // namespace

bool same_set_pressure(double one_pa, double other_pa, const Reference& reference) {
    return std::abs(one_pa - other_pa) <= reference.assumed("set-alike") * other_pa;
}

std::vector<const Reading*> at_one_set_pressure(const Case& at, int cylinder, bool other) {
    auto readings = counted(at, TestKind::leak_down, cylinder);
    std::erase_if(readings, [](const Reading* reading) { return !reading->held || !reading->set; });
    if (readings.empty()) return readings;
    const auto is_at = [&](double set) {
        return [&, set](const Reading* reading) {
            return same_set_pressure(reading->set->si(), set, at.reference);
        };
    };
    if (other) std::erase_if(readings, is_at(readings.back()->set->si()));
    if (!readings.empty()) std::erase_if(readings, std::not_fn(is_at(readings.back()->set->si())));
    return readings;
}

double leakage_by_area(const physics::TesterPneumatics& tester, double held_pa) {
    const double step_pa = 1e-4 * tester.set_gauge_pa;
    const auto more = physics::leakdown(tester, held_pa - step_pa);
    const auto less = physics::leakdown(tester, held_pa + step_pa);
    if (!more || !less || more->state != physics::LeakState::measured ||
        less->state != physics::LeakState::measured)
        return 0.0;
    return (more->leakage - less->leakage) / std::log(more->leak_area_m2 / less->leak_area_m2);
}

std::vector<double> shares_held(const std::vector<const Reading*>& readings) {
    std::vector<double> out;
    for (const Reading* reading : readings)
        if (reading->set->si() > 0.0) out.push_back(reading->held->si() / reading->set->si());
    return out;
}

uncertainty::Repeatability usual_leak_scatter(const Case& at, const HeldOfSet& of, int cylinder) {
    const double usual = at.reference.assumed("leak-repeat");
    double freedom = at.reference.assumed("repeat-scatter-weight");
    double squares = freedom * usual * usual;
    for (const Cylinder& other : at.engine.cylinders) {
        if (other.number == cylinder) continue;
        const auto readings = at_one_set_pressure(at, other.number, false);
        const auto shares = shares_held(readings);
        if (shares.size() < 2 || wildly_apart(at, TestKind::leak_down, readings)) continue;
        physics::TesterPneumatics tester = of.tester;
        tester.set_gauge_pa = readings.back()->set->si();
        const double mean = mean_of(shares);
        const double by_area = leakage_by_area(tester, mean * tester.set_gauge_pa);
        // A leak so small that the needle does not show its scatter says nothing of it.
        if (by_area * usual * tester.set_gauge_pa < step_pa(*readings.back(), &Reading::held) ||
            !(by_area > 0.0))
            continue;
        for (const double share : shares)
            squares += (share - mean) / by_area * ((share - mean) / by_area);
        freedom += static_cast<double>(shares.size()) - 1.0;
    }
    return {leakage_by_area(of.tester, of.held.figure.si) * std::sqrt(squares / freedom), freedom};
}

}  // namespace lapwing::findings
