// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <random>

#include "core/physics/cranking.h"

namespace lapwing::physics {

/// Engines, testers and faults drawn over everything a workshop may meet, the corners included. The same seed
/// gives the same cases everywhere.
class DrawnCases {
public:
    explicit DrawnCases(std::uint64_t seed) : bits_(seed) {}

    [[nodiscard]] double between(double low, double high) {
        return low + (high - low) * (static_cast<double>(bits_() >> 11U) * 0x1.0p-53);
    }
    [[nodiscard]] bool chance(double of) { return between(0, 1) < of; }

    [[nodiscard]] CrankingCase next() {
        CrankingCase of;
        of.crank.bore_m = between(0.038, 0.150);
        of.crank.stroke_m = of.crank.bore_m * between(0.6, 1.4);
        of.crank.rod_m = of.crank.stroke_m * between(1.4, 2.2);
        const bool two_stroke = chance(0.25);
        of.ratio_kind = two_stroke ? CompressionRatioKind::trapped : CompressionRatioKind::geometric;
        of.compression_ratio = two_stroke ? between(6, 12) : between(6, 22);
        of.closing_after_bdc_rad = (two_stroke ? between(70, 110) : between(20, 100)) * degree;
        of.opening_before_bdc_rad = between(30, 100) * degree;
        of.speed_rad_s = between(60, 600) * per_minute;
        of.leak_m2 = chance(0.15) ? 0.0 : between(0, 5) * 1e-6;
        of.fill = chance(0.3) ? between(0.3, 1) : 1.0;  // throttle
        of.ambient_pa = between(70e3, 103e3);
        of.air_k = between(265, 315);
        of.wall_k = between(265, 370);
        of.heat_w_m2k = between(50, 500);
        const double chamber_m3 =
            two_stroke ? trapped_clearance_volume_m3(of.crank, of.compression_ratio, of.closing_after_bdc_rad)
                       : clearance_volume_m3(of.crank, of.compression_ratio);
        of.oil_m3 = chance(0.5) ? 0.0 : between(0, 0.3) * chamber_m3;
        const double before_valve_m3 = between(0, 0.6) * chamber_m3;
        if (chance(0.5)) {
            of.tester.fitting_m3 = before_valve_m3;
            of.tester.hose_m3 = between(4, 40) * 1e-6;
        } else {
            of.tester.check_valve = CheckValvePlace::gauge;
            of.tester.hose_m3 = before_valve_m3 + 1e-7;
            of.tester.gauge_alone_m3 = between(1, 6) * 1e-6;
        }
        of.tester.crack_pa = chance(0.2) ? between(80e3, 150e3) : 20e3;  // a tyre-valve core
        of.tester.check_area_m2 = between(2, 8) * 1e-6;
        return of;
    }

private:
    std::mt19937_64 bits_;
};

}  // namespace lapwing::physics
