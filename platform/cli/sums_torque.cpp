// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/physics/cranking.h"
#include "core/physics/holding_torque.h"
#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    physics::SliderCrank crank;
    crank.bore_m = arguments.si<LengthTag>("--bore");
    crank.stroke_m = arguments.si<LengthTag>("--stroke");
    crank.rod_m = arguments.si<LengthTag>("--rod");
    const double pressure = arguments.si<PressureTag>("--pressure");
    const double angle = arguments.si<AngleTag>("--angle");
    const auto bar = arguments.quantity<LengthTag>("--bar");
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    if (const auto fine = physics::check(crank); !fine) return refused(fine.error());
    if (const auto fine = physics::check_holding(pressure, angle); !fine) return refused(fine.error());

    const double torque = physics::holding_torque_nm(crank, pressure, angle);
    Answer answer;
    answer.add("value_nm", torque, "torque on the crank", figure(torque) + " N m");
    answer.add("u_nm", nullptr);
    if (bar) {
        const auto force = physics::force_at_bar_n(torque, bar->si());
        if (!force) return refused(force.error());
        answer.add("force_n", *force, "force at the end of the bar", figure(*force) + " N");
    }
    answer.note(
        "Air in the cylinder can whip the crank round: hands and tools clear before the air goes on.");
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_torque() {
    return {"sums torque",
            "what holds the crank against a leak-down tester's air",
            {},
            {{"--bore", "LENGTH", "bore", true},
             {"--stroke", "LENGTH", "stroke", true},
             {"--rod", "LENGTH", "connecting rod between the centres of its eyes", true},
             {"--pressure", "PRESSURE", "in the cylinder, gauge", true},
             {"--angle", "ANGLE", "of the crank from top dead centre, like 2deg", true},
             {"--bar", "LENGTH", "of a bar on the crank, for the force at its end"},
             json_option},
            "Keys: value_nm, u_nm (null: friction, which holds the crank in part, is not known), force_n "
            "with --bar.",
            run};
}

}  // namespace lapwing::cli
