// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/levels.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "tests/core/odds/bench.h"

namespace lapwing::odds {
namespace {

/// How a visit was cranked, as the card of tester and visit says it and as the cranking model is told it.
struct Shop {
    const char* name;
    EngineHeat heat = EngineHeat::warm;
    CheckValveAt valve = CheckValveAt::chamber_end;
    CheckValveCore core = CheckValveCore::low_pressure;
    double hose_cm3 = 12.0;
    double adapter_cm3 = 0.0;
    double allowed = 0.06;  ///< to be less sure by: more doubt where more has to be put right
};

const std::vector<Shop>& shops() {
    static const std::vector<Shop> all{
        {.name = "usual"},
        {.name = "gauge_end", .valve = CheckValveAt::gauge_end},
        {.name = "tyre_core", .core = CheckValveCore::tyre},
        {.name = "cold", .heat = EngineHeat::cold, .allowed = 0.09},
        {.name = "heat_not_noted", .heat = EngineHeat::unknown, .allowed = 0.12},
        {.name = "long_adapter", .adapter_cm3 = 6.0},
        {.name = "cold_gauge_end",
         .heat = EngineHeat::cold,
         .valve = CheckValveAt::gauge_end,
         .allowed = 0.10}};
    return all;
}

/// What a sound cylinder of the bench's engine reads: the cranking model itself, told of the shop here.
double sound_pa(const Shop& shop) {
    physics::CrankingCase at;
    at.crank = {0.078, 0.070, 0.130};
    at.compression_ratio = 9.0;
    at.closing_after_bdc_rad = 60.0 * physics::degree;
    at.speed_rad_s = 0.85 * 250.0 * physics::per_minute;
    at.heat_w_m2k = 200.0;
    at.wall_k = shop.heat == EngineHeat::warm ? 353.15 : 293.15;
    at.leak_m2 = 0.23e-6;  // sound rings and valves of odds.json
    at.tester.hose_m3 = shop.hose_cm3 * 1e-6;
    at.tester.fitting_m3 = shop.adapter_cm3 * 1e-6;
    at.tester.check_valve = shop.valve == CheckValveAt::gauge_end ? physics::CheckValvePlace::gauge
                                                                  : physics::CheckValvePlace::plug;
    at.tester.crack_pa = shop.core == CheckValveCore::tyre ? 125e3 : 20e3;
    return physics::crank(at)->last_gauge_pa;
}

std::string bar(double pa) {
    return fmt::format("{:.2f}", 1e-5 * pa);
}

class SoundTwin : public Odds {
public:
    explicit SoundTwin(const Shop& shop) : Odds(2) { here(shop); }

    void here(const Shop& shop) {
        session().conditions.heat = shop.heat;
        Tester& gauge = *std::ranges::find(dossier.testers, *session().compression_gauge, &Tester::id);
        gauge.hose_volume = *TypedVolume::make(fmt::format("{:.0f}", shop.hose_cm3), units::cm3);
        gauge.check_valve_at = shop.valve;
        gauge.check_valve_core = shop.core;
        Adapter adapter;
        adapter.name = "long";
        adapter.volume = *TypedVolume::make(fmt::format("{:.0f}", shop.adapter_cm3), units::cm3);
        gauge.adapters = {adapter};
        for (const int number : {1, 2})
            dry(number, bar(sound_pa(shop)), "bar").adapter = shop.adapter_cm3 > 0.0 ? "long" : "";
    }
    void range() {
        const double usual = sound_pa(shops().front());
        engine().limits.low = pressure(bar(0.94 * usual), "bar");
        engine().limits.high = pressure(bar(1.06 * usual), "bar");
    }
    double least_sound() {
        double out = 1.0;
        for (const CylinderOdds& cylinder : odds().cylinders)
            out = std::min(out, cylinder.seals_well);
        return out;
    }
};

class Levels : public testing::TestWithParam<Shop> {};

/// The range is meant for a warm engine and a check valve at the plug hole. Whatever stands between it and
/// the reading must not pass for a leak.
TEST_P(Levels, ASoundEngineStaysSoundUnderAnyTester) {
    SoundTwin usual(shops().front());
    usual.range();
    SoundTwin twin(GetParam());
    twin.range();
    const double wanted = usual.least_sound();
    const double got = twin.least_sound();
    EXPECT_NEAR(got, wanted, GetParam().allowed);
}

/// An earlier good visit was read in the usual way; today's tester differs.
TEST_P(Levels, AnEarlierVisitIsPutIntoTodaysTerms) {
    const auto with_earlier = [](const Shop& shop) {
        SoundTwin twin(shops().front());
        for (const int number : {1, 2})
            twin.leak(number, "5.50", "5.35", "bar");
        Visit earlier = twin.visit();
        Visit& now = twin.visit();
        now.readings.clear();
        now.session.opened_at.unix_ms = earlier.session.opened_at.unix_ms + 86'400'000;
        // A gauge of its own, so that the earlier one stays as it was.
        twin.tester(TesterKind::compression_gauge, "16", "bar", "1.6");
        twin.here(shop);
        twin.dossier.visits.push_back(std::move(earlier));
        return twin.least_sound();
    };
    const double wanted = with_earlier(shops().front());
    const double got = with_earlier(GetParam());
    EXPECT_NEAR(got, wanted, GetParam().allowed);
}

INSTANTIATE_TEST_SUITE_P(Shops, Levels, testing::ValuesIn(shops().begin() + 1, shops().end()),
                         [](const auto& of) { return std::string(of.param.name); });

}  // namespace
}  // namespace lapwing::odds
