// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/physics/cranking_setup.h"
#include "core/physics/gas.h"
#include "tests/core/physics/drawn_cases.h"

// Answers that can be written down, and books that must close.
namespace lapwing::physics {
namespace {

CrankingCase small_car() {
    CrankingCase of;
    of.crank = {0.070, 0.065, 0.125};
    of.compression_ratio = 9.0;
    return of;
}

CrankingCase leaking_twin() {
    CrankingCase of;
    of.crank = {0.0734, 0.0588, 0.118};
    of.compression_ratio = 8.6;
    of.leak_m2 = 0.5e-6;
    return of;
}

TEST(CrankingClosed, NoLeakNoHeatIsIsentropic) {
    // p V^gamma stays: the exponent is gamma, the peak stands at TDC.
    auto of = small_car();
    of.heat_w_m2k = 0.0;
    of.tester.crack_pa = 1e6;
    for (double ratio : {4.0, 6.0}) {  // peaks under 1 MPa: the gauge never opens
        of.compression_ratio = ratio;
        const auto reading = crank(of).value();
        const double clearance_m3 = clearance_volume_m3(of.crank, ratio);
        const double squeeze = of.crank.volume_m3(of.closing_after_bdc_rad - pi, clearance_m3) / clearance_m3;
        EXPECT_NEAR(reading.polytropic_exponent, 1.4, 1e-5);
        EXPECT_NEAR(reading.peak_first_pa, sea_level_pa * std::pow(squeeze, 1.4),
                    1e-4 * reading.peak_first_pa);
        EXPECT_EQ(reading.last_gauge_pa, 0.0);
        EXPECT_TRUE(reading.settled);
    }
}

TEST(CrankingClosed, EndlessHeatIsIsothermal) {
    // Walls that hold the gas at their own temperature make p V constant, n = 1.
    auto of = small_car();
    of.heat_w_m2k = 5000.0;
    of.speed_rad_s = 10 * per_minute;
    EXPECT_NEAR(crank(of).value().polytropic_exponent, 1.0, 0.005);
}

TEST(CrankingClosed, FixedVolumeLeakingChokedDecaysExponentially) {
    // At constant temperature the mass falls as exp(-t / tau), tau = V / (A psi_c sqrt(R T)). A crank of
    // vanishing stroke is a fixed volume, huge heat transfer keeps the temperature.
    CrankingCase of = small_car();
    auto fixed = constants_of(of);
    fixed.crank = 1e-10;
    fixed.clearance = 300e-6;
    fixed.closing = -1.4;
    fixed.opening = -0.4;  // ends before falling pressure would end it
    fixed.ambient = 1e5;
    fixed.charge = 10e5;
    const double speed_rad_s = 10.0;
    fixed.heat_per_rad = 1e6 / speed_rad_s;
    fixed.leak_per_rad = 3e-6 / speed_rad_s;
    StrokeLanes<double> stroke(fixed, 1.0);
    Trace<double> trace;
    const auto end = stroke.run_shut(trace, true);
    const double tau_s = 300e-6 / (3e-6 * 0.684731 * std::sqrt(gas_constant_air * fixed.air));
    EXPECT_NEAR(end.theta, -0.4, 1e-12);
    EXPECT_NEAR(end.mass / stroke.charge().mass, std::exp(-1.0 / speed_rad_s / tau_s), 1e-3);
}

RC_GTEST_PROP(CrankingClosed, MassAndEnergyClose, ()) {
    DrawnCases cases(*rc::gen::arbitrary<std::uint64_t>());
    const auto book = balance(cases.next()).value();
    RC_ASSERT(std::abs(book.mass_error) < 1e-9);
    RC_ASSERT(std::abs(book.energy_error) < 1e-9);
    RC_ASSERT(book.into_gauge_kg >= 0.0);
}

TEST(CrankingClosed, BooksShowTheFlows) {
    const auto book = balance(leaking_twin()).value();
    EXPECT_GT(book.leaked_kg, 0.0);
    EXPECT_GT(book.into_gauge_kg, 0.0);
    EXPECT_LT(book.work_j, 0.0);
    EXPECT_GT(book.wall_heat_j, 0.0);
    // The first puff again, from the mass that the ledger says went in.
    const double gauge_pa = book.into_gauge_kg * gas_constant_air * shop_temperature_k / 12e-6;
    EXPECT_NEAR(gauge_pa, crank(leaking_twin()).value().puffs_gauge_pa[0], 1e-4 * gauge_pa);
    EXPECT_EQ(balance(small_car()).value().leaked_kg, 0.0);
}

TEST(CrankingKernel, FlowFunctionIsThatOfGas) {
    // psi of gas.h is written from the nozzle equation; the kernel's is a polynomial through it.
    EXPECT_NEAR(lane_air::choked_drop, 1.0 - critical_pressure_ratio(), 1e-7);
    for (double drop = 2e-4; drop < 1.0; drop += 1e-3) {
        const double upstream_pa = 5e5;
        const double kelvin = 310.0;
        const double kernel = flow_density(drop, upstream_pa, upstream_pa / (gas_constant_air * kelvin));
        const double wanted = nozzle_flow(1.0, upstream_pa, kelvin, upstream_pa * (1.0 - drop));
        EXPECT_NEAR(kernel / wanted, 1.0, 2e-7) << drop;
    }
    EXPECT_EQ(flow_density(0.0, 1e5, 1.2), 0.0);
    EXPECT_EQ(flow_density(-0.3, 1e5, 1.2), 0.0);
}

TEST(CrankingKernel, GeometryIsThatOfTheCrank) {
    const auto constants = constants_of(small_car());
    for (double theta = -pi; theta <= pi; theta += 0.01) {
        CrankingPoint<double> at;
        at.place(constants, theta);
        const auto crank = small_car().crank;
        EXPECT_NEAR(at.volume / crank.volume_m3(theta, constants.clearance), 1.0, 2e-9) << theta;
        EXPECT_NEAR(at.volume_rate, crank.volume_rate_m3(theta), 1e-9 * crank.displacement_m3()) << theta;
    }
}

}  // namespace
}  // namespace lapwing::physics
