// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/leakdown_law.h"

#include <cmath>

namespace lapwing::physics {

Result<double> leak_exponent(const LeakdownReading& one, const LeakdownReading& other) {
    const auto first = leakdown(one.tester, one.held_gauge_pa);
    if (!first) return tl::unexpected(first.error());
    const auto second = leakdown(other.tester, other.held_gauge_pa);
    if (!second) return tl::unexpected(second.error());
    if (first->state != LeakState::measured || second->state != LeakState::measured) {
        return fail(
            "leakdown.law",
            "A reading that loses nothing or holds nothing says nothing about the leak's law. Take two "
            "readings that hold something between zero and the set pressure.");
    }
    constexpr double least_apart = 1.2;
    const double apart = one.held_gauge_pa / other.held_gauge_pa;
    if (apart < least_apart && 1.0 / apart < least_apart) {
        return fail("leakdown.law",
                    "Held pressures of {:.4g} and {:.4g} kPa are too close together to tell the leak's law. "
                    "Set the regulator to about half and read again.",
                    one.held_gauge_pa / 1e3, other.held_gauge_pa / 1e3);
    }
    return std::log(first->leak_area_m2 / second->leak_area_m2) / std::log(apart);
}

}  // namespace lapwing::physics
