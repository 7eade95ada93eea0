// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <stop_token>
#include <vector>

#include "core/odds/engine_model.h"

namespace lapwing::odds {

class Chain;  // core/odds/chain.h

/// Paths of a cylinder as they are reported: its own, then one for all its joints if it has any.
std::vector<findings::Path> reported_paths(const Evidence& evidence, std::size_t cylinder);

/// Draws from all unknowns given the evidence, and what each says of where the cylinders leak.
class Draws {
public:
    /// Absent when cancelled.
    static std::optional<Draws> make(const EngineModel& model, std::uint64_t seed,
                                     const std::stop_token& cancel);

    /// All draws.
    [[nodiscard]] std::size_t count() const { return count_; }
    /// Those that count for a cylinder: the first ones, until there were enough of them. Later it moved
    /// seldom, and what is drawn seldom would dilute the rest.
    [[nodiscard]] std::size_t count(std::size_t cylinder) const { return areas_[cylinder].size(); }
    [[nodiscard]] std::span<const double> z(std::size_t draw) const {
        return std::span(z_).subspan(draw * size_, size_);
    }
    /// Share of the leak by reported path, of one cylinder, in its draws.
    [[nodiscard]] std::span<const float> share(std::size_t cylinder, std::size_t path) const {
        return shares_[cylinder][path];
    }
    /// Chance of a fault by reported path, of one cylinder, in its draws.
    [[nodiscard]] std::span<const float> fault(std::size_t cylinder, std::size_t path) const {
        return faults_[cylinder][path];
    }
    [[nodiscard]] std::span<const float> area(std::size_t cylinder) const { return areas_[cylinder]; }
    /// Place of the main path among the reported, or their number: seals well.
    [[nodiscard]] std::span<const std::uint8_t> main(std::size_t cylinder) const { return mains_[cylinder]; }
    /// Effective number of independent draws behind the worst known of a cylinder's shares and chances. A
    /// chance counts by its standard error: as many as would leave as much of it at even odds, since chances
    /// are all rounded alike.
    [[nodiscard]] double effective(std::size_t cylinder) const;

private:
    /// `enough`: cylinders that need no more draws.
    void add(const EngineModel& model, const Chain& chain, const std::vector<bool>& enough);

    std::size_t size_ = 0;
    std::size_t count_ = 0;
    std::size_t chains_ = 0;
    double seals_well_m2_ = 0.0;
    std::vector<double> z_;
    std::vector<std::vector<std::vector<float>>> shares_;
    std::vector<std::vector<std::vector<float>>> faults_;
    std::vector<std::vector<float>> areas_;
    std::vector<std::vector<std::uint8_t>> mains_;
};

/// Leak area, m2, at which a cylinder no longer seals well.
double seals_well_area_m2(const Assumptions& assumptions);

}  // namespace lapwing::odds
