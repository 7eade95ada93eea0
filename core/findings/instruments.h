// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <initializer_list>
#include <string_view>
#include <utility>
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

/// What final readings or first puffs of about `level_pa` scatter by, before this cylinder's own repeats are
/// looked at: what such readings scatter in general, pooled with what the repeats of the visit's other
/// cylinders show.
uncertainty::Repeatability usual_scatter(const Case& at, TestKind test,
                                         std::optional<TypedPressure> Reading::*field, int cylinder,
                                         double level_pa);

/// Mean of repeats with its 95 % uncertainty, and how it was made. `readings` isn't empty and each has
/// `field`. Their scatter is pooled with the usual one, which stands alone for one reading.
/// @param scatter what its part of the doubt is called: "doubt:" and this
Derived mean_of(const Case& at, const std::vector<const Reading*>& readings,
                std::optional<TypedPressure> Reading::*field, const Gauge* dial,
                const uncertainty::Repeatability& usual, std::string_view scatter = "scatter");

/// What scatter adds to the doubt of a mean, 95 %. Unlike the gauge's own errors it never cancels. Values of
/// any unit; not empty.
double scatter_u95(const std::vector<double>& values, const uncertainty::Repeatability& usual);

/// The part of each in a doubt that they make up together, largest first; u in any unit. What brings less
/// than half a percent is left out.
std::vector<DoubtShare> doubt_shares(std::initializer_list<std::pair<std::string_view, double>> parts);

/// Parts of a range, widest first: the width that each of them, independent, opens by itself. What opens less
/// than a twentieth of the widest is left out.
std::vector<RangePart> range_parts(Dimension width,
                                   std::initializer_list<std::pair<std::string_view, double>> parts);

/// 95 % uncertainty of a number but for what one thing brings to it, "leak_repeat".
double u95_without(const Derived& number, std::string_view doubt);

/// 95 % uncertainty of a quotient a/b (b > 0) of two means that scatter by so much, beside the gauge's part.
double with_scatter(double u95, double a, double a_scatter_u95, double b, double b_scatter_u95);

/// 95 % uncertainty of a difference and of a quotient a/b of two gauge pressures read on one gauge.
double u95_difference(const uncertainty::Gauge& gauge, double a_pa, double b_pa);
double u95_quotient(const uncertainty::Gauge& gauge, double a_pa, double b_pa);

/// First puff of the final reading (above 0), on one gauge. Only where there is a first puff.
Derived first_share_of(const Case& at, const Cranking& of, const Gauge* dial, double step_pa);

/// Wet against dry (above 0), as a share of the dry reading.
Derived rise_of(const Case& at, const Cranking& dry, const Cranking& wet, const Gauge* dial);

}  // namespace lapwing::findings
