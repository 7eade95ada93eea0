// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/model/tester.h"

#include <algorithm>
#include <numbers>

#include "core/base/apart.h"
#include "core/model/check.h"

namespace lapwing {
namespace {

using model::Check;

constexpr double degree = std::numbers::pi / 180.0;

bool is_en_class(const std::string& accuracy) {
    const auto canonical = canonical_digits(accuracy);
    if (!canonical) return false;
    const double percent = digits_value(*canonical);
    return percent > 0.0 && percent <= 10.0;
}

bool is_asme_grade(const std::string& accuracy) {
    static constexpr auto grades =
        std::to_array<std::string_view>({"4A", "3A", "2A", "1A", "A", "B", "C", "D"});
    return std::ranges::find(grades, accuracy) != grades.end();
}

void check_gauge(Check& check, const Gauge& gauge) {
    check.positive(std::optional(gauge.full_scale), model::highest_gauge_pa, "Full scale of the gauge");
    check.positive(gauge.division, gauge.full_scale.si(), "Division of the scale");
    check.within(gauge.zero_at_rest, -gauge.full_scale.si(), gauge.full_scale.si(), "Needle at rest");
    check.within(gauge.sweep, 10 * degree, 360 * degree, "Sweep of the scale");
    check.text(gauge.accuracy, "Accuracy class", 20);
    switch (gauge.scheme) {
        case AccuracyScheme::unknown:
            check.that(gauge.accuracy.empty(), "tester.class_without_scheme",
                       "The accuracy class \"{}\" stands without its standard: choose EN 837-1 or ASME "
                       "B40.100, or leave it empty.",
                       gauge.accuracy);
            break;
        case AccuracyScheme::en_837_1:
            check.that(gauge.accuracy.empty() || is_en_class(gauge.accuracy), "tester.unknown_class",
                       "\"{}\" is not a class of {}: it is a percentage of the span such as 1.6 or 2.5.",
                       gauge.accuracy, "EN 837-1");
            break;
        case AccuracyScheme::asme_b40_100:
            check.that(gauge.accuracy.empty() || is_asme_grade(gauge.accuracy), "tester.unknown_grade",
                       "\"{}\" is not a grade of {}: it is one of 4A, 3A, 2A, 1A, A, B, C, D.",
                       gauge.accuracy, "ASME B40.100");
            break;
    }
}

void check_adapter(Check& check, const Adapter& adapter) {
    check.needed(adapter.name, "name for an adapter");
    check.text(adapter.name, "Adapter name", 500);
    check.text(adapter.thread, "Adapter thread", 200);
    check.within(adapter.reach, 0.0, 1.0, "Adapter reach");
    check.within(adapter.volume, 0.0, 1e-3, "Adapter volume");
}

void check_check(Check& check, const TesterCheck& done) {
    check.time(done.at, "Time of a self-check");
    check.gauge_pressure(done.set, "Set pressure of a self-check");
    check.gauge_pressure(done.shown, "Pressure shown in a self-check");
    check.positive(done.hole, 0.05, "Drilled hole");
    check.text(done.note, "Note of a self-check");
}

}  // namespace

AccuracyScheme scheme_of(const std::string& accuracy) {
    if (is_en_class(accuracy)) return AccuracyScheme::en_837_1;
    if (is_asme_grade(accuracy)) return AccuracyScheme::asme_b40_100;
    return AccuracyScheme::unknown;
}

Result<Tester> checked(Tester tester) {
    Check check("tester");
    check.id(tester.id.uuid, "id");
    check.time(tester.made_at, "Time");
    check.needed(tester.name, "name");
    check.text(tester.name, "Name", 500);
    check.text(tester.note, "Note");
    check_gauge(check, tester.gauge);
    if (tester.supply_gauge) check_gauge(check, *tester.supply_gauge);
    check.within(tester.hose_volume, 0.0, 5e-3, "Volume of hose and gauge");
    for (const auto& adapter : tester.adapters)
        check_adapter(check, adapter);
    const Gauge& before_restrictor = tester.supply_gauge ? *tester.supply_gauge : tester.gauge;
    check.positive(tester.set_pressure, model::highest_gauge_pa, "Set pressure");
    if (tester.set_pressure)
        check.that(!is_above(tester.set_pressure->si(), before_restrictor.full_scale.si()),
                   "tester.set_over_scale",
                   "The set pressure ({}) is beyond the gauge's full scale ({}): correct one of them.",
                   tester.set_pressure->text(), before_restrictor.full_scale.text());
    check.positive(tester.restrictor, 0.02, "Restrictor diameter");
    check.positive(tester.restrictor_length, 1.0, "Restrictor length");
    check.positive(tester.restrictor_cd, 1.5, "Restrictor's discharge coefficient");
    for (const auto& done : tester.checks)
        check_check(check, done);
    model::check_lineage(check, tester.lineage);
    return check.done(std::move(tester));
}

const TesterCheck* last_check(const Tester& tester, TesterCheckKind kind) {
    const TesterCheck* last = nullptr;
    for (const auto& check : tester.checks)
        if (check.kind == kind && (last == nullptr || check.at.unix_ms >= last->at.unix_ms)) last = &check;
    return last;
}

const TesterCheck* failed_check(const Tester& tester) {
    for (std::size_t i = 0; i < Words<TesterCheckKind>::list.size(); ++i) {
        const auto kind = static_cast<TesterCheckKind>(i);
        if (kind == TesterCheckKind::zero_at_rest && tester.gauge.zero_at_rest) continue;
        const TesterCheck* last = last_check(tester, kind);
        if (last && last->result == CheckResult::failed) return last;
    }
    return nullptr;
}

}  // namespace lapwing
