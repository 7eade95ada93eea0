// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <array>

#include "core/findings/reference.h"
#include "core/physics/leakdown.h"
#include "core/uncertainty/coverage.h"
#include "core/uncertainty/leakage.h"
#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/shop.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

/// The gauges' class as it stands on their dials: EN 837-1 "1.6", ASME B40.100 "B".
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

struct Converted {
    double leakage = 0.0;
    double held_gauge_pa = 0.0;
};

tl::expected<Converted, Failure> on_other(const physics::TesterPneumatics& from, double held_pa,
                                          const physics::TesterPneumatics& to, physics::LeakLaw law) {
    const auto held = physics::held_on_other_tester_gauge_pa(from, held_pa, to, law);
    if (!held) return refused(held.error());
    const auto leakage = physics::leakage(to.set_gauge_pa, *held);
    if (!leakage) return refused(leakage.error());
    return Converted{*leakage, *held};
}

Outcome add_converted(Answer& answer, Arguments& arguments, const physics::TesterPneumatics& from,
                      double held_pa, Unit<PressureTag> unit) {
    if (!arguments.has("--to-set") && !arguments.has("--to-restrictor") && !arguments.has("--to-ambient"))
        return Exit::done;
    physics::TesterPneumatics to = from;
    to.set_gauge_pa = arguments.si<PressureTag>("--to-set", from.set_gauge_pa);
    to.restrictor_diameter_m = arguments.si<LengthTag>("--to-restrictor", from.restrictor_diameter_m);
    to.ambient_pa = arguments.si<PressureTag>("--to-ambient", from.ambient_pa);
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    const auto orifice = on_other(from, held_pa, to, physics::LeakLaw::orifice);
    const auto laminar = on_other(from, held_pa, to, physics::LeakLaw::laminar);
    if (!orifice) return tl::unexpected(orifice.error());
    if (!laminar) return tl::unexpected(laminar.error());
    answer.add("converted", Answer::Named{{"orifice", orifice->leakage}, {"laminar", laminar->leakage}},
               "on the other tester",
               fmt::format("{} % if the leak is a hole, {} % if it is a narrow gap",
                           figure(100.0 * orifice->leakage, 3), figure(100.0 * laminar->leakage, 3)));
    answer.add("converted_held_pa",
               Answer::Named{{"orifice", orifice->held_gauge_pa}, {"laminar", laminar->held_gauge_pa}},
               "held there",
               shown(orifice->held_gauge_pa, unit) + " or " + shown(laminar->held_gauge_pa, unit));
    return Exit::done;
}

Outcome run(Arguments& arguments) {
    const auto reference = findings::built_in_reference();
    if (!reference) return tl::unexpected(Failure{Exit::internal, reference.error().english});
    const auto set = arguments.quantity<PressureTag>("--set");
    const auto held = arguments.quantity<PressureTag>("--held");
    physics::TesterPneumatics tester;
    tester.restrictor_diameter_m =
        arguments.si<LengthTag>("--restrictor", reference->assumed("restrictor-diameter"));
    tester.restrictor_cd = arguments.number("--restrictor-cd", reference->assumed("restrictor-cd"));
    const auto span = arguments.quantity<PressureTag>("--gauge-span");
    const auto accuracy = read_class(arguments, 100.0 * reference->assumed("gauge-class"));
    const auto shop = read_shop_pa(arguments);
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    if (!accuracy) return tl::unexpected(accuracy.error());
    if (!shop) return tl::unexpected(shop.error());
    tester.set_gauge_pa = set->si();
    tester.ambient_pa = *shop;

    const auto leak = physics::leakdown(tester, held->si());
    if (!leak) return refused(leak.error());
    uncertainty::Gauge gauge;
    gauge.span_pa = span ? span->si() : reference->assumed("unknown-scale") * set->si();
    gauge.accuracy = *accuracy;
    gauge.shares = reference->error_shares();
    const auto doubt = uncertainty::leakage_two_gauges(gauge, set->si(), gauge, held->si());
    if (!doubt) return refused(doubt.error());

    const auto unit = held->unit();
    const bool inches =
        arguments.has("--restrictor") && arguments.quantity<LengthTag>("--restrictor")->unit() != units::mm;
    Answer answer;
    answer.add("leakage", leak->leakage, "leakage",
               fmt::format("{} % ± {} %", figure(100.0 * leak->leakage, 3),
                           figure(100.0 * uncertainty::expanded(doubt->u), 2)));
    answer.add("leakage_u", doubt->u);
    answer.add("area_ratio", leak->area_ratio, "leak over restrictor", figure(leak->area_ratio));
    answer.add("leak_area_m2", leak->leak_area_m2, "leak area, effective",
               shown(leak->leak_area_m2, units::mm2, 3));
    answer.add("leak_hole_m", leak->leak_hole_m, "as a round hole",
               shown(leak->leak_hole_m, inches ? units::inch : units::mm, 3));
    answer.add("flow_anr_m3s", leak->flow_anr_m3_s, "flow",
               shown(leak->flow_anr_m3_s, units::l_min, 3) + " of free air (ANR)");
    if (const auto added = add_converted(answer, arguments, tester, held->si(), unit); !added) return added;
    std::vector<std::string> assumed;
    if (!arguments.has("--gauge-class")) assumed.emplace_back("gauge class");
    if (!span) assumed.emplace_back("gauge span");
    if (!arguments.has("--restrictor")) assumed.emplace_back("restrictor");
    if (!arguments.has("--restrictor-cd")) assumed.emplace_back("restrictor's discharge coefficient");
    if (!arguments.has("--altitude") && !arguments.has("--ambient")) assumed.emplace_back("sea level");
    if (leak->state == physics::LeakState::wide_open)
        answer.note("Nothing is held: the leak is larger than this tester can tell.");
    if (!assumed.empty()) answer.note(fmt::format("Assumed: {}.", fmt::join(assumed, ", ")));
    answer.add("assumed", std::move(assumed));
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_leak() {
    return {"sums leak",
            "leakage, leak area and flow of a leak-down test; the same leak on another tester",
            {},
            joined({{"--set", "PRESSURE", "set pressure, outlet closed", true},
                    {"--held", "PRESSURE", "what the cylinder holds", true},
                    {"--restrictor", "LENGTH", "diameter of the tester's restrictor; default 0.040in"},
                    {"--restrictor-cd", "NUMBER", "its discharge coefficient; default 0.85"},
                    {"--to-set", "PRESSURE", "set pressure of the other tester; default the same"},
                    {"--to-restrictor", "LENGTH", "its restrictor; default the same"},
                    {"--to-ambient", "PRESSURE", "air pressure there, absolute; default the same"},
                    {"--gauge-class", "CLASS",
                     "of both gauges: EN 837-1 like 1.6 (% of span), ASME B40.100 A to D; "
                     "default 2.5"},
                    {"--gauge-span", "PRESSURE", "their full scale; default twice the set pressure"}},
                   joined(shop_options(), {json_option})),
            "Leakage is (set - held) / set. The table's ± is two standard uncertainties, leakage_u is one; "
            "both come "
            "from the gauges alone. Two laws are shown for the other tester because a leak may be a hole or "
            "a narrow "
            "gap; they are examples, not bounds.\n"
            "Keys: leakage, leakage_u, area_ratio, leak_area_m2, leak_hole_m, flow_anr_m3s; with a --to- "
            "option also "
            "converted and converted_held_pa, each with orifice and laminar; assumed (what was not given). "
            "Nothing "
            "held: the areas are null.",
            run};
}

}  // namespace lapwing::cli
