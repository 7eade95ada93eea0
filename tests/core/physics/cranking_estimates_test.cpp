// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking_estimates.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lapwing::physics {
namespace {

constexpr double psi_unit = 6894.757;  // NIST SP 811 (read)

CrankingCase engine_with(double compression_ratio) {
    CrankingCase of;
    of.crank = {0.070, 0.065, 0.125};
    of.compression_ratio = compression_ratio;
    return of;
}

TEST(HealthyReading, InMakersRange) {
    // Several makers' manuals (read): 17 to 21 psi for each unit of compression ratio.
    for (double ratio : {8.0, 9.0, 10.0, 11.0}) {
        const double psi_a_unit =
            healthy_reading(engine_with(ratio), sea_level_pa).value().gauge_pa / psi_unit / ratio;
        EXPECT_GE(psi_a_unit, 17.0) << ratio;
        EXPECT_LE(psi_a_unit, 21.0) << ratio;
    }
}

TEST(HealthyReading, BandAndAltitude) {
    auto engine = engine_with(9.0);
    engine.leak_m2 = 2e-6;  // an ill engine's own leak is not part of a healthy reading
    const auto sea = healthy_reading(engine, sea_level_pa).value();
    EXPECT_LT(sea.low_gauge_pa, sea.gauge_pa);
    EXPECT_GT(sea.high_gauge_pa, sea.gauge_pa);
    EXPECT_NEAR(sea.gauge_pa / psi_unit, 172, 0.6);  // computed by an independent implementation
    const double site_pa = standard_pressure_pa(1524).value();
    const auto shop = healthy_reading(engine, site_pa).value();
    EXPECT_NEAR(shop.gauge_pa, limit_at_site_gauge_pa(sea.gauge_pa, site_pa).value(), 1e-6);
    EXPECT_NEAR(shop.low_gauge_pa / sea.low_gauge_pa, site_pa / sea_level_pa, 1e-12);
}

TEST(HealthyReading, NotForDiesels) {
    // Makers' manuals, several (read): diesels 350 to 430 psi at 250 to 290 rpm. The model reads far over
    // that, which is why it gives none.
    auto diesel = engine_with(21.0);
    diesel.speed_rad_s = 270 * per_minute;
    EXPECT_GT(crank(diesel).value().last_gauge_pa / psi_unit, 1.1 * 430);
    EXPECT_EQ(healthy_reading(engine_with(18.0), sea_level_pa).error().code, "healthy.compression_ratio");
    EXPECT_TRUE(healthy_reading(engine_with(14.0), sea_level_pa));
    EXPECT_EQ(healthy_reading(engine_with(9.0), 0.0).error().code, "atmosphere.site_pressure");
}

TEST(OilVolume, RangeOfWhatMayStay) {
    // 5 cm3 all kept: 214 psi against 172 dry (computed by an independent implementation).
    const auto all = oil_volume_effect(engine_with(9.0), 5e-6, 0.3, 1.0).value();
    EXPECT_NEAR(all.dry_gauge_pa / psi_unit, 172, 0.6);
    EXPECT_NEAR(all.low_gauge_pa / psi_unit, 183, 0.6);
    EXPECT_NEAR(all.high_gauge_pa / psi_unit, 214, 0.6);
    const auto usual = oil_volume_effect(engine_with(9.0), 5e-6).value();
    EXPECT_EQ(usual.low_gauge_pa, usual.dry_gauge_pa);
    EXPECT_GT(usual.high_gauge_pa, usual.dry_gauge_pa);
    EXPECT_LT(usual.high_gauge_pa, all.high_gauge_pa);
    EXPECT_EQ(oil_volume_effect(engine_with(9.0), 5e-6, 0.7, 0.2).error().code, "oil.share");
    EXPECT_EQ(oil_volume_effect(engine_with(9.0), 100e-6).error().code, "cranking.oil");
}

TEST(Hose, Correction) {
    // 172 psi without, 130 with 8 cm3 before the check valve (computed by an independent implementation).
    auto engine = engine_with(9.0);
    engine.tester.fitting_m3 = 8e-6;
    const auto effect = hose_effect(engine).value();
    EXPECT_NEAR(effect.shown_gauge_pa / psi_unit, 130, 0.6);
    EXPECT_NEAR(effect.without_gauge_pa / psi_unit, 172, 0.6);
    EXPECT_NEAR(effect.correction, 172.0 / 130.0, 0.01);
    engine.leak_m2 = 100e-6;
    EXPECT_EQ(hose_effect(engine).error().code, "hose.no_reading");
}

}  // namespace
}  // namespace lapwing::physics
