// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

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
    const double doubt = arguments.si<AngleTag>("--ivc-doubt", 6.0 * physics::degree);
    const auto engine = read_cranking(arguments);
    if (!engine) return tl::unexpected(engine.error());
    const auto healthy = physics::healthy_reading(*engine, engine->ambient_pa, doubt);
    if (!healthy) return refused(healthy.error());

    Answer answer;
    answer.add("value_pa", healthy->gauge_pa, "healthy reading", shown(healthy->gauge_pa, *unit));
    answer.add("u_pa", (healthy->high_gauge_pa - healthy->low_gauge_pa) / 2.0 / uncertainty::coverage_factor);
    answer.add("low_pa", healthy->low_gauge_pa, "band",
               shown(healthy->low_gauge_pa, *unit) + " to " + shown(healthy->high_gauge_pa, *unit));
    answer.add("high_pa", healthy->high_gauge_pa);
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
        "None is "
        "given above a compression ratio of 14. Keys: value_pa, u_pa (standard uncertainty from the intake "
        "closing alone), low_pa and high_pa (the band, 2 u to either side at the outset).",
        run};
}

}  // namespace lapwing::cli
