// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/compare/compare.h"

#include <algorithm>
#include <cmath>

#include "core/compare/measured.h"
#include "core/compare/pieces.h"
#include "core/uncertainty/coverage.h"

namespace lapwing::compare {
namespace {

using findings::Dimension;
using findings::Figure;

findings::Derivation derivation_of(const Change& change, const Measured& before, const Measured& after) {
    findings::Derivation out;
    out.title = findings::Word{"from:change"};
    out.symbols = after.leak_down() ? "L₂ − L₁" : "p₂ − p₁";
    out.inputs = {findings::input("before", after.leak_down() ? "L₁" : "p₁", change.before->compared),
                  findings::input("after", after.leak_down() ? "L₂" : "p₂", change.after->compared)};
    if (change.before->converted)
        out.inputs.push_back(findings::input("before_as_measured", "", change.before->as_measured));
    out.source = findings::say("source.physics", std::string("JCGM 100, 5.2: what both readings share"));
    out.notes.push_back(findings::say(
        before.tester_key == after.tester_key ? "compare.note_cancels" : "compare.note_nothing_cancels"));
    if (after.cranking() && &before.at->visit != &after.at->visit)
        out.notes.push_back(findings::say(
            "compare.note_day",
            findings::figure(
                Dimension::share,
                after.at->reference.assumed(after.session().conditions.cranking_speed ? "day-scatter-timed"
                                                                                      : "day-scatter"))));
    return out;
}

std::optional<Change> change_of(const Case& then, const Case& now, TestKind test, int cylinder,
                                findings::ModelRuns& runs, std::vector<Reason>& reasons) {
    const auto after = measured(now, test, cylinder);
    const auto set_pa =
        after && after->leak_down() ? std::optional(after->pneumatics.set_gauge_pa) : std::nullopt;
    const auto before = measured(then, test, cylinder, set_pa);
    if (!before && !after) return std::nullopt;
    Change out;
    if (!before || !after) {
        (before ? out.before : out.after) =
            before ? measure_of(*before, before->value, false) : measure_of(*after, after->value, false);
        return out;
    }
    const Crossed crossed = in_terms_of(*before, *after, runs);
    out = judged(test, crossed.value, after->value, !crossed.prevented(), now.reference);
    out.before = measure_of(*before, crossed.value, crossed.converted);
    out.after = measure_of(*after, after->value, false);
    out.difference->from = derivation_of(out, *before, *after);
    add_reasons(reasons, crossed.reasons);
    return out;
}

}  // namespace

Measure measure_of(const Measured& of, const Doubtful& compared, bool converted) {
    Measure out;
    out.as_measured = of.shown;
    out.compared = of.shown;
    if (converted)
        out.compared =
            findings::figure(of.shown.dimension, compared.value, uncertainty::expanded(compared.u()));
    out.converted = converted;
    out.repeats = static_cast<int>(of.readings.size());
    out.tag = of.newest().tag;
    if (of.leak_down()) {
        const auto leak = physics::leakdown(of.pneumatics, of.held_pa);
        if (leak && leak->state != physics::LeakState::wide_open)
            out.leak_area = findings::figure(Dimension::area, leak->leak_area_m2);
    }
    return out;
}

namespace {

/// Equal as far as anyone reads them: two conversions of 5.61 and 5.64 % are one.
bool alike(const findings::Message& one, const findings::Message& other) {
    constexpr double as_shown = 0.003;
    if (one.code != other.code || one.args.size() != other.args.size()) return false;
    for (std::size_t i = 0; i < one.args.size(); ++i) {
        const auto* a = std::get_if<Figure>(&one.args[i]);
        const auto* b = std::get_if<Figure>(&other.args[i]);
        const bool shares = a && b && a->dimension == Dimension::share && b->dimension == Dimension::share;
        if (shares ? std::abs(a->si - b->si) > as_shown : one.args[i] != other.args[i]) return false;
    }
    return true;
}

}  // namespace

void add_reasons(std::vector<Reason>& all, const std::vector<Reason>& more) {
    for (const Reason& reason : more) {
        const auto same = std::ranges::find_if(all, [&](const Reason& other) {
            return other.treatment == reason.treatment && alike(other.message, reason.message);
        });
        if (same == all.end()) {
            all.push_back(reason);
            continue;
        }
        const auto add = [](auto& list, const auto& from) {
            for (const auto& one : from)
                if (std::ranges::find(list, one) == list.end()) list.push_back(one);
        };
        add(same->tests, reason.tests);
        add(same->cylinders, reason.cylinders);
    }
}

bool Crossed::prevented() const {
    return std::ranges::any_of(reasons,
                               [](const Reason& reason) { return reason.treatment == Treatment::prevents; });
}

Crossed in_terms_of(const Measured& from, const Measured& to, findings::ModelRuns& runs) {
    Crossed out{from.value, false, {}};
    if (from.leak_down())
        cross_leak_down(from, to, out);
    else if (from.test == TestKind::crankcase)
        cross_hold(from, to, out);
    else
        cross_cranking(from, to, runs, out);
    return out;
}

Change judged(TestKind test, const Doubtful& before, const Doubtful& after, bool comparable,
              const findings::Reference& reference) {
    const Doubtful difference = uncertainty::difference(after, before);
    Change out;
    out.u = difference.u();
    out.difference = findings::Derived{
        findings::figure(test == TestKind::leak_down ? Dimension::share : Dimension::pressure_difference,
                         difference.value, uncertainty::expanded(out.u)),
        {}};
    if (!comparable) {
        out.verdict = Verdict::not_comparable;
        return out;
    }
    const double better = test == TestKind::leak_down ? -difference.value : difference.value;
    const double real = reference.assumed("change-real") * out.u;
    const double sure = reference.assumed("change-beyond-doubt") * out.u;
    out.beyond_doubt = std::abs(better) > sure;
    if (std::abs(better) <= real)
        out.verdict = Verdict::no_real_change;
    else if (better < 0.0)
        out.verdict = Verdict::worse;
    else
        out.verdict = out.beyond_doubt ? Verdict::better_beyond_doubt : Verdict::better;
    return out;
}

const Change* CylinderChange::of(TestKind test) const {
    const auto& found = test == TestKind::dry         ? dry
                        : test == TestKind::wet       ? wet
                        : test == TestKind::leak_down ? leak_down
                                                      : crankcase;
    return found ? &*found : nullptr;
}

bool Comparison::comparable() const {
    return std::ranges::none_of(reasons,
                                [](const Reason& reason) { return reason.treatment == Treatment::prevents; });
}

Comparison compare(const Dossier& dossier, const Side& before, const Side& after,
                   const findings::Reference& reference) {
    const auto case_of = [&](const Side& side) {
        return findings::case_of(dossier, *side.visit, reference, {side.tag, nullptr, false});
    };
    const Case then = case_of(before);
    const Case now = case_of(after);
    findings::ModelRuns runs;
    Comparison out;
    for (const std::vector<int> numbers = numbers_in_order(dossier.engine); const int number : numbers) {
        CylinderChange cylinder;
        cylinder.number = number;
        cylinder.dry = change_of(then, now, TestKind::dry, number, runs, out.reasons);
        cylinder.leak_down = change_of(then, now, TestKind::leak_down, number, runs, out.reasons);
        cylinder.wet = change_of(then, now, TestKind::wet, number, runs, out.reasons);
        cylinder.crankcase = change_of(then, now, TestKind::crankcase, number, runs, out.reasons);
        out.cylinders.push_back(std::move(cylinder));
    }
    std::ranges::stable_sort(out.reasons, [](const Reason& a, const Reason& b) {
        const auto weight = [](Treatment of) { return of == Treatment::prevents ? 0 : 1; };
        return weight(a.treatment) < weight(b.treatment);
    });
    return out;
}

}  // namespace lapwing::compare
