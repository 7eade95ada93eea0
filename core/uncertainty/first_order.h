// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <array>
#include <cmath>
#include <cstddef>

/// Law of propagation of uncertainty with correlated inputs: JCGM 100, 5.2.2.
namespace lapwing::uncertainty {

template <std::size_t N>
using Values = std::array<double, N>;
template <std::size_t N>
using Covariance = std::array<std::array<double, N>, N>;

/// Covariance of inputs with standard uncertainties `u`; independent ones without a second argument.
/// @param correlation coefficients, -1..1, symmetric, ones on the diagonal
template <std::size_t N>
[[nodiscard]] Covariance<N> covariance_of(const Values<N>& u, const Covariance<N>& correlation) {
    Covariance<N> out{};
    for (std::size_t i = 0; i < N; ++i) {
        for (std::size_t j = 0; j < N; ++j)
            out[i][j] = correlation[i][j] * u[i] * u[j];
    }
    return out;
}
template <std::size_t N>
[[nodiscard]] Covariance<N> covariance_of(const Values<N>& u) {
    Covariance<N> out{};
    for (std::size_t i = 0; i < N; ++i)
        out[i][i] = u[i] * u[i];
    return out;
}

template <std::size_t M>
struct Propagated {
    Values<M> value{};
    Covariance<M> covariance{};

    [[nodiscard]] double u(std::size_t i) const { return std::sqrt(covariance[i][i]); }
    [[nodiscard]] double correlation(std::size_t i, std::size_t j) const {
        return covariance[i][j] / (u(i) * u(j));
    }
};

/// Propagates through `function(Values<N>) -> Values<M>`. Partial derivatives are half differences over one
/// standard uncertainty to either side (JCGM 100, 5.1.3, note 2): wide enough that a function computed to a
/// tolerance is not differentiated in its noise. The function must take such arguments.
template <std::size_t M, std::size_t N, class Function>
[[nodiscard]] Propagated<M> propagate(const Function& function, const Values<N>& inputs,
                                      const Covariance<N>& covariance) {
    Propagated<M> out;
    out.value = function(inputs);
    std::array<Values<M>, N> partials{};
    for (std::size_t i = 0; i < N; ++i) {
        const double step = std::sqrt(covariance[i][i]);
        if (!(step > 0.0)) continue;  // known exactly: adds nothing
        Values<N> above = inputs;
        Values<N> below = inputs;
        above[i] += step;
        below[i] -= step;
        const Values<M> high = function(above);
        const Values<M> low = function(below);
        for (std::size_t k = 0; k < M; ++k)
            partials[i][k] = (high[k] - low[k]) / (above[i] - below[i]);
    }
    for (std::size_t k = 0; k < M; ++k) {
        for (std::size_t l = 0; l < M; ++l) {
            for (std::size_t i = 0; i < N; ++i) {
                for (std::size_t j = 0; j < N; ++j) {
                    out.covariance[k][l] += partials[i][k] * covariance[i][j] * partials[j][l];
                }
            }
        }
    }
    return out;
}

}  // namespace lapwing::uncertainty
