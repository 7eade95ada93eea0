// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <cstddef>

/// One step of an explicit Runge-Kutta pair; what is integrated, how long a step may be and where to stop is
/// the caller's business.
namespace lapwing::physics {

template <std::size_t N>
struct OdePoint {
    double x = 0.0;
    std::array<double, N> y{};
    std::array<double, N> dydx{};
};

template <std::size_t N>
struct OdeStep {
    OdePoint<N> end;                ///< carries the derivative the next step starts with
    std::array<double, N> error{};  ///< estimated local error of each component
};

/// Dormand and Prince's pair of orders 5(4), J. Comput. Appl. Math. 6 (1980) 19-26. Six evaluations of
/// `rates(x, y) -> dydx` a step, no allocation. Sums of components that the rates leave unchanged stay
/// unchanged to rounding, as in every Runge-Kutta method: mass and energy close whatever the step.
template <std::size_t N, class Rates>
[[nodiscard]] OdeStep<N> dormand_prince_step(const Rates& rates, const OdePoint<N>& from, double h) {
    using State = std::array<double, N>;
    const auto& y = from.y;
    const State& k1 = from.dydx;
    State at{};
    for (std::size_t i = 0; i < N; ++i)
        at[i] = y[i] + h * (1.0 / 5 * k1[i]);
    const State k2 = rates(from.x + h / 5, at);
    for (std::size_t i = 0; i < N; ++i)
        at[i] = y[i] + h * (3.0 / 40 * k1[i] + 9.0 / 40 * k2[i]);
    const State k3 = rates(from.x + h * 3 / 10, at);
    for (std::size_t i = 0; i < N; ++i) {
        at[i] = y[i] + h * (44.0 / 45 * k1[i] - 56.0 / 15 * k2[i] + 32.0 / 9 * k3[i]);
    }
    const State k4 = rates(from.x + h * 4 / 5, at);
    for (std::size_t i = 0; i < N; ++i) {
        at[i] = y[i] + h * (19372.0 / 6561 * k1[i] - 25360.0 / 2187 * k2[i] + 64448.0 / 6561 * k3[i] -
                            212.0 / 729 * k4[i]);
    }
    const State k5 = rates(from.x + h * 8 / 9, at);
    for (std::size_t i = 0; i < N; ++i) {
        at[i] = y[i] + h * (9017.0 / 3168 * k1[i] - 355.0 / 33 * k2[i] + 46732.0 / 5247 * k3[i] +
                            49.0 / 176 * k4[i] - 5103.0 / 18656 * k5[i]);
    }
    const State k6 = rates(from.x + h, at);
    OdeStep<N> step;
    step.end.x = from.x + h;
    for (std::size_t i = 0; i < N; ++i) {
        step.end.y[i] = y[i] + h * (35.0 / 384 * k1[i] + 500.0 / 1113 * k3[i] + 125.0 / 192 * k4[i] -
                                    2187.0 / 6784 * k5[i] + 11.0 / 84 * k6[i]);
    }
    step.end.dydx = rates(step.end.x, step.end.y);
    for (std::size_t i = 0; i < N; ++i) {
        step.error[i] = h * (71.0 / 57600 * k1[i] - 71.0 / 16695 * k3[i] + 71.0 / 1920 * k4[i] -
                             17253.0 / 339200 * k5[i] + 22.0 / 525 * k6[i] - 1.0 / 40 * step.end.dydx[i]);
    }
    return step;
}

}  // namespace lapwing::physics
