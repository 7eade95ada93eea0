// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/base/result.h"
#include "core/physics/leakdown_law.h"
#include "core/uncertainty/instrument.h"

/// What two leak-down readings at two set pressures say about a leak's law, and whether the gauges can tell.
namespace lapwing::uncertainty {

enum class LeakLawVerdict {
    undecided,   ///< hole and narrow gap are both within the doubt, or the gauges cannot tell at all
    hole,        ///< area the same at both pressures
    narrow_gap,  ///< flow as through a long narrow gap
    seats,       ///< pressure closes it: a ring or valve pressed to its seat
    opens,       ///< pressure opens it more than a gap: a gasket lifting, say
    between,     ///< between hole and narrow gap, and neither
};

struct LeakLawFit {
    double exponent = 0.0;      ///< n of A ~ p^n, physics::leak_exponent
    double u = 0.0;             ///< standard uncertainty; infinite when the readings allow any
    double gap_exponent = 0.0;  ///< what a narrow gap would show at these held pressures
    LeakLawVerdict verdict = LeakLawVerdict::undecided;
};

/// What no reading shares with another, beside the gauges' own errors.
struct LeakLawScatter {
    double droop_limit_pa = 0.0;  ///< as in leakage_one_gauge, of each set pressure by itself
    /// Of what is held, standard: the leak itself is not the same twice.
    double one_held_pa = 0.0;
    double other_held_pa = 0.0;
};

/// First order (JCGM 100), all four readings at once: what the two gauges share is counted once for each. One
/// gauge after the restrictor: give it as both, and `same_gauge`. Fails as physics::leak_exponent and as
/// `check(gauge)`.
[[nodiscard]] Result<LeakLawFit> leak_law(const Gauge& set_gauge, const Gauge& held_gauge, bool same_gauge,
                                          const physics::LeakdownReading& one,
                                          const physics::LeakdownReading& other,
                                          const LeakLawScatter& scatter = {});

}  // namespace lapwing::uncertainty
