// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>
#include <set>

#include "core/findings/cautions.h"
#include "core/model/plan_totals.h"
#include "core/odds/derivations.h"
#include "core/odds/verdict.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {

using findings::Action;
using findings::CylinderFindings;
using findings::Derivation;
using findings::Findings;
using findings::word_of;

namespace {

Sentence plain(Text text) {
    return {std::move(text), std::nullopt, std::nullopt};
}

void add_remarks(Sentences& to, const std::vector<findings::Remark>& remarks, std::optional<int> cylinder) {
    for (const findings::Remark& remark : remarks)
        to.sentences.push_back({remark.message, std::nullopt, cylinder});
}

/// Where the cautions of an action stand in assets/reference.
std::string_view place_of(Action action) {
    switch (action) {
        case Action::dry:
            return "dry";
        case Action::wet:
            return "wet";
        case Action::leak_down:
        case Action::turn_once:
            return "leak-down";
        case Action::listen:
            return "exits";
        case Action::plan:
            return "plan";
        case Action::crankcase:
            return "crankcase";
        case Action::clearances:
        case Action::adjust:
        case Action::tester_check:
            break;
    }
    return "session";
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

Table plan_table(const std::vector<const PlanLine*>& lines) {
    Table table{{{{Label::cylinder}, 1.3},
                 {{Label::option}, 2.0},
                 {{Label::work}, 4.0},
                 {{Label::price}, 2.2},
                 {{Label::if_left}, 3.0},
                 {{Label::expected}, 2.2}},
                {}};
    for (const PlanLine* line : lines) {
        Cell work;
        for (const std::string* words : {&line->work, &line->parts, &line->reason})
            if (!words->empty()) work.lines.push_back({OwnWords{*words}});
        if (line->done_at) work.lines.push_back({word_of(StepState::done), *line->done_at});
        Cell price;
        if (line->price) price.lines.push_back({OwnWords{line->price->digits + ' ' + line->price->currency}});
        if (line->labour) price.lines.push_back({*line->labour});
        Cell expected;
        if (line->predicted_low && line->predicted_high)
            expected = cell({Range{findings::figure_of(*line->predicted_low),
                                   findings::figure_of(*line->predicted_high)}});
        table.rows.push_back({line->cylinder ? cell({*line->cylinder}) : Cell{},
                              cell({word_of(line->option)}), work, price,
                              line->if_left.empty() ? Cell{} : cell({OwnWords{line->if_left}}), expected});
    }
    return table;
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

}  // namespace

Section why(const Findings& found, bool appendix) {
    Sentences of_cylinders;
    for (const CylinderFindings& cylinder : found.cylinders) {
        if (cylinder.dry) add_remarks(of_cylinders, cylinder.dry->why, cylinder.number);
        if (cylinder.leak_down) {
            add_remarks(of_cylinders, cylinder.leak_down->why, cylinder.number);
            if (const auto& law = cylinder.leak_down->law)
                of_cylinders.sentences.push_back({law->message, std::nullopt, cylinder.number});
        }
        add_remarks(of_cylinders, cylinder.rules_of_thumb, cylinder.number);
        add_remarks(of_cylinders, cylinder.clearances.remarks, cylinder.number);
    }
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

Section cautions(const std::vector<findings::NextStep>& steps, const Engine& engine,
                 const findings::Reference& reference) {
    std::vector<std::string_view> places;
    for (const findings::NextStep& step : steps)
        places.push_back(place_of(step.action));
    places.emplace_back("findings");
    places.emplace_back("plan");
    Sentences sentences;
    std::set<std::string> said;
    for (std::string_view place : places)
        for (const findings::Caution* caution : cautions_for(reference, place, engine))
            if (said.insert(caution->id).second)
                sentences.sentences.push_back(plain(ReferenceText{caution->text}));
    Section section{Label::cautions, {}};
    add_block(section, sentences, !sentences.sentences.empty());
    return section;
}

Section plan(const Visit& visit) {
    const Table table = plan_table(in_order(visit.plan));
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
    add_block(section, facts, !facts.facts.empty());
    return section;
}

Section work_done(const Dossier& dossier, const Visit& visit) {
    const Visit* before = visit_before(dossier, visit);
    Section section{Label::work_done, {}};
    if (!before) return section;
    std::vector<PlanLine> done;
    for (const Visit& other : dossier.visits)
        for (const PlanLine& line : other.plan)
            if (line.done_at && line.option != PlanOption::leave && other.session.id != visit.session.id &&
                *line.done_at >= before->session.opened_at && *line.done_at < visit.session.opened_at)
                done.push_back(line);
    // What would have come of leaving it is of no account any more.
    for (PlanLine& line : done)
        line.if_left.clear();
    Table table = plan_table(in_order(done));
    for (auto& row : table.rows)
        row.erase(row.begin() + 4);
    table.columns.erase(table.columns.begin() + 4);
    Facts facts;
    add(facts, Label::comes_to, sum_of(totals_of(done)));
    const bool any = !done.empty();
    add_block(section, std::move(table), any);
    add_block(section, std::move(facts), any && !facts.facts.empty());
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

Section sources(const Findings& found, const findings::Reference& reference) {
    Sentences sentences{{}, true};
    std::set<std::string> named;
    const auto add = [&](const std::optional<findings::Message>& source) {
        if (!source || source->code != "source.published" || source->args.empty()) return;
        const auto* name = std::get_if<std::string>(&source->args.front());
        if (name && named.insert(*name).second) sentences.sentences.push_back(plain(*source));
    };
    for (const CylinderFindings& cylinder : found.cylinders)
        for (const Derivation* from : derivations(cylinder))
            add(from->source);
    if (std::ranges::any_of(found.cylinders,
                            [](const auto& cylinder) { return cylinder.leak_down.has_value(); }))
        add(source_message(reference.deciding_band().basis));
    for (const findings::RuleVerdict& rule : found.spread)
        if (const findings::SpreadRule* known = reference.spread_rule(rule.rule))
            add(source_message(known->basis));
    if (std::ranges::any_of(found.cylinders, [](const auto& cylinder) { return cylinder.wet.has_value(); }))
        add(source_message(reference.wet.basis));
    Section section{Label::sources, {}};
    add_block(section, sentences, !sentences.sentences.empty());
    return section;
}

}  // namespace lapwing::report
