// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/model/evidence.h"

namespace lapwing {

/// What lines of a plan come to.
struct PlanTotals {
    std::vector<Money> prices;  ///< one for each currency, in the order in which they first appear; exact
    double labour_s = 0.0;      ///< seconds of work, of the lines that name it
    int lines = 0;
    int left_out = 0;  ///< prices that are too long to add up (over 12 digits before or 4 after the mark)
};

/// Of the lines with that option; of all that cost something to do (not "leave it") when none is given. Quick
/// fixes are tried before a strip-down, so that their sums are worth seeing apart.
PlanTotals totals_of(const std::vector<PlanLine>& plan, std::optional<PlanOption> option = {});

/// In the order of work: by `order`, lines of one place as they were entered.
std::vector<const PlanLine*> in_order(const std::vector<PlanLine>& plan);

}  // namespace lapwing
