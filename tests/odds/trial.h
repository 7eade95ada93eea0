// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "tests/odds/world.h"

/// The odds tried on drawn engines, whose leaks are known.
namespace lapwing::odds::trial {

/// How often a rule's outcome went with which main path, smoothed: what a mechanic who had counted it would
/// know.
class HitRates {
public:
    explicit HitRates(std::size_t outcomes) : outcomes_(outcomes) {}
    void count(const std::string& seen, std::size_t truth);
    [[nodiscard]] double chance(const std::string& seen, std::size_t truth) const;

private:
    std::size_t outcomes_;
    std::map<std::string, std::vector<double>> counts_;
};

struct Baselines {
    HitRates loudest{7};
    HitRates wet{7};
};
/// Counted on engines as the assumptions have them.
Baselines count_baselines(const Assumptions& assumptions, const findings::Reference& reference, int engines);

/// One cylinder's result.
struct Score {
    std::size_t truth = 0;  ///< main path, or their number: seals well
    double log_score = 0.0, loudest_log_score = 0.0, wet_log_score = 0.0;
    bool right = false, loudest_right = false;
    double said = 0.0;               ///< chance of the likeliest outcome
    std::vector<bool> share_inside;  ///< by path: the truth lies in the 90 % interval
    std::vector<bool> after_inside;  ///< by repair
    double effective = 0.0;
    bool few_draws = false;     ///< said to be unsure for want of draws
    std::vector<double> ranks;  ///< of the truth among independent draws, 0 to 1, by `rank_names`
};
const std::vector<std::string>& rank_names();

struct Result {
    std::vector<Score> scores;  ///< two cylinders an engine, one after the other
    double seconds = 0.0;       ///< of the slowest engine, working out the odds (without the surface's fit)

    [[nodiscard]] double share_coverage(std::size_t path) const;
    [[nodiscard]] double least_coverage() const;
    [[nodiscard]] double after_coverage() const;
    [[nodiscard]] double accuracy() const;
    [[nodiscard]] double loudest_accuracy() const;
    [[nodiscard]] double mean(double Score::*of) const;
    /// Standard errors that the odds lie below the loudest exit in main paths found; paired.
    [[nodiscard]] double behind_loudest() const;
    /// Of the outcomes that a person sees this many per cent or more at, rounded as they are shown: how many,
    /// and the share that were so.
    struct Shown {
        int count = 0;
        double right = 0.0;
    };
    [[nodiscard]] Shown shown_at_least(int percent) const;
    /// p of a uniform rank distribution (chi-square over bins).
    [[nodiscard]] double rank_p(std::size_t name, std::size_t bins) const;
    [[nodiscard]] std::vector<int> rank_histogram(std::size_t name, std::size_t bins) const;
};

/// Which tests an engine gets: all; any subset, by chance; such a subset without oil, its valves staked and
/// air put on again.
enum class TestsMade { all, any_subset, then_staked };
Result run(const Assumptions& assumptions, const findings::Reference& reference, const Baselines& baselines,
           const World& world, TestsMade made, int engines, std::uint64_t seed);

/// The worlds that differ from the assumptions.
std::vector<World> other_worlds();

}  // namespace lapwing::odds::trial
