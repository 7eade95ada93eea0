// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <cmath>

#include "core/findings/reference.h"
#include "core/physics/atmosphere.h"
#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/shop.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    const auto ambient = arguments.quantity<PressureTag>("--ambient");
    const auto altitude = arguments.quantity<LengthTag>("--altitude");
    const auto limit = arguments.quantity<PressureTag>("--limit");
    const auto shop = read_shop_pa(arguments);
    if (!shop) return tl::unexpected(shop.error());
    if (!ambient && !altitude)
        return wrong_use("sums altitude needs --altitude LENGTH or --ambient PRESSURE.");

    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    const double u = shop_doubt(arguments, *reference);

    Answer answer;
    if (limit) {
        const auto here = physics::limit_at_site_gauge_pa(limit->si(), *shop);
        if (!here) return refused(here.error());
        answer.add("value_pa", *here, limit->text() + " at sea level is here",
                   shown_with(*here, u * *here, limit->unit()));
        answer.add("u_pa", u * *here);
    }
    const auto height = altitude ? Result<double>(altitude->si()) : physics::standard_altitude_m(*shop);
    if (!height) return refused(height.error());
    const auto length = altitude ? altitude->unit() : units::m;
    // Of an altitude that a barometer tells the weather is the doubt.
    const double moved = std::hypot(u, 0.5 * reference->assumed("weather-doubt")) * *shop;
    const auto lower = physics::standard_altitude_m(*shop + moved);
    const auto higher = physics::standard_altitude_m(*shop - moved);
    const double u_m = altitude ? 0.0 : lower && higher ? 0.5 * (*higher - *lower) : std::nan("");
    if (!limit) {
        answer.add(altitude ? "value_pa" : "value_m", altitude ? *shop : *height);
        answer.add(altitude ? "u_pa" : "u_m", altitude ? u * *shop : u_m);
    }
    answer.add("altitude_m", *height, "altitude",
               altitude ? shown(*height, length) : shown_with(*height, u_m, length));
    answer.add("ambient_pa", *shop, "air pressure in the shop",
               shown_with(*shop, u * *shop, ambient ? ambient->unit() : units::hpa));
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_altitude() {
    return {
        "sums altitude",
        "air pressure at an altitude and the way back; a sea-level limit at the shop",
        {},
        joined(shop_options(),
               {{"--limit", "PRESSURE", "a factory limit for sea level, to be scaled to the shop"},
                json_option}),
        "Standard atmosphere, ISO 2533; a limit is scaled by air pressure. Keys: value_pa (the limit here, "
        "or the "
        "air pressure at --altitude) or value_m (the altitude of --ambient), u_pa or u_m (the weather's or a "
        "barometer's, standard), altitude_m, ambient_pa.",
        run};
}

}  // namespace lapwing::cli
