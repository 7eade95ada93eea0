// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/model/visit.h"

namespace lapwing {

/// What the odds of the dossier's first visit rest on. Ticking a line of the plan must not set off the
/// working out again.
inline Dossier evidence_in(Dossier dossier) {
    Visit& visit = dossier.visits.front();
    visit.plan.clear();
    visit.notes.clear();
    visit.session.owner_answer = OwnerAnswer::none;
    visit.session.owner_answered_at.reset();
    visit.session.retest_planned_for.reset();
    visit.session.note.clear();
    visit.session.lineage = {};
    return dossier;
}

}  // namespace lapwing
