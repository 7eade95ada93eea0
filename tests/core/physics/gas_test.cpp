// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/gas.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace lapwing::physics {
namespace {

constexpr double psi_unit = 6894.757;  // NIST SP 811 (read)

TEST(Gas, CriticalRatioAndChokedConstant) {
    // Choked-flow handbook page (read): critical ratio 0.528; an 80 psi supply stays choked below 35.30 psi
    // gauge.
    EXPECT_NEAR(critical_pressure_ratio(), 0.528, 0.0005);
    EXPECT_NEAR(critical_pressure_ratio() * (80.0 + 14.696) - 14.696, 35.30, 0.05);
    // 0.0404 s sqrt(K)/m, computed from the nozzle equation (no source of its own).
    EXPECT_NEAR(psi(0.3) / std::sqrt(gas_constant_air), 0.0404, 0.00005);
    EXPECT_NEAR(psi(0.1), 0.68473, 0.000005);
}

struct HandbookHole {
    double inch;
    double psi_gauge;
    double cubic_feet_a_minute;
};

class Handbook : public ::testing::TestWithParam<HandbookHole> {};

TEST_P(Handbook, DischargeOfAirThroughAHole) {
    // Compressed-air handbook table reprinted by several makers (read): discharge coefficient 1, cubic feet
    // of free air a minute at 14.7 psia and 70 degF. Agreement wanted: 1 %.
    const auto& row = GetParam();
    const double temperature_k = (70.0 + 459.67) / 1.8;
    const double ambient_pa = 14.7 * psi_unit;
    const double free_air_kg_m3 = ambient_pa / (gas_constant_air * temperature_k);
    const double flow = nozzle_flow(circle_area_m2(row.inch * 0.0254), ambient_pa + row.psi_gauge * psi_unit,
                                    temperature_k, ambient_pa);
    const double cubic_feet = flow / free_air_kg_m3 / std::pow(0.3048, 3) * 60.0;
    EXPECT_NEAR(cubic_feet, row.cubic_feet_a_minute, 0.01 * row.cubic_feet_a_minute);
}

INSTANTIATE_TEST_SUITE_P(
    Gas, Handbook,
    ::testing::Values(HandbookHole{1.0 / 32, 1, 0.112}, HandbookHole{1.0 / 32, 5, 0.248},
                      HandbookHole{1.0 / 32, 15, 0.420}, HandbookHole{1.0 / 32, 20, 0.491},
                      HandbookHole{1.0 / 32, 40, 0.774}, HandbookHole{1.0 / 32, 60, 1.06},
                      HandbookHole{1.0 / 32, 80, 1.34}, HandbookHole{1.0 / 32, 100, 1.62},
                      HandbookHole{1.0 / 64, 20, 0.123}, HandbookHole{1.0 / 64, 60, 0.264},
                      HandbookHole{1.0 / 64, 100, 0.406}));

RC_GTEST_PROP(Gas, FastFormEqualsReferenceForm, ()) {
    const double ratio = *rc::gen::inRange(0, 1000000) / 1e6;
    RC_ASSERT(std::abs(psi_of_drop(1.0 - ratio) - psi(ratio)) <= 1e-11 * psi(ratio));
}

TEST(Gas, SmallDropKeepsItsDigits) {
    // Series of the nozzle equation about no drop x: psi^2 = 2 x - 3 x^2 / gamma + O(x^3).
    for (double drop : {1e-3, 1e-6, 1e-9, 1e-13}) {
        const double series = std::sqrt(2.0 * drop - 3.0 / gamma_air * drop * drop);
        EXPECT_NEAR(psi_of_drop(drop) / series, 1.0, 1e-12 + drop * drop) << drop;
    }
    const double ambient_pa = 101325.0;
    EXPECT_GT(nozzle_flow(1e-6, ambient_pa + 1e-9, 293.15, ambient_pa), 0.0);
}

TEST(Gas, NothingFlowsUphill) {
    EXPECT_EQ(psi(1.0), 0.0);
    EXPECT_EQ(psi(1.5), 0.0);
    EXPECT_EQ(psi_of_drop(0.0), 0.0);
    EXPECT_EQ(psi_of_drop(-0.5), 0.0);
    EXPECT_EQ(nozzle_flow(1e-6, 1e5, 293.15, 2e5), 0.0);
}

TEST(Gas, VolumeFlowAnr) {
    // ISO 8778 (read): 1.185 kg/m3. One litre a minute is 1.185 g a minute.
    EXPECT_NEAR(volume_flow_anr(1.185e-3 / 60.0), 1e-3 / 60.0, 1e-15);
    EXPECT_NEAR(circle_diameter_m(circle_area_m2(1.016e-3)), 1.016e-3, 1e-15);
}

}  // namespace
}  // namespace lapwing::physics
