// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/draws.h"

#include <algorithm>
#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <numbers>
#include <numeric>

#include "core/odds/chain.h"
#include "core/physics/leakdown.h"

namespace lapwing::odds {
namespace {

constexpr std::size_t chains = 3;
constexpr int warm_up_sweeps = 600;
/// Sweeps of each chain until it is first asked whether there are enough effective draws, and from then on
/// between one asking and the next.
constexpr int first_sweeps = 1000;
constexpr int further_sweeps = 250;
/// How often it is asked at most; where there are more than four cylinders a sweep takes longer.
constexpr int rounds_of_few = 17;
constexpr int rounds_of_many = 13;
constexpr double enough_effective = 450.0;

/// Effective number of independent draws behind a quantity, from the spread of batch means over chains whose
/// draws lie interleaved. Taken of normal scores of the ranks (A. Vehtari and others, Rank-normalization,
/// folding, and localization, 2021), since a rare excursion would else drown all that is known.
class EffectiveDraws {
public:
    explicit EffectiveDraws(std::size_t draws) : each_(draws / chains / thin / batches) {
        const std::size_t count = each_ * batches * chains;
        for (std::size_t i = 0; i < count; ++i) {
            const double below = (static_cast<double>(i) + 0.625) / (static_cast<double>(count) + 0.25);
            scores_.push_back(std::numbers::sqrt2 * boost::math::erf_inv(2.0 * below - 1.0));
        }
        order_.resize(count);
        scored_.resize(count);
    }

    double operator()(std::span<const float> draws) {
        const std::size_t count = order_.size();
        if (count == 0) return 0.0;
        for (std::size_t i = 0; i < count; ++i)
            order_[i] = {draws[place(i)], static_cast<std::uint32_t>(i)};
        std::ranges::sort(order_);
        double variance = 0.0;
        for (std::size_t rank = 0; rank < count; ++rank) {
            scored_[order_[rank].second] = scores_[rank];
            variance += scores_[rank] * scores_[rank];
        }
        variance /= static_cast<double>(count);
        return std::min(variance / error_squared(0.0), static_cast<double>(draws.size()));
    }

    /// Of a chance, by its standard error.
    template <class Chance>
    double of_chance(std::size_t draws, Chance chance) {
        if (order_.empty()) return 0.0;
        double mean = 0.0;
        for (std::size_t i = 0; i < order_.size(); ++i) {
            scored_[i] = chance(place(i));
            mean += scored_[i];
        }
        constexpr double even = 0.25;
        return std::min(even / error_squared(mean / static_cast<double>(order_.size())),
                        static_cast<double>(draws));
    }

private:
    static constexpr std::size_t batches = 20;  ///< in each chain
    static constexpr std::size_t thin = 3;      ///< draws closer than that tell hardly more
    /// Chain by chain, where draws lie interleaved.
    [[nodiscard]] std::size_t place(std::size_t i) const {
        const std::size_t chain = i / (each_ * batches);
        return (i % (each_ * batches)) * thin * chains + chain;
    }
    /// Square of the standard error of the mean of what is scored.
    [[nodiscard]] double error_squared(double all_mean) const {
        double between = 0.0;
        for (std::size_t batch = 0; batch < batches * chains; ++batch) {
            const auto begin = scored_.begin() + static_cast<std::ptrdiff_t>(batch * each_);
            const double mean = std::accumulate(begin, begin + static_cast<std::ptrdiff_t>(each_), 0.0) /
                                static_cast<double>(each_);
            between += (mean - all_mean) * (mean - all_mean);
        }
        constexpr auto all = static_cast<double>(batches * chains);
        return std::max(between / (all - 1.0) / all, 1e-300);
    }

    std::size_t each_;
    std::vector<double> scores_;
    std::vector<std::pair<float, std::uint32_t>> order_;
    std::vector<double> scored_;
};

/// Independent streams from one seed (SplitMix64).
std::uint64_t stream(std::uint64_t seed, std::uint64_t number) {
    std::uint64_t z = seed + (number + 1) * 0x9e3779b97f4a7c15ULL;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
}

}  // namespace

std::vector<findings::Path> reported_paths(const Evidence& evidence, std::size_t cylinder) {
    auto out = evidence.cylinders[cylinder].paths;
    if (!evidence.cylinders[cylinder].joints.empty()) out.push_back(findings::Path::next_cylinder);
    return out;
}

double seals_well_area_m2(const Assumptions& assumptions) {
    physics::TesterPneumatics tester;  // 0.040 in
    tester.set_gauge_pa = assumptions.at("listen-set");
    const auto leak = physics::leakdown(tester, tester.set_gauge_pa * (1.0 - assumptions.at("seals-well")));
    return leak ? leak->leak_area_m2 : 0.0;
}

std::optional<Draws> Draws::make(const EngineModel& model, std::uint64_t seed,
                                 const std::stop_token& cancel) {
    Draws out;
    out.size_ = model.size();
    out.seals_well_m2_ = seals_well_area_m2(model.assumptions());
    const std::size_t cylinders = model.cylinders().size();
    for (std::size_t c = 0; c < cylinders; ++c)
        out.shares_.emplace_back(reported_paths(model.evidence(), c).size());
    out.faults_ = out.shares_;
    out.areas_.resize(cylinders);
    out.mains_.resize(cylinders);
    std::vector<Chain> all;
    for (std::size_t chain = 0; chain < chains; ++chain) {
        all.emplace_back(model, stream(seed, chain));
        for (int sweep = 0; sweep < warm_up_sweeps; sweep += 100) {
            if (cancel.stop_requested()) return std::nullopt;
            all.back().warm_up(100);
        }
    }
    std::vector<bool> enough(cylinders, false);
    const int rounds = cylinders > 4 ? rounds_of_many : rounds_of_few;
    for (int round = 0; round < rounds; ++round) {
        // Those that have enough are moved seldom then, and the others more often.
        if (round > 0)
            for (Chain& chain : all)
                chain.attend(enough);
        for (int sweep = 0; sweep < (round == 0 ? first_sweeps : further_sweeps); ++sweep) {
            if (cancel.stop_requested()) return std::nullopt;
            for (Chain& chain : all) {
                chain.sweep();
                out.add(model, chain, enough);
            }
        }
        // What is enough stays enough, and is drawn no more.
        bool all_enough = true;
        for (std::size_t c = 0; c < cylinders; ++c) {
            if (!enough[c]) enough[c] = out.effective(c) >= enough_effective;
            all_enough = all_enough && enough[c];
        }
        if (all_enough) break;
    }
    return out;
}

void Draws::add(const EngineModel& model, const Chain& chain, const std::vector<bool>& enough) {
    const auto z = chain.z();
    z_.insert(z_.end(), z.begin(), z.end());
    ++count_;
    for (std::size_t c = 0; c < shares_.size(); ++c) {
        if (enough[c]) continue;
        const auto leaks = chain.leaks(c);
        const std::size_t own = model.cylinders()[c].own.size();
        const std::size_t all = model.cylinders()[c].all.size();
        auto& shares = shares_[c];
        std::size_t main = 0;
        double largest = 0.0;
        for (std::size_t path = 0; path < shares.size(); ++path) {
            double area = 0.0;
            if (path < own)
                area = leaks.path_m2[path];
            else
                for (std::size_t joint = own; joint < all; ++joint)
                    area += leaks.path_m2[joint];
            shares[path].push_back(static_cast<float>(area / leaks.standing_m2));
            double sound = 1.0;
            for (std::size_t i = path < own ? path : own; i < (path < own ? path + 1 : all); ++i) {
                const PathPlace& at = model.cylinders()[c].all[i];
                sound *= 1.0 - model.maps()[at.map].fault(z[at.area]);
            }
            faults_[c][path].push_back(static_cast<float>(1.0 - sound));
            if (area > largest) {
                largest = area;
                main = path;
            }
        }
        areas_[c].push_back(static_cast<float>(leaks.standing_m2));
        mains_[c].push_back(
            static_cast<std::uint8_t>(leaks.standing_m2 < seals_well_m2_ ? shares.size() : main));
    }
}

double Draws::effective(std::size_t cylinder) const {
    const std::size_t draws = count(cylinder);
    EffectiveDraws effective(draws);
    auto out = static_cast<double>(draws);
    for (const auto& share : shares_[cylinder])
        out = std::min(out, effective(share));
    for (const auto& fault : faults_[cylinder])
        out = std::min(out, effective.of_chance(draws, [&](std::size_t i) { return fault[i]; }));
    const auto& mains = mains_[cylinder];
    for (std::size_t main = 0; main <= shares_[cylinder].size(); ++main)
        out = std::min(
            out, effective.of_chance(draws, [&](std::size_t i) { return mains[i] == main ? 1.0 : 0.0; }));
    return out;
}

}  // namespace lapwing::odds
