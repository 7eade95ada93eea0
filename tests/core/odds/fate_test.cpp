// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/fate.h"

#include <gtest/gtest.h>

#include <random>

#include "core/odds/engine_model.h"
#include "tests/core/odds/bench.h"

/// Held against the plain likelihood and the plain rule of Metropolis: kept where it does not fall, else with
/// the chance exp(change).
namespace lapwing::odds {
namespace {

struct Case {
    Evidence evidence;
    Assumptions assumptions = *built_in_assumptions();
    std::shared_ptr<const CrankSurface> surface;

    explicit Case(Odds& bench) {
        evidence = evidence_of(bench.dossier, bench.visit(), Odds::reference(), assumptions, {});
        surface = *Odds::surfaces().surface(*evidence.cranking);
    }
};

Odds full() {
    Odds bench(2);
    bench.dry(1, "6.0", "bar").first = Odds::pressure("3.8", "bar");
    bench.dry(2, "9.5", "bar");
    bench.leak(1, "5.50", "3.20", "bar");
    bench.leak(2, "5.50", "5.50", "bar");
    bench.hear(1, Exit::breather, Loudness::faint);
    bench.hear(1, Exit::intake, Loudness::nothing);
    bench.hear(1, Exit::exhaust, Loudness::strong);
    bench.hear(1, Exit::coolant, Loudness::clear);
    bench.hear(2, Exit::breather, Loudness::clear);
    bench.wet(1, "7.0", "bar");
    bench.wet(2, "9.9", "bar");
    return bench;
}

/// Areas as a chain keeps them.
std::vector<double> areas(const EngineModel& model, const std::vector<double>& z) {
    std::vector<double> out(z.size());
    const auto add = [&](const PathPlace& path) {
        out[path.area] = std::exp(model.log_area(z, path));
        out[path.cranking] = out[path.area] * std::exp(model.static_to_cranking() * z[path.cranking]);
    };
    for (const auto& cylinder : model.cylinders()) {
        std::ranges::for_each(cylinder.all, add);
        for (const auto& state : cylinder.earlier)
            std::ranges::for_each(state.all, add);
    }
    return out;
}

void decides_as_the_whole_sum_would(Odds bench) {
    const Case at(bench);
    const EngineModel model(at.evidence, at.assumptions, {at.surface.get()});
    std::mt19937_64 pick(1);
    std::normal_distribution<double> normal;
    boost::random::uniform_01<double> uniform;
    std::vector<double> z(model.size());
    EngineModel::SharedState shared;
    int given_up = 0, kept = 0;
    for (int draw = 0; draw < 4000; ++draw) {
        // Near the prior's middle and far out.
        const double width = draw % 2 == 0 ? 0.5 : 1.5;
        for (double& one : z)
            one = width * normal(pick);
        model.shared(z, shared);
        const auto m2 = areas(model, z);
        for (std::size_t cylinder = 0; cylinder < 2; ++cylinder) {
            const auto leaks = model.leaks(z, cylinder);
            const double whole = model.cylinder_likelihood(z, shared, cylinder, leaks);
            ASSERT_LE(whole, model.most_likely(cylinder) + 1e-9);
            const double others = -whole + 2.0 * normal(pick) - 1.0;
            boost::random::mt19937_64 random(static_cast<std::uint64_t>(draw));
            boost::random::mt19937_64 plain = random;
            const double change = others + whole;
            const bool keeps = change >= 0.0 || uniform(plain) < std::exp(change);
            Fate fate(random, uniform);
            const auto hopeful =
                model.cylinder_likelihood(z, m2, shared, cylinder, fate, others, draw % 3 == 0);
            if (hopeful) {
                ASSERT_EQ(*hopeful, whole);
                ASSERT_EQ(fate.keeps(change), keeps);
                ++kept;
            } else {
                ASSERT_FALSE(keeps);
                ++given_up;
            }
            // As many random numbers as ever.
            ASSERT_EQ(random, plain);
        }
    }
    EXPECT_GT(kept, 1000);
    EXPECT_GT(given_up, 1000);
}

TEST(Fate, DecidesAsTheWholeSumWould) {
    decides_as_the_whole_sum_would(full());
}

/// Staked since: two states, each with readings of its own.
TEST(Fate, DecidesAsTheWholeSumOfAllStatesWould) {
    Odds bench = full();
    for (const int number : {1, 2})
        bench.leak(number, "5.50", number == 1 ? "4.10" : "5.20", "bar").tag = Tag::after_staking;
    bench.hear(1, Exit::breather, Loudness::clear);
    bench.visit().exits.back().tag = Tag::after_staking;
    decides_as_the_whole_sum_would(std::move(bench));
}

TEST(Fate, GivesUpNothingThatMayStillBeKept) {
    boost::random::mt19937_64 random(1);
    boost::random::uniform_01<double> uniform;
    for (int i = 0; i < 1000; ++i) {
        Fate fate(random, uniform);
        const double change = -0.005 * i;
        const bool hopeless = fate.hopeless(change);
        if (hopeless) EXPECT_FALSE(fate.keeps(change));
        Fate sure(random, uniform);
        EXPECT_FALSE(sure.hopeless(0.0));
        EXPECT_TRUE(sure.keeps(0.0));
        EXPECT_FALSE(sure.hopeless(std::numeric_limits<double>::quiet_NaN()));
    }
}

}  // namespace
}  // namespace lapwing::odds
