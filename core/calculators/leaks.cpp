// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/calculators/pieces.h"
#include "core/findings/findings.h"
#include "core/findings/instruments.h"
#include "core/physics/gas.h"
#include "core/physics/leakdown.h"

namespace lapwing::calculators {
namespace {

using findings::Dimension;

/// One leak-down reading judged as in a session, or the first of two at two set pressures (`with_second`).
/// `sheet` has set and held.
Result<findings::LeakDown> judged(const Worksheet& sheet, const findings::Reference& reference,
                                  bool with_second = false) {
    if (auto possible = physics::leakage(sheet.set->si(), sheet.held->si()); !possible)
        return tl::unexpected(possible.error());
    if (with_second)
        if (auto possible = physics::leakage(sheet.second_set->si(), sheet.second_held->si()); !possible)
            return tl::unexpected(possible.error());
    Dossier dossier;
    dossier.engine.cylinders.emplace_back();
    dossier.engine.bore = sheet.engine.bore;  // by which a restrictor that is not known is assumed
    dossier.engine.limits.leakage_set = sheet.other_set;
    dossier.engine.limits.leakage_restrictor = sheet.other_restrictor;
    Visit visit;
    visit.session.conditions = sheet.session.conditions;
    Tester tester = sheet.tester;
    if (!(tester.gauge.full_scale.si() > 0.0)) {
        const double scale = reference.assumed("unknown-scale") * sheet.set->si();
        tester.gauge.full_scale = TypedPressure::from(Pressure::from_si(scale), units::pa, 0);
    }
    if (tester.supply_gauge && !(tester.supply_gauge->full_scale.si() > 0.0))
        tester.supply_gauge = tester.gauge;
    tester.id.uuid = *Uuid::parse("00000000-0000-7000-8000-000000000001");
    visit.session.leak_down_tester = tester.id;
    dossier.testers = {tester};
    Reading reading;
    reading.test = TestKind::leak_down;
    reading.set = sheet.set;
    reading.held = sheet.held;
    visit.readings = {reading};
    if (with_second) {
        Reading second = reading;
        second.set = sheet.second_set;
        second.held = sheet.second_held;
        visit.readings.insert(visit.readings.begin(), std::move(second));
    }
    findings::FindingsOptions options;
    options.beside = false;
    const auto found = findings::find(dossier, visit, reference, options);
    if (!found.cylinders.front().leak_down)
        return fail("calculator.leakage",
                    "These two pressures can't be worked with: type what was set and what was held.");
    return *found.cylinders.front().leak_down;
}

Status complete(const Worksheet& sheet) {
    if (!sheet.set) return needs("set pressure");
    if (!sheet.held) return needs("held pressure");
    return {};
}

}  // namespace

Result<Answer> leakage(const Worksheet& sheet, const findings::Reference& reference) {
    if (auto there = complete(sheet); !there) return tl::unexpected(there.error());
    const auto leak = judged(sheet, reference);
    if (!leak) return tl::unexpected(leak.error());
    Answer answer;
    answer.lines.push_back({name("leakage"), leak->leakage});
    if (leak->leak_hole) answer.lines.push_back({name("leak_hole"), *leak->leak_hole});
    if (leak->leak_area) answer.lines.push_back({name("leak_area"), *leak->leak_area});
    if (leak->flow) answer.lines.push_back({name("flow"), *leak->flow});
    return answer;
}

Result<Answer> other_tester(const Worksheet& sheet, const findings::Reference& reference) {
    if (auto there = complete(sheet); !there) return tl::unexpected(there.error());
    if (!sheet.other_set) return needs("the other tester's set pressure");
    const auto leak = judged(sheet, reference);
    if (!leak) return tl::unexpected(leak.error());
    if (leak->on_testers.empty())
        return fail("calculator.other_tester",
                    "This leak can't be put on the other tester: look at the set pressures and restrictors.");
    const findings::OnTester& on = leak->on_testers.front();
    Answer answer;
    answer.lines.push_back({name("on_other_hole"), on.orifice});
    answer.lines.push_back({name("on_other_gap"), on.laminar});
    answer.lines.push_back({name("leakage"), leak->leakage});
    return answer;
}

Result<Answer> law(const Worksheet& sheet, const findings::Reference& reference) {
    if (auto there = complete(sheet); !there) return tl::unexpected(there.error());
    if (!sheet.second_set) return needs("the second set pressure");
    if (!sheet.second_held) return needs("what was held at it");
    const auto leak = judged(sheet, reference, true);
    if (!leak) return tl::unexpected(leak.error());
    if (!leak->law)
        return fail("calculator.law",
                    "These two readings don't show how the leak behaves: set pressures must lie well apart, "
                    "and something must be lost and something held at both.");
    Worksheet swapped = sheet;
    std::swap(swapped.set, swapped.second_set);
    std::swap(swapped.held, swapped.second_held);
    const auto other = judged(swapped, reference);
    if (!other) return tl::unexpected(other.error());
    Answer answer;
    answer.lines.push_back(
        {name("law_exponent"), findings::Derived{std::get<findings::Figure>(leak->law->message.args.front()),
                                                 leak->law->from.front()}});
    if (leak->leak_area) answer.lines.push_back({name("leak_area"), *leak->leak_area});
    if (other->leak_area) answer.lines.push_back({name("second_leak_area"), *other->leak_area});
    answer.lines.push_back({name("leakage"), leak->leakage});
    answer.lines.push_back({name("second_leakage"), other->leakage});
    answer.notes.push_back(leak->law->message);
    return answer;
}

Result<Answer> restrictor(const Worksheet& sheet, const findings::Reference& reference) {
    if (!sheet.hole) return needs("diameter of the drilled hole");
    if (auto there = complete(sheet); !there) return tl::unexpected(there.error());
    const auto leak = judged(sheet, reference);
    if (!leak) return tl::unexpected(leak.error());
    physics::TesterPneumatics tester;
    tester.set_gauge_pa = sheet.set->si();
    tester.ambient_pa = findings::station_pressure_pa(sheet.engine, sheet.session, reference);
    const double cd =
        sheet.tester.restrictor_cd ? sheet.tester.restrictor_cd->si() : reference.assumed("restrictor-cd");
    const auto area = [&](double held) {
        return physics::restrictor_area_by_hole_m2(tester, held, sheet.hole->si(), cd);
    };
    const auto middle = area(sheet.held->si());
    if (!middle) return tl::unexpected(middle.error());
    const auto diameter = [cd](double area_m2) { return std::sqrt(4.0 * area_m2 / (physics::pi * cd)); };

    findings::Derived size{figure(Dimension::length, diameter(*middle)), {}};
    // A drilled hole is the same from one reading to the next, unlike a leak.
    const double u = findings::u95_without(leak->leakage, "leak_repeat") * tester.set_gauge_pa;
    const auto more = area(std::min(sheet.held->si() + u, tester.set_gauge_pa));
    const auto less = area(std::max(sheet.held->si() - u, 0.0));
    if (more && less) {
        const double by_gauge = 0.5 * std::abs(diameter(*more) - diameter(*less));
        // Drilled to what was typed, within half its last digit.
        const double by_hole = sheet.hole->step_si() / std::sqrt(3.0) * size.figure.si / sheet.hole->si();
        size.figure.u95 = std::hypot(by_gauge, by_hole);
        size.from.doubts = findings::doubt_shares({{"gauge", by_gauge}, {"hole", by_hole}});
    }
    size.from.title = findings::Word{"from:restrictor"};
    size.from.symbols = "A = C π/4 d² p₂ ψ(p₀/p₂) / (p₁ ψ(p₂/p₁))";
    size.from.inputs = {input("set", "p₁", findings::figure_of(*sheet.set)),
                        input("held", "p₂", findings::figure_of(*sheet.held)),
                        input("hole", "d", findings::figure_of(*sheet.hole)),
                        input("cd", "C", figure(Dimension::number, cd)),
                        input("ambient", "p₀", figure(Dimension::station_pressure, tester.ambient_pa))};
    size.from.source = {"source.physics", {std::string("isentropic nozzle flow")}};
    findings::Derived effective{figure(Dimension::area, *middle), size.from};
    // An area grows with the square of its diameter.
    if (size.figure.u95) effective.figure.u95 = 2.0 * *size.figure.u95 / size.figure.si * *middle;
    effective.from.title = findings::Word{"from:restrictor_area"};
    Answer answer;
    answer.lines.push_back({name("restrictor"), std::move(size)});
    answer.lines.push_back({name("restrictor_area"), std::move(effective)});
    return answer;
}

}  // namespace lapwing::calculators
