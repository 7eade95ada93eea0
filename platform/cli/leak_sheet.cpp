// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/leak_sheet.h"

#include <algorithm>
#include <array>

namespace lapwing::cli {
namespace {

constexpr std::array<std::string_view, 2> gauges{"one", "two"};

}  // namespace

std::vector<Option> tester_options() {
    return {{"--restrictor", "LENGTH", "diameter of the tester's restrictor; default 0.040in"},
            {"--restrictor-cd", "NUMBER", "its discharge coefficient; default 0.85"},
            {"--gauge-class", "CLASS",
             "of both gauges: EN 837-1 like 1.6 (% of span), ASME B40.100 A to D; default 2.5"},
            {"--gauge-span", "PRESSURE", "their full scale; default twice the set pressure"},
            {"--gauges", "COUNT",
             "one after the restrictor (default): there the regulator's sag under flow is not seen, and "
             "counts as doubt; or two"}};
}

tl::expected<uncertainty::AccuracyClass, Failure> read_class(Arguments& arguments, double assumed_percent) {
    const std::string text = arguments.text("--gauge-class");
    constexpr std::array<std::string_view, 4> grades{"A", "B", "C", "D"};
    if (const auto grade = std::ranges::find(grades, std::string_view(text)); grade != grades.end())
        return uncertainty::asme_b40_100(static_cast<uncertainty::AsmeGrade>(grade - grades.begin()));
    const double number = arguments.number("--gauge-class", assumed_percent);
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    const auto found = uncertainty::en837_class(number);
    if (!found) return refused(found.error());
    return *found;
}

bool two_gauges(Arguments& arguments) {
    return arguments.choice("--gauges", gauges) == 1;
}

calculators::Worksheet leak_sheet(Arguments& arguments, const findings::Reference& reference) {
    calculators::Worksheet out = calculators::empty_worksheet();
    out.set = arguments.quantity<PressureTag>("--set");
    out.held = arguments.quantity<PressureTag>("--held");
    out.session.conditions.altitude = arguments.quantity<LengthTag>("--altitude");
    out.session.conditions.station_pressure = arguments.quantity<PressureTag>("--ambient");
    out.tester.restrictor = arguments.quantity<LengthTag>("--restrictor");
    if (arguments.has("--restrictor-cd"))
        if (auto cd = TypedRatio::make(arguments.text("--restrictor-cd"), units::one))
            out.tester.restrictor_cd = *cd;
    Gauge& gauge = out.tester.gauge;
    gauge.full_scale =
        arguments.quantity<PressureTag>("--gauge-span")
            .value_or(TypedPressure::from(
                Pressure::from_si(reference.assumed("unknown-scale") * out.set->si()), units::pa, 0));
    gauge.accuracy = arguments.text("--gauge-class");
    const bool letter = gauge.accuracy.size() == 1 && gauge.accuracy[0] >= 'A' && gauge.accuracy[0] <= 'D';
    if (!gauge.accuracy.empty())
        gauge.scheme = letter ? AccuracyScheme::asme_b40_100 : AccuracyScheme::en_837_1;
    if (two_gauges(arguments)) out.tester.supply_gauge = gauge;
    return out;
}

std::vector<std::string> assumed_of(const Arguments& arguments) {
    std::vector<std::string> out;
    if (!arguments.has("--gauge-class")) out.emplace_back("gauge class");
    if (!arguments.has("--gauge-span")) out.emplace_back("gauge span");
    if (!arguments.has("--restrictor")) out.emplace_back("restrictor");
    if (!arguments.has("--restrictor-cd")) out.emplace_back("restrictor's discharge coefficient");
    if (!arguments.has("--altitude") && !arguments.has("--ambient")) out.emplace_back("sea level");
    return out;
}

const findings::Derived* line_of(const calculators::Answer& answer, std::string_view name) {
    for (const calculators::Line& line : answer.lines)
        if (line.name.code == name) return std::get_if<findings::Derived>(&line.value);
    return nullptr;
}

double u_of(const tl::expected<calculators::Answer, Error>& answer, std::string_view name) {
    const auto* derived = answer ? line_of(*answer, name) : nullptr;
    return derived ? 0.5 * derived->figure.u95.value_or(0.0) : 0.0;
}

}  // namespace lapwing::cli
