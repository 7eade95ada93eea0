// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/atmosphere.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace lapwing::physics {
namespace {

TEST(Atmosphere, PrintedLevels) {
    // ISO 2533 / ICAO table of pressure levels (read); printed in whole metres.
    const struct {
        double hpa, metres;
    } rows[] = {{850, 1457}, {700, 3012}, {600, 4206}, {950, 540}, {900, 988}};
    for (const auto& row : rows) {
        EXPECT_NEAR(standard_altitude_m(row.hpa * 100).value(), row.metres, 0.6) << row.hpa;
    }
}

TEST(Atmosphere, ComputedFromTheFormula) {
    // Computed from ISO 2533's formula by others, a second opinion only.
    const struct {
        double metres, hpa;
    } rows[] = {{0, 1013.25}, {500, 954.61}, {1000, 898.75}, {2000, 794.95}, {3000, 701.09}, {5000, 540.20}};
    for (const auto& row : rows) {
        EXPECT_NEAR(standard_pressure_pa(row.metres).value() / 100, row.hpa, 0.006) << row.metres;
    }
}

RC_GTEST_PROP(Atmosphere, AltitudeRoundTrip, ()) {
    const double altitude_m = *rc::gen::inRange(-20000, 110001) / 10.0;
    const double back_m = standard_altitude_m(standard_pressure_pa(altitude_m).value()).value();
    RC_ASSERT(std::abs(back_m - altitude_m) < 1e-8);
}

TEST(Atmosphere, LimitAtAltitude) {
    // A magazine letter (read): 120 psi at sea level is about 100 psi at 5000 ft; 99.85 by absolute scaling
    // (computed). The unit cancels.
    const double site_pa = standard_pressure_pa(5000 * 0.3048).value();
    const double limit = limit_at_site_gauge_pa(120.0, site_pa).value();
    EXPECT_NEAR(limit, 100.0, 1.0);
    EXPECT_NEAR(limit, 99.85, 0.01);
    EXPECT_DOUBLE_EQ(limit_at_site_gauge_pa(8e5, sea_level_pa).value(), 8e5);
}

TEST(Atmosphere, RefusesWhatIsNotThere) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (double altitude_m : {-2001.0, 11001.0, nan}) {
        EXPECT_EQ(standard_pressure_pa(altitude_m).error().code, "atmosphere.altitude");
    }
    for (double pressure_pa : {0.0, -5.0, 1e4, 2e5, nan}) {
        EXPECT_EQ(standard_altitude_m(pressure_pa).error().code, "atmosphere.pressure");
    }
    EXPECT_EQ(limit_at_site_gauge_pa(8e5, 0.0).error().code, "atmosphere.site_pressure");
    EXPECT_EQ(limit_at_site_gauge_pa(8e5, nan).error().code, "atmosphere.site_pressure");
    EXPECT_EQ(limit_at_site_gauge_pa(-1.0, 1e5).error().code, "atmosphere.limit");
    EXPECT_EQ(limit_at_site_gauge_pa(nan, 1e5).error().code, "atmosphere.limit");
}

}  // namespace
}  // namespace lapwing::physics
