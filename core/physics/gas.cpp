// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/gas.h"

namespace lapwing::physics {

double critical_pressure_ratio() {
    return std::pow(2.0 / (gamma_air + 1.0), gamma_air / (gamma_air - 1.0));
}

double psi(double ratio) {
    constexpr double g = gamma_air;
    if (!(ratio < 1.0)) return 0.0;
    if (ratio <= critical_pressure_ratio()) {
        return std::sqrt(g) * std::pow(2.0 / (g + 1.0), (g + 1.0) / (2.0 * (g - 1.0)));
    }
    const double log_ratio = std::log(ratio);
    // r^(2/g) - r^((g+1)/g) with the common factor taken out, so that the small difference is computed as
    // such.
    const double difference = std::exp(2.0 / g * log_ratio) * -std::expm1((g - 1.0) / g * log_ratio);
    return std::sqrt(2.0 * g / (g - 1.0) * difference);
}

}  // namespace lapwing::physics
