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
    const auto unit = read_unit(arguments);
    if (!unit) return tl::unexpected(unit.error());
    const auto engine = read_cranking(arguments);
    if (!engine) return tl::unexpected(engine.error());
    const auto effect = physics::hose_effect(*engine);
    if (!effect) return refused(effect.error());

    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    // Of 1 / (1 - loss) the doubt is that of the loss over (1 - loss)^2.
    const double loss = 1.0 - 1.0 / effect->correction;
    const double u =
        reference->assumed("correction-doubt") * std::abs(loss) * effect->correction * effect->correction;

    Answer answer;
    answer.add("value_pa", effect->without_gauge_pa, "with nothing before the check valve",
               shown_with(effect->without_gauge_pa, u * effect->shown_gauge_pa, *unit));
    answer.add("u_pa", u * effect->shown_gauge_pa);
    answer.add("shown_pa", effect->shown_gauge_pa, "with this tester", shown(effect->shown_gauge_pa, *unit));
    answer.add("correction", effect->correction, "multiply a reading by",
               figure(effect->correction) + " ± " + figure(2.0 * u, 2));
    answer.add("correction_u", u);
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_hose() {
    return {"sums hose",
            "what the volume before the check valve takes off a reading",
            {},
            joined(cranking_options(), {unit_option, json_option}),
            "That volume is --fitting, and --hose too with --check-valve gauge. Keys: value_pa (reading with "
            "nothing "
            "before the check valve, were shown_pa exact), u_pa (what the model may be out by in what it "
            "puts back), "
            "shown_pa, correction, correction_u.",
            run};
}

}  // namespace lapwing::cli
