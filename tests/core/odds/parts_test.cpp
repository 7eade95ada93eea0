// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <random>
#include <set>

#include "core/findings/codes.h"
#include "core/odds/area_prior.h"
#include "core/odds/codes.h"
#include "core/odds/crank_surface.h"
#include "core/odds/engine_model.h"
#include "core/odds/held_curve.h"
#include "core/physics/leakdown.h"

namespace lapwing::odds {
namespace {

using testing::HasSubstr;

TEST(Assumptions, EveryNumberSaysWhatItIsAndWhereItComesFrom) {
    const auto read = built_in_assumptions();
    ASSERT_TRUE(read) << read.error().english;
    EXPECT_GE(read->version, 1);
    EXPECT_GT(read->numbers.size(), 80U);
    for (const auto& number : read->numbers) {
        EXPECT_FALSE(number.text.empty()) << number.id;
        EXPECT_FALSE(number.basis.comment.empty()) << number.id;
        EXPECT_EQ(number.basis.kind == findings::BasisKind::published, !number.basis.source.empty())
            << number.id;
    }
    EXPECT_EQ(read->others.size(), 2U);
}

TEST(Assumptions, AreReadInSi) {
    const auto read = *built_in_assumptions();
    EXPECT_DOUBLE_EQ(read.at("rings-fault"), read.find("rings-fault")->value / 100.0);
    EXPECT_DOUBLE_EQ(read.at("rings-sound"), read.find("rings-sound")->value * 1e-6);
    EXPECT_NEAR(read.at("ear-faint"), read.find("ear-faint")->value / 60e3, 1e-12);
}

TEST(Assumptions, WhatAnOlderFileLacksIsTakenFromThisProgramAndNamed) {
    std::string older(built_in_text());
    const auto at = older.find("{ \"id\": \"slip-seen\"");
    ASSERT_NE(at, std::string::npos);
    older.erase(at, older.find("\n    {", at) - at);
    EXPECT_FALSE(read_assumptions(older));
    const auto filled = read_assumptions(older, built_in_text());
    ASSERT_TRUE(filled) << filled.error().english;
    EXPECT_EQ(filled->filled_in, (std::vector<findings::FilledIn>{{"odds.json", "slip-seen"}}));
    EXPECT_EQ(filled->at("slip-seen"), built_in_assumptions()->at("slip-seen"));
    // What is there and can't be right is refused all the same.
    const std::string was = "\"id\": \"rings-fault\", \"value\": 25";
    ASSERT_NE(older.find(was), std::string::npos);
    older.replace(older.find(was), was.size(), "\"id\": \"rings-fault\", \"value\": 125");
    EXPECT_THAT(read_assumptions(older, built_in_text()).error().english, HasSubstr("rings-fault"));
    EXPECT_FALSE(read_assumptions(R"({"version": 3})", built_in_text()));
    EXPECT_FALSE(read_assumptions("[]", built_in_text()));
    EXPECT_TRUE(read_assumptions(built_in_text(), built_in_text())->filled_in.empty());
}

TEST(Assumptions, RefuseWhatCannotBeRight) {
    const std::string good(built_in_text());
    const auto complaint = [](const std::string& text) {
        const auto read = read_assumptions(text);
        return read ? std::string("read") : read.error().code + ": " + read.error().english;
    };
    const auto with = [&](const std::string& what, const std::string& instead) {
        std::string text = good;
        text.replace(text.find(what), what.size(), instead);
        return complaint(text);
    };
    EXPECT_THAT(complaint("{"), HasSubstr("odds.malformed"));
    EXPECT_THAT(with("\"rings-fault\"", "\"rings-flaw\""), HasSubstr("rings-fault"));
    EXPECT_THAT(with("\"rings-fault\", \"value\": 25", "\"rings-fault\", \"value\": 125"),
                HasSubstr("can't be right"));
    EXPECT_THAT(with("\"unit\": \"mm2\"", "\"unit\": \"acre\""), HasSubstr("acre"));
    EXPECT_THAT(with("\"ear-clear\", \"value\": 12", "\"ear-clear\", \"value\": 1"),
                HasSubstr("not above the softer one"));
}

TEST(Codes, AreUniqueAndDoNotMeetThoseOfTheFindings) {
    std::set<std::string_view> seen;
    for (const auto& code : codes::all)
        EXPECT_TRUE(seen.insert(code.code).second) << code.code;
    for (const auto& code : findings::codes::all)
        EXPECT_FALSE(seen.contains(code.code)) << code.code;
}

/// The map of a standard normal number must spread like the mixture; its distribution by Boost.Math.
TEST(AreaMap, HasThePriorsDistribution) {
    const auto assumptions = *built_in_assumptions();
    for (const auto path : {findings::Path::rings, findings::Path::exhaust, findings::Path::coolant}) {
        const AreaPrior prior = area_prior(assumptions, path, 0.08);
        const AreaMap map(prior);
        const boost::math::normal standard;
        const boost::math::normal sound(prior.sound_mean, prior.sound_spread);
        const boost::math::normal leaking(prior.leaking_mean, prior.leaking_spread);
        for (double z = -3.5; z <= 3.5; z += 0.25) {
            const double x = map.log_area(z);
            EXPECT_NEAR(
                (1.0 - prior.fault) * boost::math::cdf(sound, x) + prior.fault * boost::math::cdf(leaking, x),
                boost::math::cdf(standard, z), 1e-5);
            EXPECT_NEAR(map.z(x), z, 1e-6);
            EXPECT_NEAR(map.fault(z), prior.fault_given(x), 1e-3);
        }
    }
}

TEST(AreaMap, DensityIsThatOfItsOwnSteps) {
    const AreaMap map(area_prior(*built_in_assumptions(), findings::Path::intake, 0.08));
    for (double z = -2.995; z < 3.0; z += 0.37) {
        constexpr double h = 1e-4;
        const double slope = (map.log_area(z + h) - map.log_area(z - h)) / (2.0 * h);
        EXPECT_NEAR(map.log_density(z), -0.5 * z * z - std::log(slope), 0.25) << z;
    }
}

TEST(AreaPrior, KnowsAFaultByItsSize) {
    const auto assumptions = *built_in_assumptions();
    const AreaPrior exhaust = area_prior(assumptions, findings::Path::exhaust, 0.075);
    EXPECT_LT(exhaust.fault_given(std::log(0.005e-6)), 0.01);
    EXPECT_GT(exhaust.fault_given(std::log(1e-6)), 0.99);
    const AreaPrior likelier = area_prior(assumptions, findings::Path::exhaust, 0.075, 6.0);
    EXPECT_NEAR(likelier.fault / (1.0 - likelier.fault), 6.0 * exhaust.fault / (1.0 - exhaust.fault), 1e-12);
}

/// Against the closed form of the leak-down test.
TEST(HeldCurve, GivesBackTheHeldPressureOfALeak) {
    physics::TesterPneumatics tester;
    tester.set_gauge_pa = 550e3;
    const HeldCurve curve({tester.set_gauge_pa, tester.ambient_pa, tester.restrictor_area_m2()});
    for (double held = 25e3; held < 549e3; held += 25e3) {
        const auto leak = physics::leakdown(tester, held);
        ASSERT_TRUE(leak);
        const auto point = curve.at(std::log(leak->area_ratio));
        EXPECT_NEAR(point.held_share * tester.set_gauge_pa, held, 50.0);
        EXPECT_NEAR(std::exp(point.log_flow) * leak->leak_area_m2, leak->flow_anr_m3_s * 60e3,
                    0.002 * leak->flow_anr_m3_s * 60e3);
    }
}

TEST(Noise, CarriesTheSurfacesError) {
    Assumptions assumptions = *built_in_assumptions();
    assumptions.set("reading-scatter", 0.0);
    assumptions.set("surface-error", 0.02);
    const Evidence nothing;
    const EngineModel model(nothing, assumptions, {});
    CrankEvidence like;
    like.noise_pa = 15e3;
    EXPECT_NEAR(model.crank_noise_pa(1e6, like), std::hypot(15e3, 20e3), 1e-6);
    like.repeats = 9;  // it does not become less by repeating
    EXPECT_NEAR(model.crank_noise_pa(1e6, like), std::hypot(15e3, 20e3), 1e-6);
}

struct SurfaceCase {
    const char* name;
    physics::SliderCrank crank;
    double ratio, closing_deg, rpm, oil_m3, closing_spread_deg, ratio_spread, speed_spread;
    void (*also)(physics::CrankingCase&) = nullptr;  ///< what else is unlike the usual
};

class Surface : public testing::TestWithParam<SurfaceCase> {};

/// At most 0.3 % at 1,000 points of the prior, against the cranking model itself. A cylinder that reads next
/// to nothing (under a twentieth of a sound one) has only to do so here as well.
TEST_P(Surface, FollowsTheCrankingModel) {
    const auto& of = GetParam();
    SurfaceRange range;
    range.middle.crank = of.crank;
    range.middle.compression_ratio = of.ratio;
    range.middle.closing_after_bdc_rad = of.closing_deg * physics::degree;
    range.middle.speed_rad_s = of.rpm * physics::per_minute;
    range.ratio_spread = of.ratio_spread;
    range.closing_spread_rad = of.closing_spread_deg * physics::degree;
    range.speed_spread = of.speed_spread;
    range.largest_oil_m3 = of.oil_m3;
    if (of.also) of.also(range.middle);
    const auto surface = CrankSurface::fit(range);
    ASSERT_TRUE(surface) << surface.error().english;
    const double sound = physics::crank(range.at({}, 0.0, 0.0))->last_gauge_pa;

    const auto assumptions = *built_in_assumptions();
    const AreaMap rings(area_prior(assumptions, findings::Path::rings, of.crank.bore_m));
    const AreaMap exhaust(area_prior(assumptions, findings::Path::exhaust, of.crank.bore_m));
    std::mt19937_64 random(20261);
    std::normal_distribution<double> n;
    CrankSurface::Slice slice;
    double worst = 0.0;
    double squares = 0.0;
    int dead = 0;
    for (int point = 0; point < 1000; ++point) {
        const CrankDoubts doubts{n(random), n(random), n(random), n(random)};
        const double leak = std::exp(rings.log_area(n(random))) + std::exp(exhaust.log_area(n(random)));
        const double oil = of.oil_m3 / (1.0 + std::exp(1.1 + 1.15 * n(random)));
        const auto truth = physics::crank(range.at(doubts, leak, oil));
        ASSERT_TRUE(truth);
        surface->slice(doubts, slice);
        const auto fitted = slice.at(leak, oil);
        if (truth->last_gauge_pa < 0.05 * sound) {
            EXPECT_LT(fitted.final_pa, 0.055 * sound);
            ++dead;
            continue;
        }
        const double off = fitted.final_pa / truth->last_gauge_pa - 1.0;
        squares += off * off;
        worst = std::max(worst, std::abs(off));
        worst = std::max(worst, std::abs(fitted.first_pa / truth->puffs_gauge_pa.front() - 1.0));
    }
    EXPECT_LT(dead, 50);
    EXPECT_LE(worst, 0.003);
    // What is carried with every reading.
    EXPECT_LE(std::sqrt(squares / 1000.0), assumptions.at("surface-error"));
    RecordProperty("largest_error_permille", std::to_string(1e3 * worst));
}

INSTANTIATE_TEST_SUITE_P(
    Engines, Surface,
    testing::Values(
        SurfaceCase{"twin", {0.0734, 0.0588, 0.118}, 8.6, 65, 212, 5e-6, 3, 0.025, 0.11},
        SurfaceCase{"card_half_empty", {0.0734, 0.0588, 0.118}, 8.6, 65, 212, 5e-6, 9, 0.06, 0.22},
        SurfaceCase{"car", {0.084, 0.090, 0.140}, 9.2, 62, 212, 15e-6, 9, 0.025, 0.22},
        SurfaceCase{"small", {0.038, 0.038, 0.070}, 7.0, 60, 340, 1.5e-6, 9, 0.06, 0.22},
        SurfaceCase{"tractor", {0.100, 0.120, 0.200}, 13.0, 50, 170, 15e-6, 9, 0.06, 0.22},
        SurfaceCase{"gauge_end",
                    {0.0734, 0.0588, 0.118},
                    8.6,
                    65,
                    212,
                    5e-6,
                    9,
                    0.025,
                    0.11,
                    [](physics::CrankingCase& of) {
                        of.tester.hose_m3 = 12e-6;
                        of.tester.check_valve = physics::CheckValvePlace::gauge;
                    }},
        SurfaceCase{"tyre_core",
                    {0.0734, 0.0588, 0.118},
                    8.6,
                    65,
                    212,
                    5e-6,
                    9,
                    0.025,
                    0.11,
                    [](physics::CrankingCase& of) { of.tester.crack_pa = 125e3; }},
        SurfaceCase{"warm_walls",
                    {0.084, 0.090, 0.140},
                    9.2,
                    62,
                    212,
                    15e-6,
                    9,
                    0.025,
                    0.22,
                    [](physics::CrankingCase& of) { of.wall_k = 353.15; }},
        SurfaceCase{"closed_throttle",
                    {0.0734, 0.0588, 0.118},
                    8.6,
                    65,
                    212,
                    5e-6,
                    9,
                    0.025,
                    0.11,
                    [](physics::CrankingCase& of) { of.fill = 0.75; }},
        SurfaceCase{"altitude_2500_m",
                    {0.0734, 0.0588, 0.118},
                    8.6,
                    65,
                    212,
                    5e-6,
                    9,
                    0.025,
                    0.11,
                    [](physics::CrankingCase& of) { of.ambient_pa = 74.7e3; }},
        SurfaceCase{
            "two_stroke",
            {0.054, 0.054, 0.110},
            7.0,
            95,
            340,
            3e-6,
            9,
            0.025,
            0.22,
            [](physics::CrankingCase& of) { of.ratio_kind = physics::CompressionRatioKind::trapped; }},
        SurfaceCase{"variable_timing", {0.084, 0.090, 0.140}, 9.2, 62, 212, 15e-6, 15, 0.025, 0.22}),
    [](const auto& of) { return std::string(of.param.name); });

}  // namespace
}  // namespace lapwing::odds
