// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/physics/cranking.h"
#include "tests/core/physics/drawn_cases.h"
#include "tests/core/physics/odeint_reference.h"

// Reference library run here: Boost.Odeint, see odeint_reference.h.
namespace lapwing::physics {
namespace {

/// Largest error of a stroke's reading over what is allowed: 0.1 % or 100 Pa, whichever is the larger.
double worst_error(const CrankingReading& reading, const std::vector<double>& wanted) {
    double worst = reading.puffs_gauge_pa.size() == wanted.size() ? 0.0 : 1e9;
    for (std::size_t i = 0; i < std::min(wanted.size(), reading.puffs_gauge_pa.size()); ++i)
        worst = std::max(worst,
                         std::abs(reading.puffs_gauge_pa[i] - wanted[i]) / std::max(100.0, 1e-3 * wanted[i]));
    return worst;
}

TEST(CrankingAgainstOdeint, EveryStrokeOfDrawnCases) {
    DrawnCases cases(20261);
    double worst = 0.0;
    for (int number = 0; number < 240; ++number) {
        const CrankingCase of = cases.next();
        const auto reading = crank(of);
        ASSERT_TRUE(reading) << number << ": " << reading.error().english;
        const double error = worst_error(*reading, reference::puffs(of));
        EXPECT_LE(error, 1.0) << "case " << number;
        worst = std::max(worst, error);
    }
    RecordProperty("worst_error_over_allowed", std::to_string(worst));
}

TEST(CrankingAgainstOdeint, AWorkshopsEngineMuchCloser) {
    // An ordinary engine and tester keep a fifth of it; the last reading keeps 0.01 %.
    CrankingCase of;
    of.crank = {0.0734, 0.0588, 0.118};
    of.compression_ratio = 8.6;
    for (double leak_mm2 : {0.0, 0.2, 0.5, 1.5}) {
        of.leak_m2 = leak_mm2 * 1e-6;
        const auto wanted = reference::puffs(of);
        const auto reading = crank(of).value();
        EXPECT_LE(worst_error(reading, wanted), 0.2) << leak_mm2;
        EXPECT_NEAR(reading.last_gauge_pa / wanted.back(), 1.0, 1e-4) << leak_mm2;
    }
}

TEST(CrankingAgainstOdeint, ErrorFallsWithTheStep) {
    // Over twenty drawn cases, so that no lucky cancellation is taken for accuracy.
    DrawnCases cases(7);
    std::vector<CrankingCase> of;
    std::vector<std::vector<double>> wanted;
    for (int i = 0; i < 20; ++i) {
        of.push_back(cases.next());
        wanted.push_back(reference::puffs(of.back()));
    }
    double before = 1e9;
    for (double share : {2.0, 1.0, 0.5, 0.25}) {
        double squares = 0.0;
        for (std::size_t i = 0; i < of.size(); ++i)
            squares += std::pow(worst_error(crank(of[i], {share}).value(), wanted[i]), 2);
        const double error = std::sqrt(squares / static_cast<double>(of.size()));
        EXPECT_LT(error, 0.6 * before) << share;
        before = error;
    }
    EXPECT_LT(before, 0.05);  // of the allowed error
}

}  // namespace
}  // namespace lapwing::physics
