// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace lapwing::physics {
namespace {

constexpr double psi_unit = 6894.757;  // NIST SP 811 (read)

CrankingCase leaking_twin() {
    CrankingCase of;
    of.crank = {0.0734, 0.0588, 0.118};
    of.compression_ratio = 8.6;
    of.leak_m2 = 0.5e-6;
    return of;
}

CrankingCase small_car() {
    CrankingCase of;
    of.crank = {0.070, 0.065, 0.125};
    of.compression_ratio = 9.0;
    return of;
}

double last_psi(const CrankingCase& of) {
    return crank(of).value().last_gauge_pa / psi_unit;
}

TEST(Cranking, IndependentCheckValue) {
    // Computed by an independent implementation of the same model (no published source).
    const double kpa[] = {522.8, 741.1, 838.2, 882.2, 902.4, 911.7, 916.0, 918.0};
    const auto reading = crank(leaking_twin()).value();
    ASSERT_EQ(reading.puffs_gauge_pa.size(), 8U);
    for (std::size_t i = 0; i < 8; ++i)
        EXPECT_NEAR(reading.puffs_gauge_pa[i] / 1e3, kpa[i], 0.1) << i;
    EXPECT_EQ(reading.last_gauge_pa, reading.puffs_gauge_pa.back());
}

TEST(Cranking, HoseAndOil) {
    // Computed by an independent implementation (no published source), printed in whole psi.
    EXPECT_NEAR(last_psi(small_car()), 172, 0.6);
    auto hose = small_car();
    hose.tester.check_valve = CheckValvePlace::gauge;
    hose.tester.hose_m3 = 8e-6;
    EXPECT_NEAR(last_psi(hose), 130, 0.6);
    auto fitting = small_car();
    fitting.tester.fitting_m3 = 8e-6;
    EXPECT_NEAR(last_psi(fitting), 130, 0.6);
    auto oiled = small_car();
    oiled.oil_m3 = 1.5e-6;
    EXPECT_NEAR(last_psi(oiled), 183, 0.6);
    oiled.oil_m3 = 5e-6;
    EXPECT_NEAR(last_psi(oiled), 214, 0.6);
}

TEST(Cranking, ExponentOfATightStroke) {
    // Polytropic exponent of a cranking stroke: 1.2 to 1.3 (read), 1.24 to 1.35 in textbooks (from memory);
    // the project's own range for bores of 50 to 90 mm at 200 to 400 rpm is 1.25 to 1.35.
    for (double bore_m : {0.05, 0.07, 0.09}) {
        for (double rpm : {200.0, 300.0, 400.0}) {
            auto of = small_car();
            of.crank.bore_m = bore_m;
            of.speed_rad_s = rpm * per_minute;
            const double n = crank(of).value().polytropic_exponent;
            EXPECT_GE(n, 1.25) << bore_m << ' ' << rpm;
            EXPECT_LE(n, 1.35) << bore_m << ' ' << rpm;
        }
    }
}

TEST(Cranking, EncyclopediaExample) {
    // Encyclopedia example (read): 7.5^1.3 x 14.7 psi = 201.8 psia, 187.1 psi gauge; over the whole stroke,
    // with an exponent of 1.3. The model finds its own exponent, 1.25 to 1.35: the peak follows.
    auto of = small_car();
    of.compression_ratio = 7.5;
    of.closing_after_bdc_rad = 0.0;
    of.ambient_pa = 14.7 * psi_unit;
    of.tester.crack_pa = 1e6;
    of.tester.hose_m3 = 0.1e-6;
    const auto reading = crank(of).value();
    const double example_psi = std::pow(7.5, reading.polytropic_exponent - 1.3) * 201.8;
    EXPECT_GE(reading.polytropic_exponent, 1.25);
    EXPECT_LE(reading.polytropic_exponent, 1.35);
    EXPECT_NEAR(reading.limit_gauge_pa / psi_unit + 14.7 + 1e6 / psi_unit, example_psi, 0.02 * example_psi);
}

TEST(Cranking, ColdEngineReadsLower) {
    // Thermo King manual (read): a cold engine reads about 10 % lower. Walls at 20 against 80 degC.
    auto warm = small_car();
    warm.wall_k = 353.15;
    EXPECT_NEAR(last_psi(small_car()) / last_psi(warm), 0.90, 0.04);
}

TEST(Cranking, CrackingPressureOfATyreValveCore) {
    // The project's own statement (no source): a core that cracks at 100 to 150 kPa reads 11 to 19 psi low.
    auto core = small_car();
    core.tester.crack_pa = 100e3;
    EXPECT_NEAR(last_psi(small_car()) - last_psi(core), 11.0, 1.5);
    core.tester.crack_pa = 150e3;
    EXPECT_NEAR(last_psi(small_car()) - last_psi(core), 19.0, 1.5);
}

TEST(Cranking, MoreStrokesApproachTheLimit) {
    auto of = leaking_twin();
    of.strokes = 60;
    const auto reading = crank(of).value();
    EXPECT_TRUE(reading.settled);
    EXPECT_NEAR(reading.last_gauge_pa, reading.limit_gauge_pa, 3e-4 * reading.limit_gauge_pa);
    for (std::size_t i = 1; i < reading.puffs_gauge_pa.size(); ++i) {
        EXPECT_GE(reading.puffs_gauge_pa[i], reading.puffs_gauge_pa[i - 1]);
    }
    of.strokes = 2;
    EXPECT_FALSE(crank(of).value().settled);
}

TEST(Cranking, DirectionsAMechanicKnows) {
    const auto changed = [](auto change) {
        auto of = small_car();
        change(of);
        return last_psi(of);
    };
    const double usual = last_psi(small_car());
    EXPECT_LT(changed([](auto& of) { of.leak_m2 = 1e-6; }), usual);
    EXPECT_LT(changed([](auto& of) { of.fill = 0.4; }), 0.5 * usual);
    EXPECT_LT(changed([](auto& of) { of.ambient_pa = 85e3; }), usual);
    EXPECT_GT(changed([](auto& of) { of.compression_ratio = 10.0; }), usual);
    EXPECT_GT(changed([](auto& of) { of.speed_rad_s *= 1.5; }), usual);
    EXPECT_LT(changed([](auto& of) { of.closing_after_bdc_rad += 9 * degree; }), usual);
    EXPECT_NEAR(changed([](auto& of) { of.opening_before_bdc_rad = 40 * degree; }), usual, 0.02);
}

TEST(Cranking, TrappedRatioOfATwoStroke) {
    // The same chamber, told either way.
    auto trapped = small_car();
    trapped.ratio_kind = CompressionRatioKind::trapped;
    trapped.compression_ratio = 7.0;
    trapped.closing_after_bdc_rad = 80 * degree;
    auto geometric = trapped;
    geometric.ratio_kind = CompressionRatioKind::geometric;
    const double clearance = trapped_clearance_volume_m3(trapped.crank, 7.0, 80 * degree);
    geometric.compression_ratio = 1.0 + trapped.crank.displacement_m3() / clearance;
    EXPECT_GT(geometric.compression_ratio, 8.0);
    EXPECT_NEAR(last_psi(trapped), last_psi(geometric), 1e-6);
}

RC_GTEST_PROP(Cranking, AnyPossibleCaseGivesAReading, ()) {
    CrankingCase of;
    const double bore_m = *rc::gen::inRange(30, 200) / 1e3;
    of.crank = {bore_m, bore_m * *rc::gen::inRange(60, 150) / 100.0, 0.0};
    of.crank.rod_m = of.crank.stroke_m * *rc::gen::inRange(130, 230) / 100.0;
    of.compression_ratio = *rc::gen::inRange(30, 250) / 10.0;
    of.closing_after_bdc_rad = *rc::gen::inRange(0, 130) * degree;
    of.speed_rad_s = *rc::gen::inRange(60, 800) * per_minute;
    of.ambient_pa = *rc::gen::inRange(60000, 106000);
    of.air_k = *rc::gen::inRange(250, 320);
    of.wall_k = *rc::gen::inRange(250, 380);
    of.fill = *rc::gen::inRange(10, 110) / 100.0;
    of.heat_w_m2k = *rc::gen::inRange(0, 1000);
    of.leak_m2 = *rc::gen::inRange(0, 5000) * 1e-8;
    of.tester.fitting_m3 = *rc::gen::inRange(0, 30) * 1e-6;
    of.tester.hose_m3 = *rc::gen::inRange(1, 60) * 1e-6;
    of.tester.check_valve = *rc::gen::element(CheckValvePlace::plug, CheckValvePlace::gauge);
    of.tester.crack_pa = *rc::gen::inRange(0, 150) * 1e3;
    const auto reading = crank(of);
    RC_ASSERT(reading.has_value());
    RC_ASSERT(reading->puffs_gauge_pa.size() == 8U);
    for (std::size_t i = 0; i < 8; ++i) {
        RC_ASSERT(std::isfinite(reading->puffs_gauge_pa[i]));
        RC_ASSERT(reading->puffs_gauge_pa[i] >= (i == 0 ? 0.0 : reading->puffs_gauge_pa[i - 1]));
    }
    // In corners where no engine stands (a tenth of a filling, hardly a reading) both ends are less exact.
    RC_ASSERT(reading->last_gauge_pa <= reading->limit_gauge_pa * 1.001 + 500.0);
    // The usual steps keep 0.1 % (or 100 Pa of a low reading) of what engines are (cranking_odeint_test.cpp);
    // in corners where no engine stands, three times that.
    const auto fine = crank(of, {0.5});
    RC_ASSERT(fine.has_value());
    for (std::size_t i = 0; i < 8; ++i) {
        RC_ASSERT(std::abs(reading->puffs_gauge_pa[i] - fine->puffs_gauge_pa[i]) <=
                  std::max(3e-3 * fine->puffs_gauge_pa[i], 300.0));
    }
    RC_ASSERT(std::isfinite(reading->polytropic_exponent));
    RC_ASSERT(reading->peak_first_pa >= of.fill * of.ambient_pa * 0.999);
}

TEST(Cranking, PlugHoleLeftOpenReadsNothing) {
    auto of = small_car();
    of.leak_m2 = 150e-6;
    const auto reading = crank(of).value();
    EXPECT_EQ(reading.last_gauge_pa, 0.0);
    EXPECT_TRUE(reading.settled);
}

TEST(Cranking, RefusesTheImpossible) {
    const auto code = [](auto change) {
        auto of = small_car();
        change(of);
        return crank(of).error().code;
    };
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double endless = std::numeric_limits<double>::infinity();
    EXPECT_EQ(code([](auto& of) { of.crank.bore_m = 0; }), "engine.bore");
    EXPECT_EQ(code([](auto& of) { of.crank.rod_m = 0.4 * of.crank.stroke_m; }), "engine.rod");
    EXPECT_EQ(code([](auto& of) { of.compression_ratio = 1.0; }), "cranking.ratio");
    EXPECT_EQ(code([](auto& of) { of.compression_ratio = 0.5; }), "cranking.ratio");
    EXPECT_EQ(code([=](auto& of) { of.compression_ratio = nan; }), "cranking.ratio");
    EXPECT_EQ(code([](auto& of) { of.closing_after_bdc_rad = 170 * degree; }), "cranking.closing");
    EXPECT_EQ(code([](auto& of) { of.speed_rad_s = 0; }), "cranking.speed");
    EXPECT_EQ(code([](auto& of) { of.ambient_pa = 0; }), "cranking.ambient");
    EXPECT_EQ(code([](auto& of) { of.fill = 0; }), "cranking.fill");
    EXPECT_EQ(code([](auto& of) { of.leak_m2 = -1e-6; }), "cranking.leak");
    EXPECT_EQ(code([](auto& of) { of.oil_m3 = 60e-6; }), "cranking.oil");
    EXPECT_EQ(code([](auto& of) { of.oil_m3 = -1e-6; }), "cranking.oil");
    EXPECT_EQ(code([](auto& of) { of.tester.fitting_m3 = -1e-6; }), "cranking.fitting");
    EXPECT_EQ(code([](auto& of) { of.tester.hose_m3 = -1e-6; }), "cranking.hose");
    EXPECT_EQ(code([](auto& of) { of.tester.gauge_alone_m3 = -1e-6; }), "cranking.gauge_volume");
    EXPECT_EQ(code([=](auto& of) { of.speed_rad_s = endless; }), "cranking.speed");
    EXPECT_EQ(code([=](auto& of) { of.leak_m2 = endless; }), "cranking.leak");
    EXPECT_EQ(code([=](auto& of) { of.wall_k = nan; }), "cranking.wall");
    EXPECT_EQ(code([=](auto& of) { of.heat_w_m2k = nan; }), "cranking.heat");
    EXPECT_EQ(code([](auto& of) { of.tester.hose_m3 = 0; }), "cranking.hose");
    EXPECT_EQ(code([=](auto& of) { of.tester.crack_pa = nan; }), "cranking.crack");
    EXPECT_EQ(code([](auto& of) { of.strokes = 0; }), "cranking.strokes");
    EXPECT_EQ(crank(small_car(), {0.0}).error().code, "cranking.accuracy");
    EXPECT_EQ(crank(small_car(), {nan}).error().code, "cranking.accuracy");
}

}  // namespace
}  // namespace lapwing::physics
