// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/base/apart.h"
#include "core/calculators/calculators.h"
#include "core/findings/reference.h"
#include "core/physics/leakdown.h"
#include "core/uncertainty/coverage.h"
#include "core/uncertainty/leakage.h"
#include "platform/cli/answer.h"
#include "platform/cli/cranking.h"
#include "platform/cli/leak_sheet.h"
#include "platform/cli/shop.h"
#include "platform/cli/verbs.h"

namespace lapwing::cli {
namespace {

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

/// Standard uncertainties, shares.
struct ConvertedDoubt {
    double hole = 0.0, gap = 0.0;
};

std::string percent(double share, std::optional<double> u) {
    std::string out = figure(100.0 * share, 3) + " %";
    if (u) out += " ± " + figure(200.0 * *u, 2) + " %";
    return out;
}

Outcome add_converted(Answer& answer, Arguments& arguments, const physics::TesterPneumatics& from,
                      double held_pa, Unit<PressureTag> unit, const std::optional<ConvertedDoubt>& u) {
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
               fmt::format("{} if the leak is a hole, {} if it is a narrow gap",
                           percent(orifice->leakage, u ? std::optional(u->hole) : std::nullopt),
                           percent(laminar->leakage, u ? std::optional(u->gap) : std::nullopt)));
    if (u) {
        answer.add("converted_u", Answer::Named{{"orifice", u->hole}, {"laminar", u->gap}});
    }
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
    if (set && span && is_above(set->si(), span->si()))
        arguments.complain(
            "--set",
            fmt::format("{} is over the gauge's full scale, {}. Give the scale of the gauge that "
                        "it was read on.",
                        set->text(), span->text()),
            Exit::refused);
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
    const auto doubt = two_gauges(arguments)
                           ? uncertainty::leakage_two_gauges(gauge, set->si(), gauge, held->si())
                           : uncertainty::leakage_one_gauge(gauge, set->si(), held->si(),
                                                            reference->assumed("droop") * set->si());
    if (arguments.wrong()) return tl::unexpected(*arguments.wrong());
    if (!doubt) return refused(doubt.error());

    const auto unit = held->unit();
    const bool inches =
        arguments.has("--restrictor") && arguments.quantity<LengthTag>("--restrictor")->unit() != units::mm;
    Answer answer;
    auto sheet = leak_sheet(arguments, *reference);
    sheet.other_set = arguments.has("--to-set") ? arguments.quantity<PressureTag>("--to-set") : sheet.set;
    sheet.other_restrictor =
        arguments.has("--to-restrictor")
            ? arguments.quantity<LengthTag>("--to-restrictor")
            : TypedLength::from(Length::from_si(tester.restrictor_diameter_m), units::m, 9);
    const auto sized = calculators::work_out(calculators::Calculator::leakage, sheet, *reference);
    const double u_all = u_of(sized, "calc:leakage");
    answer.add("leakage", leak->leakage, "leakage", percent(leak->leakage, u_all));
    answer.add("leakage_u", doubt->u);
    answer.add("leakage_u_all", u_all);
    answer.add("area_ratio", leak->area_ratio, "leak over restrictor", figure(leak->area_ratio));
    const auto add = [&](const char* key, const char* u_key, double value, const char* name,
                         const char* label, auto unit_of, const char* more) {
        const double u = u_of(sized, name);
        const bool known = u > 0.0 && std::isfinite(value);
        answer.add(key, value, label,
                   (known ? shown_with(value, u, unit_of, 3) : shown(value, unit_of, 3)) + more);
        answer.add(u_key, known ? Answer::Value(u) : Answer::Value(nullptr));
    };
    add("leak_area_m2", "leak_area_u_m2", leak->leak_area_m2, "calc:leak_area", "leak area, effective",
        units::mm2, "");
    add("leak_hole_m", "leak_hole_u_m", leak->leak_hole_m, "calc:leak_hole", "as a round hole",
        inches ? units::inch : units::mm, "");
    add("flow_anr_m3s", "flow_u_anr_m3s", leak->flow_anr_m3_s, "calc:flow", "flow", units::l_min,
        " of free air (ANR)");
    // The sheet knows one air pressure only.
    std::optional<ConvertedDoubt> u_converted;
    if (!arguments.has("--to-ambient")) {
        const auto on_other = calculators::work_out(calculators::Calculator::other_tester, sheet, *reference);
        u_converted = {u_of(on_other, "calc:on_other_hole"), u_of(on_other, "calc:on_other_gap")};
    }
    if (auto added = add_converted(answer, arguments, tester, held->si(), unit, u_converted); !added)
        return added;
    std::vector<std::string> assumed = assumed_of(arguments);
    if (leak->state == physics::LeakState::wide_open)
        answer.note("Nothing is held: the leak is larger than this tester can tell.");
    if (!assumed.empty()) answer.note(fmt::format("Assumed: {}.", fmt::join(assumed, ", ")));
    answer.add("assumed", std::move(assumed));
    return answer.print(arguments.json());
}

}  // namespace

Verb sums_leak() {
    return {
        "sums leak",
        "leakage, leak area and flow of a leak-down test; the same leak on another tester",
        {},
        joined({{"--set", "PRESSURE", "set pressure, outlet closed", true},
                {"--held", "PRESSURE", "what the cylinder holds", true},
                {"--to-set", "PRESSURE", "set pressure of the other tester; default the same"},
                {"--to-restrictor", "LENGTH", "its restrictor; default the same"},
                {"--to-ambient", "PRESSURE", "air pressure there, absolute; default the same"}},
               joined(joined(tester_options(), shop_options()), {json_option})),
        "Leakage is (set - held) / set. The table's ± is two standard uncertainties of all that is doubtful, "
        "as in the app: gauges, what can be read off them, how one reading would repeat, the restrictor. "
        "Two laws are shown for the other tester because a leak may be a hole or a narrow gap; they are "
        "examples, not bounds.\n"
        "Keys: leakage, leakage_u (standard, from the class of the gauges alone, with one gauge the "
        "regulator's sag too), leakage_u_all (of everything), area_ratio, leak_area_m2, leak_hole_m, "
        "flow_anr_m3s, each with its own: leak_area_u_m2, leak_hole_u_m, flow_u_anr_m3s; with a --to- option "
        "also converted, converted_u and converted_held_pa, each with orifice and laminar; assumed (what was "
        "not given). Nothing held: the areas are null.",
        run};
}

}  // namespace lapwing::cli
