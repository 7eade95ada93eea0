// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "core/base/result.h"
#include "core/uncertainty/first_order.h"

/// Propagation of distributions by Monte Carlo: JCGM 101.
namespace lapwing::uncertainty {

/// Random numbers of one trial. Counter-based: a number depends on seed, trial and place in the trial alone,
/// so that results do not change with the order of trials, their spreading over threads, or the machine. (The
/// distributions of the standard library differ between its makers.)
class Draws {
public:
    Draws(std::uint64_t seed, std::uint64_t trial) : state_(mixed(mixed(seed) + trial)) {}

    /// Uniform in (0, 1), both ends left out.
    [[nodiscard]] double uniform() {
        state_ += golden;
        return (static_cast<double>(mixed(state_) >> 11U) + 0.5) * 0x1.0p-53;
    }
    [[nodiscard]] double rectangular(double middle, double half_width) {
        return middle + half_width * (2.0 * uniform() - 1.0);
    }
    /// Mean 0, standard deviation 1 (Box and Muller).
    [[nodiscard]] double standard_normal() {
        constexpr double two_pi = 6.283185307179586;
        const double radius = std::sqrt(-2.0 * std::log(uniform()));
        return radius * std::cos(two_pi * uniform());
    }
    [[nodiscard]] double normal(double mean, double sd) { return mean + sd * standard_normal(); }

    /// Correlated normal values; `lower` from `cholesky`.
    template <std::size_t N>
    [[nodiscard]] Values<N> normal(const Values<N>& mean, const Covariance<N>& lower) {
        Values<N> free{};
        for (double& value : free)
            value = standard_normal();
        Values<N> out = mean;
        for (std::size_t i = 0; i < N; ++i) {
            for (std::size_t j = 0; j <= i; ++j)
                out[i] += lower[i][j] * free[j];
        }
        return out;
    }

private:
    static constexpr std::uint64_t golden = 0x9e3779b97f4a7c15U;
    /// Finalizer of SplitMix64: Steele, Lea and Flood, OOPSLA 2014.
    [[nodiscard]] static std::uint64_t mixed(std::uint64_t z) {
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
        return z ^ (z >> 31U);
    }

    std::uint64_t state_;
};

/// Lower triangle L with L L^T = covariance. A covariance that is not one (correlations that contradict each
/// other) fails with "uncertainty.covariance".
template <std::size_t N>
[[nodiscard]] Result<Covariance<N>> cholesky(const Covariance<N>& covariance) {
    Covariance<N> lower{};
    for (std::size_t i = 0; i < N; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double rest = covariance[i][j];
            for (std::size_t k = 0; k < j; ++k)
                rest -= lower[i][k] * lower[j][k];
            if (i == j) {
                const double slack =
                    1e-9 * covariance[i][i];  // fully correlated inputs leave a rounding error
                if (!(rest >= -slack)) {
                    return fail("uncertainty.covariance",
                                "The correlations given contradict each other at input {}. Correct them.",
                                i + 1);
                }
                lower[i][i] = std::sqrt(std::max(rest, 0.0));
            } else {
                lower[i][j] = lower[j][j] > 0.0 ? rest / lower[j][j] : 0.0;
            }
        }
    }
    return lower;
}

struct MonteCarlo {
    double mean = 0.0;
    double u = 0.0;    ///< standard deviation of the trials
    double low = 0.0;  ///< probabilistically symmetric 95 % interval (JCGM 101, 7.7)
    double high = 0.0;
};

/// Mean, spread and interval of trials in any order. Fails with "uncertainty.trials" for fewer than 1000, or
/// when one is not a finite number.
[[nodiscard]] Result<MonteCarlo> summarize(std::vector<double> trials);

/// Runs `model(Draws&) -> double` once a trial, each with its own draws.
template <class Model>
[[nodiscard]] Result<MonteCarlo> monte_carlo(const Model& model, std::uint64_t seed,
                                             std::size_t trials = 200000) {
    std::vector<double> results(trials);
    for (std::size_t trial = 0; trial < trials; ++trial) {
        Draws draws(seed, trial);
        results[trial] = model(draws);
    }
    return summarize(std::move(results));
}

}  // namespace lapwing::uncertainty
