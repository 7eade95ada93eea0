// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking_estimates.h"
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
    const auto effect = physics::hose_effect(*engine);
    if (!effect) return refused(effect.error());

    Answer answer;
    answer.add("value_pa", effect->without_gauge_pa, "with nothing before the check valve",
               shown(effect->without_gauge_pa, *unit));
    answer.add("u_pa", nullptr);
    answer.add("shown_pa", effect->shown_gauge_pa, "with this tester", shown(effect->shown_gauge_pa, *unit));
    answer.add("correction", effect->correction, "multiply a reading by", figure(effect->correction));
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_hose() {
    return {
        "sums hose",
        "what the volume before the check valve takes off a reading",
        {},
        joined(cranking_options(), {unit_option, json_option}),
        "That volume is --fitting, and --hose too with --check-valve gauge. Keys: value_pa (reading with "
        "nothing "
        "before the check valve), u_pa (null: how far the model is off is not known), shown_pa, correction.",
        run};
}

}  // namespace lapwing::cli
