// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <cmath>

#include "core/findings/leak_sums.h"
#include "core/odds/evidence.h"
#include "tests/core/odds/bench.h"

namespace lapwing::odds {
namespace {

Odds leaking(bool known, const char* bore = "78.0") {
    Odds bench(1);
    bench.engine().bore = {*TypedLength::make(bore, units::mm), Origin::manual, {}};
    if (known)
        for (Tester& tester : bench.dossier.testers)
            if (tester.kind == TesterKind::leak_down)
                tester.restrictor = *TypedLength::make("1.016", units::mm);
    bench.leak(1, "80", "56");
    return bench;
}

double doubt_of(Odds bench) {
    return evidence_of(bench.dossier, bench.visit(), bench.reference(), *built_in_assumptions(), {})
        .leak_testers.front()
        .restrictor_doubt;
}

/// Width of the leak area's range, as a logarithm.
double width(Odds bench) {
    const Interval area = bench.first().leak_area_m2;
    return std::log(area.hi / area.lo);
}

TEST(Restrictor, IsAsDoubtfulAsTheFindingsHaveIt) {
    // Two standard uncertainties reach as far as the findings' +- of the leak's area takes them: 8 % to a
    // factor of 1.16; either of AC 43.13-1B's two restrictors, 0.040 and 0.060 in, to (60/40)^2.
    EXPECT_NEAR(std::exp(2.0 * doubt_of(leaking(true))), 1.16, 1e-9);
    EXPECT_NEAR(std::exp(2.0 * doubt_of(leaking(false))), 1.60, 1e-9);
    EXPECT_NEAR(std::exp(2.0 * doubt_of(leaking(false, "130.0"))), 2.25, 1e-9);
}

TEST(Restrictor, ThatNobodyNotedWidensTheLeaksArea) {
    const double known = width(leaking(true));
    const double unknown = width(leaking(false));
    EXPECT_GT(unknown, 1.3 * known);
    EXPECT_GT(width(leaking(false, "130.0")), 1.2 * unknown);
}

}  // namespace
}  // namespace lapwing::odds
