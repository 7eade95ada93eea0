// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "core/base/result.h"
#include "core/physics/cranking.h"

/// What follows from the cranking model for a mechanic. Gauge pressures in Pa; failures as `crank`, and as
/// named.
namespace lapwing::physics {

struct HealthyReading {
    double gauge_pa = 0.0;
    double low_gauge_pa = 0.0;   ///< intake closing later by the doubt
    double high_gauge_pa = 0.0;  ///< and earlier
};

/// Reading of a cylinder without leak or oil, computed at sea level and scaled to the shop by pressure, so
/// that it agrees with the altitude line of a limit. The case's own leak, oil and ambient are not looked at.
/// The band is the intake closing's doubt, by default 18 degrees (two standard deviations of
/// what road engines have: working assumption). Makers' ranges come to
/// 17 to 21 psi for each unit of compression ratio. Fails with "healthy.compression_ratio" above 14, where
/// the model reads far over makers' diesel figures (350 to 430 psi), and with "atmosphere.site_pressure".
[[nodiscard]] Result<HealthyReading> healthy_reading(const CrankingCase& engine, double site_pa,
                                                     double closing_doubt_rad = 18.0 * degree);

/// What makes it doubtful, each as half the 95 % interval.
struct HealthyDoubts {
    double closing_rad = 0.0;
    double share = 0.0;  ///< of the reading: the model itself, the compression ratio, the shop's air pressure
    double speed = 0.0;  ///< of the speed, as a share
    std::optional<double> warmer_wall_k;  ///< the walls may have been as warm, and the reading higher
};

struct HealthyBand {
    double gauge_pa = 0.0, low_gauge_pa = 0.0, high_gauge_pa = 0.0;
    double by_closing_pa = 0.0, by_speed_pa = 0.0,
           by_warmth_pa = 0.0;  ///< what each brings, mean of both sides
};

/// The same with all of its doubts: independent ones add as their squares do (JCGM 100, 5.1.2). Cold or warm
/// is no doubt to either side, what is not known may only have been warm.
[[nodiscard]] Result<HealthyBand> healthy_band(const CrankingCase& engine, double site_pa,
                                               const HealthyDoubts& doubts);

struct OilVolumeEffect {
    double dry_gauge_pa = 0.0;
    double low_gauge_pa = 0.0;   ///< with the smallest share of the oil kept
    double high_gauge_pa = 0.0;  ///< with the largest
};

/// Reading that the mere volume of oil explains in a wet test, with no ring sealed by it. Most oil does not
/// stay, hence a range: shares 0 to 0.7 kept (working assumption). The case's own oil is the dry state,
/// usually 0. Fails with "oil.share" unless 0 <= lowest <= highest <= 1, and with "cranking.oil" where all
/// that was put in, before any of it ran off, would lock the engine.
[[nodiscard]] Result<OilVolumeEffect> oil_volume_effect(const CrankingCase& engine, double oil_put_in_m3,
                                                        double lowest_share = 0.0,
                                                        double highest_share = 0.7);

struct HoseEffect {
    double shown_gauge_pa = 0.0;    ///< with the tester as it is
    double without_gauge_pa = 0.0;  ///< with nothing before the check valve
    double correction = 1.0;        ///< shown x correction = without
};

/// What the volume before the check valve (fitting; hose, when the check valve sits at the gauge) takes off a
/// reading. Fails with "hose.no_reading" where the tester shows nothing that could be corrected.
[[nodiscard]] Result<HoseEffect> hose_effect(const CrankingCase& engine);

}  // namespace lapwing::physics
