// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/physics/gas.h"

namespace lapwing::physics {

/// How a leak's flow depends on pressure. Two examples, not bounds: pressure can also seat or open a leak.
enum class LeakLaw {
    orifice,  ///< mdot = A p psi(p0/p) / sqrt(R T)
    laminar,  ///< mdot = k (p^2 - p0^2): a long narrow gap
};

/// What a leak of area or conductance 1 passes from `gauge_pa` into the shop's air, over sqrt(R T). Gauge
/// pressure in, so that small drops keep their digits.
[[nodiscard]] inline double unit_leak_flow(LeakLaw law, double ambient_pa, double gauge_pa) {
    const double pa = ambient_pa + gauge_pa;
    return law == LeakLaw::orifice ? pa * psi_of_drop(gauge_pa / pa) : gauge_pa * (pa + ambient_pa);
}

}  // namespace lapwing::physics
