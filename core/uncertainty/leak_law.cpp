// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/leak_law.h"

#include <cmath>
#include <limits>

#include "core/physics/gas.h"
#include "core/uncertainty/coverage.h"
#include "core/uncertainty/first_order.h"

namespace lapwing::uncertainty {
namespace {

/// Exponent that a narrow gap shows between two held pressures: the ratio of its flow to a hole's.
double gap_exponent(const physics::LeakdownReading& one, const physics::LeakdownReading& other) {
    const auto as_hole = [](const physics::LeakdownReading& reading) {
        const double ambient_pa = reading.tester.ambient_pa;
        const double held_pa = ambient_pa + reading.held_gauge_pa;
        return (held_pa * held_pa - ambient_pa * ambient_pa) / (held_pa * physics::psi(ambient_pa / held_pa));
    };
    return std::log(as_hole(one) / as_hole(other)) / std::log(one.held_gauge_pa / other.held_gauge_pa);
}

LeakLawVerdict verdict_of(const LeakLawFit& fit) {
    const auto within = [&](double exponent) { return !stands_out(fit.exponent - exponent, fit.u); };
    const bool hole = within(0.0);
    const bool gap = within(fit.gap_exponent);
    if (hole && gap) return LeakLawVerdict::undecided;
    if (hole) return LeakLawVerdict::hole;
    if (gap) return LeakLawVerdict::narrow_gap;
    if (fit.exponent < 0.0) return LeakLawVerdict::seats;
    return fit.exponent > fit.gap_exponent ? LeakLawVerdict::opens : LeakLawVerdict::between;
}

}  // namespace

Result<LeakLawFit> leak_law(const Gauge& set_gauge, const Gauge& held_gauge, bool same_gauge,
                            const physics::LeakdownReading& one, const physics::LeakdownReading& other,
                            const LeakLawScatter& scatter) {
    if (auto ok = check(set_gauge); !ok) return tl::unexpected(ok.error());
    if (auto ok = check(held_gauge); !ok) return tl::unexpected(ok.error());
    const auto exponent = physics::leak_exponent(one, other);
    if (!exponent) return tl::unexpected(exponent.error());

    const Values<4> readings{one.tester.set_gauge_pa, one.held_gauge_pa, other.tester.set_gauge_pa,
                             other.held_gauge_pa};
    const double droop = scatter.droop_limit_pa / std::sqrt(3.0);
    const Values<4> own{droop, scatter.one_held_pa, droop, scatter.other_held_pa};
    Covariance<4> covariance{};
    for (std::size_t i = 0; i < 4; ++i) {
        for (std::size_t j = 0; j < 4; ++j) {
            const Gauge& gauge = i % 2 == 0 ? set_gauge : held_gauge;
            if (i == j) {
                const double u = u_reading_pa(gauge, readings[i]);
                covariance[i][i] = u * u + own[i] * own[i];
            } else if (same_gauge || i % 2 == j % 2) {
                covariance[i][j] = covariance_same_gauge_pa2(gauge, readings[i], readings[j]);
            }
        }
    }
    const auto exponent_of = [&](const Values<4>& at) {
        physics::LeakdownReading first = one;
        physics::LeakdownReading second = other;
        first.tester.set_gauge_pa = at[0];
        first.held_gauge_pa = at[1];
        second.tester.set_gauge_pa = at[2];
        second.held_gauge_pa = at[3];
        // Where a reading moved by its own doubt becomes impossible, any exponent is possible.
        return Values<1>{
            physics::leak_exponent(first, second).value_or(std::numeric_limits<double>::infinity())};
    };
    LeakLawFit fit;
    fit.exponent = *exponent;
    fit.gap_exponent = gap_exponent(one, other);
    const double u = propagate<1>(exponent_of, readings, covariance).u(0);
    fit.u = std::isfinite(u) ? u : std::numeric_limits<double>::infinity();
    fit.verdict = verdict_of(fit);
    return fit;
}

}  // namespace lapwing::uncertainty
