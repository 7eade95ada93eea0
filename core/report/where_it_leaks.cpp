// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/odds/data_files.h"
#include "core/odds/verdict.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {
namespace {

/// Shares below this would be a hairline in the bar and "0 %" beside it: they are named together.
constexpr double worth_drawing = 0.005;

Shares shares_of(const odds::CylinderOdds& odds) {
    Shares out{odds.number, {}, {}};
    for (const odds::PathOdds* path : odds::by_share(odds)) {
        if (path->share.mean < worth_drawing)
            out.under_one_percent.push_back(path->path);
        else {
            const odds::Interval interval = odds::shown_interval(path->share);
            out.shares.push_back({path->path, interval.mean, interval.lo, interval.hi});
        }
    }
    return out;
}

findings::Figure gauge(double pa) {
    return {findings::Dimension::gauge_pressure, pa, {}, {}, {}};
}

Sentences said_of(const odds::CylinderOdds& odds, const findings::Findings& found) {
    Sentences out{{{odds::headline_of(odds), std::nullopt, odds.number}}};
    for (findings::Message& message : odds::said_beside(odds))
        out.sentences.push_back({std::move(message), std::nullopt, odds.number});
    if (const auto* rules = found.cylinder(odds.number))
        if (const auto why = odds::beside_rules(*rules, odds))
            out.sentences.push_back({*why, std::nullopt, odds.number});
    return out;
}

/// What repairs of parts that may well be at fault should bring.
void add_repairs(Facts& to, const odds::CylinderOdds& odds, const findings::Reference& reference) {
    std::vector<const odds::AfterRepair*> told;
    for (const odds::PathOdds* path : odds::by_share(odds)) {
        const auto* after = odds::expected_after(odds, *path, reference);
        if (!after || std::ranges::find(told, after) != told.end()) continue;
        told.push_back(after);
        Line line{odds::name_of(after->repair), Range{gauge(after->lo_pa), gauge(after->hi_pa)}};
        if (!after->comparable_at_once) line.emplace_back(Label::once_run_in);
        add(to, Label::expected_after, std::move(line));
    }
}

}  // namespace

Section where_it_leaks(const findings::Findings& found, const odds::WhereItLeaks* leaks,
                       const findings::Reference& reference, bool appendix) {
    Section section{Label::where_it_leaks, {}};
    if (!leaks) return section;
    Sentences without_bar;
    for (const odds::CylinderOdds& odds : leaks->cylinders) {
        if (!odds.measured) continue;
        // A bar of what little a sound cylinder loses would look like one of a fault.
        const bool bar = odds::has_verdict(odds) && odds.main;
        Sentences sentences = said_of(odds, found);
        if (!bar) {
            std::ranges::move(sentences.sentences, std::back_inserter(without_bar.sentences));
            continue;
        }
        section.blocks.emplace_back(std::move(sentences));
        section.blocks.emplace_back(shares_of(odds));
        Facts repairs;
        add_repairs(repairs, odds, reference);
        add_block(section, repairs, !repairs.facts.empty());
    }
    const bool any_without = !without_bar.sentences.empty();
    add_block(section, std::move(without_bar), any_without);
    if (section.blocks.empty()) return section;
    Sentences about;
    for (const findings::Message& reason : leaks->reasons)
        about.sentences.push_back({reason, std::nullopt, std::nullopt});
    about.sentences.push_back({Label::how_odds, std::nullopt, std::nullopt});
    section.blocks.emplace_back(std::move(about));
    if (!appendix) return section;
    Facts versions;
    add(versions, Label::assumptions_version,
        {leaks->assumptions_version, OwnWords{odds::sum_of(odds::built_in_data())}});
    add(versions, Label::seed, {OwnWords{std::to_string(leaks->seed)}});
    section.blocks.emplace_back(std::move(versions));
    return section;
}

}  // namespace lapwing::report
