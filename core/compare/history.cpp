// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/history.h"

#include <algorithm>
#include <cmath>
#include <deque>

#include "core/compare/measured.h"
#include "core/compare/pieces.h"
#include "core/compare/since_repair.h"
#include "core/compare/trend.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::compare {
namespace {

using findings::Dimension;
using findings::say;

constexpr double ms_a_year = 365.25 * 86'400'000.0;

double years_of(const Visit& visit) {
    return static_cast<double>(visit.session.opened_at.unix_ms) / ms_a_year;
}

findings::Message sentence_of(const Trend& trend, bool leak_down) {
    switch (trend.direction) {
        case Direction::undecided:
            return say("history.trend_undecided", trend.points);
        case Direction::steady:
            return say("history.trend_steady", trend.points);
        case Direction::better:
            return say(leak_down ? "history.trend_better_leakage" : "history.trend_better_pressure",
                       trend.per_year, trend.points);
        case Direction::worse:
            return say(leak_down ? "history.trend_worse_leakage" : "history.trend_worse_pressure",
                       trend.per_year, trend.points);
    }
    return {};
}

std::optional<Trend> trend_of(const std::vector<double>& years, const std::vector<Doubtful>& values,
                              bool leak_down, const findings::Reference& reference) {
    if (values.size() < 2) return std::nullopt;
    const double span_days = (years.back() - years.front()) * 365.25;
    Trend out;
    out.points = static_cast<int>(values.size());
    const auto dimension = leak_down ? Dimension::share : Dimension::pressure_difference;
    if (span_days < reference.assumed("trend-least-days")) {
        out.per_year = findings::figure(dimension, 0.0);
        out.says = sentence_of(out, leak_down);
        return out;
    }
    const Line line = line_through(years, values);
    out.per_year = findings::figure(dimension, line.per_unit, uncertainty::expanded(line.u));
    const double size = std::abs(line.per_unit) / line.u;
    out.beyond_doubt = size > reference.assumed("change-beyond-doubt");
    const bool better = leak_down ? line.per_unit < 0.0 : line.per_unit > 0.0;
    // Two readings always lie on a line: only a difference beyond doubt is one.
    if (out.points == 2 ? out.beyond_doubt : size > reference.assumed("change-real"))
        out.direction = better ? Direction::better : Direction::worse;
    else
        out.direction = out.points == 2 ? Direction::undecided : Direction::steady;
    out.says = sentence_of(out, leak_down);
    return out;
}

class Chronicle {
public:
    Chronicle(const Dossier& dossier, const findings::Reference& reference, const Visit* until)
        : dossier_(dossier), reference_(reference) {
        for (const Visit& visit : dossier.visits)
            if (!until || visit.session.id == until->session.id ||
                visit.session.opened_at < until->session.opened_at)
                out_.visits.push_back(&visit);
        std::ranges::stable_sort(out_.visits, {},
                                 [](const Visit* visit) { return visit->session.opened_at.unix_ms; });
        for (const Visit* visit : out_.visits)
            cases_.push_back(findings::case_of(dossier, *visit, reference, {{}, nullptr, false}));
    }

    History run() {
        for (const std::vector<int> numbers = numbers_in_order(dossier_.engine); const int number : numbers) {
            CylinderHistory cylinder{number, {}, {}};
            for (const TestKind test : compared_tests)
                if (auto series = series_of(test, number)) cylinder.series.push_back(std::move(*series));
            out_.cylinders.push_back(std::move(cylinder));
        }
        for (CylinderHistory& cylinder : out_.cylinders)
            cylinder.since_repair = since_repair(dossier_, out_, cylinder, reference_);
        return std::move(out_);
    }

private:
    std::optional<Series> series_of(TestKind test, int number) {
        std::optional<std::size_t> newest;
        for (std::size_t i = cases_.size(); i-- > 0 && !newest;)
            if (measured(cases_[i], test, number)) newest = i;
        if (!newest) return std::nullopt;
        const auto target = measured(cases_[*newest], test, number);
        const auto set_pa =
            target->leak_down() ? std::optional(target->pneumatics.set_gauge_pa) : std::nullopt;
        Series out{test, {}, {}};
        std::vector<double> years;
        std::vector<Doubtful> values;
        std::size_t last_visit = 0;
        for (std::size_t i = 0; i <= *newest; ++i) {
            const auto here = measured(cases_[i], test, number, set_pa);
            if (!here) continue;
            const Crossed crossed =
                i == *newest ? Crossed{here->value, false, {}} : in_terms_of(*here, *target, runs_);
            add_reasons(out_.reasons, crossed.reasons);
            Point point{i, measure_of(*here, crossed.value, crossed.converted), !crossed.prevented(), false};
            for (std::size_t j = out.points.empty() ? i : last_visit + 1; j <= i && i > 0; ++j)
                point.after_repair =
                    point.after_repair ||
                    (j > 0 && repaired_between(dossier_, *out_.visits[j - 1], *out_.visits[j], number));
            if (point.after_repair) {
                years.clear();
                values.clear();
            }
            if (point.comparable) {
                years.push_back(years_of(*out_.visits[i]));
                values.push_back(crossed.value);
            }
            last_visit = i;
            out.points.push_back(std::move(point));
        }
        out.trend = trend_of(years, values, target->leak_down(), reference_);
        return out;
    }

    const Dossier& dossier_;
    const findings::Reference& reference_;
    std::deque<Case> cases_;
    findings::ModelRuns runs_;
    History out_;
};

}  // namespace

bool repaired_between(const Dossier& dossier, const Visit& earlier, const Visit& later, int cylinder) {
    for (const Visit& visit : dossier.visits)
        for (const PlanLine& line : visit.plan)
            if (line.done_at && line.option != PlanOption::leave &&
                line.cylinder.value_or(cylinder) == cylinder &&
                line.done_at->unix_ms >= earlier.session.opened_at.unix_ms &&
                line.done_at->unix_ms < later.session.opened_at.unix_ms)
                return true;
    return std::ranges::any_of(later.readings, [&](const Reading& reading) {
        return reading.cylinder == cylinder && reading.tag == Tag::after_repair;
    });
}

const Series* CylinderHistory::of(TestKind test) const {
    const auto found = std::ranges::find(series, test, &Series::test);
    return found == series.end() ? nullptr : &*found;
}

const CylinderHistory* History::cylinder(int number) const {
    const auto found = std::ranges::find(cylinders, number, &CylinderHistory::number);
    return found == cylinders.end() ? nullptr : &*found;
}

History history_of(const Dossier& dossier, const findings::Reference& reference, const Visit* until) {
    return Chronicle(dossier, reference, until).run();
}

std::vector<CylinderSince> since_repair_at(const Dossier& dossier, const Visit& visit,
                                           const findings::Reference& reference) {
    std::vector<CylinderSince> out;
    const History history = history_of(dossier, reference, &visit);
    const auto measured_now = [&](const Series& series) {
        return history.visits[series.points.back().visit]->session.id == visit.session.id;
    };
    for (const CylinderHistory& cylinder : history.cylinders)
        if (cylinder.since_repair && std::ranges::any_of(cylinder.series, measured_now))
            out.push_back({cylinder.number, *cylinder.since_repair});
    return out;
}

}  // namespace lapwing::compare
