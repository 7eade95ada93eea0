// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/base/result.h"

/// Air pressure at the shop. "Station pressure" is what a barometer in the shop shows, not the sea-level
/// figure of weather reports and phones.
namespace lapwing::physics {

inline constexpr double sea_level_pa = 101325.0;

/// Station pressure (Pa, absolute) of the standard atmosphere at a geopotential altitude of -2000 to 11 000
/// m. Source: ISO 2533:1975. Fails with "atmosphere.altitude" outside.
[[nodiscard]] Result<double> standard_pressure_pa(double altitude_m);

/// Geopotential altitude (m) at which the standard atmosphere has this station pressure: the way back, same
/// range. Fails with "atmosphere.pressure" outside.
[[nodiscard]] Result<double> standard_altitude_m(double pressure_pa);

/// A gauge-pressure limit stated for sea level, as it applies at the shop: gauge limit x p_site / p_sea,
/// because a compression reading scales with the pressure of the air drawn in. A maker's own altitude table
/// wins over it. Fails with "atmosphere.site_pressure" unless the station pressure lies between 20 and 120
/// kPa and with "atmosphere.limit" for a limit that is negative or not a number.
[[nodiscard]] Result<double> limit_at_site_gauge_pa(double sea_level_limit_gauge_pa, double site_pa);

}  // namespace lapwing::physics
