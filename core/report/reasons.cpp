// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <set>

#include "core/odds/derivations.h"
#include "core/odds/verdict.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {

using findings::CylinderFindings;
using findings::Derivation;
using findings::Findings;

namespace {

Sentence plain(Text text) {
    return {std::move(text), std::nullopt, std::nullopt};
}

void add_remarks(Sentences& to, const std::vector<findings::Remark>& remarks, std::optional<int> cylinder) {
    for (const findings::Remark& remark : remarks)
        to.sentences.push_back({remark.message, std::nullopt, cylinder});
}

/// How each number of a cylinder was made, in the order of the tests.
std::vector<const Derivation*> derivations(const CylinderFindings& cylinder) {
    std::vector<const Derivation*> all;
    const auto add = [&](const std::optional<findings::Derived>& derived) {
        if (derived) all.push_back(&derived->from);
    };
    if (cylinder.dry) {
        all.push_back(&cylinder.dry->final.from);
        if (cylinder.dry->expected) all.push_back(&cylinder.dry->expected->from);
        add(cylinder.dry->without_hose);
    }
    if (cylinder.leak_down) {
        all.push_back(&cylinder.leak_down->leakage.from);
        for (const findings::OnTester& on : cylinder.leak_down->on_testers) {
            all.push_back(&on.orifice.from);
            all.push_back(&on.laminar.from);
        }
        add(cylinder.leak_down->leak_area);
        add(cylinder.leak_down->leak_hole);
        add(cylinder.leak_down->flow);
        if (cylinder.leak_down->law)
            for (const Derivation& from : cylinder.leak_down->law->from)
                all.push_back(&from);
    }
    if (cylinder.wet) {
        add(cylinder.wet->rise);
        if (cylinder.wet->volume_rise) all.push_back(&cylinder.wet->volume_rise->from);
    }
    return all;
}

std::vector<const Derivation*> derivations(const findings::Limits& limits) {
    for (const auto* limit : {&limits.lowest, &limits.low, &limits.high})
        if (*limit) return {&(*limit)->from};
    return {};
}

std::optional<findings::Message> source_message(const findings::Basis& basis) {
    if (basis.kind != findings::BasisKind::published) return std::nullopt;
    return findings::Message{"source.published", {basis.source}};
}

/// Not a rule that was made for other engines and gives no state here; what the gauge can't tell apart is
/// none.
bool serves_owner(const findings::RuleVerdict& rule) {
    return rule.gives != findings::State::none || rule.rule == "within-gauge";
}

/// Everything that is said of one cylinder's readings, test by test.
Sentences said_of(const CylinderFindings& cylinder) {
    Sentences out;
    const auto add_part = [&](Label part, const std::vector<findings::Remark>& remarks) {
        const std::size_t first = out.sentences.size();
        add_remarks(out, remarks, cylinder.number);
        if (out.sentences.size() > first) out.sentences[first].part = part;
    };
    if (cylinder.dry) add_part(Label::dry_test, cylinder.dry->why);
    if (cylinder.leak_down) {
        add_part(Label::leak_down, cylinder.leak_down->why);
        if (const auto& law = cylinder.leak_down->law)
            out.sentences.push_back({law->message, std::nullopt, cylinder.number});
    }
    add_part(Label::rules_of_thumb, cylinder.rules_of_thumb);
    add_part(Label::clearances, cylinder.clearances.remarks);
    return out;
}

/// Nothing is said of it but that it is in range: its figures stand in the table of readings, what was heard
/// in that of the exits.
bool only_in_range(const CylinderFindings& cylinder, const Sentences& said) {
    std::vector<std::string_view> sound{"why.in_range",        "why.above_lowest", "why.within_typical",
                                        "why.within_expected", "why.put_right",    "why.put_right_hose",
                                        "why.leak_band",       "why.leak_maker",   "thumb.ring_air_normal",
                                        "thumb.nothing_heard"};
    if (std::ranges::any_of(cylinder.rules_of_thumb, [](const findings::Remark& rule) {
            return rule.message.code == "thumb.ring_air_normal";
        }))
        sound.emplace_back("thumb.loudest_exit");
    return cylinder.state == findings::State::good && !said.sentences.empty() &&
           std::ranges::all_of(said.sentences, [&](const Sentence& one) {
               return std::ranges::find(sound, std::get<findings::Message>(one.text).code) != sound.end();
           });
}

/// What the readings of the cylinders say. An owner has what is sound in one sentence: a page of it would
/// bury the rest.
Sentences said_of(const Findings& found, bool appendix) {
    Sentences out;
    findings::CylinderList sound;
    for (const CylinderFindings& cylinder : found.cylinders)
        if (!appendix && only_in_range(cylinder, said_of(cylinder))) sound.push_back(cylinder.number);
    if (sound.size() < 2) sound.clear();
    for (const CylinderFindings& cylinder : found.cylinders)
        if (std::ranges::find(sound, cylinder.number) == sound.end())
            for (Sentence& one : said_of(cylinder).sentences)
                out.sentences.push_back(std::move(one));
    if (!sound.empty()) out.sentences.push_back(plain(findings::Message{"why.all_in_range", {sound}}));
    return out;
}

}  // namespace

Section why(const Findings& found, bool appendix) {
    const Sentences of_cylinders = said_of(found, appendix);
    // A rule that a cylinder fails already stands with that cylinder.
    const auto said = [&](const findings::Message& message) {
        return std::ranges::any_of(of_cylinders.sentences, [&](const Sentence& one) {
            return std::get<findings::Message>(one.text) == message;
        });
    };
    Sentences spread;
    for (const findings::Remark& expected : found.expectation)
        if (!said(expected.message)) spread.sentences.push_back(plain(expected.message));
    for (const auto* rules : {&found.spread, &found.leak_spread})
        for (const findings::RuleVerdict& rule : *rules)
            if (!said(rule.remark.message) && (appendix || serves_owner(rule)))
                spread.sentences.push_back(plain(rule.remark.message));
    Section section{Label::why, {}};
    add_block(section, of_cylinders, !of_cylinders.sentences.empty());
    add_block(section, spread, !spread.sentences.empty());
    if (!section.blocks.empty()) section.blocks.emplace_back(Sentences{{plain(Label::how_rules)}});
    return section;
}

Section remarks(Label heading, const Findings& found,
                std::vector<findings::Remark> CylinderFindings::*of_cylinder,
                const std::vector<findings::Remark>& of_engine) {
    Sentences sentences;
    add_remarks(sentences, of_engine, std::nullopt);
    if (of_cylinder)
        for (const CylinderFindings& cylinder : found.cylinders)
            add_remarks(sentences, cylinder.*of_cylinder, cylinder.number);
    Section section{heading, {}};
    add_block(section, sentences, !sentences.sentences.empty());
    return section;
}

Section worth_doing_next(const std::vector<findings::NextStep>& steps) {
    Sentences sentences;
    for (const findings::NextStep& step : steps)
        sentences.sentences.push_back(plain(step.reason));
    Section section{Label::worth_doing_next, {}};
    add_block(section, sentences, !sentences.sentences.empty());
    return section;
}

Section uncertainty(const Findings& found) {
    const Sentences sentences{
        {plain(Label::how_interval), plain(Label::how_shared), plain(Label::how_states)}, true};
    return {Label::uncertainty, found.headline.code == "engine.not_measured" ? std::vector<Block>{}
                                                                             : std::vector<Block>{sentences}};
}

Section worked(const Findings& found, const odds::WhereItLeaks* leaks, const findings::Reference& reference) {
    Section section{Label::worked, {}};
    std::set<std::string> shown;
    for (const Derivation* from : derivations(found.limits))
        if (shown.insert(from->title.code).second) section.blocks.emplace_back(Worked{std::nullopt, *from});
    for (const CylinderFindings& cylinder : found.cylinders)
        for (const Derivation* from : derivations(cylinder))
            if (shown.insert(from->title.code).second)
                section.blocks.emplace_back(Worked{cylinder.number, *from});
    if (!leaks) return section;
    for (const odds::CylinderOdds& of : leaks->cylinders) {
        if (!odds::has_verdict(of)) continue;
        for (const odds::PathOdds* path : odds::by_share(of)) {
            const odds::AfterRepair* after = odds::expected_after(of, *path, reference);
            if (!after) continue;
            Derivation from = odds::after_repair_from(of.number, *after);
            if (shown.insert(from.title.code).second)
                section.blocks.emplace_back(Worked{of.number, std::move(from)});
        }
    }
    return section;
}

Section sources(const Findings& found, const findings::Reference& reference, bool appendix) {
    Line names;
    std::set<std::string> named;
    const auto add = [&](const std::optional<findings::Message>& source) {
        if (!source || source->code != "source.published" || source->args.empty()) return;
        const auto* name = std::get_if<std::string>(&source->args.front());
        if (name && named.insert(*name).second) names.emplace_back(OwnWords{*name});
    };
    for (const CylinderFindings& cylinder : found.cylinders)
        for (const Derivation* from : derivations(cylinder))
            add(from->source);
    if (std::ranges::any_of(found.cylinders,
                            [](const auto& cylinder) { return cylinder.leak_down.has_value(); }))
        add(source_message(reference.deciding_band().basis));
    for (const findings::RuleVerdict& rule : found.spread)
        if (const findings::SpreadRule* known = reference.spread_rule(rule.rule))
            if (appendix || serves_owner(rule)) add(source_message(known->basis));
    if (std::ranges::any_of(found.cylinders, [](const auto& cylinder) { return cylinder.wet.has_value(); }))
        add(source_message(reference.wet.basis));
    Facts facts;
    report::add(facts, Label::published_in, std::move(names));
    Section section{Label::sources, {}};
    add_block(section, facts, !facts.facts.empty());
    add_block(section, Sentences{{plain(Label::how_sources)}},
              !appendix && found.headline.code != "engine.not_measured");
    return section;
}

}  // namespace lapwing::report
