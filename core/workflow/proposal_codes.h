// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/findings/codes.h"

/// Every message code of a proposal for the plan, in the letters of core/findings/codes.h.
namespace lapwing::workflow::proposal_codes {

inline constexpr auto all = std::to_array<findings::codes::Code>({
    // Work.
    {"propose.check_clearance", "w"},   // path: a valve
    {"propose.adjust_clearance", "w"},  // likewise
    {"propose.test_adjusted", "w"},
    {"propose.listen", ""},
    {"propose.run_it", ""},
    {"propose.repeat_open", ""},
    {"propose.soak", ""},
    {"propose.stake", "w"},
    {"propose.head_bolts", ""},
    {"propose.decompressor", ""},
    {"propose.low_but_seals", ""},
    {"propose.low_but_seals_diesel", ""},
    {"propose.valve", "w"},
    {"propose.rings", ""},
    {"propose.rings_two_stroke", ""},
    {"propose.gasket", ""},
    {"propose.crankcase", ""},
    {"propose.crankcase_soap", ""},
    {"propose.name_tester", ""},
    {"propose.watch", ""},
    // Reasons.
    {"because.odds", "cww"},  // path, how likely it is at fault
    {"because.joint", "lw"},  // cylinders, how likely
    {"because.rules", "cw"},  // path that the rules of thumb name
    // What happens if it is left.
    {"left.valve", ""},
    {"left.exhaust_valve", ""},
    {"left.rings", ""},
    {"left.rings_diesel", ""},
    {"left.gasket", ""},
    {"left.coolant", ""},
    {"left.decompressor", ""},
    {"left.crankcase", ""},
    {"left.wear", ""},
});

}  // namespace lapwing::workflow::proposal_codes
