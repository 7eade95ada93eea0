// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <cmath>

#include "core/findings/reference.h"
#include "core/physics/cranking_effects.h"
#include "core/physics/cranking_estimates.h"
#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/shop.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

std::string percent(double least, double most) {
    return figure(100.0 * least, 2) + " to " + figure(100.0 * most, 2) + " %";
}

Outcome run(Arguments& arguments) {
    const auto unit = read_unit(arguments);
    if (!unit) return tl::unexpected(unit.error());
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    const auto engine = read_cranking(arguments);
    if (!engine) return tl::unexpected(engine.error());
    const double slow = arguments.si<RotationTag>("--slow", reference->assumed("weak-battery-speed"));
    const double least = arguments.number(
        "--fill-least", arguments.number("--fill-most", reference->assumed("closed-throttle-fill-least")));
    const double most = arguments.number(
        "--fill-most", arguments.number("--fill-least", reference->assumed("closed-throttle-fill-most")));
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    // As in the app: the speed that counts is the one near top dead centre.
    const double dip = reference->assumed("speed-dip");
    physics::CrankingCase at_top = *engine;
    at_top.speed_rad_s *= dip;
    const auto usual = physics::crank(at_top);
    if (!usual) return refused(usual.error());
    const auto slower =
        physics::speed_effect(*engine, slow, {dip, dip * reference->assumed("speed-dip-doubt")});
    if (!slower) return refused(slower.error());
    const auto throttled = physics::throttle_effect(at_top, least, most);
    if (!throttled) return refused(throttled.error());

    const double reading = usual->last_gauge_pa;
    const double slow_loss = 1.0 - slower->ratio();
    const double u = reference->assumed("correction-doubt") * std::abs(slow_loss);
    Answer answer;
    answer.add("value_pa", reading, "reading", shown(reading, *unit));
    answer.add("slow_pa", reading * slower->ratio(), "at the other speed",
               shown_with(reading * slower->ratio(), reading * u, *unit));
    answer.add("slow_loss", slow_loss, "taken off by it",
               figure(100.0 * slow_loss, 2) + " % ± " + figure(200.0 * u, 2) + " %");
    answer.add("slow_loss_u", u);
    const double of = throttled->usual_gauge_pa;
    answer.add("throttled_pa",
               Answer::Named{{"least", throttled->low_gauge_pa}, {"most", throttled->high_gauge_pa}},
               "with the throttle like that",
               shown(throttled->low_gauge_pa, *unit) + " to " + shown(throttled->high_gauge_pa, *unit));
    answer.add("throttle_loss",
               Answer::Named{{"least", 1.0 - throttled->high_gauge_pa / of},
                             {"most", 1.0 - throttled->low_gauge_pa / of}},
               "taken off by it",
               percent(1.0 - throttled->high_gauge_pa / of, 1.0 - throttled->low_gauge_pa / of));
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_turning() {
    return {
        "sums turning",
        "what slow cranking and a shut throttle take off a reading",
        {},
        joined({{"--slow", "SPEED", "the other cranking speed; default that of a flat battery, 130rpm"},
                {"--fill-least", "NUMBER",
                 "least pressure at intake closing over the air's, with the throttle as it was"},
                {"--fill-most", "NUMBER", "and the most; defaults are those of a shut throttle"}},
               joined(cranking_options(), {unit_option, json_option})),
        "--rpm is what the engine should turn at. The speed near top dead "
        "centre is taken as 85 % of either, as everywhere in Lapwing. One of --fill-least and --fill-most "
        "alone stands for both.\n"
        "Keys: value_pa (at --rpm, throttle open), slow_pa, slow_loss (share of it), slow_loss_u "
        "(standard, from the model itself), throttled_pa and throttle_loss, each with least and most.",
        run};
}

}  // namespace lapwing::cli
