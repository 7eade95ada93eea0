// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/held_curve.h"

#include <algorithm>
#include <cmath>

#include "core/physics/leakdown.h"

namespace lapwing::odds {

HeldCurve::HeldCurve(const LeakCurve& of) : log_restrictor_(std::log(of.restrictor_m2)) {
    using namespace physics;
    const double set_pa = of.ambient_pa + of.set_pa;
    const auto surplus = [&](double held_gauge, double ratio) {
        const double held_pa = of.ambient_pa + held_gauge;
        return set_pa * psi_of_drop((of.set_pa - held_gauge) / set_pa) -
               ratio * held_pa * psi_of_drop(held_gauge / held_pa);
    };
    for (std::size_t node = 0; node < nodes; ++node) {
        const double ratio = std::exp(lowest + step * static_cast<double>(node));
        double low = 0.0;
        double high = of.set_pa;
        for (int halving = 0; halving < 50; ++halving) {
            const double held = 0.5 * (low + high);
            (surplus(held, ratio) > 0.0 ? low : high) = held;
        }
        const double held = 0.5 * (low + high);
        held_share_[node] = held / of.set_pa;
        constexpr double litres_a_minute = 60e3;
        const double flow = nozzle_flow(1.0, of.ambient_pa + held, shop_temperature_k, of.ambient_pa);
        log_flow_[node] = std::log(std::max(volume_flow_anr(flow) * litres_a_minute, 1e-12));
    }
}

}  // namespace lapwing::odds
