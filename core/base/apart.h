// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <cmath>

namespace lapwing {

// 10.2 bar and 1020 kPa are the same pressure, and their SI values differ in the last binary digit; so do
// 75 % of 100 psi and 75 psi. What was typed never comes as fine as that: a value is beyond a limit only
// where it would be so on paper. Every verdict on a limit asks here.

/// `value` is less than `limit` by more than conversion and sum round.
[[nodiscard]] inline bool is_below(double value, double limit) {
    constexpr double hair = 1e-9;
    return value < limit - hair * std::max(std::abs(value), std::abs(limit));
}

/// `value` is more than `limit` by more than conversion and sum round.
[[nodiscard]] inline bool is_above(double value, double limit) {
    return is_below(limit, value);
}

}  // namespace lapwing
