// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking_effects.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace lapwing::physics {
namespace {

constexpr double psi_unit = 6894.757;  // NIST SP 811 (read)
const double nan = std::numeric_limits<double>::quiet_NaN();

CrankingCase small_engine() {
    CrankingCase of;
    of.crank = {0.070, 0.065, 0.125};
    of.compression_ratio = 8.5;
    return of;
}

TEST(SpeedEffect, SlowerReadsLowerAndTheDipIsDoubt) {
    const auto slow = speed_effect(small_engine(), 130 * per_minute).value();
    EXPECT_LT(slow.high_gauge_pa, slow.usual_gauge_pa);
    EXPECT_LT(slow.low_gauge_pa, slow.high_gauge_pa);
    // At its own speed the range holds the usual reading.
    const auto same = speed_effect(small_engine(), 250 * per_minute).value();
    EXPECT_LT(same.low_gauge_pa, same.usual_gauge_pa);
    EXPECT_GT(same.high_gauge_pa, same.usual_gauge_pa);
    EXPECT_NEAR(same.ratio(), 1.0, 0.005);
    // Without dip and doubt it is the plain model.
    auto fast = small_engine();
    fast.speed_rad_s = 400 * per_minute;
    const auto plain = speed_effect(small_engine(), 400 * per_minute, {1.0, 0.0}).value();
    EXPECT_EQ(plain.high_gauge_pa, crank(fast).value().last_gauge_pa);
    EXPECT_EQ(plain.low_gauge_pa, plain.high_gauge_pa);
    EXPECT_EQ(plain.usual_gauge_pa, crank(small_engine()).value().last_gauge_pa);
}

TEST(SpeedEffect, RefusesWhatIsNoSpeed) {
    EXPECT_EQ(speed_effect(small_engine(), 0.0).error().code, "cranking.speed");
    EXPECT_EQ(speed_effect(small_engine(), nan).error().code, "cranking.speed");
    EXPECT_EQ(speed_effect(small_engine(), 20.0, {0.95, 0.1}).error().code, "cranking.dip");
    EXPECT_EQ(speed_effect(small_engine(), 20.0, {0.1, 0.2}).error().code, "cranking.dip");
}

TEST(ThrottleEffect, ReadsLowerAboutAsTheFilling) {
    // Common practice, no source: a closed throttle reads low. The law behind it: at half the charge the
    // absolute peak is about half, so the reading is a little under half.
    const auto half = throttle_effect(small_engine(), 0.5, 0.5).value();
    EXPECT_LT(half.ratio(), 0.5);
    EXPECT_GT(half.ratio(), 0.35);
    const auto range = throttle_effect(small_engine(), 0.6, 0.9).value();
    EXPECT_LT(range.low_gauge_pa, range.high_gauge_pa);
    EXPECT_LT(range.high_gauge_pa, range.usual_gauge_pa);
    EXPECT_EQ(throttle_effect(small_engine(), 0.9, 0.6).error().code, "cranking.fill_range");
    EXPECT_EQ(throttle_effect(small_engine(), 0.0, 0.6).error().code, "cranking.fill");
}

TEST(WallEffect, AColdEngineReadsATenthLower) {
    // Thermo King manual (read): a cold engine about 10 % lower; walls at 20 against 80 degC.
    auto warm = small_engine();
    warm.wall_k = 353.15;
    const auto cold = wall_effect(warm, 293.15).value();
    EXPECT_NEAR(cold.ratio(), 0.90, 0.04);
    EXPECT_EQ(wall_effect(warm, nan).error().code, "cranking.wall");
}

TEST(DecompressorEffect, PublishedReadings) {
    // A small-engine maker's manual (read): 57 to 85 psi with one working. The closings were chosen by it, so
    // this only keeps them there; that other ratios and speeds come close is the model's doing.
    const auto working = decompressor_effect(small_engine(), 100 * degree, 116 * degree).value();
    EXPECT_NEAR(working.low_gauge_pa / psi_unit, 57, 5);
    EXPECT_NEAR(working.high_gauge_pa / psi_unit, 85, 5);
    EXPECT_GT(working.usual_gauge_pa / psi_unit, 150);
    auto other = small_engine();
    other.compression_ratio = 8.0;
    other.speed_rad_s = 400 * per_minute;
    const auto also = decompressor_effect(other, 100 * degree, 116 * degree).value();
    EXPECT_GT(also.low_gauge_pa / psi_unit, 45);
    EXPECT_LT(also.high_gauge_pa / psi_unit, 95);
    EXPECT_EQ(decompressor_effect(small_engine(), 50 * degree, 90 * degree).error().code,
              "cranking.closing_range");
}

TEST(DecompressorEffect, ATrappedRatioKeepsItsChamber) {
    auto trapped = small_engine();
    trapped.ratio_kind = CompressionRatioKind::trapped;
    trapped.closing_after_bdc_rad = 90 * degree;
    const auto same = decompressor_effect(trapped, 90 * degree, 90 * degree).value();
    EXPECT_NEAR(same.low_gauge_pa, same.usual_gauge_pa, 1.0);
}

}  // namespace
}  // namespace lapwing::physics
