// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/shop.h"

#include "core/physics/atmosphere.h"

namespace lapwing::cli {

std::vector<Option> shop_options() {
    return {{"--altitude", "LENGTH", "altitude of the shop (standard atmosphere, ISO 2533)"},
            {"--ambient", "PRESSURE",
             "instead of it: what a barometer in the shop shows, absolute; not a weather report's sea-level "
             "figure"}};
}

tl::expected<double, Failure> read_shop_pa(Arguments& arguments) {
    arguments.either("--altitude", "--ambient");
    const auto ambient = arguments.quantity<PressureTag>("--ambient");
    const auto altitude = arguments.quantity<LengthTag>("--altitude");
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    if (ambient) return ambient->si();
    if (!altitude) return physics::sea_level_pa;
    const auto pressure = physics::standard_pressure_pa(altitude->si());
    if (!pressure) return refused(pressure.error());
    return *pressure;
}

double shop_doubt(const Arguments& arguments, const findings::Reference& reference) {
    if (arguments.has("--ambient")) return 0.5 * reference.assumed("barometer-doubt");
    return arguments.has("--altitude") ? 0.5 * reference.assumed("weather-doubt") : 0.0;
}

std::vector<Option> joined(std::vector<Option> first, const std::vector<Option>& second) {
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

}  // namespace lapwing::cli
