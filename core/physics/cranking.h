// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/base/result.h"
#include "core/physics/atmosphere.h"
#include "core/physics/slider_crank.h"

/// Cranking compression test: what a gauge screwed into the plug hole reads, stroke by stroke.
///
/// One zone, the closed part of the cycle only, constant speed. Each stroke starts afresh with ambient air;
/// only the air in the gauge carries over. Left out: the starter's sag within a turn, gas inertia and waves
/// in the ports, evaporation, crevices, blow-by that returns from the ring pack. Defaults are this project's
/// working assumptions, repeated in assets/reference for the mechanic to see and change.
namespace lapwing::physics {

inline constexpr double degree = pi / 180.0;           ///< rad
inline constexpr double per_minute = 2.0 * pi / 60.0;  ///< rad/s of one turn a minute

enum class CompressionRatioKind {
    geometric,  ///< over the full stroke
    trapped,    ///< from the closing of the ports, as two-stroke makers give it
};

enum class CheckValvePlace {
    plug,   ///< at the plug hole: hose and gauge keep their air between strokes
    gauge,  ///< at the gauge: the hose is filled afresh on every stroke, like a larger chamber
};

/// The tester from the plug hole to the dial.
struct CompressionTester {
    double fitting_m3 = 0.0;  ///< before the check valve, beside the hose
    double hose_m3 = 12e-6;   ///< check valve at the plug: hose and gauge together; at the gauge: the hose
    double gauge_alone_m3 = 2e-6;  ///< matters with the check valve at the gauge
    CheckValvePlace check_valve = CheckValvePlace::plug;
    double check_area_m2 = 4e-6;  ///< effective area, open
    double crack_pa = 20e3;       ///< a tyre-valve core 100 to 150 kPa

    [[nodiscard]] double behind_valve_m3() const {
        return check_valve == CheckValvePlace::plug ? hose_m3 : gauge_alone_m3;
    }
    [[nodiscard]] double before_valve_m3() const {
        return check_valve == CheckValvePlace::plug ? fitting_m3 : fitting_m3 + hose_m3;
    }

    bool operator==(const CompressionTester&) const = default;
};

struct CrankingCase {
    SliderCrank crank;
    double compression_ratio = 0.0;
    CompressionRatioKind ratio_kind = CompressionRatioKind::geometric;
    double closing_after_bdc_rad = 65.0 * degree;   ///< intake valve at the seat, or the exhaust port
    double opening_before_bdc_rad = 60.0 * degree;  ///< exhaust; changes no reading
    double speed_rad_s = 250.0 * per_minute;
    double ambient_pa = sea_level_pa;  ///< station pressure, absolute
    double air_k = shop_temperature_k;
    double wall_k = shop_temperature_k;
    double fill = 1.0;  ///< pressure at closing over ambient; below 1 with a closed throttle
    double heat_w_m2k = 200.0;
    double leak_m2 = 0.0;  ///< effective area
    double oil_m3 = 0.0;   ///< kept in the chamber
    CompressionTester tester;
    int strokes = 8;
};

/// How finely to integrate. The default keeps every stroke's reading within 0.1 % or 100 Pa, whichever is the
/// larger, over what engines and testers are, and three times that over all that `check` takes;
/// tests/core/physics holds it against Boost.Odeint.
struct CrankingAccuracy {
    double step_share = 1.0;  ///< length of the steps over the usual, 0.01 to 2
};

struct CrankingReading {
    std::vector<double> puffs_gauge_pa;  ///< reading after each stroke
    double last_gauge_pa = 0.0;          ///< after the last
    bool settled = false;                ///< one more stroke would add less than 0.2 %
    double limit_gauge_pa = 0.0;         ///< of endlessly many strokes
    double peak_first_pa = 0.0;          ///< highest pressure in the cylinder on the first stroke, absolute
    double polytropic_exponent = 0.0;    ///< ln(p_peak/p_closing) / ln(V_closing/V_peak), no leak, no gauge
    int steps = 0;                       ///< spent on all of it
};

/// Fails with a "cranking...." or "engine...." code and a sentence where a value is impossible.
[[nodiscard]] Status check(const CrankingCase& of);

/// Runs the strokes. Fails as `check` does, and with "cranking.no_compression" where the leak is so large
/// that there is nothing to compute (the integration does not end).
[[nodiscard]] Result<CrankingReading> crank(const CrankingCase& of, const CrankingAccuracy& accuracy = {});

/// What the first stroke does to mass and energy, from closing to the end of the gauge's filling. Differences
/// are relative to the charge at closing; both are rounding errors when every flow is booked on both sides.
struct CrankingBalance {
    double mass_error = 0.0;
    double energy_error = 0.0;
    double leaked_kg = 0.0;
    double into_gauge_kg = 0.0;
    double work_j = 0.0;  ///< by the gas, negative while it is compressed
    double wall_heat_j = 0.0;
};
[[nodiscard]] Result<CrankingBalance> balance(const CrankingCase& of, const CrankingAccuracy& accuracy = {});

}  // namespace lapwing::physics
