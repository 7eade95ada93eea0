// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <cmath>

#include "core/findings/reference.h"
#include "core/physics/cranking_estimates.h"
#include "core/uncertainty/coverage.h"
#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/shop.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    const auto unit = read_unit(arguments);
    if (!unit) return tl::unexpected(unit.error());
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    const double closing = arguments.si<AngleTag>("--ivc-doubt", reference->assumed("closing-known-doubt"));
    auto engine = read_cranking(arguments);
    if (!engine) return tl::unexpected(engine.error());
    // As in the app: the speed that counts is the one near top dead centre.
    const double mean =
        reference->assumed(arguments.has("--rpm") ? "speed-known-doubt" : "speed-unknown-doubt");
    engine->speed_rad_s *= reference->assumed("speed-dip");
    physics::HealthyDoubts doubts;
    doubts.closing_rad = closing;
    doubts.share = 2.0 * std::hypot(reference->assumed("model-doubt"), shop_doubt(arguments, *reference));
    doubts.speed = 2.0 * std::hypot(reference->assumed("speed-dip-doubt"), mean);
    const auto healthy = physics::healthy_band(*engine, engine->ambient_pa, doubts);
    if (!healthy) return refused(healthy.error());

    Answer answer;
    answer.add("value_pa", healthy->gauge_pa, "healthy reading", shown(healthy->gauge_pa, *unit));
    answer.add("u_pa", (healthy->high_gauge_pa - healthy->low_gauge_pa) / 2.0 / uncertainty::coverage_factor);
    answer.add("low_pa", healthy->low_gauge_pa, "band",
               shown(healthy->low_gauge_pa, *unit) + " to " + shown(healthy->high_gauge_pa, *unit));
    answer.add("high_pa", healthy->high_gauge_pa);
    const double each = 2.0 * uncertainty::coverage_factor * healthy->gauge_pa;
    answer.add("width_pa", Answer::Named{{"closing", 2.0 * healthy->by_closing_pa},
                                         {"speed", 2.0 * healthy->by_speed_pa},
                                         {"model", each * reference->assumed("model-doubt")},
                                         {"air_pressure", each * shop_doubt(arguments, *reference)}});
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_healthy() {
    return {
        "sums healthy",
        "what an engine without leaks reads, with its band",
        {},
        joined(cranking_options(), {{"--ivc-doubt", "ANGLE",
                                     "how far the intake closing may be off either way; default 6deg; 18deg "
                                     "where the closing is only guessed"},
                                    unit_option,
                                    json_option}),
        "Computed at sea level and scaled to the shop by air pressure; --leak and --oil are not looked at. "
        "The "
        "speed near top dead centre is taken as 85 % of --rpm, as everywhere in Lapwing. None is given above "
        "a "
        "compression ratio of 14. Keys: value_pa, u_pa (standard uncertainty from the intake closing, the "
        "speed, the air pressure and the model itself), low_pa and high_pa (the band, about 2 u to either "
        "side), width_pa {closing, speed, model, air_pressure} (how wide each of them alone would make it).",
        run};
}

}  // namespace lapwing::cli
