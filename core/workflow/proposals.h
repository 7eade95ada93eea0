// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/findings/findings.h"
#include "core/odds/where_it_leaks.h"

namespace lapwing::workflow {

/// Something worth putting into the plan. A person takes it over, changes it, or leaves it.
struct Proposal {
    PlanOption option = PlanOption::quick_fix;
    std::optional<int> cylinder;  ///< absent: the whole engine, or a joint that several cylinders share
    findings::Message work;       ///< proposal_codes.h
    findings::Message reason;     ///< likewise, or a finding's own sentence
    std::optional<findings::Message> if_left;
    /// Dry reading to expect after it, gauge pressure in Pa.
    struct Expected {
        double low_pa = 0.0;
        double high_pa = 0.0;
        bool comparable_at_once = true;          ///< a fresh hone must run in first
        std::vector<findings::Derivation> from;  ///< one a cylinder
    };
    std::optional<Expected> expected;
};

/// What the findings and the odds (null: not known) give reason for, quick fixes before strip-down. Work is
/// proposed on parts that may well be at fault (assets/reference/assumptions.json: repair-from), or where the
/// odds are not known on what the rules of thumb name. Nothing is proposed for a cylinder over which a
/// question or a contradiction hangs, no strip-down for a valve whose clearance is not known to be right, and
/// none for a cylinder whose leakage was measured while nobody listened at its exits: it is listened to
/// first. What was tried in this visit is not proposed again.
std::vector<Proposal> propose(const Dossier& dossier, const Visit& visit, const findings::Findings& found,
                              const odds::WhereItLeaks* leaks, const findings::Reference& reference);

}  // namespace lapwing::workflow
