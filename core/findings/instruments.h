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

/// What the scatter of repeats adds to the doubt of their mean, 95 %; 0 for one reading. Unlike the gauge's
/// own errors it never cancels.
double scatter_u95(const Case& at, const std::vector<const Reading*>& readings,
                   std::optional<TypedPressure> Reading::*field);

/// 95 % uncertainty of a quotient a/b (b > 0) of two means that scatter by so much, beside the gauge's part.
double with_scatter(double u95, double a, double a_scatter_u95, double b, double b_scatter_u95);

/// 95 % uncertainty of a difference and of a quotient a/b of two gauge pressures read on one gauge.
double u95_difference(const uncertainty::Gauge& gauge, double a_pa, double b_pa);
double u95_quotient(const uncertainty::Gauge& gauge, double a_pa, double b_pa);

/// Wet against dry (above 0), as a share of the dry reading.
Derived rise_of(const Case& at, const Cranking& dry, const Cranking& wet, const Gauge* dial);
State state_of_rise(const Case& at, const Derived& rise);

}  // namespace lapwing::findings
