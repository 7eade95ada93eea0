// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cmath>
#include <cstddef>
#include <vector>

namespace lapwing {

/// Places to look at, `step` apart (> 0), from `from` up to but not including `to`; none when `to` is not
/// beyond.
inline std::vector<double> stations(double from, double to, double step) {
    // An end that is met but for the last digits is no place of its own.
    const double count = std::ceil((to - from) / step - 1e-9);
    std::vector<double> places(count > 0.0 ? static_cast<std::size_t>(count) : 0);
    for (std::size_t i = 0; i < places.size(); ++i)
        places[i] = from + step * static_cast<double>(i);
    return places;
}

}  // namespace lapwing
