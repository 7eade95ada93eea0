// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cmath>

#include "core/base/result.h"
#include "core/physics/gas.h"

/// Piston, rod and crank. Crank angle theta in rad, 0 at top dead centre (TDC), positive after it.
namespace lapwing::physics {

struct SliderCrank {
    double bore_m = 0.0;
    double stroke_m = 0.0;
    double rod_m = 0.0;  ///< between the centres of its eyes

    [[nodiscard]] double piston_area_m2() const { return circle_area_m2(bore_m); }
    [[nodiscard]] double displacement_m3() const { return piston_area_m2() * stroke_m; }

    /// The piston's way down from TDC, m: r (1 - cos th) + l - sqrt(l^2 - r^2 sin^2 th).
    [[nodiscard]] double piston_travel_m(double theta_rad) const {
        const double crank = stroke_m / 2.0;
        // 1 - cos as 2 sin^2 of the half, and l - sqrt(l^2 - q^2) as a quotient: no digits lost close to TDC.
        const double half_sine = std::sin(theta_rad / 2.0);
        const double across = crank * std::sin(theta_rad);
        const double rod_height = std::sqrt(rod_m * rod_m - across * across);
        return 2.0 * crank * half_sine * half_sine + across * across / (rod_m + rod_height);
    }

    /// Its derivative, m per rad.
    [[nodiscard]] double piston_travel_rate_m(double theta_rad) const {
        const double crank = stroke_m / 2.0;
        const double sine = std::sin(theta_rad);
        const double across = crank * sine;
        const double rod_height = std::sqrt(rod_m * rod_m - across * across);
        return crank * sine * (1.0 + crank * std::cos(theta_rad) / rod_height);
    }

    /// Chamber volume, m3, over a clearance volume; and its derivative, m3 per rad.
    [[nodiscard]] double volume_m3(double theta_rad, double clearance_m3) const {
        return clearance_m3 + piston_area_m2() * piston_travel_m(theta_rad);
    }
    [[nodiscard]] double volume_rate_m3(double theta_rad) const {
        return piston_area_m2() * piston_travel_rate_m(theta_rad);
    }
};

/// Fails with "engine.bore", "engine.stroke" or "engine.rod" where a size is missing, absurd (bore and stroke
/// outside 5 mm to 1.5 m) or the rod is not longer than 0.6 strokes (it must clear the crank).
[[nodiscard]] Status check(const SliderCrank& crank);

/// Clearance volume, m3, of a geometric compression ratio over the full stroke: Vd / (CR - 1).
[[nodiscard]] double clearance_volume_m3(const SliderCrank& crank, double compression_ratio);

/// Clearance volume, m3, of a two-stroke's trapped compression ratio, which counts from the closing of the
/// ports (rad after bottom dead centre): V(closing) / CR.
[[nodiscard]] double trapped_clearance_volume_m3(const SliderCrank& crank, double trapped_ratio,
                                                 double closing_after_bdc_rad);

}  // namespace lapwing::physics
