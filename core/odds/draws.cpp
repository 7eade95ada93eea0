// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/draws.h"

#include <algorithm>
#include <cmath>

#include "core/odds/chain.h"
#include "core/physics/leakdown.h"

namespace lapwing::odds {
namespace {

constexpr std::size_t chains = 3;
constexpr int warm_up_sweeps = 600;
constexpr int round_sweeps = 1000;  ///< of each chain, until there are enough effective draws
constexpr int most_rounds = 8;
constexpr double enough_effective = 450.0;

/// Batch means over chains that lie one behind the other: draws interleaved by chain, `chains` of them.
template <class Value>
double effective_draws(std::size_t count, Value value) {
    constexpr std::size_t batches = 20;  // in each chain
    const std::size_t each = count / chains / batches;
    if (each < 2) return 0.0;
    double mean = 0.0;
    for (std::size_t i = 0; i < count; ++i)
        mean += value(i);
    mean /= static_cast<double>(count);
    double variance = 0.0;
    for (std::size_t i = 0; i < count; ++i)
        variance += (value(i) - mean) * (value(i) - mean);
    variance /= static_cast<double>(count);
    double between = 0.0;
    for (std::size_t chain = 0; chain < chains; ++chain)
        for (std::size_t batch = 0; batch < batches; ++batch) {
            double sum = 0.0;
            for (std::size_t i = batch * each; i < (batch + 1) * each; ++i)
                sum += value(i * chains + chain);
            const double off = sum / static_cast<double>(each) - mean;
            between += off * off;
        }
    between /= static_cast<double>(chains * batches - 1);
    // A share that hardly moves is known, however slowly it moves.
    constexpr double known = 0.03 * 0.03;
    if (variance < known) return static_cast<double>(count);
    return std::min(variance / std::max(between / static_cast<double>(chains * batches), 1e-300),
                    static_cast<double>(count));
}

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
    for (int round = 0; round < most_rounds; ++round) {
        for (int sweep = 0; sweep < round_sweeps; ++sweep) {
            if (cancel.stop_requested()) return std::nullopt;
            for (Chain& chain : all) {
                chain.sweep();
                out.add(model, chain.z());
            }
        }
        if (out.least_effective() >= enough_effective) break;
    }
    return out;
}

void Draws::add(const EngineModel& model, std::span<const double> z) {
    z_.insert(z_.end(), z.begin(), z.end());
    ++count_;
    for (std::size_t c = 0; c < shares_.size(); ++c) {
        const auto leaks = model.leaks(z, c);
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
    double out = static_cast<double>(count_);
    for (const auto& share : shares_[cylinder])
        out = std::min(out, effective_draws(count_, [&](std::size_t i) { return double{share[i]}; }));
    return out;
}

double Draws::least_effective() const {
    double out = static_cast<double>(count_);
    for (std::size_t c = 0; c < shares_.size(); ++c)
        out = std::min(out, effective(c));
    return out;
}

}  // namespace lapwing::odds
