// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <span>

#include "core/base/result.h"
#include "core/physics/slider_crank.h"

/// Holding the crank against the tester's air, and turning it to the next cylinder.
namespace lapwing::physics {

/// Torque, N m, on the crank with the cylinder under `gauge_pa`, at an angle from TDC: gauge pressure x
/// dV/dtheta (virtual work; friction left out, which holds the crank in part). Positive turns it on, away
/// from TDC.
[[nodiscard]] inline double holding_torque_nm(const SliderCrank& crank, double gauge_pa, double theta_rad) {
    return gauge_pa * crank.volume_rate_m3(theta_rad);
}

/// Fails with "torque.pressure" outside 0 to 7 MPa and "torque.angle" outside +-180 degrees from TDC.
[[nodiscard]] Status check_holding(double gauge_pa, double theta_rad);

/// Force, N, at the end of a bar that holds a torque. Fails with "torque.bar" for a bar outside 1 cm to 5 m.
[[nodiscard]] Result<double> force_at_bar_n(double torque_nm, double bar_m);

/// Angle, degrees in the running direction, from one cylinder's compression TDC to another's: the sum of the
/// firing intervals between them. For the same cylinder the full cycle.
///
/// @param firing_order   cylinder numbers, each once
/// @param intervals_deg  intervals_deg[i] from firing_order[i] to the next (the last one back to the first);
/// they
///                       add up to 720 degrees (four-stroke) or 360 (two-stroke). The order alone does not do
///                       for V engines and uneven twins.
/// Fails with "firing.order", "firing.intervals" or "firing.cylinder".
[[nodiscard]] Result<double> turn_to_compression_tdc_deg(std::span<const int> firing_order,
                                                         std::span<const double> intervals_deg,
                                                         int from_cylinder, int to_cylinder);

}  // namespace lapwing::physics
