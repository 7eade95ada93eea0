// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/shop.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    const auto unit = read_unit(arguments);
    if (!unit) return tl::unexpected(unit.error());
    const auto engine = read_cranking(arguments);
    if (!engine) return tl::unexpected(engine.error());
    const auto reading = physics::crank(*engine);
    if (!reading) return refused(reading.error());

    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    const double u = reference->assumed("model-doubt");

    std::string puffs;
    for (const double puff : reading->puffs_gauge_pa)
        puffs += (puffs.empty() ? "" : ", ") + figure(unit->number(Pressure::from_si(puff)));
    puffs += ' ' + std::string(unit->display());
    Answer answer;
    answer.add("puffs_pa", reading->puffs_gauge_pa, "after each stroke", puffs);
    answer.add("last_pa", reading->last_gauge_pa, "last reading",
               shown_with(reading->last_gauge_pa, u * reading->last_gauge_pa, *unit));
    answer.add("last_u_pa", u * reading->last_gauge_pa);
    answer.add("settled", reading->settled, "settled",
               reading->settled ? "yes" : "no, more strokes raise it");
    answer.add("limit_pa", reading->limit_gauge_pa, "after many strokes",
               shown_with(reading->limit_gauge_pa, u * reading->limit_gauge_pa, *unit));
    answer.add("limit_u_pa", u * reading->limit_gauge_pa);
    answer.add("peak_first_pa", reading->peak_first_pa, "first peak in the cylinder",
               shown(reading->peak_first_pa, *unit) + " absolute");
    answer.add("polytropic_exponent", reading->polytropic_exponent, "polytropic exponent",
               figure(reading->polytropic_exponent));
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_crank() {
    return {"sums crank",
            "what a gauge shows stroke by stroke",
            {},
            joined(cranking_options(), {unit_option, json_option}),
            "A model: one zone, constant speed, no waves in the ports. Keys: puffs_pa (gauge, one a stroke), "
            "last_pa and last_u_pa (standard uncertainty: what the model itself may be out by), "
            "settled (one more stroke would add less than 0.2 %), limit_pa, limit_u_pa, peak_first_pa "
            "(absolute), "
            "polytropic_exponent (of a stroke without leak and gauge).",
            run};
}

}  // namespace lapwing::cli
