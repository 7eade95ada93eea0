// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <cmath>

#include "core/findings/reference.h"
#include "core/physics/cranking_estimates.h"
#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/shop.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    const auto unit = read_unit(arguments);
    if (!unit) return tl::unexpected(unit.error());
    const double put_in = arguments.si<VolumeTag>("--put-in");
    const double least = arguments.number("--kept-least", reference->assumed("oil-kept-least"));
    const double most = arguments.number("--kept-most", reference->assumed("oil-kept-most"));
    const auto engine = read_cranking(arguments);
    if (!engine) return tl::unexpected(engine.error());
    const auto effect = physics::oil_volume_effect(*engine, put_in, least, most);
    if (!effect) return refused(effect.error());

    const double middle = (effect->low_gauge_pa + effect->high_gauge_pa) / 2.0;
    Answer answer;
    answer.add("value_pa", middle);
    answer.add("u_pa", (effect->high_gauge_pa - effect->low_gauge_pa) / std::sqrt(12.0));
    answer.add("dry_pa", effect->dry_gauge_pa, "dry", shown(effect->dry_gauge_pa, *unit));
    answer.add("low_pa", effect->low_gauge_pa, "oil's volume alone explains",
               shown(effect->low_gauge_pa, *unit) + " to " + shown(effect->high_gauge_pa, *unit));
    answer.add("high_pa", effect->high_gauge_pa);
    answer.add("width_pa", Answer::Named{{"oil_kept", effect->high_gauge_pa - effect->low_gauge_pa}});
    const double chamber = engine->ratio_kind == physics::CompressionRatioKind::geometric
                               ? physics::clearance_volume_m3(engine->crank, engine->compression_ratio)
                               : physics::trapped_clearance_volume_m3(
                                     engine->crank, engine->compression_ratio, engine->closing_after_bdc_rad);
    const bool may_lock = put_in >= reference->assumed("oil-most-of-chamber") * chamber;
    answer.add("chamber_share", put_in / chamber, "of the chamber at top dead centre",
               figure(100.0 * put_in / chamber, 2) + " %");
    answer.add("may_lock", may_lock);
    if (may_lock)
        answer.note(fmt::format(
            "So much oil fills {} % of the chamber: that can lock the engine and bend a rod. Put in "
            "less, and turn the engine by hand before it is cranked.",
            figure(100.0 * put_in / chamber, 2)));
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_oil() {
    return {"sums oil",
            "what the mere volume of oil does to a wet test",
            {},
            joined({{"--put-in", "VOLUME", "oil put into the cylinder", true},
                    {"--kept-least", "NUMBER", "least share of it that stays; default 0"},
                    {"--kept-most", "NUMBER", "most; default 0.7"}},
                   joined(cranking_options(), {unit_option, json_option})),
            "Most oil does not stay in the chamber, hence a range; no ring is sealed by it here. --leak is "
            "the leak of "
            "the dry cylinder. Keys: value_pa (middle of the range), u_pa (the range taken as rectangular), "
            "dry_pa, "
            "low_pa, high_pa, width_pa {oil_kept} (what makes the range so wide), chamber_share (all that "
            "was put in, of the chamber), may_lock (true: so much "
            "can lock "
            "the engine and bend a rod; more yet is refused).",
            run};
}

}  // namespace lapwing::cli
