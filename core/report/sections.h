// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/compare/proof.h"
#include "core/findings/findings.h"
#include "core/odds/where_it_leaks.h"
#include "core/report/report.h"

/// The sections of a report, each from what it needs. One with no blocks has nothing to say.
namespace lapwing::report {

// results.cpp: what was measured
Section in_short(const Dossier& dossier, const Visit& visit, const findings::Findings& found,
                 const findings::Reference& reference);
Section readings(const Engine& engine, const findings::Findings& found);
Section clearances(const Engine& engine, const Visit& visit);
Section exits(const Engine& engine, const findings::Findings& found);
Section crankcase(const Engine& engine, const findings::Findings& found);

// evidence.cpp: what people photographed and said
Section photos(const Visit& visit);
/// What others make of the readings, and notes on single things; the notes on the visit itself are `noted`.
/// @param appendix with a learner's own calls, which are for a mentor and no opinion for an owner
Section opinions(const Visit& visit, bool appendix);

// before_after.cpp: against the newest earlier visit with readings
Section before_after(const Dossier& dossier, const Visit& visit, const findings::Findings& found,
                     const findings::Reference& reference);

// earlier_visits.cpp
Section earlier_visits(const Dossier& dossier, const Visit& visit, const findings::Findings& found,
                       const findings::Reference& reference);

// where_it_leaks.cpp
/// @param appendix with what it can be worked out again from
Section where_it_leaks(const findings::Findings& found, const odds::WhereItLeaks* leaks,
                       const findings::Reference& reference, bool appendix);

// cautions.cpp
/// What an owner is to beware of; with its appendix also what the next steps' own cautions say.
Section cautions(const findings::Findings& found, const std::vector<findings::NextStep>& steps,
                 const Engine& engine, const findings::Reference& reference, bool appendix);

// plan.cpp
/// @param leaks for the reading to expect where a line has none of its own; may be null
/// @param proofs of the dossier: what came of what ticked lines foretold
Section plan(const Dossier& dossier, const Visit& visit, const odds::WhereItLeaks* leaks,
             const findings::Reference& reference, const std::vector<compare::Proof>& proofs);
/// Of the plans of earlier visits, between the one before and this one.
Section work_done(const Dossier& dossier, const Visit& visit, const std::vector<compare::Proof>& proofs);

// reasons.cpp: what follows from it
/// @param appendix with rules that were made for other engines and decide nothing here
Section why(const findings::Findings& found, bool appendix);
Section remarks(Label heading, const findings::Findings& found,
                std::vector<findings::Remark> findings::CylinderFindings::*of_cylinder,
                const std::vector<findings::Remark>& of_engine);
Section worth_doing_next(const std::vector<findings::NextStep>& steps);
Section uncertainty(const findings::Findings& found);
Section worked(const findings::Findings& found, const odds::WhereItLeaks* leaks,
               const findings::Reference& reference);
/// Of the rules beside the engine's own limits, whose source stands with them.
/// @param appendix with those of rules that were made for other engines
Section sources(const findings::Findings& found, const findings::Reference& reference, bool appendix);

// circumstances.cpp: of the visit
Section complaint(const Session& session);
Section conditions(const Engine& engine, const Session& session);
Section not_done(const Dossier& dossier, const Visit& visit, const findings::Reference& reference);
Section testers(const Dossier& dossier, const Visit& visit);
/// Notes on the visit itself: a calculator's result, say.
Section noted(const Visit& visit);

// engine_data.cpp: the engine card
Section limits(const Engine& engine, const findings::Findings& found, bool appendix);
Section engine_data(const Engine& engine);

}  // namespace lapwing::report
