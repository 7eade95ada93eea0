// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <array>
#include <cstddef>

#include "core/odds/evidence.h"

namespace lapwing::odds {

/// What a leak-down tester holds on a leak, and what the leak then passes: the closed form of
/// core/physics/leakdown.h turned round, as a table over the logarithm of the area ratio.
class HeldCurve {
public:
    explicit HeldCurve(const LeakCurve& of);

    struct Point {
        double held_share = 0.0;  ///< held over set, gauge
        double slope = 0.0;       ///< of it by ln(area)
        double log_flow = 0.0;    ///< ln of L/min ANR for each m2 of leak
    };
    /// `log_ratio`: ln of leak over restrictor, effective areas.
    [[nodiscard]] Point at(double log_ratio) const;
    [[nodiscard]] double log_restrictor() const { return log_restrictor_; }

private:
    static constexpr double lowest = -9.0;
    static constexpr double step = 0.02;
    static constexpr std::size_t nodes = 701;  ///< up to ln(ratio) = 5
    std::array<double, nodes> held_share_{};
    std::array<double, nodes> log_flow_{};
    double log_restrictor_ = 0.0;
};

// Asked for millions of times.
inline HeldCurve::Point HeldCurve::at(double log_ratio) const {
    const double place = std::clamp((log_ratio - lowest) / step, 0.0, static_cast<double>(nodes - 1) - 1e-9);
    const auto node = static_cast<std::size_t>(place);
    const double within = place - static_cast<double>(node);
    const double rise = held_share_[node + 1] - held_share_[node];
    return {held_share_[node] + within * rise, rise / step,
            log_flow_[node] + within * (log_flow_[node + 1] - log_flow_[node])};
}

}  // namespace lapwing::odds
