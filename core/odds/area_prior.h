// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

#include "core/findings/reference.h"
#include "core/odds/assumptions.h"

/// What is assumed of one path's leak area before any evidence.
namespace lapwing::odds {

/// Sound with one chance, at fault with the other; the logarithm of the area is normal in either case.
struct AreaPrior {
    double fault = 0.0;       ///< chance, 0 to 1
    double sound_mean = 0.0;  ///< of ln(m2)
    double sound_spread = 1.0;
    double leaking_mean = 0.0;
    double leaking_spread = 1.0;

    /// Density of ln(area).
    [[nodiscard]] double density(double log_area) const;
    /// Chance that a path of this area is at fault.
    [[nodiscard]] double fault_given(double log_area) const;

    bool operator==(const AreaPrior&) const = default;
};

/// `bore_m`: areas grow with it. `odds`: multiplies the odds of fault.
AreaPrior area_prior(const Assumptions& assumptions, findings::Path path, double bore_m, double odds = 1.0);

/// The prior as a monotone map of a standard normal number, so that all unknowns of an engine are standard
/// normal. Piecewise linear; density and inverse are those of the pieces, so that nothing is out of step.
class AreaMap {
public:
    explicit AreaMap(const AreaPrior& prior);
    [[nodiscard]] double log_area(double z) const;
    [[nodiscard]] double z(double log_area) const;
    /// Logarithm of the density of ln(area) at the place of z, up to a constant.
    [[nodiscard]] double log_density(double z) const;
    /// Chance of a fault at the place of z: AreaPrior::fault_given, by a table.
    [[nodiscard]] double fault(double z) const;
    [[nodiscard]] double least() const { return log_area_.front(); }
    [[nodiscard]] double most() const { return log_area_.back(); }

private:
    static constexpr double reach = 6.0;
    static constexpr double step = 0.01;
    std::vector<double> log_area_;
    std::vector<double> log_slope_;
    std::vector<double> fault_;
    /// Where to look for an area: the last node before each of so many cells of one width.
    static constexpr std::size_t cells = 2048;
    double cells_a_unit_ = 0.0;
    std::vector<std::uint16_t> node_of_cell_;
};

// Asked for millions of times.

inline double AreaMap::log_area(double z) const {
    const double place = std::clamp((z + reach) / step, 0.0, static_cast<double>(log_slope_.size()) - 1e-9);
    const auto node = static_cast<std::size_t>(place);
    const double within = place - static_cast<double>(node);
    return log_area_[node] + within * (log_area_[node + 1] - log_area_[node]);
}

inline double AreaMap::fault(double z) const {
    const double place = std::clamp((z + reach) / step, 0.0, static_cast<double>(log_slope_.size()) - 1e-9);
    const auto node = static_cast<std::size_t>(place);
    return fault_[node] + (place - static_cast<double>(node)) * (fault_[node + 1] - fault_[node]);
}

inline double AreaMap::z(double log_area) const {
    if (!(log_area >= least())) return -reach;
    if (log_area >= most()) return reach;
    const auto cell = static_cast<std::size_t>((log_area - least()) * cells_a_unit_);
    std::size_t node = node_of_cell_[std::min(cell, cells - 1)];
    while (log_area_[node + 1] <= log_area)
        ++node;
    const double within = (log_area - log_area_[node]) / (log_area_[node + 1] - log_area_[node]);
    return -reach + step * (static_cast<double>(node) + within);
}

inline double AreaMap::log_density(double z) const {
    const double place = std::clamp((z + reach) / step, 0.0, static_cast<double>(log_slope_.size()) - 1e-9);
    return -0.5 * z * z - log_slope_[static_cast<std::size_t>(place)];
}

}  // namespace lapwing::odds
