// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

#include "core/physics/cranking.h"
#include "core/physics/dormand_prince.h"

/// Integrates one compression stroke; for cranking.cpp alone.
namespace lapwing::physics {

/// Highest point of the cubic through two ends with their slopes, if it lies between them.
struct CubicTop {
    bool inside = false;
    double fraction = 0.0;  ///< of the way from the first end
    double value = 0.0;
};

[[nodiscard]] inline CubicTop top_between(double first, double first_slope, double last, double last_slope,
                                          double h) {
    if (!(first_slope > 0.0 && last_slope < 0.0)) return {};
    // Hermite's cubic in t = 0..1: a t^3 + b t^2 + c t + first, with its derivative's falling root.
    const double c = first_slope * h;
    const double d = last_slope * h;
    const double a = 2.0 * (first - last) + c + d;
    const double b = 3.0 * (last - first) - 2.0 * c - d;
    const double root = std::sqrt(std::max(b * b - 3.0 * a * c, 0.0));
    const double t = c / (root - b);
    if (!(t >= 0.0 && t <= 1.0)) return {};
    return {true, t, ((a * t + b) * t + c) * t + first};
}

template <std::size_t N>
class Stroke {
public:
    using Point = OdePoint<N>;

    Stroke(const CrankingTerms& terms, const CrankingAccuracy& accuracy)
        : terms_(terms), accuracy_(accuracy) {
        const double closed_m3 = terms.crank.volume_m3(terms.closing_rad, terms.clearance_m3);
        const double charge_kg = terms.charge_pa * closed_m3 / (gas_constant_air * terms.air_k);
        charge_.x = terms.closing_rad;
        charge_.y[cranking_state::mass] = charge_kg;
        charge_.y[cranking_state::energy] = charge_kg * cv_air * terms.air_k;
        scale_ = charge_.y;
        // The gauge's air counts on the scale of a low reading: errors of its filling add up stroke by
        // stroke.
        scale_[cranking_state::gauge_mass] =
            std::min(charge_kg, 0.3 * terms.ambient_pa * terms.gauge_m3 / (gas_constant_air * terms.air_k));
    }

    [[nodiscard]] const Point& charge() const { return charge_; }
    [[nodiscard]] int steps() const { return steps_; }
    [[nodiscard]] bool gave_up() const { return steps_ >= most_steps; }
    [[nodiscard]] double peak_pa() const { return peak_pa_; }
    [[nodiscard]] double peak_rad() const { return peak_rad_; }

    /// Valve shut, from `from` until the cylinder reaches `threshold_pa`: true with `at` on the spot, false
    /// when the pressure turned before. `at.y[gauge_mass]` is the caller's and stays as it is.
    bool run_shut(const Point& from, double threshold_pa, Point& at) {
        Point here = renewed<false>(from);
        if (pressure(here) >= threshold_pa) {
            at = here;
            return true;
        }
        double h = first_step_rad;
        while (here.x < terms_.opening_rad && !gave_up()) {
            const auto step = accepted<false>(here, h);
            // Where the leak turns from in to out its flow has a root's edge, which no error estimate sees
            // inside a step: begin a new one there. Once: a large leak may hover about that pressure.
            if (terms_.leak_m2 > 0.0 && !leak_turned_ && pressure(here) < terms_.ambient_pa &&
                pressure(step.end) > terms_.ambient_pa &&
                locate(here, step.end.x - here.x, terms_.ambient_pa, here)) {
                leak_turned_ = true;
                h = first_step_rad;
                continue;
            }
            const CubicTop top = note_peak<false>(here, step.end);
            const bool crossed = pressure(step.end) >= threshold_pa;
            if (crossed || (top.inside && top.value > threshold_pa)) {
                const double reach = (step.end.x - here.x) * (crossed ? 1.0 : top.fraction);
                if (locate(here, reach, threshold_pa, at)) return true;
            }
            here = step.end;
            if (top.inside && here.x > past_any_second_rise_rad) break;
        }
        at = here;
        return false;
    }

    /// Valve open, from the spot `run_shut` found until the cylinder falls below the gauge.
    Point run_open(const Point& from) {
        Point here = renewed<true>(from);
        double h = first_step_rad;
        while (here.x < terms_.opening_rad && !gave_up()) {
            const auto step = accepted<true>(here, h);
            note_peak<true>(here, step.end);
            here = step.end;
            // The flow has faded to nothing at the crossing and the rates hold it there: no need to find the
            // spot.
            const bool shut = pressure(here) <=
                              gauge_pressure_pa(terms_, here.y[cranking_state::gauge_mass]) + terms_.crack_pa;
            if (shut && pressure_rate(here) < 0.0 && here.x > past_any_second_rise_rad) break;
        }
        return here;
    }

private:
    static constexpr int most_steps =
        200000;  // a tight cylinder takes about 30, a plug hole at 10 rpm far more
    // From here on a pressure that falls does not rise again before the exhaust opens. Earlier it may: cold
    // walls or a leak can win for a while against a piston still slow.
    static constexpr double past_any_second_rise_rad = -0.35;
    static constexpr double first_step_rad = 2e-3;

    template <bool valve_open>
    [[nodiscard]] auto rates() const {
        return [this](double theta, const std::array<double, N>& y) {
            return cranking_rates<valve_open>(terms_, theta, y);
        };
    }
    template <bool valve_open>
    [[nodiscard]] Point renewed(Point point) const {
        point.dydx = rates<valve_open>()(point.x, point.y);
        return point;
    }
    [[nodiscard]] double pressure(const Point& at) const { return cylinder_pressure_pa(terms_, at.x, at.y); }
    [[nodiscard]] double pressure_rate(const Point& at) const {
        const double volume = terms_.crank.volume_m3(at.x, terms_.clearance_m3);
        return ((gamma_air - 1.0) * at.dydx[cranking_state::energy] -
                pressure(at) * terms_.crank.volume_rate_m3(at.x)) /
               volume;
    }

    /// One step within tolerance, `h` tried first and left at the length to try next.
    template <bool valve_open>
    OdeStep<N> accepted(const Point& from, double& h) {
        constexpr double shortest_rad = 1e-9;
        for (;;) {
            h = std::min({h, accuracy_.longest_step_rad, terms_.opening_rad - from.x});
            const auto step = dormand_prince_step<N>(rates<valve_open>(), from, h);
            ++steps_;
            double worst = 0.0;
            for (std::size_t i = 0; i < cranking_state::model_size; ++i) {
                const double relative = std::abs(step.error[i]) / (accuracy_.tolerance * scale_[i]);
                worst = relative <= worst ? worst : relative;  // a NaN counts as worse
            }
            const bool good = worst <= 1.0;
            const double factor =
                std::isfinite(worst) ? std::clamp(0.9 * std::pow(worst + 1e-12, -0.2), 0.2, 4.0) : 0.2;
            const double taken = h;
            h *= factor;
            if (good || taken <= shortest_rad || gave_up()) return step;
        }
    }

    /// Keeps the highest pressure met. A top inside the step is stepped to once, so that the cubic that
    /// places it spans a small piece only.
    template <bool valve_open>
    CubicTop note_peak(const Point& from, const Point& to) {
        note(from.x, pressure(from));
        note(to.x, pressure(to));
        CubicTop top = top_between(from, to);
        if (!top.inside) return top;
        const double h = to.x - from.x;
        const Point middle = dormand_prince_step<N>(rates<valve_open>(), from, top.fraction * h).end;
        ++steps_;
        top.value = pressure(middle);
        note(middle.x, top.value);
        const bool later = pressure_rate(middle) > 0.0;
        const Point& left = later ? middle : from;
        const Point& right = later ? to : middle;
        const CubicTop finer = top_between(left, right);
        if (finer.inside) {
            top.fraction = (left.x + finer.fraction * (right.x - left.x) - from.x) / h;
            top.value = finer.value;
            note(from.x + top.fraction * h, top.value);
        }
        return top;
    }
    void note(double at_rad, double pressure_pa) {
        if (pressure_pa > peak_pa_) {
            peak_pa_ = pressure_pa;
            peak_rad_ = at_rad;
        }
    }
    [[nodiscard]] CubicTop top_between(const Point& from, const Point& to) const {
        return physics::top_between(pressure(from), pressure_rate(from), pressure(to), pressure_rate(to),
                                    to.x - from.x);
    }

    /// The point within `reach` of `from` where the pressure passes the threshold, by halving a single step's
    /// length: exact to the step's own error, and safe where the curve is flat.
    bool locate(const Point& from, double reach, double threshold_pa, Point& at) {
        double below = 0.0;
        double above = reach;
        Point end = dormand_prince_step<N>(rates<false>(), from, above).end;
        ++steps_;
        if (pressure(end) < threshold_pa) return false;
        double below_by = pressure(from) - threshold_pa;
        double above_by = pressure(end) - threshold_pa;
        for (int i = 0; i < 60 && above - below > 1e-10; ++i) {
            // Illinois false position; every third time plain halving.
            const double guess = i % 3 == 2 ? 0.5 * (below + above)
                                            : below - below_by * (above - below) / (above_by - below_by);
            const Point tried = dormand_prince_step<N>(rates<false>(), from, guess).end;
            ++steps_;
            const double by = pressure(tried) - threshold_pa;
            if (by >= 0.0) {
                end = tried;
                above = guess;
                above_by = by;
            } else {
                below = guess;
                below_by = by;
            }
            if (by >= 0.0 && by < 1e-9 * threshold_pa) break;
        }
        at = end;
        return true;
    }

    CrankingTerms terms_;
    CrankingAccuracy accuracy_;
    Point charge_;
    std::array<double, N> scale_{};
    double peak_pa_ = 0.0;
    double peak_rad_ = 0.0;
    int steps_ = 0;
    bool leak_turned_ = false;
};

}  // namespace lapwing::physics
