// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/report/make_report.h"

#include "core/odds/data_files.h"
#include "core/odds/verdict.h"
#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {
namespace {

/// The visit's day and title stand in the report's own head, the day it was made at the foot of every page.
Facts head(const Engine& engine, const Session& session, const Options& options) {
    Facts facts;
    if (options.owner_name) add_words(facts, Label::owner, engine.owner.name);
    if (options.owner_contact) add_words(facts, Label::contact, engine.owner.contact);
    add_words(facts, Label::job_number, session.job_number);
    if (session.usage) add(facts, Label::usage, {*session.usage});
    return facts;
}

}  // namespace

Report make_report(const Dossier& dossier, const Visit& visit, const findings::Findings& found,
                   const findings::Reference& reference, const Options& options) {
    const Engine& engine = dossier.engine;
    const Session& session = visit.session;
    Report report{engine.name,
                  engine.description,
                  session.title,
                  session.opened_at,
                  options.made_at,
                  session.job_number,
                  head(engine, session, options),
                  {},
                  {odds::sum_of(odds::built_in_data()), {}}};
    if (options.leaks) report.basis.odds = {options.leaks->assumptions_version, options.leaks->seed};
    // As on the screen: the most telling test first where the odds are known.
    const auto steps = options.leaks ? odds::steps_by_worth(found, *options.leaks, reference) : found.next;
    const auto proofs = compare::proofs_of(dossier, reference);
    // The owner reads from the top: what was asked, what was found, what to do and what it costs; then what
    // it rests on; then how the numbers were made.
    for (Section& section : std::vector<Section>{
             complaint(session),
             in_short(dossier, visit, found, reference),
             remarks(Label::questions, found, &findings::CylinderFindings::questions, found.questions),
             work_done(dossier, visit, proofs),
             plan(dossier, visit, options.leaks, reference, proofs),
             worth_doing_next(steps),
             cautions(found, steps, engine, reference, options.appendix),
             where_it_leaks(found, options.leaks, reference, options.appendix),
             remarks(Label::weakened, found, nullptr, found.weakened_by),
             limits(engine, found, options.appendix),
             readings(engine, found),
             photos(visit),
             exits(engine, found),
             before_after(dossier, visit, found, reference),
             earlier_visits(dossier, visit, found, reference),
             opinions(visit, options.appendix),
             noted(visit),
             why(found, options.appendix),
             remarks(Label::contradictions, found, &findings::CylinderFindings::contradictions,
                     found.contradictions),
             clearances(engine, visit),
             crankcase(engine, found),
             conditions(engine, session),
             testers(dossier, visit),
             not_done(dossier, visit, reference),
             uncertainty(found),
             engine_data(engine),
             options.appendix ? worked(found, options.leaks, reference) : Section{Label::worked, {}},
             sources(found, reference, options.appendix)})
        if (!section.blocks.empty()) report.sections.push_back(std::move(section));
    return report;
}

}  // namespace lapwing::report
