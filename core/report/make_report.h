// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/findings.h"
#include "core/odds/where_it_leaks.h"
#include "core/report/report.h"

namespace lapwing::report {

struct Options {
    bool owner_name = false;     ///< as the contact
    bool owner_contact = false;  ///< stays private unless the sender ticks it
    Timestamp made_at;
    /// The odds of `visit`; null leaves the section out.
    const odds::WhereItLeaks* leaks = nullptr;
    /// What a mentor checks and no owner can use: formulas worked through, sources, rules made for other
    /// engines, and what the odds can be worked out again from.
    bool appendix = false;
};

/// The report of one visit of the dossier. Sections that would have nothing to say are left out. Earlier
/// visits of the dossier appear with their readings beside this one's. `found` are the findings of `visit`.
Report make_report(const Dossier& dossier, const Visit& visit, const findings::Findings& found,
                   const findings::Reference& reference, const Options& options);

}  // namespace lapwing::report
