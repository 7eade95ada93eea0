// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/monte_carlo.h"

#include "core/uncertainty/coverage.h"

namespace lapwing::uncertainty {

Result<MonteCarlo> summarize(std::vector<double> trials) {
    constexpr std::size_t fewest = 1000;
    if (trials.size() < fewest) {
        return fail("uncertainty.trials", "{} trials are too few for a 95 % interval. Run at least {}.",
                    trials.size(), fewest);
    }
    if (!std::all_of(trials.begin(), trials.end(), [](double trial) { return std::isfinite(trial); })) {
        return fail(
            "uncertainty.trials",
            "Some of the {} trials gave no number: the doubt of an input reaches values the sum cannot take. "
            "Narrow the inputs.",
            trials.size());
    }
    // Sorted first, so that sums do not depend on the order trials came in.
    std::sort(trials.begin(), trials.end());
    const auto count = static_cast<double>(trials.size());
    MonteCarlo out;
    for (double trial : trials)
        out.mean += trial / count;
    double squares = 0.0;
    for (double trial : trials)
        squares += (trial - out.mean) * (trial - out.mean);
    out.u = std::sqrt(squares / (count - 1.0));
    const double tail = 0.5 * (1.0 - coverage_probability);
    const auto at = [&](double share) {
        return trials[static_cast<std::size_t>(std::lround(share * (count - 1.0)))];
    };
    out.low = at(tail);
    out.high = at(1.0 - tail);
    return out;
}

}  // namespace lapwing::uncertainty
