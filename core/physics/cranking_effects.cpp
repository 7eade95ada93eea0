// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking_effects.h"

#include <algorithm>

namespace lapwing::physics {
namespace {

Result<double> last_gauge_pa(const CrankingCase& of) {
    return crank(of).map([](const CrankingReading& reading) { return reading.last_gauge_pa; });
}

/// Reading of `usual`, and the range between two changed cases, whichever of them reads lower.
Result<Effect> effect_of(const CrankingCase& usual, const CrankingCase& one, const CrankingCase& other) {
    const auto before = last_gauge_pa(usual);
    if (!before) return tl::unexpected(before.error());
    const auto first = last_gauge_pa(one);
    if (!first) return tl::unexpected(first.error());
    const auto second = last_gauge_pa(other);
    if (!second) return tl::unexpected(second.error());
    return Effect{*before, std::min(*first, *second), std::max(*first, *second)};
}

}  // namespace

Result<Effect> speed_effect(const CrankingCase& engine, double other_speed_rad_s, const SpeedDip& dip) {
    if (!(dip.doubt >= 0.0 && dip.doubt < dip.factor && dip.factor + dip.doubt <= 1.0)) {
        return fail("cranking.dip",
                    "A speed that dips to {} +- {} of its mean cannot be right. Give a share up to 1 and a "
                    "smaller doubt.",
                    dip.factor, dip.doubt);
    }
    const auto at_speed = [&](double speed_rad_s) {
        CrankingCase of = engine;
        of.speed_rad_s = speed_rad_s;
        return of;
    };
    return effect_of(at_speed(engine.speed_rad_s * dip.factor),
                     at_speed(other_speed_rad_s * (dip.factor - dip.doubt)),
                     at_speed(other_speed_rad_s * (dip.factor + dip.doubt)));
}

Result<Effect> throttle_effect(const CrankingCase& engine, double least_fill, double most_fill) {
    if (!(least_fill <= most_fill)) {
        return fail("cranking.fill_range",
                    "Fillings from {} to {} are not a range. Give the smaller one first.", least_fill,
                    most_fill);
    }
    CrankingCase least = engine;
    CrankingCase most = engine;
    least.fill = least_fill;
    most.fill = most_fill;
    return effect_of(engine, least, most);
}

Result<Effect> wall_effect(const CrankingCase& engine, double other_wall_k) {
    CrankingCase other = engine;
    other.wall_k = other_wall_k;
    return effect_of(engine, other, other);
}

Result<Effect> decompressor_effect(const CrankingCase& engine, double least_closing_after_bdc_rad,
                                   double most_closing_after_bdc_rad) {
    if (!(engine.closing_after_bdc_rad <= least_closing_after_bdc_rad &&
          least_closing_after_bdc_rad <= most_closing_after_bdc_rad)) {
        return fail("cranking.closing_range",
                    "A decompressor lets the cylinder close later than its intake does: {:.4g} to {:.4g} "
                    "degrees after bottom dead centre do not follow {:.4g}.",
                    least_closing_after_bdc_rad / degree, most_closing_after_bdc_rad / degree,
                    engine.closing_after_bdc_rad / degree);
    }
    CrankingCase least = engine;
    CrankingCase most = engine;
    if (engine.ratio_kind == CompressionRatioKind::trapped) {
        // A trapped ratio counts from the closing: the chamber stays what it is while the closing moves.
        const double chamber_m3 =
            trapped_clearance_volume_m3(engine.crank, engine.compression_ratio, engine.closing_after_bdc_rad);
        least.ratio_kind = most.ratio_kind = CompressionRatioKind::geometric;
        least.compression_ratio = most.compression_ratio = 1.0 + engine.crank.displacement_m3() / chamber_m3;
    }
    least.closing_after_bdc_rad = least_closing_after_bdc_rad;
    most.closing_after_bdc_rad = most_closing_after_bdc_rad;
    return effect_of(engine, least, most);
}

}  // namespace lapwing::physics
