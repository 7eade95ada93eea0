// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/report/make_report.h"

#include "core/report/pieces.h"
#include "core/report/sections.h"

namespace lapwing::report {
namespace {

Facts head(const Engine& engine, const Session& session, const Options& options) {
    Facts facts;
    if (options.owner_name) add_words(facts, Label::owner, engine.owner.name);
    if (options.owner_contact) add_words(facts, Label::contact, engine.owner.contact);
    Line when{session.opened_at};
    if (!session.title.empty()) when.emplace_back(OwnWords{session.title});
    add(facts, Label::session, std::move(when));
    add_words(facts, Label::job_number, session.job_number);
    if (session.usage) add(facts, Label::usage, {*session.usage});
    add(facts, Label::made, {options.made_at});
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
                  {}};
    // The owner reads from the top: what was asked, what was found, what to do, then what it rests on.
    for (Section& section : std::vector<Section>{
             complaint(session),
             in_short(engine, found),
             where_it_leaks(found, options.leaks, reference),
             worth_doing_next(found),
             cautions(found, reference),
             plan(visit),
             before_after(dossier, visit, found, reference),
             readings(engine, found),
             limits(engine, found),
             clearances(engine, visit),
             exits(engine, found),
             crankcase(found),
             noted(visit),
             why(found),
             remarks(Label::questions, found, &findings::CylinderFindings::questions, found.questions),
             remarks(Label::contradictions, found, &findings::CylinderFindings::contradictions,
                     found.contradictions),
             remarks(Label::weakened, found, nullptr, found.weakened_by),
             earlier_visits(dossier, visit, found, reference),
             conditions(engine, session),
             not_done(engine, session, reference),
             testers(dossier, visit),
             engine_data(engine),
             uncertainty(found),
             worked(found),
             sources(found, reference)})
        if (!section.blocks.empty()) report.sections.push_back(std::move(section));
    return report;
}

}  // namespace lapwing::report
