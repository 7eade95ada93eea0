// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>
#include <sys/resource.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>

#include "core/odds/draws.h"
#include "core/odds/summary.h"
#include "core/odds/surface_cache.h"
#include "core/odds/where_it_leaks.h"
#include "tests/odds/world.h"

namespace lapwing::odds {
namespace {

/// Of this thread, s: other programs on the machine take little from it.
double cpu_seconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

/// A trial twin, or three of them in one row: six cylinders with full evidence.
Dossier with_cylinders(int count) {
    const auto assumptions = *built_in_assumptions();
    const auto reference = *findings::built_in_reference();
    Dossier out;
    for (int first = 1; first <= count; first += 2) {
        auto twin =
            trial::draw(assumptions, reference, {}, {}, 4711 + static_cast<std::uint64_t>(first)).dossier;
        if (first == 1) {
            out = std::move(twin);
            continue;
        }
        for (Cylinder cylinder : twin.engine.cylinders) {
            cylinder.number += first - 1;
            cylinder.column += first - 1;
            out.engine.cylinders.push_back(cylinder);
        }
        out.engine.firing_order.clear();
        out.engine.firing_intervals.clear();
        Visit& visit = out.visits.front();
        for (Reading reading : twin.visits.front().readings) {
            reading.cylinder += first - 1;
            visit.readings.push_back(reading);
        }
        for (ExitNote note : twin.visits.front().exits) {
            note.cylinder += first - 1;
            if (note.neighbour) *note.neighbour += first - 1;
            visit.exits.push_back(note);
        }
    }
    return out;
}

class Speed : public testing::TestWithParam<std::pair<int, double>> {};

/// The time wanted, on one core, the surface's fit included. A busy machine shares its caches: half as much
/// again is let pass, and what was measured is printed.
TEST_P(Speed, IsQuickEnough) {
    const auto& [cylinders, wanted_s] = GetParam();
    const Dossier dossier = with_cylinders(cylinders);
    const auto reference = *findings::built_in_reference();
    double best = 1e9;
    double effective = 0.0;
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
        OddsOptions options;
        options.seed = seed;
        const double begun = cpu_seconds();
        const auto odds = where_it_leaks(dossier, dossier.visits.front(), reference, options);
        const double took = cpu_seconds() - begun;
        ASSERT_TRUE(odds) << odds.error().english;
        if (took < best) {
            best = took;
            effective = odds->least_effective_samples;
        }
    }
    std::printf("%d cylinders: %.2f s (wanted %.1f s), %.0f effective samples\n", cylinders, best, wanted_s,
                effective);
    EXPECT_LE(best, 1.5 * wanted_s);
}
INSTANTIATE_TEST_SUITE_P(Engines, Speed, testing::Values(std::pair(2, 0.5), std::pair(6, 1.5)));

TEST(Memory, StaysUnder200Megabytes) {
    const Dossier dossier = with_cylinders(6);
    ASSERT_TRUE(where_it_leaks(dossier, dossier.visits.front(), *findings::built_in_reference()));
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    std::printf("largest memory: %ld MB\n", used.ru_maxrss / 1024);
    EXPECT_LT(used.ru_maxrss, 200L * 1024);
}

}  // namespace
}  // namespace lapwing::odds
