// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/report/changes.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {

using findings::CylinderFindings;
using findings::Figure;
using findings::Findings;
using findings::State;

namespace {

/// Every visit up to this one, oldest first, with its findings.
struct PastVisit {
    const Visit* visit;
    Findings found;
};

const Figure& figure_of_test(const findings::Cranking& test) {
    return test.final.figure;
}
const Figure& figure_of_test(const findings::LeakDown& test) {
    return test.leakage.figure;
}

/// What a repair left behind, and what was done to draw the visits in one tester's terms.
Sentences said_of(const compare::History& history) {
    Sentences out;
    for (const auto& cylinder : history.cylinders) {
        if (!cylinder.since_repair) continue;
        out.sentences.push_back({cylinder.since_repair->message, State::borderline, cylinder.number});
        for (const auto& evidence : cylinder.since_repair->evidence)
            // The table below has their doubt; here it would be another one, with the scatter of days in it.
            out.sentences.push_back({Bare{evidence}, std::nullopt, cylinder.number});
    }
    for (const auto& reason : history.reasons)
        if (reason.treatment != compare::Treatment::not_noted)
            out.sentences.push_back({reason.message, std::nullopt, std::nullopt});
    return out;
}

/// As many as stand side by side on a page; older ones are in the session file.
constexpr int most_visits = 6;

template <class Of>
Series series_of(Label what, const Engine& engine, const std::vector<PastVisit>& visits, Of of) {
    Series series{what, {}, {}};
    std::vector<const PastVisit*> with_any;
    for (const PastVisit& past : visits)
        if (std::ranges::any_of(past.found.cylinders, [&](const auto& cylinder) { return of(cylinder); }))
            with_any.push_back(&past);
    if (with_any.size() > most_visits) with_any.erase(with_any.begin(), with_any.end() - most_visits);
    for (const PastVisit* past : with_any)
        series.visits.push_back({past->visit->session.opened_at, past->visit->session.title});
    for (int number : numbers_in_order(engine)) {
        Series::Row row{number, {}, {}};
        for (const PastVisit* past : with_any) {
            const CylinderFindings* cylinder = past->found.cylinder(number);
            const auto* test = cylinder ? of(*cylinder) : nullptr;
            row.values.push_back(test ? std::optional(figure_of_test(*test)) : std::nullopt);
            row.states.push_back(test ? judged(test->state) : State::none);
        }
        series.rows.push_back(std::move(row));
    }
    return series;
}

}  // namespace

Section earlier_visits(const Dossier& dossier, const Visit& visit, const Findings& found,
                       const findings::Reference& reference) {
    std::vector<PastVisit> visits;
    for (const Visit& other : dossier.visits)
        if (other.session.id != visit.session.id && other.session.opened_at < visit.session.opened_at)
            visits.push_back({&other, findings::find(dossier, other, reference)});
    Section section{Label::earlier_visits, {}};
    if (visits.empty()) return section;
    visits.push_back({&visit, found});
    const compare::History history = compare::history_of(dossier, reference, &visit);
    Sentences said = said_of(history);
    const bool any = !said.sentences.empty();
    add_block(section, std::move(said), any);
    bool drawn = false;
    // Each chart with the readings that it draws below it, as they were taken.
    const auto add_test = [&](TestKind test, Series series) {
        Chart chart = chart_of(dossier.engine, history, test);
        const bool drawable = chart.visits.size() > 1;
        drawn = drawn || drawable;
        add_block(section, std::move(chart), drawable);
        if (series.visits.size() > 1) section.blocks.emplace_back(std::move(series));
    };
    add_test(TestKind::dry,
             series_of(Label::dry_test, dossier.engine, visits, [](const CylinderFindings& cylinder) {
                 return cylinder.dry ? &*cylinder.dry : nullptr;
             }));
    add_test(TestKind::leak_down,
             series_of(Label::leak_down, dossier.engine, visits, [](const CylinderFindings& cylinder) {
                 return cylinder.leak_down ? &*cylinder.leak_down : nullptr;
             }));
    Chart crankcase = chart_of(dossier.engine, history, TestKind::crankcase);
    const bool held = crankcase.visits.size() > 1;
    drawn = drawn || held;
    add_block(section, std::move(crankcase), held);
    add_block(section, Sentences{{{Label::how_chart, std::nullopt, std::nullopt}}}, drawn);
    return section;
}

}  // namespace lapwing::report
