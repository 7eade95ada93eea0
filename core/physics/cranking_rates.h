// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

#include "core/physics/gas.h"
#include "core/physics/slider_crank.h"

/// Right-hand side of the cranking model, apart from whoever integrates it. Nothing here allocates.
namespace lapwing::physics {

/// What one cylinder and its tester are to the equations: every volume and angle of a case worked out.
struct CrankingTerms {
    SliderCrank crank;
    double clearance_m3 = 0.0;  ///< the fitting added, the oil taken off
    double closing_rad = 0.0;   ///< crank angle where the closed part begins, negative
    double opening_rad = 0.0;   ///< crank angle where it ends, positive
    double speed_rad_s = 0.0;
    double ambient_pa = 0.0;
    double air_k = 0.0;
    double wall_k = 0.0;
    double charge_pa = 0.0;  ///< pressure in the cylinder at closing
    double heat_w_m2k = 0.0;
    double leak_m2 = 0.0;        ///< effective area to ambient
    double gauge_m3 = 0.0;       ///< volume behind the check valve
    double check_area_m2 = 0.0;  ///< effective area of the open check valve
    double crack_pa = 0.0;
};

/// Places in the state. The first three are the model; the rest is the ledger, which only a balance check
/// carries.
namespace cranking_state {
inline constexpr std::size_t mass = 0;          ///< kg in the cylinder
inline constexpr std::size_t energy = 1;        ///< J, internal energy of that mass
inline constexpr std::size_t gauge_mass = 2;    ///< kg behind the check valve
inline constexpr std::size_t leaked_mass = 3;   ///< kg gone out, less what came back
inline constexpr std::size_t work = 4;          ///< J done by the gas on the piston
inline constexpr std::size_t wall_heat = 5;     ///< J given to the walls
inline constexpr std::size_t enthalpy_out = 6;  ///< J carried out by leak and gauge flow, less what came in
inline constexpr std::size_t model_size = 3;
inline constexpr std::size_t ledger_size = 7;
}  // namespace cranking_state

[[nodiscard]] inline double gauge_pressure_pa(const CrankingTerms& terms, double gauge_mass_kg) {
    return gauge_mass_kg * gas_constant_air * terms.air_k / terms.gauge_m3;
}

template <std::size_t N>
[[nodiscard]] double cylinder_pressure_pa(const CrankingTerms& terms, double theta_rad,
                                          const std::array<double, N>& state) {
    return (gamma_air - 1.0) * state[cranking_state::energy] /
           terms.crank.volume_m3(theta_rad, terms.clearance_m3);
}

/// nozzle_flow, straightened below a relative drop of 1e-5 (1 Pa of an atmosphere). The root's vertical edge
/// at no drop would make a cylinder that hovers about its surroundings infinitely stiff; no reading feels 1
/// Pa.
[[nodiscard]] inline double integrable_flow(double effective_area_m2, double upstream_pa, double upstream_k,
                                            double downstream_pa) {
    constexpr double straight_below = 1e-5;
    const double drop = (upstream_pa - downstream_pa) / upstream_pa;
    const double capped = std::max(drop, straight_below);
    const double flow =
        effective_area_m2 * upstream_pa / std::sqrt(gas_constant_air * upstream_k) * psi_of_drop(capped);
    return flow * std::clamp(drop / straight_below, 0.0, 1.0);
}

/// Rates per rad of crank angle:
///     dU = -p dV - h A_wall (T - T_wall) dt - sum(out) cp T dm + sum(in) cp T0 dm,   U = m cv T
/// with A_wall = 2 Ap + pi B x (x the piston's way from TDC; oil and fitting left out). `valve_open` says
/// whether the check valve may pass air: the integrator stops where it opens, so that no step straddles it.
/// The poppet takes the cracking pressure, so the flow starts from nothing. Source: first law for an open,
/// homogeneous volume; flow through psi() of gas.h.
template <bool valve_open, std::size_t N>
[[nodiscard]] std::array<double, N> cranking_rates(const CrankingTerms& terms, double theta_rad,
                                                   const std::array<double, N>& state) {
    namespace at = cranking_state;
    static_assert(N == at::model_size || N == at::ledger_size);
    const double piston_area = terms.crank.piston_area_m2();
    const double travel = terms.crank.piston_travel_m(theta_rad);
    const double volume = terms.clearance_m3 + piston_area * travel;
    const double volume_rate = piston_area * terms.crank.piston_travel_rate_m(theta_rad);
    const double pressure = (gamma_air - 1.0) * state[at::energy] / volume;
    const double temperature = state[at::energy] / (state[at::mass] * cv_air);
    const double per_second = 1.0 / terms.speed_rad_s;

    double leak = 0.0;  // kg/s outward
    double leak_enthalpy = 0.0;
    if (terms.leak_m2 > 0.0) {
        if (pressure >= terms.ambient_pa) {
            leak = integrable_flow(terms.leak_m2, pressure, temperature, terms.ambient_pa);
            leak_enthalpy = leak * cp_air * temperature;
        } else {
            leak = -integrable_flow(terms.leak_m2, terms.ambient_pa, terms.air_k, pressure);
            leak_enthalpy = leak * cp_air * terms.air_k;
        }
    }
    double to_gauge = 0.0;
    if constexpr (valve_open) {
        const double behind_poppet = gauge_pressure_pa(terms, state[at::gauge_mass]) + terms.crack_pa;
        to_gauge = integrable_flow(terms.check_area_m2, pressure, temperature, behind_poppet);
    }
    const double wall_area = 2.0 * piston_area + pi * terms.crank.bore_m * travel;
    const double wall_heat = terms.heat_w_m2k * wall_area * (temperature - terms.wall_k);
    const double enthalpy_out = leak_enthalpy + to_gauge * cp_air * temperature;

    std::array<double, N> rate{};
    rate[at::mass] = -(leak + to_gauge) * per_second;
    rate[at::energy] = -pressure * volume_rate - (wall_heat + enthalpy_out) * per_second;
    rate[at::gauge_mass] = to_gauge * per_second;
    if constexpr (N == at::ledger_size) {
        rate[at::leaked_mass] = leak * per_second;
        rate[at::work] = pressure * volume_rate;
        rate[at::wall_heat] = wall_heat * per_second;
        rate[at::enthalpy_out] = enthalpy_out * per_second;
    }
    return rate;
}

}  // namespace lapwing::physics
