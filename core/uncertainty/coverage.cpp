// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/uncertainty/coverage.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>

namespace lapwing::uncertainty {

double student_factor(double degrees_of_freedom) {
    constexpr double as_good_as_endless = 1e6;
    if (!(degrees_of_freedom < as_good_as_endless)) return coverage_factor;
    constexpr double upper_tail = 0.022750131948179;  // of the normal distribution beyond 2
    const boost::math::students_t student(std::max(1.0, std::floor(degrees_of_freedom)));
    return boost::math::quantile(boost::math::complement(student, upper_tail));
}

}  // namespace lapwing::uncertainty
