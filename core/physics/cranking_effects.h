// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/base/result.h"
#include "core/physics/cranking.h"

/// What a circumstance of the test does to a reading, by the cranking model. Gauge pressures in Pa; failures
/// as `crank`, and as named.
namespace lapwing::physics {

/// The last reading of the case as it stands and under the circumstance, whose doubt makes it a range.
struct Effect {
    double usual_gauge_pa = 0.0;
    double low_gauge_pa = 0.0;
    double high_gauge_pa = 0.0;

    /// Middle of the range over the usual reading; only where the usual reading is above 0.
    [[nodiscard]] double ratio() const { return 0.5 * (low_gauge_pa + high_gauge_pa) / usual_gauge_pa; }
};

/// The starter slows down where the gas pushes back: speed close to TDC over the mean speed, which is what a
/// counter shows. Working assumption.
struct SpeedDip {
    double factor = 0.85;
    double doubt = 0.1;  ///< half width
};

/// Reading at another mean speed. The case's own speed is the mean too and dips alike, in the middle of the
/// doubt; the other's range is the dip's. Fails with "cranking.dip" unless 0 <= doubt < factor and factor +
/// doubt <= 1.
[[nodiscard]] Result<Effect> speed_effect(const CrankingCase& engine, double other_speed_rad_s,
                                          const SpeedDip& dip = {});

/// Reading with a throttle that fills the cylinder only to a share of the air's pressure, least to most. How
/// far a closed throttle goes depends on its gap and on the speed: working assumption of whoever asks. Fails
/// with "cranking.fill_range" unless least <= most.
[[nodiscard]] Result<Effect> throttle_effect(const CrankingCase& engine, double least_fill, double most_fill);

/// Reading with walls at another temperature. A cold engine reads about 10 % lower (Thermo King manual).
[[nodiscard]] Result<Effect> wall_effect(const CrankingCase& engine, double other_wall_k);

/// Reading with a working decompressor, taken as a later closing of the intake, least to most: working
/// assumptions of whoever asks. Such readings compare cylinders of one engine only. Fails with
/// "cranking.closing_range" unless the engine's own closing <= least <= most.
[[nodiscard]] Result<Effect> decompressor_effect(const CrankingCase& engine,
                                                 double least_closing_after_bdc_rad,
                                                 double most_closing_after_bdc_rad);

}  // namespace lapwing::physics
