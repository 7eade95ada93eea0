// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <span>

#include "core/uncertainty/doubtful.h"

namespace lapwing::compare {

/// A straight line through values that share sources of error.
struct Line {
    double per_unit = 0.0;  ///< slope, in the values' unit by that of their places
    double u = 0.0;         ///< its standard uncertainty
    double misfit = 0.0;    ///< chi square by its degrees of freedom; 0 for two values
};

/// Generalised least squares with the values' full covariance (Aitken 1935; ISO/TS 28037 for the use). Where
/// the values scatter about the line by more than their doubt allows, u grows by the root of the misfit
/// (Birge's ratio) and by Student's t for so few. Only for two or more values at places that are not all the
/// same.
Line line_through(std::span<const double> places, std::span<const uncertainty::Doubtful> values);

}  // namespace lapwing::compare
