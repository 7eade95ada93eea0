// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/findings/case.h"
#include "core/findings/prepare_word.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {

using findings::Dimension;
using findings::word_of;

namespace {

Cell scale_cell(const Gauge& gauge) {
    Cell cell{{{as_typed(Dimension::gauge_pressure, gauge.full_scale)}}, std::nullopt};
    if (gauge.division)
        cell.lines.push_back({Label::division, as_typed(Dimension::gauge_pressure, *gauge.division)});
    return cell;
}

Line class_of(const Gauge& gauge) {
    if (gauge.accuracy.empty()) return {Label::class_unknown};
    Line line;
    if (gauge.scheme != AccuracyScheme::unknown) line.emplace_back(word_of(gauge.scheme));
    line.emplace_back(OwnWords{gauge.accuracy});
    return line;
}

Cell details(const Tester& tester) {
    Cell cell;
    cell.peers = true;
    if (tester.home_made) cell.lines.push_back({Label::home_made});
    if (tester.set_pressure)
        cell.lines.push_back(
            {Label::set_pressure, as_typed(Dimension::gauge_pressure, *tester.set_pressure)});
    if (tester.restrictor)
        cell.lines.push_back({Label::restrictor, as_typed(Dimension::length, *tester.restrictor)});
    if (tester.hose_volume)
        cell.lines.push_back({Label::hose_volume, as_typed(Dimension::volume, *tester.hose_volume)});
    if (tester.check_valve_at != CheckValveAt::unknown)
        cell.lines.push_back({Label::check_valve, word_of(tester.check_valve_at)});
    if (tester.check_valve_core != CheckValveCore::unknown)
        cell.lines.push_back({Label::valve_core, word_of(tester.check_valve_core)});
    if (!tester.note.empty()) cell.lines.push_back({OwnWords{tester.note}});
    return cell;
}

/// The newest check of each kind.
Cell last_checks(const Tester& tester) {
    Cell cell;
    cell.peers = true;
    for (std::size_t i = 0; i < Words<TesterCheckKind>::list.size(); ++i)
        if (const TesterCheck* check = last_check(tester, static_cast<TesterCheckKind>(i)))
            cell.lines.push_back({word_of(check->kind), check->at, word_of(check->result)});
    if (cell.lines.empty()) cell.lines.push_back({Label::not_checked});
    return cell;
}

std::vector<const Tester*> used_testers(const Dossier& dossier, const Visit& visit) {
    std::vector<std::optional<TesterId>> ids{visit.session.compression_gauge, visit.session.leak_down_tester,
                                             visit.session.crankcase_tester};
    for (const Reading& reading : visit.readings)
        ids.push_back(reading.tester);
    std::vector<const Tester*> used;
    for (const auto& id : ids)
        if (const Tester* tester = find_tester(dossier, id); tester && !std::ranges::count(used, tester))
            used.push_back(tester);
    return used;
}

const PrepareMark* mark_of(const Session& session, PrepareStep step) {
    const auto mark = std::ranges::find(session.prepare, step, &PrepareMark::step);
    return mark == session.prepare.end() ? nullptr : &*mark;
}

}  // namespace

Section complaint(const Session& session) {
    Facts facts;
    Line symptoms;
    for (Symptom symptom : session.complaint.symptoms)
        symptoms.emplace_back(word_of(symptom));
    add(facts, Label::symptoms, std::move(symptoms));
    add_words(facts, Label::in_their_words, session.complaint.text);
    add_words(facts, Label::note, session.note);
    Section section{Label::complaint, {}};
    add_block(section, facts, !facts.facts.empty());
    return section;
}

Section conditions(const Engine& engine, const Session& session) {
    const Conditions& at = session.conditions;
    Facts facts;
    add(facts, Label::altitude, Dimension::altitude, at.altitude ? at.altitude : engine.shop_altitude);
    add(facts, Label::station_pressure, Dimension::station_pressure, at.station_pressure);
    add(facts, Label::air, Dimension::temperature, at.air);
    add_known(facts, Label::engine_heat, at.heat);
    add(facts, Label::coolant, Dimension::temperature, at.coolant);
    add_known(facts, Label::throttle, at.throttle);
    add_known(facts, Label::induction, at.induction);
    add(facts, Label::battery, Dimension::voltage, at.battery);
    add_known(facts, Label::cranked_by, at.cranked_by);
    add(facts, Label::cranking_speed, Dimension::speed, at.cranking_speed);
    add_known(facts, Label::crank_held_by, at.crank_held_by);
    Section section{Label::conditions, {}};
    add_block(section, facts, !facts.facts.empty());
    return section;
}

Section not_done(const Dossier& dossier, const Visit& visit, const findings::Reference& reference) {
    const Session& session = visit.session;
    Table table{{{{Label::step}, 3.0}, {{Label::if_not_done}, 5.0}, {{Label::note}, 3.0}}, {}};
    Line open;
    for (const PrepareStep step : findings::steps_left_open(findings::case_of(dossier, visit, reference, {})))
        open.emplace_back(findings::word_of(step, dossier.engine));
    for (std::size_t i = 0; i < Words<PrepareStep>::list.size(); ++i) {
        const auto step = static_cast<PrepareStep>(i);
        const findings::PrepareReason* reason = reference.prepare_reason(step);
        if (step_state(session, step) != StepState::not_done) continue;
        Cell effect;
        if (reason && !(reason->if_not_done.empty() && reason->reason.empty()))
            effect =
                cell({ReferenceText{reason->if_not_done.empty() ? reason->reason : reason->if_not_done}});
        const PrepareMark* mark = mark_of(session, step);
        table.rows.push_back({cell({findings::word_of(step, dossier.engine)}), effect,
                              mark && !mark->note.empty() ? cell({OwnWords{mark->note}}) : Cell{}});
    }
    Section section{Label::not_done, {}};
    add_block(section, table, !table.rows.empty());
    Facts facts;
    add(facts, Label::not_marked, std::move(open));
    add_block(section, facts, !facts.facts.empty());
    add_block(section, Sentences{{{Label::every_step_marked, std::nullopt, std::nullopt}}},
              section.blocks.empty());
    return section;
}

Section testers(const Dossier& dossier, const Visit& visit) {
    Table table{{{{Label::tester}, 3.0},
                 {{Label::scale}, 2.0},
                 {{Label::accuracy_class}, 2.0},
                 {{Label::details}, 4.0},
                 {{Label::last_checks}, 4.0}},
                {}};
    for (const Tester* tester : used_testers(dossier, visit))
        table.rows.push_back({Cell{{{OwnWords{tester->name}}, {word_of(tester->kind)}}, std::nullopt},
                              scale_cell(tester->gauge), cell(class_of(tester->gauge)), details(*tester),
                              last_checks(*tester)});
    Section section{Label::testers, {}};
    add_block(section, table, !table.rows.empty());
    return section;
}

Section noted(const Visit& visit) {
    Sentences sentences;
    for (const Note& note : visit.notes)
        if (note.tie.to == TiedTo::session && note.kind == NoteKind::note)
            sentences.sentences.push_back({OwnWords{note.text}, std::nullopt, std::nullopt});
    Section section{Label::remarks, {}};
    add_block(section, sentences, !sentences.sentences.empty());
    return section;
}

}  // namespace lapwing::report
