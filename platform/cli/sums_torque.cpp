// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <fmt/format.h>

#include "core/calculators/calculators.h"
#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

Outcome run(Arguments& arguments) {
    calculators::Worksheet sheet;
    const auto on_card = [&](std::string_view name) -> std::optional<Sourced<TypedLength>> {
        if (const auto read = arguments.quantity<LengthTag>(name)) return Sourced<TypedLength>{*read, {}, {}};
        return std::nullopt;
    };
    sheet.engine.bore = on_card("--bore");
    sheet.engine.stroke = on_card("--stroke");
    sheet.engine.rod = on_card("--rod");
    sheet.held = arguments.quantity<PressureTag>("--pressure");
    sheet.off_tdc = arguments.quantity<AngleTag>("--angle");
    sheet.bar = arguments.quantity<LengthTag>("--bar");
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    const auto found = calculators::work_out(calculators::Calculator::torque, sheet, *reference);
    if (!found) return refused(found.error());

    Answer answer;
    const auto add = [&](const calculators::Line& line, const char* key, const char* u_key, const char* label,
                         const char* unit) {
        const auto& shown = std::get<findings::Derived>(line.value).figure;
        const double u95 = shown.u95.value_or(0.0);
        answer.add(key, shown.si, label, fmt::format("{} {} ± {}", figure(shown.si), unit, figure(u95, 2)));
        answer.add(u_key, 0.5 * u95);
    };
    add(found->lines.front(), "value_nm", "u_nm", "torque on the crank", "N m");
    if (found->lines.size() > 1)
        add(found->lines[1], "force_n", "force_u_n", "force at the end of the bar", "N");
    answer.note(
        "Air in the cylinder can whip the crank round: hands and tools clear before the air goes on.");
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_torque() {
    return {
        "sums torque",
        "what holds the crank against a leak-down tester's air",
        {},
        {{"--bore", "LENGTH", "bore", true},
         {"--stroke", "LENGTH", "stroke", true},
         {"--rod", "LENGTH", "connecting rod between the centres of its eyes", true},
         {"--pressure", "PRESSURE", "in the cylinder, gauge", true},
         {"--angle", "ANGLE", "of the crank from top dead centre, like 2deg", true},
         {"--bar", "LENGTH", "of a bar on the crank, for the force at its end"},
         json_option},
        "Keys: value_nm, u_nm (the gauge's error and half the last digit of what was typed; friction, which "
        "holds the crank in part, is left out), force_n and force_u_n with --bar.",
        run};
}

}  // namespace lapwing::cli
