// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/findings/case.h"
#include "core/uncertainty/instrument.h"

/// From the testers on the shelf to the error model of core/uncertainty. Internal to this room.
namespace lapwing::findings {

/// A gauge with what had to be assumed about it.
struct Instrument {
    uncertainty::Gauge gauge;
    std::vector<Input> inputs;   ///< class and scale, for derivations
    std::vector<Message> notes;  ///< what was assumed
};

/// The instrument behind readings around `reading_pa` (gauge Pa, above 0), written to `typed_step_pa`.
/// @param dial of the tester; null when the tester is not known
Instrument instrument_of(const Gauge* dial, double reading_pa, double typed_step_pa,
                         const Reference& reference);

/// Mean of repeats with its 95 % uncertainty, and how it was made. `readings` isn't empty and each has
/// `field`. The scatter of repeats is pooled with what such readings scatter in general ("repeat-scatter").
Derived mean_of(const Case& at, const std::vector<const Reading*>& readings,
                std::optional<TypedPressure> Reading::*field, const Gauge* dial);

/// 95 % uncertainty of a difference and of a quotient a/b of two gauge pressures read on one gauge.
double u95_difference(const uncertainty::Gauge& gauge, double a_pa, double b_pa);
double u95_quotient(const uncertainty::Gauge& gauge, double a_pa, double b_pa);

/// Wet against dry (above 0), as a share of the dry reading.
Derived rise_of(const Case& at, const Figure& dry, const Figure& wet, const Gauge* dial);
State state_of_rise(const Case& at, const Derived& rise);

}  // namespace lapwing::findings
