// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/base/result.h"
#include "core/uncertainty/instrument.h"

/// Uncertainty of leakage = (set - held) / set, gauge pressures. Neither an offset nor a gain cancels wholly
/// in it.
namespace lapwing::uncertainty {

struct Leakage {
    double leakage = 0.0;  ///< 0..1
    double u = 0.0;        ///< standard uncertainty, same scale: 0.018 is 1.8 percentage points
};

/// First order (JCGM 100, 5.2.2) from standard uncertainties and covariance of the two readings. Fails with
/// "leakage.set" unless set is above zero, and with "leakage.held" unless held lies from 0 to set.
[[nodiscard]] Result<Leakage> leakage_with_u(double set_pa, double u_set_pa, double held_pa, double u_held_pa,
                                             double covariance_pa2 = 0.0);

/// Set and held each on a gauge of its own. Fails as above and as `check(gauge)`.
[[nodiscard]] Result<Leakage> leakage_two_gauges(const Gauge& set_gauge, double set_pa,
                                                 const Gauge& held_gauge, double held_pa);

/// One gauge after the restrictor, set with the outlet closed and then read: the gain cancels, the offset in
/// part.
/// @param droop_limit_pa how far the regulator may sink under flow, which this tester does not show
/// (rectangular).
///                       Fails with "leakage.droop" when negative.
[[nodiscard]] Result<Leakage> leakage_one_gauge(const Gauge& gauge, double set_pa, double held_pa,
                                                double droop_limit_pa = 0.0);

}  // namespace lapwing::uncertainty
