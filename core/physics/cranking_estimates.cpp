// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking_estimates.h"

#include <algorithm>
#include <cmath>

namespace lapwing::physics {
namespace {

Result<double> last_gauge_pa(const CrankingCase& of) {
    return crank(of).map([](const CrankingReading& reading) { return reading.last_gauge_pa; });
}

}  // namespace

Result<HealthyReading> healthy_reading(const CrankingCase& engine, double site_pa, double closing_doubt_rad) {
    constexpr double highest_ratio = 14.0;
    if (engine.compression_ratio > highest_ratio) {
        return fail("healthy.compression_ratio",
                    "No healthy reading is estimated above a compression ratio of {}: at {} the sum reads "
                    "far over what "
                    "makers print for such engines. Use the maker's figure.",
                    highest_ratio, engine.compression_ratio);
    }
    CrankingCase tight = engine;
    tight.ambient_pa = sea_level_pa;
    tight.leak_m2 = 0.0;
    tight.oil_m3 = 0.0;
    const auto scaled_reading = [&](double closing_shift_rad) -> Result<double> {
        CrankingCase shifted = tight;
        shifted.closing_after_bdc_rad += closing_shift_rad;
        return last_gauge_pa(shifted).and_then(
            [&](double gauge_pa) { return limit_at_site_gauge_pa(gauge_pa, site_pa); });
    };
    const auto middle = scaled_reading(0.0);
    if (!middle) return tl::unexpected(middle.error());
    if (closing_doubt_rad == 0.0) return HealthyReading{*middle, *middle, *middle};
    const auto low = scaled_reading(closing_doubt_rad);
    if (!low) return tl::unexpected(low.error());
    // Nothing is compressed before bottom dead centre: the band ends there.
    const auto high = scaled_reading(-std::min(closing_doubt_rad, engine.closing_after_bdc_rad));
    if (!high) return tl::unexpected(high.error());
    return HealthyReading{*middle, *low, *high};
}

Result<HealthyBand> healthy_band(const CrankingCase& engine, double site_pa, const HealthyDoubts& doubts) {
    const auto reading = healthy_reading(engine, site_pa, doubts.closing_rad);
    if (!reading) return tl::unexpected(reading.error());
    const double middle = reading->gauge_pa;
    // Nothing is added where the model refuses so slow an engine.
    const auto changed = [&](double speed_factor, double wall_k) {
        CrankingCase of = engine;
        of.speed_rad_s *= speed_factor;
        of.wall_k = wall_k;
        const auto there = healthy_reading(of, site_pa, 0.0);
        return there ? there->gauge_pa - middle : 0.0;
    };
    const double slower = -changed(1.0 / (1.0 + doubts.speed), engine.wall_k);
    const double faster = changed(1.0 + doubts.speed, engine.wall_k);
    const double later = middle - reading->low_gauge_pa;
    const double earlier = reading->high_gauge_pa - middle;
    const double by_share = doubts.share * middle;
    HealthyBand out;
    out.gauge_pa = middle;
    out.by_closing_pa = 0.5 * (later + earlier);
    out.by_speed_pa = 0.5 * (slower + faster);
    out.by_warmth_pa = doubts.warmer_wall_k ? changed(1.0, *doubts.warmer_wall_k) : 0.0;
    out.low_gauge_pa = middle - std::hypot(later, by_share, slower);
    out.high_gauge_pa = middle + out.by_warmth_pa + std::hypot(earlier, by_share, faster);
    return out;
}

Result<OilVolumeEffect> oil_volume_effect(const CrankingCase& engine, double oil_put_in_m3,
                                          double lowest_share, double highest_share) {
    if (!(lowest_share >= 0.0 && lowest_share <= highest_share && highest_share <= 1.0)) {
        return fail("oil.share",
                    "Kept shares of oil from {} to {} are not a range. Give two figures from 0 to 1, the "
                    "smaller first.",
                    lowest_share, highest_share);
    }
    // Before any of it runs off, all of it is in the way of the piston.
    CrankingCase all_of_it = engine;
    all_of_it.oil_m3 += oil_put_in_m3;
    if (auto fits = check(all_of_it); !fits) return tl::unexpected(fits.error());
    const auto with_share = [&](double share) {
        CrankingCase oiled = engine;
        oiled.oil_m3 += share * oil_put_in_m3;
        return last_gauge_pa(oiled);
    };
    const auto dry = with_share(0.0);
    if (!dry) return tl::unexpected(dry.error());
    const auto low = with_share(lowest_share);
    if (!low) return tl::unexpected(low.error());
    const auto high = with_share(highest_share);
    if (!high) return tl::unexpected(high.error());
    return OilVolumeEffect{*dry, *low, *high};
}

Result<HoseEffect> hose_effect(const CrankingCase& engine) {
    const auto shown = last_gauge_pa(engine);
    if (!shown) return tl::unexpected(shown.error());
    CrankingCase at_plug = engine;
    at_plug.tester.fitting_m3 = 0.0;
    at_plug.tester.hose_m3 = engine.tester.behind_valve_m3();
    at_plug.tester.check_valve = CheckValvePlace::plug;
    const auto without = last_gauge_pa(at_plug);
    if (!without) return tl::unexpected(without.error());
    if (!(*shown > 0.0)) {
        return fail("hose.no_reading",
                    "With this hose the gauge would show nothing, so there is nothing to correct. Move the "
                    "check valve to "
                    "the plug end or use a shorter hose.");
    }
    return HoseEffect{*shown, *without, *without / *shown};
}

}  // namespace lapwing::physics
