// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/measured.h"

#include <algorithm>
#include <cmath>

#include "core/findings/instruments.h"
#include "core/findings/leak_sums.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::compare {
namespace {

using findings::Dimension;

double mean_of(const std::vector<double>& values) {
    double out = 0.0;
    for (const double value : values)
        out += value / static_cast<double>(values.size());
    return out;
}

/// What repeats scatter by, pooled with what such results scatter by in general (JCGM 100, H.3.6).
void add_scatter(Doubtful& to, const std::vector<double>& values, double usual,
                 const findings::Reference& reference) {
    if (values.size() == 1) {
        to.by_itself(usual);
        return;
    }
    const auto count = static_cast<double>(values.size());
    const double weight = reference.assumed("repeat-scatter-weight");
    const double mean = mean_of(values);
    double squares = weight * usual * usual;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    const double freedom = weight + count - 1.0;
    to.by_itself(std::sqrt(squares / freedom / count), freedom);
}

uncertainty::Gauge gauge_of(const Gauge* dial, const std::vector<const Reading*>& readings,
                            std::optional<TypedPressure> Reading::*field,
                            const findings::Reference& reference) {
    double highest = 0.0;
    double step = 0.0;
    for (const Reading* reading : readings) {
        highest = std::max(highest, (reading->*field)->si());
        step = std::max(step, step_pa(*reading, field));
    }
    return findings::instrument_of(dial, highest, step, reference).gauge;
}

/// What the gauge adds to a result that changes by `derivative` with its reading.
void add_gauge(Doubtful& to, const std::string& key, const uncertainty::Gauge& gauge, double reading_pa,
               double derivative) {
    const auto errors = uncertainty::errors_at(gauge, reading_pa);
    to.by_source(key + " zero", derivative * errors.offset_pa);
    to.by_source(key + " gain", derivative * errors.gain_pa);
    to.by_itself(std::abs(derivative) * errors.local_pa);
    to.by_itself(std::abs(derivative) * errors.resolution_pa);
}

std::string key_of(const Tester* tester, const Case& at, TestKind test) {
    // Two gauges that nobody named are not known to be one, but for those of one visit.
    return tester ? tester->id.text()
                  : at.visit.session.id.text() + (test == TestKind::leak_down   ? " leak-down"
                                                  : test == TestKind::crankcase ? " crankcase"
                                                                                : " gauge");
}

void measure_cranking(Measured& out) {
    const findings::Reference& reference = out.at->reference;
    std::vector<double> values;
    for (const Reading* reading : out.readings)
        values.push_back(reading->final->si());
    const double mean = mean_of(values);
    out.value.value = mean;
    const Gauge* dial = out.tester ? &out.tester->gauge : nullptr;
    add_gauge(out.value, out.tester_key, gauge_of(dial, out.readings, &Reading::final, reference), mean, 1.0);
    add_scatter(out.value, values, reference.assumed("repeat-scatter") * mean, reference);
    // The whole visit's: it cancels between two states of one visit.
    const bool timed = out.session().conditions.cranking_speed.has_value();
    out.value.by_source("day " + out.session().id.text(),
                        reference.assumed(timed ? "day-scatter-timed" : "day-scatter") * mean);
}

void measure_leak_down(Measured& out) {
    const Case& at = *out.at;
    std::vector<double> sets, helds, leakages;
    for (const Reading* reading : out.readings) {
        sets.push_back(reading->set->si());
        helds.push_back(reading->held->si());
        leakages.push_back(1.0 - helds.back() / sets.back());
    }
    const double set_pa = mean_of(sets);
    out.held_pa = mean_of(helds);
    out.pneumatics = findings::pneumatics(at, out.tester, set_pa);
    out.value.value = 1.0 - out.held_pa / set_pa;

    const Gauge* after = out.tester ? &out.tester->gauge : nullptr;
    const bool two_gauges = out.tester && out.tester->supply_gauge;
    const Gauge* before = two_gauges ? &*out.tester->supply_gauge : after;
    const double by_set = out.held_pa / (set_pa * set_pa);
    add_gauge(out.value, out.tester_key + (two_gauges ? " supply" : ""),
              gauge_of(before, out.readings, &Reading::set, at.reference), set_pa, by_set);
    add_gauge(out.value, out.tester_key, gauge_of(after, out.readings, &Reading::held, at.reference),
              out.held_pa, -1.0 / set_pa);
    if (!two_gauges) out.value.by_itself(by_set * at.reference.assumed("droop") * set_pa / std::sqrt(3.0));
    add_scatter(out.value, leakages,
                at.reference.assumed("leak-repeat") * findings::leakage_by_area(out.pneumatics, out.held_pa),
                at.reference);
}

/// Only the newest counts, as in the findings.
void measure_hold(Measured& out) {
    const Case& at = *out.at;
    const Reading& read = out.newest();
    out.set_pa = read.set->si();
    if (read.hold) out.hold_s = read.hold->si();
    const double end_pa = read.held->si();
    out.value.value = end_pa;
    const Gauge* dial = out.tester ? &out.tester->gauge : nullptr;
    add_gauge(out.value, out.tester_key, gauge_of(dial, out.readings, &Reading::held, at.reference), end_pa,
              1.0);
    // Set too high, it is too high at the end in the same proportion.
    add_gauge(out.value, out.tester_key, gauge_of(dial, out.readings, &Reading::set, at.reference),
              out.set_pa, -end_pa / out.set_pa);
    out.value.by_itself(at.reference.assumed("hold-repeat") * (out.set_pa - end_pa));
}

std::vector<const Reading*> holds_of(const Case& at, int cylinder) {
    // An engine of one chamber is held as it is; of several each goes by its cylinder.
    const int chamber = at.engine.cylinders.size() > 1 ? cylinder : 0;
    auto readings = findings::counted(at, TestKind::crankcase, chamber);
    std::erase_if(readings, [](const Reading* reading) {
        return !reading->set || !reading->held || !(reading->set->si() > 0.0) ||
               reading->held->si() > reading->set->si();
    });
    if (readings.size() > 1) readings.erase(readings.begin(), readings.end() - 1);
    return readings;
}

std::vector<const Reading*> readings_of(const Case& at, TestKind test, int cylinder,
                                        std::optional<double> set_like_pa) {
    if (test == TestKind::crankcase) return holds_of(at, cylinder);
    auto readings = findings::counted(at, test, cylinder);
    if (test != TestKind::leak_down) {
        std::erase_if(readings, [](const Reading* reading) {
            return !reading->final || !(reading->final->si() > 0.0);
        });
        return readings;
    }
    std::erase_if(readings, [](const Reading* reading) {
        return !reading->set || !reading->held || !physics::leakage(reading->set->si(), reading->held->si());
    });
    const auto keep_at = [&](double set_pa) {
        std::erase_if(readings, [&](const Reading* reading) {
            return !findings::same_set_pressure(reading->set->si(), set_pa, at.reference);
        });
    };
    if (readings.empty()) return readings;
    const bool like = set_like_pa && std::ranges::any_of(readings, [&](const Reading* reading) {
                          return findings::same_set_pressure(reading->set->si(), *set_like_pa, at.reference);
                      });
    keep_at(like ? *set_like_pa : readings.back()->set->si());
    return readings;
}

}  // namespace

std::optional<Measured> measured(const Case& at, TestKind test, int cylinder,
                                 std::optional<double> set_like_pa) {
    Measured out;
    out.readings = readings_of(at, test, cylinder, set_like_pa);
    if (out.readings.empty()) return std::nullopt;
    out.at = &at;
    out.test = test;
    out.cylinder = cylinder;
    out.tester = findings::tester_of(at, test, out.newest().tester);
    out.tester_key = key_of(out.tester, at, test);
    if (out.leak_down())
        measure_leak_down(out);
    else if (out.cranking())
        measure_cranking(out);
    else
        measure_hold(out);
    const bool typed = out.readings.size() == 1 && !out.leak_down();
    out.shown = typed ? findings::figure_of(out.cranking() ? *out.newest().final : *out.newest().held)
                      : findings::figure(out.leak_down() ? Dimension::share : Dimension::gauge_pressure,
                                         out.value.value);
    out.shown.u95 = uncertainty::expanded(out.value.u());
    return out;
}

}  // namespace lapwing::compare
