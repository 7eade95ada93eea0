// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/holding_torque.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace lapwing::physics {

Status check_holding(double gauge_pa, double theta_rad) {
    if (!(gauge_pa >= 0.0 && gauge_pa <= 7e6)) {
        return fail(
            "torque.pressure",
            "A pressure of {:.6g} kPa is not one a tester puts into a cylinder. Give the gauge pressure, "
            "0 to 7000 kPa.",
            gauge_pa / 1e3);
    }
    const double degrees = theta_rad * 180.0 / pi;
    if (!(std::abs(degrees) <= 180.0 * (1.0 + 1e-12))) {
        return fail("torque.angle",
                    "{:.6g} degrees is not an angle from top dead centre. Give -180 to 180, 0 at the centre.",
                    degrees);
    }
    return {};
}

Result<double> force_at_bar_n(double torque_nm, double bar_m) {
    if (!(bar_m >= 0.01 && bar_m <= 5.0)) {
        return fail("torque.bar",
                    "A bar of {:.6g} m cannot be right. Give its length from the crank's axis, 0.01 to 5 m.",
                    bar_m);
    }
    return torque_nm / bar_m;
}

Result<double> turn_to_compression_tdc_deg(std::span<const int> firing_order,
                                           std::span<const double> intervals_deg, int from_cylinder,
                                           int to_cylinder) {
    for (auto it = firing_order.begin(); it != firing_order.end(); ++it) {
        if (std::find(it + 1, firing_order.end(), *it) != firing_order.end()) {
            return fail("firing.order",
                        "Cylinder {} stands twice in the firing order. Give every cylinder once.", *it);
        }
    }
    if (intervals_deg.size() != firing_order.size() || firing_order.empty()) {
        return fail("firing.intervals",
                    "{} firing intervals do not fit {} cylinders. Give one interval after each cylinder of "
                    "the order.",
                    intervals_deg.size(), firing_order.size());
    }
    // A cylinder that fires together with the one before it has interval 0.
    const bool all_sensible = std::all_of(intervals_deg.begin(), intervals_deg.end(),
                                          [](double d) { return d >= 0.0 && d <= 720.0; });
    const double cycle_deg = std::accumulate(intervals_deg.begin(), intervals_deg.end(), 0.0);
    constexpr double typed_rounding_deg = 0.5;
    if (!all_sensible || !(std::abs(cycle_deg - 720.0) <= typed_rounding_deg ||
                           std::abs(cycle_deg - 360.0) <= typed_rounding_deg)) {
        return fail("firing.intervals",
                    "The firing intervals add up to {} degrees. They must make 720 (four-stroke) or 360 "
                    "(two-stroke), "
                    "none below 0.",
                    cycle_deg);
    }
    const auto place_of = [&](int cylinder) {
        return std::find(firing_order.begin(), firing_order.end(), cylinder) - firing_order.begin();
    };
    const auto count = static_cast<std::ptrdiff_t>(firing_order.size());
    const auto from = place_of(from_cylinder);
    const auto to = place_of(to_cylinder);
    for (const auto& [cylinder, place] : {std::pair{from_cylinder, from}, std::pair{to_cylinder, to}}) {
        if (place == count) {
            return fail("firing.cylinder", "Cylinder {} is not in the firing order. Give one that is.",
                        cylinder);
        }
    }
    double turned_deg = 0.0;
    auto at = from;
    do {
        turned_deg += intervals_deg[static_cast<std::size_t>(at)];
        at = (at + 1) % count;
    } while (at != to);
    return turned_deg;
}

}  // namespace lapwing::physics
