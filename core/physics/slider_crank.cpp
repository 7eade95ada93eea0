// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/slider_crank.h"

namespace lapwing::physics {

Status check(const SliderCrank& crank) {
    constexpr double smallest_m = 0.005;
    constexpr double largest_m = 1.5;
    const auto sensible = [](double size_m) { return size_m >= smallest_m && size_m <= largest_m; };
    if (!sensible(crank.bore_m)) {
        return fail("engine.bore", "A bore of {:.6g} mm is not an engine's. Give 5 to 1500 mm.",
                    crank.bore_m * 1e3);
    }
    if (!sensible(crank.stroke_m)) {
        return fail("engine.stroke", "A stroke of {:.6g} mm is not an engine's. Give 5 to 1500 mm.",
                    crank.stroke_m * 1e3);
    }
    if (!(crank.rod_m > 0.6 * crank.stroke_m && crank.rod_m < 10.0)) {
        return fail(
            "engine.rod",
            "A connecting rod of {:.6g} mm does not fit a stroke of {:.6g} mm. Give the length between the "
            "centres of "
            "its eyes; it is usually 1.5 to 2 times the stroke.",
            crank.rod_m * 1e3, crank.stroke_m * 1e3);
    }
    return {};
}

double clearance_volume_m3(const SliderCrank& crank, double compression_ratio) {
    return crank.displacement_m3() / (compression_ratio - 1.0);
}

double trapped_clearance_volume_m3(const SliderCrank& crank, double trapped_ratio,
                                   double closing_after_bdc_rad) {
    return crank.piston_area_m2() * crank.piston_travel_m(pi - closing_after_bdc_rad) / (trapped_ratio - 1.0);
}

}  // namespace lapwing::physics
