// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/base/result.h"
#include "core/physics/cranking.h"

/// The cranking model over many cases at once, for trials and for fitting: the same readings as `crank`.
namespace lapwing::physics {

/// How many cases go through the processor side by side. The readings are the same to the last bit whatever
/// the width; `widest` takes the best this processor has.
enum class Lanes { widest, one, two, four };

/// Whether this processor (and this build) has the width.
[[nodiscard]] bool available(Lanes lanes);

struct ManyReadings {
    std::size_t strokes = 0;             ///< of every case
    std::vector<double> puffs_gauge_pa;  ///< case after case: puffs_gauge_pa[case * strokes + stroke]

    [[nodiscard]] double puff_gauge_pa(std::size_t of_case, std::size_t stroke) const {
        return puffs_gauge_pa[of_case * strokes + stroke];
    }
    [[nodiscard]] double last_gauge_pa(std::size_t of_case) const {
        return puff_gauge_pa(of_case, strokes - 1);
    }
};

/// Readings of every case, all with the same number of strokes. Fails with "cranking.many" where the numbers
/// of strokes differ, and as `crank` where one case is impossible; the sentence says which.
[[nodiscard]] Result<ManyReadings> crank_many(std::span<const CrankingCase> cases,
                                              const CrankingAccuracy& accuracy = {},
                                              Lanes lanes = Lanes::widest);

/// The same into the caller's memory: `puffs_gauge_pa` holds cases.size() x strokes numbers, case after case
/// (else "cranking.many").
[[nodiscard]] Status crank_many_into(std::span<const CrankingCase> cases, std::span<double> puffs_gauge_pa,
                                     const CrankingAccuracy& accuracy = {}, Lanes lanes = Lanes::widest);

}  // namespace lapwing::physics
