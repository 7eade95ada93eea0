// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/where_it_leaks.h"

#include <algorithm>
#include <cmath>

#include "core/findings/case.h"
#include "core/odds/summary.h"
#include "core/odds/surface_cache.h"
#include "core/odds/verdict.h"

namespace lapwing::odds {
namespace {

using findings::say;

/// Whether somebody listened at the cylinder as it is. What was heard before something was done counts as
/// long as the loudest of it came out at a part that is the same.
bool listened_to(const CylinderEvidence& evidence, StrokeCycle cycle, const findings::Reference& reference) {
    if (!evidence.exits.empty()) return true;
    std::vector<bool> same(evidence.paths.size(), true);
    for (const EarlierState& then : evidence.earlier) {
        for (std::size_t path = 0; path < same.size(); ++path)
            same[path] = same[path] && then.same[path];
        if (then.exits.empty()) continue;
        const Loudness most = std::ranges::max(then.exits, {}, &ExitEvidence::loudness).loudness;
        return std::ranges::all_of(then.exits, [&](const ExitEvidence& exit) {
            const auto path = reference.path_of(exit.exit, cycle);
            const auto place = path ? std::ranges::find(evidence.paths, *path) : evidence.paths.end();
            return exit.loudness != most || place == evidence.paths.end() ||
                   same[static_cast<std::size_t>(place - evidence.paths.begin())];
        });
    }
    return false;
}

void add_reasons(const Dossier& dossier, const Visit& visit, const findings::Reference& reference,
                 const CylinderEvidence& evidence, CylinderOdds& out) {
    const int number = evidence.number;
    const double worth_saying = reference.assumed("asked-from");
    if (!out.measured)
        out.reasons.push_back(say(evidence.left_out ? "odds.nothing_left" : "odds.nothing_measured", number));
    const auto any = [&](auto has) { return has(evidence) || std::ranges::any_of(evidence.earlier, has); };
    const bool air = any([](const StateReadings& state) { return !state.leaks.empty(); });
    const bool ever = any([](const StateReadings& state) { return !state.exits.empty(); });
    const bool listened = listened_to(evidence, dossier.engine.cycle, reference);
    if (evidence.put_right) {
        out.reasons.push_back(say("odds.retest_adjusted", number, findings::word_of(*evidence.put_right)));
        out.unsure = true;
    }
    if (out.measured && !listened && !evidence.put_right && !evidence.wrong_tdc_suspected &&
        evidence.contradictions.empty() && out.seals_well < 1.0 - worth_saying)
        out.reasons.push_back(say(ever  ? "odds.not_listened_since"
                                  : air ? "odds.not_listened"
                                        : "odds.no_air",
                                  number));
    for (const ValveSide side : {ValveSide::intake, ValveSide::exhaust})
        if (const auto low = findings::far_below_siblings(dossier.engine, visit, reference, number, side)) {
            out.reasons.push_back(say("odds.clearance_siblings", number, findings::word_of(side),
                                      findings::figure_of(low->now()),
                                      findings::figure(findings::Dimension::length, low->siblings)));
            out.unsure = true;
        }
    // A clearance that there is no range to hold against is as good as none.
    const auto recorded = [&](ValveSide side) {
        const auto& valves = dossier.engine.valves;
        const bool judged = side == ValveSide::intake ? valves.intake_clearance.has_value()
                                                      : valves.exhaust_clearance.has_value();
        return std::ranges::any_of(standing(visit.clearances, number), [&](const Clearance* one) {
            const auto& now = one->left ? one->left : one->found;
            return one->side == side && now && (judged || now->si() <= 0.0);
        });
    };
    for (const PathOdds& path : out.paths)
        if (findings::is_valve(path.path) && path.main >= worth_saying &&
            dossier.engine.valves.adjuster != Adjuster::hydraulic &&
            !recorded(path.path == findings::Path::intake ? ValveSide::intake : ValveSide::exhaust))
            out.reasons.push_back(say("odds.clearance_first", number, findings::word_of(path.path)));
    const auto outcome = [](const std::optional<findings::Path>& main) {
        return main ? findings::word_of(*main) : findings::Word{"outcome:seals_well"};
    };
    // Two other sets may come to the same answer: said once.
    std::vector<std::optional<findings::Path>> said{out.main};
    for (const UnderOther& other : out.under_others)
        if (std::ranges::find(said, other.main) == said.end()) {
            said.push_back(other.main);
            out.reasons.push_back(
                say("odds.depends_on_assumptions", number, outcome(out.main), outcome(other.main)));
        }
    const PathOdds* rings = out.path(findings::Path::rings);
    if (rings && worth_repairing(*rings, reference) && !out.expected_after.empty())
        out.reasons.push_back(say("odds.fresh_hone", number));
    if (!enough_draws(out)) out.reasons.push_back(say("odds.unsure_numbers", number));
}

/// Whether cranking readings set no cylinder apart from the others.
bool reads_alike(const EngineModel& model) {
    const auto& cylinders = model.evidence().cylinders;
    const CrankEvidence* highest = nullptr;
    for (const CylinderEvidence& one : cylinders)
        if (one.dry && (!highest || one.dry->final_pa > highest->final_pa)) highest = &*one.dry;
    return std::ranges::all_of(cylinders, [&](const CylinderEvidence& one) {
        if (!one.dry) return true;
        constexpr double ninety_five = 2.0;
        const double apart = std::hypot(model.cylinder_spread(*one.dry), model.cylinder_spread(*highest));
        return one.dry->final_pa >= highest->final_pa * (1.0 - ninety_five * apart);
    });
}

/// Nothing but dry readings, which say how much leaks only as far as it is known how high they should be.
bool only_dry(const CylinderEvidence& evidence) {
    return evidence.dry && !evidence.wet && evidence.leaks.empty() && evidence.exits.empty() &&
           evidence.earlier.empty();
}

/// Somebody listened, and nothing that was read tells how much leaks.
bool only_heard(const CylinderEvidence& evidence, bool dry_tells) {
    const auto tells = [&](const StateReadings& state) {
        return state.wet || !state.leaks.empty() || (state.dry && dry_tells);
    };
    const auto heard = [](const StateReadings& state) { return !state.exits.empty(); };
    return !tells(evidence) && std::ranges::none_of(evidence.earlier, tells) &&
           (heard(evidence) || std::ranges::any_of(evidence.earlier, heard));
}

/// What air that was heard points at, how much of it there is being unknown.
findings::Message heard_of(const CylinderEvidence& evidence, const CylinderOdds& odds,
                           const findings::Reference& reference) {
    const auto heard = [](const StateReadings& state) {
        return std::ranges::any_of(
            state.exits, [](const ExitEvidence& exit) { return exit.loudness != Loudness::nothing; });
    };
    const PathOdds* most = nullptr;
    for (const PathOdds& path : odds.paths)
        if (!most || path.main > most->main) most = &path;
    const bool any = heard(evidence) || std::ranges::any_of(evidence.earlier, heard);
    if (!any || !most || most->main < reference.assumed("named-from") * (1.0 - odds.seals_well))
        return say("odds.heard_only", evidence.number);
    using findings::Path;
    const bool none_may = findings::may_not_leak(most->path) || most->path == Path::decompressor;
    return say(none_may ? "odds.heard_fault" : "odds.heard_points", evidence.number,
               findings::word_of(most->path));
}

/// Where all that was measured leaves open how much leaks, shares and chances would be little more than what
/// they were before it: they are held back.
void hold_back_what_tells_little(const EngineModel& model, const findings::Reference& reference,
                                 std::vector<CylinderOdds>& odds) {
    const auto& cylinders = model.evidence().cylinders;
    const auto read =
        std::ranges::count_if(cylinders, [](const CylinderEvidence& one) { return one.dry.has_value(); });
    const bool level_unknown = model.evidence().compare_only && reads_alike(model);
    bool low_everywhere = cylinders.size() > 1 && std::ranges::all_of(cylinders, only_dry);
    for (const CylinderOdds& one : odds)
        low_everywhere = low_everywhere && one.seals_well < 1.0 - reference.assumed("named-from");
    for (std::size_t c = 0; c < cylinders.size(); ++c) {
        CylinderOdds& out = odds[c];
        if (only_heard(cylinders[c], !level_unknown))
            out.reasons.push_back(heard_of(cylinders[c], out, reference));
        else if (level_unknown && only_dry(cylinders[c]))
            out.reasons.push_back(say(read > 1 ? "odds.alike_only" : "odds.level_unknown", out.number));
        else if (low_everywhere)
            out.reasons.push_back(say("odds.low_everywhere", out.number));
        else
            continue;
        out.unsure = true;
    }
}

/// What rests on shares and chances is held back with them.
void hold_back(CylinderOdds& of) {
    of.expected_after.clear();
    of.depends_on_assumptions = false;
    std::erase_if(of.reasons, [](const findings::Message& reason) {
        return reason.code == "odds.depends_on_assumptions" || reason.code == "odds.fresh_hone" ||
               reason.code == "odds.clearance_first" || reason.code == "odds.no_expectation" ||
               reason.code == "odds.no_air" || reason.code == "odds.not_listened";
    });
}

/// Where nothing but its own readings says what this engine should read, a range that reaches down to today's
/// reading would make a success of a repair without effect.
void withhold_useless(const Evidence& evidence, CylinderOdds& out) {
    if (!evidence.compare_only) return;
    const auto withheld = std::erase_if(
        out.expected_after, [](const AfterRepair& after) { return !(after.lo_pa > after.now_pa); });
    // Where some part's repair can be told, nothing is missing that a person could do something about.
    if (withheld > 0 && out.expected_after.empty() && enough_draws(out))
        out.reasons.push_back(say("odds.no_expectation", out.number));
}

}  // namespace

bool enough_draws(const CylinderOdds& of) {
    constexpr double enough = 400.0;
    // Under other assumptions nothing but the likeliest outcome is told.
    constexpr double enough_under_others = 100.0;
    return of.effective_samples >= enough &&
           std::ranges::all_of(of.under_others, [](const UnderOther& other) {
               return other.effective_samples >= enough_under_others;
           });
}

const PathOdds* CylinderOdds::path(findings::Path wanted) const {
    const auto found = std::ranges::find(paths, wanted, &PathOdds::path);
    return found == paths.end() ? nullptr : &*found;
}

const CylinderOdds* WhereItLeaks::cylinder(int number) const {
    const auto found = std::ranges::find(cylinders, number, &CylinderOdds::number);
    return found == cylinders.end() ? nullptr : &*found;
}

int shown_percent(double chance) {
    constexpr int step = 5;
    constexpr int most = 95;
    if (!(chance > 0.0)) return 0;
    return std::clamp(step * static_cast<int>(std::lround(100.0 * chance / step)), step, most);
}

Result<WhereItLeaks> where_it_leaks(const Dossier& dossier, const Visit& visit,
                                    const findings::Reference& reference, const OddsOptions& options) {
    Assumptions built_in;
    if (!options.assumptions) {
        auto read = built_in_assumptions();
        if (!read) return tl::unexpected(read.error());
        built_in = std::move(*read);
    }
    const Assumptions& assumptions = options.assumptions ? *options.assumptions : built_in;
    const auto cancelled = [] {
        return fail("odds.cancelled",
                    "The odds were not worked out: something else was asked in the meantime.");
    };

    Evidence evidence = evidence_of(dossier, visit, reference, assumptions, options.tag);
    SurfaceCache only_now;
    std::vector<std::shared_ptr<const CrankSurface>> fits;
    std::vector<const CrankSurface*> surfaces;
    for (const SurfaceRange& range : evidence.surfaces()) {
        auto fitted = (options.surfaces ? *options.surfaces : only_now).surface(range);
        if (!fitted) return tl::unexpected(fitted.error());
        fits.push_back(std::move(*fitted));
        surfaces.push_back(fits.back().get());
        if (options.cancel.stop_requested()) return cancelled();
    }
    const EngineModel model(evidence, assumptions, std::move(surfaces));
    const auto draws = Draws::make(model, options.seed, options.cancel);
    if (!draws) return cancelled();

    WhereItLeaks out;
    out.assumptions_version = assumptions.version;
    out.seed = options.seed;
    out.draws = static_cast<int>(draws->count());
    out.least_effective_samples = static_cast<double>(draws->count());
    out.reasons = evidence.reasons;
    out.reasons.push_back(say("odds.working_assumptions"));
    out.seals_means = seals_means(assumptions);
    const bool diesel = dossier.engine.fuel == Fuel::diesel;
    Random random(options.seed + 1);
    for (std::size_t c = 0; c < evidence.cylinders.size(); ++c) {
        if (options.cancel.stop_requested()) return cancelled();
        CylinderOdds cylinder = summarise(model, *draws, c);
        const CylinderEvidence& from = evidence.cylinders[c];
        cylinder.contradictions = from.contradictions;
        for (auto& misfit : misfits(model, *draws, c))
            cylinder.contradictions.push_back(std::move(misfit));
        cylinder.reasons = from.reasons;
        cylinder.expected_after = after_repairs(model, *draws, c, diesel, random);
        withhold_useless(evidence, cylinder);
        add_reasons(dossier, visit, reference, from, cylinder);
        cylinder.unsure = cylinder.unsure || !enough_draws(cylinder) || !cylinder.contradictions.empty() ||
                          from.wrong_tdc_suspected;
        out.least_effective_samples = std::min(out.least_effective_samples, cylinder.effective_samples);
        out.cylinders.push_back(std::move(cylinder));
    }
    hold_back_what_tells_little(model, reference, out.cylinders);
    for (CylinderOdds& cylinder : out.cylinders)
        if (!has_verdict(cylinder)) hold_back(cylinder);
    out.next_tests = next_tests(model, *draws, diesel, random);
    return out;
}

}  // namespace lapwing::odds
