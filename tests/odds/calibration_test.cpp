// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "tests/odds/trial.h"

/// The short form; the long one with a report is tests/long/odds. Simulation-based calibration as S. Talts
/// and others, Validating Bayesian Inference Algorithms with Simulation-Based Calibration, 2018.
namespace lapwing::odds::trial {
namespace {

constexpr int engines_a_seed = 67;
constexpr int engines_a_world = 20;
constexpr int engines_for_baselines = 600;

struct Shop {
    Assumptions assumptions = *built_in_assumptions();
    findings::Reference reference = *findings::built_in_reference();
    Baselines baselines = count_baselines(assumptions, reference, engines_for_baselines);
};

const Shop& shop() {
    static const Shop one;
    return one;
}

Result tried(const World& world, TestsMade made, int engines, std::uint64_t seed) {
    return run(shop().assumptions, shop().reference, shop().baselines, world, made, engines, seed);
}

/// Any subset of evidence, three seeds.
const std::vector<Result>& as_assumed() {
    static const std::vector<Result> results{tried({}, TestsMade::any_subset, engines_a_seed, 11),
                                             tried({}, TestsMade::any_subset, engines_a_seed, 12),
                                             tried({}, TestsMade::any_subset, engines_a_seed, 13)};
    return results;
}

Result all_as_assumed() {
    Result all;
    for (const Result& one : as_assumed())
        all.scores.insert(all.scores.end(), one.scores.begin(), one.scores.end());
    return all;
}

TEST(Calibration, RanksOfTheTruthAreUniform) {
    std::vector<double> p;
    for (const Result& one : as_assumed())
        for (std::size_t name = 0; name < rank_names().size(); ++name)
            p.push_back(one.rank_p(name, 6));
    // Holm: the smallest of k against 0.01 / k, the next against 0.01 / (k - 1) ...; the first settles it.
    std::ranges::sort(p);
    EXPECT_GT(p.front(), 0.01 / static_cast<double>(p.size()));
}

TEST(Calibration, IntervalsHoldTheTruth) {
    const Result all = all_as_assumed();
    for (std::size_t path = 0; path < all.scores.front().share_inside.size(); ++path) {
        EXPECT_GE(all.share_coverage(path), 0.85) << rank_names()[path];
        EXPECT_LE(all.share_coverage(path), 0.95) << rank_names()[path];
    }
}

TEST(Calibration, ReadingsAfterARepairLieWhereExpected) {
    const double inside = all_as_assumed().after_coverage();
    EXPECT_GE(inside, 0.85);
    EXPECT_LE(inside, 0.95);
}

/// Shown is 90 % from 87.5 % on (odds::shown_percent), and what is shown is the promise.
TEST(Calibration, WhereItShowsNinetyPerCentItIsRight) {
    const auto shown = all_as_assumed().shown_at_least(90);
    std::printf("90 %% or more shown: right %.1f %% of %d\n", 100 * shown.right, shown.count);
    EXPECT_GE(shown.count, 50);
    EXPECT_GE(shown.right, 0.9);
}

/// Two states of each cylinder that share what the staking left alone. 90 % of 134 cylinders, two of which
/// share an engine: some 3 points are chance.
TEST(Calibration, HoldsAfterStakingWithAsFoundBehindIt) {
    const Result staked = tried({}, TestsMade::then_staked, engines_a_seed, 14);
    std::vector<double> p;
    for (std::size_t name = 0; name < rank_names().size(); ++name) {
        p.push_back(staked.rank_p(name, 6));
        if (name >= staked.scores.front().share_inside.size()) continue;
        EXPECT_GE(staked.share_coverage(name), 0.82) << rank_names()[name];
        EXPECT_LE(staked.share_coverage(name), 0.97) << rank_names()[name];
    }
    std::ranges::sort(p);
    EXPECT_GT(p.front(), 0.01 / static_cast<double>(p.size()));
    EXPECT_GE(staked.after_coverage(), 0.84);
    EXPECT_LE(staked.after_coverage(), 0.96);
}

class Worlds : public testing::TestWithParam<World> {};

/// Twenty engines can't show that 80 % are held; they show when it is far from it, or when a rule of thumb
/// does better. Two standard errors are left to chance.
TEST_P(Worlds, DoNotLeadItAstray) {
    const Result result = tried(GetParam(), TestsMade::all, engines_a_world, 21);
    const double chance = 2.0 * std::sqrt(0.8 * 0.2 / engines_a_world);
    EXPECT_GE(result.least_coverage(), 0.80 - chance);
    EXPECT_LE(result.behind_loudest(), 2.0);
    const auto better_than = [&](double Score::*rule) {
        double sum = 0.0, squares = 0.0;
        for (const Score& one : result.scores) {
            const double off = one.log_score - one.*rule;
            sum += off;
            squares += off * off;
        }
        const auto count = static_cast<double>(result.scores.size());
        return sum / count + 2.0 * std::sqrt((squares / count - sum / count * (sum / count)) / count);
    };
    EXPECT_GT(better_than(&Score::loudest_log_score), 0.0);
    EXPECT_GT(better_than(&Score::wet_log_score), 0.0);
    std::printf(
        "%-32s main path %3.0f %% (loudest exit %3.0f %%), least coverage %3.0f %%, log score %.2f (%.2f, "
        "%.2f)\n",
        GetParam().name.c_str(), 100 * result.accuracy(), 100 * result.loudest_accuracy(),
        100 * result.least_coverage(), result.mean(&Score::log_score), result.mean(&Score::loudest_log_score),
        result.mean(&Score::wet_log_score));
}

INSTANTIATE_TEST_SUITE_P(Other, Worlds, testing::ValuesIn(other_worlds()), [](const auto& of) {
    std::string name = of.param.name;
    std::ranges::replace_if(
        name, [](unsigned char c) { return !std::isalnum(c); }, '_');
    return name;
});

}  // namespace
}  // namespace lapwing::odds::trial
