// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cmath>

/// What a shown "+-" means: the expanded uncertainty with coverage factor k = 2, about 95 % for the
/// near-normal results here (JCGM 100, 6.2.1 and G.6.6). Screens and reports say so once, on the page that
/// explains numbers.
namespace lapwing::uncertainty {

inline constexpr double coverage_factor = 2.0;
inline constexpr double coverage_probability = 0.95;

[[nodiscard]] constexpr double expanded(double standard_u) {
    return coverage_factor * standard_u;
}

/// Coverage factor for as many degrees of freedom, at the probability that the factor 2 has with endlessly
/// many (95.45 %): JCGM 100, G.3.2 and table G.2. Part degrees count down to the whole one (G.4.1, note 1);
/// fewer than one count as one, and endlessly many may be infinite.
[[nodiscard]] double student_factor(double degrees_of_freedom);

/// Whether a difference stands out of its own uncertainty. When not, it is the gauge's doing as far as anyone
/// can tell.
[[nodiscard]] inline bool stands_out(double difference, double standard_u) {
    return std::abs(difference) > expanded(standard_u);
}

}  // namespace lapwing::uncertainty
