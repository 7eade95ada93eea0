// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/findings/case.h"
#include "core/findings/left_open.h"
#include "core/odds/data_files.h"
#include "core/odds/verdict.h"
#include "core/report/owner_leaks.h"
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

/// Without anybody's ear, or without air, numbers alone say little: then that comes first.
bool weighs_little(const findings::Message& message) {
    return message.code == "odds.not_listened" || message.code == "odds.not_listened_since" ||
           message.code == "odds.no_air";
}

/// What is said of a cylinder to a mentor, beside its odds and shares.
Sentences said_of(const odds::CylinderOdds& odds, const findings::Findings& found,
                  const findings::Reference& reference) {
    if (left_open(odds, found, reference))
        return {{{findings::say("cylinder.earlier_fault", odds.number), std::nullopt, odds.number}}};
    Sentences out{{{odds::headline_of(odds, reference), std::nullopt, odds.number}}};
    for (findings::Message& message : odds::said_beside(odds, reference)) {
        const auto at = weighs_little(message) ? out.sentences.begin() : out.sentences.end();
        out.sentences.insert(at, {std::move(message), std::nullopt, odds.number});
    }
    if (const auto* rules = found.cylinder(odds.number))
        if (const auto why = odds::beside_rules(*rules, odds))
            out.sentences.push_back({*why, std::nullopt, odds.number});
    return out;
}

}  // namespace

bool left_open(const odds::CylinderOdds& odds, const findings::Findings& found,
               const findings::Reference& reference) {
    const auto open = findings::faults_left_open(found);
    return odds::headline_of(odds, reference).code == "odds.seals" &&
           std::ranges::find(open, odds.number) != open.end();
}

void add_repairs(Facts& to, const odds::CylinderOdds& odds, const findings::Reference& reference,
                 bool name_cylinder) {
    std::vector<const odds::AfterRepair*> told;
    for (const odds::PathOdds* path : odds::by_share(odds)) {
        const auto* after = odds::expected_after(odds, *path, reference);
        if (!after || std::ranges::find(told, after) != told.end()) continue;
        told.push_back(after);
        const findings::Word part = odds::name_of(after->repair);
        Line line;
        if (name_cylinder)
            line.emplace_back(findings::say("odds.repair_of", odds.number, part));
        else
            line.emplace_back(part);
        line.emplace_back(Range{gauge_figure(after->lo_pa), gauge_figure(after->hi_pa)});
        if (!after->comparable_at_once) line.emplace_back(Label::once_run_in);
        add(to, Label::expected_after, std::move(line));
    }
}

Section where_it_leaks(const findings::Findings& found, const odds::WhereItLeaks* leaks,
                       const findings::Reference& reference, bool appendix) {
    Section section{Label::where_it_leaks, {}};
    if (!leaks) return section;
    if (!appendix) {
        section.blocks = leaks_for_owner(found, *leaks, reference);
        return section;
    }
    Sentences without_more;
    for (const odds::CylinderOdds& odds : leaks->cylinders) {
        if (!odds.measured) continue;
        // A bar of what little a sound cylinder loses would look like one of a fault.
        const bool leaking = odds::has_verdict(odds) && odds.main;
        Sentences sentences = said_of(odds, found, reference);
        if (!leaking) {
            std::ranges::move(sentences.sentences, std::back_inserter(without_more.sentences));
            continue;
        }
        Facts repairs;
        add_repairs(repairs, odds, reference, false);
        section.blocks.emplace_back(std::move(sentences));
        section.blocks.emplace_back(shares_of(odds));
        add_block(section, repairs, !repairs.facts.empty());
    }
    const bool any_without = !without_more.sentences.empty();
    add_block(section, std::move(without_more), any_without);
    if (section.blocks.empty()) return section;
    Sentences about{{}, true};
    for (const findings::Message& reason : leaks->reasons)
        about.sentences.push_back({reason, std::nullopt, std::nullopt});
    about.sentences.push_back({Label::how_odds, std::nullopt, std::nullopt});
    section.blocks.emplace_back(std::move(about));
    Facts versions;
    add(versions, Label::assumptions_version,
        {leaks->assumptions_version, OwnWords{odds::sum_of(odds::built_in_data())}});
    add(versions, Label::seed, {OwnWords{std::to_string(leaks->seed)}});
    section.blocks.emplace_back(std::move(versions));
    return section;
}

}  // namespace lapwing::report
