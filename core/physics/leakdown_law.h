// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/base/result.h"
#include "core/physics/leakdown.h"

/// A leak's law from two leak-down readings at two set pressures.
namespace lapwing::physics {

struct LeakdownReading {
    TesterPneumatics tester;
    double held_gauge_pa = 0.0;
};

/// Exponent n of A ~ p^n, where A is the effective area as a hole and p the held gauge pressure, which is
/// what drives the leak and presses ring or valve to its seat. A hole has n = 0; a narrow gap (mdot ~ p2^2 -
/// p0^2) 0.7 to 0.9 from 5 to 100 psi; a leak that pressure seats is below 0. Source: the
/// definition, with the area of `leakdown`. The restrictor cancels when both readings have the same.
///
/// Fails as `leakdown` does, and with "leakdown.law" where one reading loses nothing or holds nothing, or the
/// held pressures are within 20 % of each other: two readings at about one pressure tell nothing of a law.
[[nodiscard]] Result<double> leak_exponent(const LeakdownReading& one, const LeakdownReading& other);

}  // namespace lapwing::physics
