// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/findings/case.h"
#include "core/findings/left_open.h"
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

/// Without anybody's ear, or without air, numbers alone say little: then that comes first.
bool weighs_little(const findings::Message& message) {
    return message.code == "odds.not_listened" || message.code == "odds.not_listened_since" ||
           message.code == "odds.no_air";
}

/// What the odds come to where nobody listened: figures, and of little weight.
bool is_of_odds(const findings::Message& message) {
    return message.code == "odds.main_unheard" || message.code == "odds.open";
}

/// What is said of a cylinder in words. Odds and shares stand beside it for a mentor: to an owner they are
/// two figures of one thing that don't agree.
Sentences said_of(const odds::CylinderOdds& odds, const findings::Findings& found,
                  const findings::Reference& reference, bool figures) {
    // What this visit read makes nothing sound in which air found a leak before.
    const auto open = findings::faults_left_open(found);
    if (odds::headline_of(odds, reference).code == "odds.seals" &&
        std::ranges::find(open, odds.number) != open.end())
        return {{{findings::say("cylinder.earlier_fault", odds.number), std::nullopt, odds.number}}};
    Sentences out{{{figures ? odds::headline_of(odds, reference) : odds::in_words(odds, reference),
                    std::nullopt, odds.number}}};
    for (findings::Message& message : odds::said_beside(odds, reference)) {
        if (!figures && is_of_odds(message)) continue;
        const auto at = weighs_little(message) ? out.sentences.begin() : out.sentences.end();
        out.sentences.insert(at, {std::move(message), std::nullopt, odds.number});
    }
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
        Line line{odds::name_of(after->repair),
                  Range{gauge_figure(after->lo_pa), gauge_figure(after->hi_pa)}};
        if (!after->comparable_at_once) line.emplace_back(Label::once_run_in);
        add(to, Label::expected_after, std::move(line));
    }
}

/// The cylinders that seal well in one sentence for each likelihood, in place of one for each cylinder.
void gather_sound(Sentences& sentences) {
    std::vector<std::pair<findings::Word, findings::CylinderList>> sound;
    const auto is_sound = [&](const Sentence& sentence) {
        const auto* message = std::get_if<findings::Message>(&sentence.text);
        if (!message || message->code != "odds.likely_seals") return false;
        // What else is said of it hangs on its sentence.
        return std::ranges::count(sentences.sentences, sentence.cylinder, &Sentence::cylinder) == 1;
    };
    std::vector<Sentence> rest;
    for (Sentence& sentence : sentences.sentences) {
        if (!is_sound(sentence)) continue;
        const auto& message = std::get<findings::Message>(sentence.text);
        const auto& how = std::get<findings::Word>(message.args.at(1));
        auto at = std::ranges::find(sound, how, &std::pair<findings::Word, findings::CylinderList>::first);
        if (at == sound.end()) at = sound.insert(sound.end(), {how, {}});
        at->second.push_back(*sentence.cylinder);
    }
    for (Sentence& sentence : sentences.sentences)
        if (!is_sound(sentence)) rest.push_back(sentence);
    for (auto& [how, cylinders] : sound) {
        if (cylinders.size() == 1)
            rest.push_back({findings::say("odds.likely_seals", cylinders.front(), how), std::nullopt,
                            cylinders.front()});
        else
            rest.push_back({findings::say("odds.likely_sound", cylinders, how), std::nullopt, std::nullopt});
    }
    sentences.sentences = std::move(rest);
}

}  // namespace

Section where_it_leaks(const findings::Findings& found, const odds::WhereItLeaks* leaks,
                       const findings::Reference& reference, bool appendix) {
    Section section{Label::where_it_leaks, {}};
    if (!leaks) return section;
    Sentences without_more;
    bool expected = false;
    for (const odds::CylinderOdds& odds : leaks->cylinders) {
        if (!odds.measured) continue;
        // A bar of what little a sound cylinder loses would look like one of a fault.
        const bool leaking = odds::has_verdict(odds) && odds.main;
        Sentences sentences = said_of(odds, found, reference, appendix);
        Facts repairs;
        if (leaking) add_repairs(repairs, odds, reference);
        expected = expected || !repairs.facts.empty();
        if (!(leaking && appendix) && repairs.facts.empty()) {
            std::ranges::move(sentences.sentences, std::back_inserter(without_more.sentences));
            continue;
        }
        section.blocks.emplace_back(std::move(sentences));
        if (leaking && appendix) section.blocks.emplace_back(shares_of(odds));
        add_block(section, repairs, !repairs.facts.empty());
    }
    gather_sound(without_more);
    const bool any_without = !without_more.sentences.empty();
    add_block(section, std::move(without_more), any_without);
    if (section.blocks.empty()) return section;
    Sentences about{{}, true};
    for (const findings::Message& reason : leaks->reasons)
        if (appendix || reason.code != "odds.working_assumptions")
            about.sentences.push_back({reason, std::nullopt, std::nullopt});
    about.sentences.push_back({appendix ? Label::how_odds : Label::how_likely, std::nullopt, std::nullopt});
    if (!appendix && expected) about.sentences.push_back({Label::how_expected, std::nullopt, std::nullopt});
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
