// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

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
};

}  // namespace lapwing::odds
