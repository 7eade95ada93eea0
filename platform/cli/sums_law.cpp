// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/leak_sheet.h"
#include "platform/cli/shop.h"
#include "platform/cli/verbs.h"
#include "qml/format/formatter.h"

namespace lapwing::cli {
namespace {

std::string percent(const findings::Figure& of) {
    return figure(100.0 * of.si, 3) + " % ± " + figure(100.0 * of.u95.value_or(0.0), 2) + " %";
}

Outcome run(Arguments& arguments) {
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    (void)arguments.quantity<PressureTag>("--set");
    (void)arguments.quantity<PressureTag>("--held");
    const auto second_set = arguments.quantity<PressureTag>("--second-set");
    const auto second_held = arguments.quantity<PressureTag>("--second-held");
    (void)arguments.number("--restrictor-cd", 1.0);
    const auto accuracy = read_class(arguments, 100.0 * reference->assumed("gauge-class"));
    const auto shop = read_shop_pa(arguments);
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    if (!accuracy) return tl::unexpected(accuracy.error());
    if (!shop) return tl::unexpected(shop.error());
    auto sheet = leak_sheet(arguments, *reference);
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    sheet.second_set = second_set;
    sheet.second_held = second_held;
    const auto found = calculators::work_out(calculators::Calculator::law, sheet, *reference);
    if (!found) return refused(found.error());

    Answer answer;
    const findings::Derived& exponent = *line_of(*found, "calc:law_exponent");
    const findings::Message& law = found->notes.front();
    const std::string verdict = law.code.substr(law.code.find('.') + 1);
    const auto& u95 = exponent.figure.u95;
    answer.add("exponent", exponent.figure.si, "exponent of the leak's law",
               figure(exponent.figure.si, 2) + (u95 ? " ± " + figure(*u95, 2) : std::string()));
    answer.add("exponent_u", u95 ? Answer::Value(0.5 * *u95) : Answer::Value(nullptr));
    for (const findings::Input& input : exponent.from.inputs)
        if (input.name.code == "input:gap_exponent")
            if (const auto* gap = std::get_if<findings::Figure>(&input.value))
                answer.add("gap_exponent", gap->si, "of a narrow gap here", figure(gap->si, 2));
    answer.add("verdict", std::vector<std::string>{verdict});
    for (const auto& [key, name, label] :
         {std::tuple("leakage", "calc:leakage", "leakage"),
          std::tuple("second_leakage", "calc:second_leakage", "at the second set pressure")}) {
        const auto* line = line_of(*found, name);
        answer.add(key, line->figure.si, label, percent(line->figure));
    }
    for (const auto& [key, name, label] :
         {std::tuple("leak_area_m2", "calc:leak_area", "leak area, effective"),
          std::tuple("second_leak_area_m2", "calc:second_leak_area", "at the second set pressure")})
        if (const auto* line = line_of(*found, name))
            answer.add(key, line->figure.si, label,
                       shown_with(line->figure.si, 0.5 * line->figure.u95.value_or(0.0), units::mm2, 3));
    answer.note(format::Formatter().text(law).toStdString());
    auto assumed = assumed_of(arguments);
    if (!assumed.empty()) answer.note(fmt::format("Assumed: {}.", fmt::join(assumed, ", ")));
    answer.add("assumed", std::move(assumed));
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_law() {
    return {
        "sums law",
        "what two readings of one leak at two set pressures say of it: hole, narrow gap, seated or opened",
        {},
        joined({{"--set", "PRESSURE", "set pressure, outlet closed", true},
                {"--held", "PRESSURE", "what the cylinder holds", true},
                {"--second-set", "PRESSURE", "the other set pressure", true},
                {"--second-held", "PRESSURE", "what the cylinder holds at it", true}},
               joined(joined(tester_options(), shop_options()), {json_option})),
        "The area of a hole is the same at both pressures (exponent 0); that of a narrow gap grows; a leak "
        "that pressure seats gets smaller, one that it opens grows faster. Where the gauges can't tell, "
        "the verdict is undecided. The restrictor cancels.\n"
        "Keys: exponent (n of area ~ held pressure to the power n), exponent_u (standard; null where the "
        "readings allow any), gap_exponent (what a narrow gap would show), verdict [one of hole, gap, "
        "seats, opens, between, undecided], leakage, second_leakage, leak_area_m2, second_leak_area_m2, "
        "assumed (what was not given).",
        run};
}

}  // namespace lapwing::cli
