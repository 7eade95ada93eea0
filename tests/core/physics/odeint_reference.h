// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <array>
#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <vector>

#include "core/physics/cranking.h"

/// The cranking model a second time, written down from its equations and integrated by a library:
/// Boost.Odeint's controlled Dormand-Prince 5 with dense output, stopped wherever check valve or leak switch.
/// It shares with the code under test the description of a case and nothing else.
namespace lapwing::physics::reference {

using State = std::array<double, 3>;  ///< mass, energy, gauge mass, each over its value at closing

class Cylinder {
public:
    explicit Cylinder(const CrankingCase& of) : of_(of) {
        const double area = 3.14159265358979 / 4 * of.crank.bore_m * of.crank.bore_m;
        piston_area_ = area;
        const double swept = area * of.crank.stroke_m;
        const double trapped = area * travel(closing());
        chamber_ = of.ratio_kind == CompressionRatioKind::geometric ? swept / (of.compression_ratio - 1)
                                                                    : trapped / (of.compression_ratio - 1);
        const auto& tester = of.tester;
        const bool at_plug = tester.check_valve == CheckValvePlace::plug;
        chamber_ += tester.fitting_m3 + (at_plug ? 0.0 : tester.hose_m3) - of.oil_m3;
        gauge_volume_ = at_plug ? tester.hose_m3 : tester.gauge_alone_m3;
        kg_ = of.fill * of.ambient_pa * volume(closing()) / (gas * of.air_k);
        joule_ = kg_ * cv * of.air_k;
        gauge_kg_ = of.ambient_pa * gauge_volume_ / (gas * of.air_k);
    }

    bool valve_open = false;
    bool leak_outward = true;

    [[nodiscard]] double closing() const { return of_.closing_after_bdc_rad - 3.14159265358979; }
    [[nodiscard]] double opening() const { return 3.14159265358979 - of_.opening_before_bdc_rad; }
    [[nodiscard]] double pressure(const State& y, double theta) const {
        return 0.4 * y[1] * joule_ / volume(theta);
    }
    [[nodiscard]] double gauge_pa(double share) const {
        return share * gauge_kg_ * gas * of_.air_k / gauge_volume_;
    }
    /// Above zero where the poppet is lifted.
    [[nodiscard]] double lift(const State& y, double theta) const {
        return pressure(y, theta) - gauge_pa(y[2]) - of_.tester.crack_pa;
    }
    [[nodiscard]] double over_ambient(const State& y, double theta) const {
        return pressure(y, theta) - of_.ambient_pa;
    }

    void operator()(const State& y, State& rate, double theta) const {
        const double seconds = 1 / of_.speed_rad_s;  // per rad
        const double kg = y[0] * kg_;
        const double p = pressure(y, theta);
        const double kelvin = y[1] * joule_ / (kg * cv);
        const double leak = leak_outward ? flow(of_.leak_m2, p, kelvin, of_.ambient_pa)
                                         : -flow(of_.leak_m2, of_.ambient_pa, of_.air_k, p);
        const double into_gauge =
            valve_open ? flow(of_.tester.check_area_m2, p, kelvin, gauge_pa(y[2]) + of_.tester.crack_pa) : 0;
        const double walls = of_.heat_w_m2k *
                             (2 * piston_area_ + 3.14159265358979 * of_.crank.bore_m * travel(theta)) *
                             (kelvin - of_.wall_k);
        const double enthalpy = cp * (leak * (leak_outward ? kelvin : of_.air_k) + into_gauge * kelvin);
        rate[0] = -(leak + into_gauge) * seconds / kg_;
        rate[1] = (-p * volume_rate(theta) - (walls + enthalpy) * seconds) / joule_;
        rate[2] = into_gauge * seconds / gauge_kg_;
    }

private:
    static constexpr double gas = 287.05;
    static constexpr double cv = gas / 0.4;
    static constexpr double cp = cv + gas;

    [[nodiscard]] double travel(double theta) const {
        const double r = of_.crank.stroke_m / 2;
        const double l = of_.crank.rod_m;
        return r * (1 - std::cos(theta)) + l - std::sqrt(l * l - std::pow(r * std::sin(theta), 2));
    }
    [[nodiscard]] double volume(double theta) const { return chamber_ + piston_area_ * travel(theta); }
    [[nodiscard]] double volume_rate(double theta) const {
        const double r = of_.crank.stroke_m / 2;
        const double l = of_.crank.rod_m;
        const double s = r * std::sin(theta);
        return piston_area_ * (s + s * r * std::cos(theta) / std::sqrt(l * l - s * s));
    }
    /// A p_u / sqrt(R T_u) psi(p_d / p_u), its vertical edge at no drop straightened a hundred times closer
    /// than in the code under test.
    [[nodiscard]] static double flow(double area, double up, double kelvin, double down) {
        constexpr double straight = 1e-7;
        const double drop = 1 - down / up;
        if (!(drop > 0)) return 0;
        const double ratio = std::max(1 - std::max(drop, straight), 0.52828178771);
        const double psi = std::sqrt(7 * (std::pow(ratio, 2 / 1.4) - std::pow(ratio, 2.4 / 1.4)));
        return area * up / std::sqrt(gas * kelvin) * psi * std::min(drop / straight, 1.0);
    }

    CrankingCase of_;
    double piston_area_ = 0, chamber_ = 0, gauge_volume_ = 0;
    double kg_ = 0, joule_ = 0, gauge_kg_ = 0;
};

/// Gauge pressure after each stroke, Pa. A run that does not end within a million steps returns what it has.
/// @param longest_rad no longer steps, or a valve that lifts and falls between two of them goes unseen
inline std::vector<double> puffs(const CrankingCase& of, double tolerance = 1e-10,
                                 double longest_rad = 2e-3) {
    namespace ode = boost::numeric::odeint;
    std::vector<double> out;
    double gauge_share = 1;
    long steps = 0;
    for (int stroke = 0; stroke < of.strokes; ++stroke) {
        Cylinder cylinder(of);
        State y{1, 1, gauge_share};
        double theta = cylinder.closing();
        const double end = cylinder.opening();
        cylinder.leak_outward = cylinder.over_ambient(y, theta) >= 0;
        cylinder.valve_open = cylinder.lift(y, theta) > 0;
        double step = std::min(1e-3, longest_rad);
        while (theta < end) {
            auto stepper =
                ode::make_dense_output(tolerance, tolerance, longest_rad, ode::runge_kutta_dopri5<State>());
            stepper.initialize(y, theta, std::min(step, end - theta));
            const auto switched = [&](const State& at, double angle) {
                return (cylinder.lift(at, angle) > 0) != cylinder.valve_open ||
                       (cylinder.over_ambient(at, angle) >= 0) != cylinder.leak_outward;
            };
            // Just after a switching rounding may see the old side once more: look from the first step's end.
            bool found = false;
            while (!found && stepper.current_time() < end) {
                if (++steps > 1000000) return out;
                stepper.do_step(cylinder);
                const double to = std::min(stepper.current_time(), end);
                State at{};
                stepper.calc_state(to, at);
                found = switched(at, to);
                double last = to;
                if (found) {
                    double first = stepper.previous_time();
                    while (last - first > 1e-13) {
                        const double middle = (first + last) / 2;
                        if (middle <= first || middle >= last) break;
                        stepper.calc_state(middle, at);
                        (switched(at, middle) ? last : first) = middle;
                    }
                    stepper.calc_state(last, at);
                }
                y = at;
                theta = last;
            }
            step = std::min({1e-3, longest_rad, std::max(1e-9, stepper.current_time_step())});
            cylinder.valve_open = cylinder.lift(y, theta) > 0;
            cylinder.leak_outward = cylinder.over_ambient(y, theta) >= 0;
        }
        gauge_share = y[2];
        out.push_back(cylinder.gauge_pa(gauge_share) - of.ambient_pa);
    }
    return out;
}

}  // namespace lapwing::physics::reference
