// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking_many.h"

#include <algorithm>

namespace lapwing::physics {

bool available(Lanes lanes) {
    return lanes == Lanes::widest || lanes == Lanes::one;
}

Status crank_many_into(std::span<const CrankingCase> cases, std::span<double> puffs_gauge_pa,
                       const CrankingAccuracy& accuracy, Lanes) {
    if (cases.empty()) return {};
    const auto strokes = static_cast<std::size_t>(std::max(cases.front().strokes, 0));
    for (std::size_t i = 0; i < cases.size(); ++i) {
        if (cases[i].strokes != cases.front().strokes) {
            return fail("cranking.many",
                        "Case {} has {} strokes and the first has {}. Give all cases the same number.", i + 1,
                        cases[i].strokes, cases.front().strokes);
        }
    }
    if (puffs_gauge_pa.size() != cases.size() * strokes) {
        return fail("cranking.many", "{} readings do not fit {} cases of {} strokes. Give room for {}.",
                    puffs_gauge_pa.size(), cases.size(), strokes, cases.size() * strokes);
    }
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const auto reading = crank(cases[i], accuracy);
        if (!reading) return tl::unexpected(reading.error());
        std::ranges::copy(reading->puffs_gauge_pa,
                          puffs_gauge_pa.begin() + static_cast<std::ptrdiff_t>(i * strokes));
    }
    return {};
}

Result<ManyReadings> crank_many(std::span<const CrankingCase> cases, const CrankingAccuracy& accuracy,
                                Lanes lanes) {
    ManyReadings out;
    out.strokes = cases.empty() ? 0 : static_cast<std::size_t>(std::max(cases.front().strokes, 0));
    out.puffs_gauge_pa.resize(cases.size() * out.strokes);
    if (auto ok = crank_many_into(cases, out.puffs_gauge_pa, accuracy, lanes); !ok)
        return tl::unexpected(ok.error());
    return out;
}

}  // namespace lapwing::physics
