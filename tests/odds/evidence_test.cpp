// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/odds/surface_cache.h"
#include "core/odds/where_it_leaks.h"
#include "tests/odds/world.h"

/// The more was measured, the less is doubted: not for every engine, whose readings may contradict each
/// other, but on the mean of many.
namespace lapwing::odds::trial {
namespace {

/// What a person had written down of a visit by then.
struct Known {
    const char* name;
    std::vector<TestKind> tests;
    bool exits = false;
};

const std::vector<Known>& steps() {
    static const std::vector<Known> all{
        {"nothing", {}},
        {"dry", {TestKind::dry}},
        {"dry, leak-down", {TestKind::dry, TestKind::leak_down}},
        {"dry, leak-down, exits", {TestKind::dry, TestKind::leak_down}, true},
        {"dry, leak-down, exits, wet", {TestKind::dry, TestKind::leak_down, TestKind::wet}, true}};
    return all;
}

Dossier as_known(Dossier dossier, const Known& known) {
    Visit& visit = dossier.visits.front();
    std::erase_if(visit.readings, [&](const Reading& reading) {
        return std::ranges::find(known.tests, reading.test) == known.tests.end();
    });
    if (!known.exits) visit.exits.clear();
    return dossier;
}

struct Width {
    double share = 0.0;  ///< of the paths' intervals, on the mean
    double area = 0.0;   ///< of the leak area's interval, as a factor between its ends, logarithm
};

TEST(Evidence, MakesIntervalsNarrowerStepByStep) {
    constexpr int engines = 24;
    const auto assumptions = *built_in_assumptions();
    const auto reference = *findings::built_in_reference();
    SurfaceCache surfaces;
    std::vector<Width> widths(steps().size());
    for (std::uint64_t seed = 1; seed <= engines; ++seed) {
        const Drawn drawn = draw(assumptions, reference, {}, {}, 4000 + seed);
        for (std::size_t step = 0; step < steps().size(); ++step) {
            const Dossier dossier = as_known(drawn.dossier, steps()[step]);
            OddsOptions options;
            options.seed = seed;
            options.surfaces = &surfaces;
            const auto odds = where_it_leaks(dossier, dossier.visits.front(), reference, options);
            ASSERT_TRUE(odds) << odds.error().english;
            for (const CylinderOdds& cylinder : odds->cylinders) {
                const double cylinders = engines * static_cast<double>(odds->cylinders.size());
                for (const PathOdds& path : cylinder.paths)
                    widths[step].share += (path.share.hi - path.share.lo) /
                                          static_cast<double>(cylinder.paths.size()) / cylinders;
                widths[step].area +=
                    std::log(cylinder.leak_area_m2.hi / cylinder.leak_area_m2.lo) / cylinders;
            }
        }
    }
    for (std::size_t step = 0; step < steps().size(); ++step)
        std::printf("%-28s shares %.3f, leak area %.2f times\n", steps()[step].name, widths[step].share,
                    std::exp(widths[step].area));
    for (std::size_t step = 1; step < steps().size(); ++step) {
        EXPECT_LT(widths[step].share, widths[step - 1].share) << steps()[step].name;
        // Ears and oil say where it leaks, hardly how much: there some hundredths are the draws' own chance.
        EXPECT_LT(widths[step].area, widths[step - 1].area + 0.02) << steps()[step].name;
    }
    EXPECT_LT(widths.back().area, 0.25 * widths.front().area);
}

}  // namespace
}  // namespace lapwing::odds::trial
