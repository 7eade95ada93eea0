// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/physics/pack.h"

/// Right-hand side of the cranking model, for one case or several side by side (`R` is double or a Pack).
/// Nothing here allocates, branches on data or calls a library's transcendental function, whose last digits
/// differ from machine to machine.
namespace lapwing::physics {

// The records of the inner loop are written field by field before they are read; none is set twice.
// NOLINTBEGIN(cppcoreguidelines-pro-type-member-init)

/// Properties of air, kept with the kernel as plain numbers; gas.h has the same by name.
namespace lane_air {
inline constexpr double gamma = 1.4;
inline constexpr double gas_constant = 287.05;              ///< J/(kg K)
inline constexpr double cv = gas_constant / (gamma - 1.0);  ///< J/(kg K)
inline constexpr double choked_drop = 0.4717182;            ///< 1 - critical pressure ratio
inline constexpr double wall = 3.14159265358979323846;      ///< circumference over bore
}  // namespace lane_air

/// Below this relative drop (10 Pa of an atmosphere) a flow is straightened. The root's vertical edge at no
/// drop would make a cylinder that hovers about its surroundings infinitely stiff; no reading feels 10 Pa.
inline constexpr double straight_below = 1e-4;

/// What one cylinder and its tester are to the equations: every volume and angle of a case worked out.
template <class R>
struct CrankingConstants {
    R piston_area;      ///< m2
    R bore;             ///< m
    R crank;            ///< m, half the stroke
    R rod;              ///< m
    R clearance;        ///< m3, the fitting added, the oil taken off
    R closing;          ///< rad, crank angle where the closed part begins, negative
    R opening;          ///< rad, where it ends, positive
    R ambient;          ///< Pa
    R ambient_density;  ///< kg/m3
    R air;              ///< K
    R wall;             ///< K
    R charge;           ///< Pa in the cylinder at closing
    R heat_per_rad;     ///< J/(m2 K rad)
    R leak_per_rad;     ///< effective area over speed, m2 s/rad
    R check_per_rad;    ///< the same of the open check valve
    R gauge_pa_per_kg;  ///< rise of the gauge for each kg that comes in
    R crack;            ///< Pa
    R longest_step;     ///< rad
};

/// sin and cos of an angle within +-pi/2, by Taylor's series: off by 7e-10 at the ends, 1e-12 within +-1.
template <class R>
LAPWING_INLINE void sine_and_cosine(R angle, R& sine, R& cosine) {
    const R x = angle * angle;
    const R x2 = x * x;
    const R x4 = x2 * x2;
    // Pairs, then pairs of pairs: shorter chains than Horner's.
    const R s01 = R(1.0) - x * R(1.0 / 6.0);
    const R s23 = R(1.0 / 120.0) - x * R(1.0 / 5040.0);
    const R s45 = R(1.0 / 362880.0) - x * R(1.0 / 39916800.0);
    sine = angle * (s01 + x2 * s23 + x4 * (s45 + x2 * R(1.0 / 6227020800.0)));
    const R c01 = R(1.0) - x * R(0.5);
    const R c23 = R(1.0 / 24.0) - x * R(1.0 / 720.0);
    const R c45 = R(1.0 / 40320.0) - x * R(1.0 / 3628800.0);
    const R c67 = R(1.0 / 479001600.0) - x * R(1.0 / 87178291200.0);
    cosine = c01 + x2 * c23 + x4 * (c45 + x2 * c67);
}

/// psi of gas.h over the root of the relative drop, for drops up to the critical one: the smooth part of the
/// flow function. Polynomial of degree 7 through psi at Chebyshev's nodes; off by less than 2e-8.
template <class R>
LAPWING_INLINE R psi_over_root(R drop) {
    const R d2 = drop * drop;
    const R low = (R(1.4142135710707409) + drop * R(-0.757616761124443)) +
                  d2 * (R(-0.20282936079671166) + drop * R(-0.10010052385963525));
    const R high = (R(-0.045923161411667) + drop * R(-0.09591374063154053)) +
                   d2 * (R(0.0917243560648347) + drop * R(-0.13955358928239547));
    return low + d2 * d2 * high;
}

/// Mass flow through a hole over its effective area: psi p_u / sqrt(R T_u), written with the upstream density
/// p_u / (R T_u) so that one root serves all. `drop` is relative to the upstream pressure; none below 0.
template <class R>
LAPWING_INLINE R flow_density(R drop, R upstream_pa, R upstream_density) {
    const R within = smaller(larger(drop, R(straight_below)), R(lane_air::choked_drop));
    const R straight = smaller(larger(drop * R(1.0 / straight_below), R(0.0)), R(1.0));
    return psi_over_root(within) * root(within * upstream_pa * upstream_density) * straight;
}

/// State at a crank angle.
template <class R>
struct CrankingPoint {
    R theta;        ///< rad, 0 at TDC
    R volume;       ///< m3
    R volume_rate;  ///< m3/rad
    R wall_area;    ///< m2: 2 Ap + pi B x, x the piston's way from TDC; oil and fitting left out
    R mass;         ///< kg in the cylinder
    R energy;       ///< J, internal energy of that mass
    R gauge;        ///< kg behind the check valve

    /// Goes to an angle, the state left alone.
    LAPWING_INLINE void place(const CrankingConstants<R>& of, R angle) {
        theta = angle;
        R half_sine, half_cosine;
        sine_and_cosine(R(0.5) * angle, half_sine, half_cosine);
        const R sine = R(2.0) * half_sine * half_cosine;
        const R one_minus_cosine = R(2.0) * half_sine * half_sine;
        const R across = of.crank * sine;
        const R rod_height = root(of.rod * of.rod - across * across);
        const R travel = of.crank * one_minus_cosine + (of.rod - rod_height);
        volume = of.clearance + of.piston_area * travel;
        volume_rate =
            of.piston_area * across * (R(1.0) + of.crank * (R(1.0) - one_minus_cosine) / rod_height);
        wall_area = R(2.0) * of.piston_area + R(lane_air::wall) * of.bore * travel;
    }
};

/// Rates per rad of crank angle, and what else the integrator asks of a state.
template <class R>
struct CrankingRates {
    R mass, energy, gauge;
    R pressure;        ///< Pa
    R pressure_rate;   ///< Pa/rad
    R density;         ///< kg/m3
    R wall_stiffness;  ///< how fast the walls alone would bring the gas to their temperature, 1/rad
    R leaked, work, wall_heat, enthalpy_out;  ///< the ledger: kg/rad out by the leak, J/rad
};

///     dU = -p dV - h A_wall (T - T_wall) dt - sum(out) cp T dm + sum(in) cp T0 dm,   U = m cv T
/// `valve_open` says whether the check valve may pass air. The poppet takes the cracking pressure, so the
/// flow starts from nothing. Source: first law for an open, homogeneous volume; flow through psi of gas.h.
template <bool valve_open, class R>
LAPWING_INLINE CrankingRates<R> cranking_rates(const CrankingConstants<R>& of, const CrankingPoint<R>& at) {
    CrankingRates<R> rate;
    const R energy_mass = at.energy * at.mass;
    const R inverse = R(1.0) / (energy_mass * at.volume);
    const R inverse_volume = energy_mass * inverse;
    const R pressure = R(lane_air::gamma - 1.0) * at.energy * inverse_volume;
    const R inverse_pressure = at.volume * at.volume * at.mass * inverse * R(1.0 / (lane_air::gamma - 1.0));
    const R inverse_heat = at.energy * at.volume * inverse * R(1.0 / lane_air::cv);  // of the gas, K/J
    const R temperature = at.energy * inverse_heat;
    const R density = at.mass * inverse_volume;

    const R over = pressure - of.ambient;
    const auto outward = over >= R(0.0);
    const R upstream = select(outward, pressure, of.ambient);
    const R leak_size = of.leak_per_rad *
                        flow_density(magnitude(over) * select(outward, inverse_pressure, R(1.0) / of.ambient),
                                     upstream, select(outward, density, of.ambient_density));
    const R leak = select(outward, leak_size, -leak_size);
    R enthalpy_out = leak * R(lane_air::gamma * lane_air::cv) * select(outward, temperature, of.air);
    R to_gauge(0.0);
    if constexpr (valve_open) {
        const R behind_poppet = of.gauge_pa_per_kg * at.gauge + of.crack;
        to_gauge =
            of.check_per_rad * flow_density((pressure - behind_poppet) * inverse_pressure, pressure, density);
        enthalpy_out = enthalpy_out + to_gauge * R(lane_air::gamma * lane_air::cv) * temperature;
    }
    const R wall_conductance = of.heat_per_rad * at.wall_area;
    rate.wall_heat = wall_conductance * (temperature - of.wall);
    rate.work = pressure * at.volume_rate;
    rate.enthalpy_out = enthalpy_out;
    rate.leaked = leak;
    rate.mass = -(leak + to_gauge);
    rate.energy = -rate.work - rate.wall_heat - enthalpy_out;
    rate.gauge = to_gauge;
    rate.pressure = pressure;
    rate.pressure_rate =
        (R(lane_air::gamma - 1.0) * rate.energy - pressure * at.volume_rate) * inverse_volume;
    rate.density = density;
    rate.wall_stiffness = wall_conductance * inverse_heat;
    return rate;
}

// NOLINTEND(cppcoreguidelines-pro-type-member-init)

}  // namespace lapwing::physics
