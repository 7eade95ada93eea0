// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <cmath>

/// Dry air as an ideal gas, and its flow through small holes. SI throughout, pressures absolute.
namespace lapwing::physics {

inline constexpr double gamma_air = 1.4;
inline constexpr double gas_constant_air = 287.05;                      ///< J/(kg K)
inline constexpr double cv_air = gas_constant_air / (gamma_air - 1.0);  ///< J/(kg K)
inline constexpr double cp_air = cv_air + gas_constant_air;             ///< J/(kg K)
inline constexpr double density_anr_kg_m3 = 1.185;  ///< air at 20 degC, 100 kPa, 65 % RH: ISO 8778
inline constexpr double shop_temperature_k = 293.15;
inline constexpr double pi = 3.14159265358979323846;

/// Downstream over upstream pressure below which a nozzle is choked: (2/(gamma+1))^(gamma/(gamma-1)) =
/// 0.52828.
[[nodiscard]] double critical_pressure_ratio();

/// Flow function of an isentropic nozzle, mdot = A p_u / sqrt(R T_u) * psi(p_d / p_u).
///
/// @param ratio downstream over upstream absolute pressure; 1 and above gives no flow, the critical ratio and
///              below the choked value 0.68473.
/// Source: Saint-Venant and Wantzel's nozzle equation in any gas dynamics text; written so that no digits are
/// lost close to ratio = 1.
[[nodiscard]] double psi(double ratio);

/// The same from the relative pressure drop (p_u - p_d) / p_u, which keeps every digit of a small drop.
/// One root and one power, for gamma = 1.4 only: with s = max(r^(2/7), 5/6), psi = s^2 sqrt(7 s (1 - s)).
[[nodiscard]] inline double psi_of_drop(double relative_drop) {
    if (!(relative_drop > 0.0)) return 0.0;
    // 1 - s, not s, is the small number: expm1 and log1p keep it exact.
    constexpr double choked_one_minus_s = 1.0 / 6.0;
    const double one_minus_s =
        relative_drop < 0.5
            ? std::min(-std::expm1(2.0 / 7.0 * std::log1p(-relative_drop)), choked_one_minus_s)
            : choked_one_minus_s;
    const double s = 1.0 - one_minus_s;
    return s * s * std::sqrt(7.0 * s * one_minus_s);
}

/// Mass flow, kg/s, through an effective area (discharge coefficient times geometric area, m2) from
/// `upstream_pa` at `upstream_k` to `downstream_pa`, both absolute. Never flows back: no flow when upstream
/// is not the higher.
[[nodiscard]] inline double nozzle_flow(double effective_area_m2, double upstream_pa, double upstream_k,
                                        double downstream_pa) {
    const double drop = (upstream_pa - downstream_pa) / upstream_pa;
    return effective_area_m2 * upstream_pa / std::sqrt(gas_constant_air * upstream_k) * psi_of_drop(drop);
}

/// A mass flow as volume flow ANR (ISO 6358, ISO 8778), m3/s.
[[nodiscard]] inline double volume_flow_anr(double mass_flow_kg_s) {
    return mass_flow_kg_s / density_anr_kg_m3;
}

[[nodiscard]] inline double circle_area_m2(double diameter_m) {
    return pi / 4.0 * diameter_m * diameter_m;
}
[[nodiscard]] inline double circle_diameter_m(double area_m2) {
    return std::sqrt(4.0 * area_m2 / pi);
}

}  // namespace lapwing::physics
