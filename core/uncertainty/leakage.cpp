// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/leakage.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/apart.h"

namespace lapwing::uncertainty {

Result<Leakage> leakage_with_u(double set_pa, double u_set_pa, double held_pa, double u_held_pa,
                               double covariance_pa2) {
    if (!(set_pa > 0.0 && std::isfinite(set_pa))) {
        return fail("leakage.set",
                    "A set pressure of {:.6g} kPa cannot be tested with. Give a gauge pressure above 0.",
                    set_pa / 1e3);
    }
    if (!(held_pa >= 0.0 && std::isfinite(held_pa) && !is_above(held_pa, set_pa))) {
        return fail("leakage.held",
                    "A held pressure of {:.6g} kPa does not fit a set pressure of {:.6g} kPa. Give 0 up to "
                    "the set pressure.",
                    held_pa / 1e3, set_pa / 1e3);
    }
    const double held_share = std::min(1.0, held_pa / set_pa);
    const double by_set = held_share / set_pa;
    const double by_held = -1.0 / set_pa;
    const double variance = by_set * by_set * u_set_pa * u_set_pa +
                            by_held * by_held * u_held_pa * u_held_pa +
                            2.0 * by_set * by_held * covariance_pa2;
    return Leakage{1.0 - held_share, std::sqrt(std::max(variance, 0.0))};
}

Result<Leakage> leakage_two_gauges(const Gauge& set_gauge, double set_pa, const Gauge& held_gauge,
                                   double held_pa) {
    if (auto ok = check(set_gauge); !ok) return tl::unexpected(ok.error());
    if (auto ok = check(held_gauge); !ok) return tl::unexpected(ok.error());
    return leakage_with_u(set_pa, u_reading_pa(set_gauge, set_pa), held_pa,
                          u_reading_pa(held_gauge, held_pa));
}

Result<Leakage> leakage_one_gauge(const Gauge& gauge, double set_pa, double held_pa, double droop_limit_pa) {
    if (auto ok = check(gauge); !ok) return tl::unexpected(ok.error());
    if (!(droop_limit_pa >= 0.0 && std::isfinite(droop_limit_pa))) {
        return fail("leakage.droop", "A regulator that sinks by {:.6g} kPa cannot be right. Give 0 or more.",
                    droop_limit_pa / 1e3);
    }
    const double u_set_pa = std::hypot(u_reading_pa(gauge, set_pa), droop_limit_pa * std::numbers::inv_sqrt3);
    return leakage_with_u(set_pa, u_set_pa, held_pa, u_reading_pa(gauge, held_pa),
                          covariance_same_gauge_pa2(gauge, set_pa, held_pa));
}

}  // namespace lapwing::uncertainty
