// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/atmosphere.h"

#include <cmath>

namespace lapwing::physics {
namespace {

// ISO 2533:1975, layer below the tropopause.
constexpr double sea_level_k = 288.15;
constexpr double lapse_k_per_m = 0.0065;
constexpr double gravity = 9.80665;
constexpr double specific_gas_constant =
    287.05287;  // as the standard prints it; the rest of the room needs less
constexpr double exponent = gravity / (specific_gas_constant * lapse_k_per_m);
constexpr double lowest_m = -2000.0;
constexpr double highest_m = 11000.0;

double pressure_at(double altitude_m) {
    return sea_level_pa * std::pow(1.0 - lapse_k_per_m * altitude_m / sea_level_k, exponent);
}

}  // namespace

Result<double> standard_pressure_pa(double altitude_m) {
    if (!(altitude_m >= lowest_m && altitude_m <= highest_m)) {
        return fail(
            "atmosphere.altitude",
            "An altitude of {:.6g} m is outside the standard atmosphere's lowest layer. Give -2000 to "
            "11000 m, or "
            "the pressure a barometer shows in the shop.",
            altitude_m);
    }
    return pressure_at(altitude_m);
}

Result<double> standard_altitude_m(double pressure_pa) {
    // The round trip of an end of the range must not fail on the last digit.
    constexpr double slack = 1e-12;
    if (!(pressure_pa >= pressure_at(highest_m) * (1 - slack) &&
          pressure_pa <= pressure_at(lowest_m) * (1 + slack))) {
        return fail(
            "atmosphere.pressure",
            "An air pressure of {:.6g} hPa has no altitude between -2000 and 11000 m. Give 227 to 1277 hPa.",
            pressure_pa / 100.0);
    }
    return sea_level_k / lapse_k_per_m * -std::expm1(std::log(pressure_pa / sea_level_pa) / exponent);
}

Result<double> limit_at_site_gauge_pa(double sea_level_limit_gauge_pa, double site_pa) {
    if (!(site_pa >= 20e3 && site_pa <= 120e3)) {
        return fail(
            "atmosphere.site_pressure",
            "An air pressure of {:.6g} hPa is not one a shop can have. Give what the barometer in the "
            "shop shows, "
            "200 to 1200 hPa.",
            site_pa / 100.0);
    }
    if (!(sea_level_limit_gauge_pa >= 0.0 && std::isfinite(sea_level_limit_gauge_pa))) {
        return fail("atmosphere.limit", "A limit of {:.6g} kPa is not a gauge pressure. Give zero or more.",
                    sea_level_limit_gauge_pa / 1000.0);
    }
    return sea_level_limit_gauge_pa * site_pa / sea_level_pa;
}

}  // namespace lapwing::physics
