// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/model/plan_totals.h"
#include "core/odds/verdict.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {

using findings::word_of;

namespace {

/// "710 EUR, 9 h"; nothing where nothing costs anything.
Line sum_of(const PlanTotals& totals) {
    Line out;
    for (const Money& price : totals.prices)
        out.emplace_back(OwnWords{price.digits + ' ' + price.currency});
    if (totals.labour_s > 0.0) {
        const auto hour = *Unit<TimeTag>::find("h");
        const double hours = hour.number(Time::from_si(totals.labour_s));
        const bool whole = std::abs(hours - std::round(hours)) < 0.005;
        out.emplace_back(TypedTime::from(Time::from_si(totals.labour_s), hour, whole ? 0 : 2));
    }
    return out;
}

/// Nobody reads a column of dashes.
void leave_out_empty_columns(Table& table) {
    for (std::size_t column = table.columns.size(); column-- > 0;) {
        const bool empty = std::ranges::all_of(
            table.rows, [&](const auto& row) { return row[column].lines.empty() && !row[column].state; });
        if (!empty) continue;
        table.columns.erase(table.columns.begin() + static_cast<std::ptrdiff_t>(column));
        for (auto& row : table.rows)
            row.erase(row.begin() + static_cast<std::ptrdiff_t>(column));
    }
}

/// The one reading that a repair of this cylinder should bring; nothing where there are several repairs to
/// choose from, for a line does not say which of them it is.
std::optional<Range> expected_at(int cylinder, const odds::WhereItLeaks* leaks,
                                 const findings::Reference& reference) {
    const odds::CylinderOdds* of = leaks ? leaks->cylinder(cylinder) : nullptr;
    if (!of || !odds::has_verdict(*of) || !of->main) return std::nullopt;
    const odds::AfterRepair* only = nullptr;
    for (const odds::PathOdds& path : of->paths) {
        const auto* after = odds::expected_after(*of, path, reference);
        if (!after || after == only) continue;
        if (only) return std::nullopt;
        only = after;
    }
    if (!only) return std::nullopt;
    return Range{gauge_figure(only->lo_pa), gauge_figure(only->hi_pa)};
}

std::optional<Range> expected_of(const PlanLine& line, const odds::WhereItLeaks* leaks,
                                 const findings::Reference* reference) {
    if (line.predicted_low && line.predicted_high)
        return Range{findings::figure_of(*line.predicted_low), findings::figure_of(*line.predicted_high)};
    if (!reference || line.option != PlanOption::strip || !line.cylinder || line.done_at) return std::nullopt;
    return expected_at(*line.cylinder, leaks, *reference);
}

/// What came of what these lines foretold, as far as it was read by this visit. The table of readings has
/// their doubt; here it would be another one, with the scatter of days in it.
Sentences proved(const std::vector<const PlanLine*>& lines, const Dossier& dossier, const Visit& visit,
                 const std::vector<compare::Proof>& proofs) {
    Sentences out;
    for (const PlanLine* line : lines) {
        const auto proof = std::ranges::find(proofs, line->id, &compare::Proof::line);
        if (!line->done_at || proof == proofs.end()) continue;
        const bool later = std::ranges::any_of(dossier.visits, [&](const Visit& other) {
            return other.session.id == proof->read_in && other.session.opened_at > visit.session.opened_at;
        });
        if (later) continue;
        for (const findings::Message& message : compare::said_of(*proof))
            out.sentences.push_back({Bare{message}, std::nullopt, proof->cylinder});
    }
    return out;
}

/// @param reference null: of work that is done, where what would have come of leaving it is of no account
Table plan_table(const std::vector<const PlanLine*>& lines, const odds::WhereItLeaks* leaks,
                 const findings::Reference* reference) {
    Table table{{{{Label::cylinder}, 1.3},
                 {{Label::option}, 1.6},
                 {{Label::work}, 4.4},
                 {{Label::price}, 2.2},
                 {{Label::if_left}, 3.0},
                 {{Label::expected}, 2.2}},
                {}};
    for (const PlanLine* line : lines) {
        Cell work;
        for (const std::string* words : {&line->work, &line->parts, &line->reason})
            if (!words->empty()) work.lines.push_back({OwnWords{*words}});
        // A line that somebody began and wrote nothing on.
        if (work.lines.empty() && !line->price && !line->labour && line->if_left.empty()) continue;
        if (line->done_at) work.lines.push_back({word_of(StepState::done), *line->done_at});
        Cell price;
        if (line->price) price.lines.push_back({OwnWords{line->price->digits + ' ' + line->price->currency}});
        if (line->labour) price.lines.push_back({*line->labour});
        Cell if_left;
        if (reference && !line->if_left.empty()) if_left = cell({OwnWords{line->if_left}});
        Cell expected;
        if (const auto range = expected_of(*line, leaks, reference)) expected = cell({*range});
        table.rows.push_back({line->cylinder ? cell({*line->cylinder}) : Cell{},
                              cell({word_of(line->option)}), std::move(work), std::move(price),
                              std::move(if_left), std::move(expected)});
    }
    leave_out_empty_columns(table);
    return table;
}

}  // namespace

Section plan(const Dossier& dossier, const Visit& visit, const odds::WhereItLeaks* leaks,
             const findings::Reference& reference, const std::vector<compare::Proof>& proofs) {
    const Table table = plan_table(in_order(visit.plan), leaks, &reference);
    Facts facts;
    const PlanTotals quick = totals_of(visit.plan, PlanOption::quick_fix);
    const PlanTotals stripping = totals_of(visit.plan, PlanOption::strip);
    if (quick.lines > 0 && stripping.lines > 0) {
        add(facts, Label::quick_fixes, sum_of(quick));
        add(facts, Label::strip, sum_of(stripping));
    }
    add(facts, Label::comes_to, sum_of(totals_of(visit.plan)));
    if (visit.session.owner_answer != OwnerAnswer::none) {
        Line answer{word_of(visit.session.owner_answer)};
        if (visit.session.owner_answered_at) answer.emplace_back(*visit.session.owner_answered_at);
        add(facts, Label::owner_answer, std::move(answer));
    }
    if (visit.session.retest_planned_for)
        add(facts, Label::planned_retest, {*visit.session.retest_planned_for});
    Section section{Label::plan, {}};
    add_block(section, table, !table.rows.empty());
    Sentences came = proved(in_order(visit.plan), dossier, visit, proofs);
    const bool any = !came.sentences.empty();
    add_block(section, std::move(came), any);
    add_block(section, facts, !facts.facts.empty());
    return section;
}

Section work_done(const Dossier& dossier, const Visit& visit, const std::vector<compare::Proof>& proofs) {
    const Visit* before = visit_before(dossier, visit);
    Section section{Label::work_done, {}};
    if (!before) return section;
    std::vector<PlanLine> done;
    for (const Visit& other : dossier.visits)
        for (const PlanLine& line : other.plan)
            if (line.done_at && line.option != PlanOption::leave && other.session.id != visit.session.id &&
                *line.done_at >= before->session.opened_at && *line.done_at < visit.session.opened_at)
                done.push_back(line);
    Table table = plan_table(in_order(done), nullptr, nullptr);
    Facts facts;
    add(facts, Label::comes_to, sum_of(totals_of(done)));
    const bool any = !done.empty();
    const bool summed = any && !facts.facts.empty();
    add_block(section, std::move(table), any);
    Sentences came = proved(in_order(done), dossier, visit, proofs);
    const bool read = !came.sentences.empty();
    add_block(section, std::move(came), read);
    add_block(section, std::move(facts), summed);
    return section;
}

}  // namespace lapwing::report
