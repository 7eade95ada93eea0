// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <cmath>

#include "core/base/apart.h"
#include "core/findings/instruments.h"
#include "core/findings/misfits.h"
#include "core/findings/touched.h"

namespace lapwing::findings {
namespace {

/// What a rule of thumb points at: the trade's rules know rings, and "valves" for the rest.
enum class Verdict { none, rings, not_rings };

State sealing(const CylinderFindings& cylinder) {
    return worse(dry_state(cylinder), cylinder.leak_down ? cylinder.leak_down->state : State::none);
}

bool suspect(const CylinderFindings& cylinder) {
    return sealing(cylinder) >= State::borderline;
}

Word verdict_word(Verdict verdict) {
    return Word{verdict == Verdict::rings ? "verdict:rings" : "verdict:not_rings"};
}

Verdict wet_rule(const Case& at, CylinderFindings& cylinder) {
    if (!cylinder.wet || !cylinder.wet->rise || !dry_counts(cylinder) || at.engine.fuel == Fuel::diesel ||
        at.decompressor_works() || does_again(cylinder, TestKind::wet))
        return Verdict::none;
    // Of next to nothing any rise is a large one.
    if (builds_nothing(at, *cylinder.dry)) return Verdict::none;
    // In a cylinder that was found sound dry, oil has nothing to show.
    if (sealing(cylinder) == State::good) return Verdict::none;
    const Derived& rise = *cylinder.wet->rise;
    const double rule = at.reference.wet.rise;
    const bool rings = !is_below(rise.figure.si, rule);
    const Figure asked = figure(Dimension::share, rule);
    Remark said = remark(rings             ? "thumb.wet_rings"
                         : at.two_stroke() ? "thumb.wet_no_rise_two_stroke"
                                           : "thumb.wet_no_rise",
                         rise.figure, asked);
    said.from = {rise.from};
    cylinder.rules_of_thumb.push_back(std::move(said));
    if (std::abs(rise.figure.si - rule) < rise.figure.u95.value_or(0.0))
        cylinder.rules_of_thumb.push_back(remark("thumb.wet_within_gauge", asked));
    if (const auto& volume = cylinder.wet->volume_rise;
        volume && rise.figure.si > 0.0 && rise.figure.si <= volume->high.si) {
        cylinder.rules_of_thumb.push_back(remark("thumb.wet_volume_explains", volume->high));
        cylinder.rules_of_thumb.back().from = {volume->from};
        // The rule is said in its own words, but nothing rests on it.
        if (rings) return Verdict::none;
    }
    return rings ? Verdict::rings : Verdict::not_rings;
}

/// First puff as a share of what the cylinder should reach.
/// @param highest cylinder that was measured to read as much; null: a limit, which has no gauge error
Figure first_puff_share(const Case& at, const Cranking& of, double should_pa, const Cranking* highest) {
    const Figure& first = of.first->figure;
    if (!highest) return figure(Dimension::share, first.si / should_pa, first.u95.value_or(0.0) / should_pa);
    const Tester* tester = tester_of(at, TestKind::dry, {});
    const auto gauge = instrument_of(tester ? &tester->gauge : nullptr, should_pa, 0.0, at.reference).gauge;
    return figure(Dimension::share, first.si / should_pa,
                  with_scatter(u95_quotient(gauge, first.si, should_pa), first.si, of.first_scatter_u95,
                               should_pa, highest->scatter_u95));
}

/// A limit means a reading that nothing stood in the way of. What a reading like this one shows of that.
double as_read(const Cranking& of) {
    return of.put_right && of.put_right->figure.si > 0.0 ? of.final.figure.si / of.put_right->figure.si : 1.0;
}

/// First and last of several strokes against what the cylinder should reach. Every gauge builds up over
/// several strokes, so only a build-up unlike that of a sound cylinder says anything.
Verdict first_puff_rule(const Case& at, CylinderFindings& cylinder, const Cranking* highest, bool joint) {
    if (!dry_counts(cylinder) || !cylinder.dry->first || at.decompressor_works()) return Verdict::none;
    if (cylinder.dry->state < State::borderline || seals_well(cylinder)) return Verdict::none;
    const double highest_pa = highest->final.figure.si;
    const double should =
        at.limits.low ? std::max(at.limits.low->figure.si * as_read(*cylinder.dry), highest_pa) : highest_pa;
    const Figure& first = cylinder.dry->first->figure;
    const double final = cylinder.dry->final.figure.si;
    if (builds_nothing(at, *cylinder.dry)) return Verdict::none;  // nothing built up, nothing stayed
    if (!(should > 0.0) || first.si >= at.reference.assumed("first-puff-low") * should) return Verdict::none;
    const bool builds = final >= at.reference.assumed("first-puff-builds") * first.si;
    const bool stays = final <= at.reference.assumed("first-puff-stays") * first.si;
    // Air that leaves through the joint to a neighbour stays away as it does at a valve.
    if (!builds && (!stays || joint)) return Verdict::none;
    Remark said =
        remark(at.two_stroke() ? "thumb.first_puff_low_two_stroke"
               : builds        ? "thumb.first_puff_rings"
                               : "thumb.first_puff_valves",
               first_puff_share(at, *cylinder.dry, should, highest_pa >= should ? highest : nullptr));
    Derivation from;
    from.title = Word{"from:first_puff"};
    from.inputs = {input("first", "", first), input("final", "", figure(Dimension::gauge_pressure, final)),
                   input("should_reach", "", figure(Dimension::gauge_pressure, should))};
    from.source = say("source.published", std::string("GM 2006; Harley-Davidson Sportster 2012"));
    said.from.push_back(std::move(from));
    cylinder.rules_of_thumb.push_back(std::move(said));
    if (at.two_stroke()) return Verdict::none;
    return builds ? Verdict::rings : Verdict::not_rings;
}

std::optional<Path> exit_rule(const Case& at, CylinderFindings& cylinder) {
    if (cylinder.exits.empty()) return std::nullopt;
    const Heard& first = cylinder.exits.front();
    if (first.loudness == Loudness::nothing) {
        if (suspect(cylinder)) cylinder.rules_of_thumb.push_back(remark("thumb.nothing_heard"));
        return std::nullopt;
    }
    const Heard* one = loudest(cylinder);
    if (!one) {
        if (!first.path && (cylinder.exits.size() == 1 || cylinder.exits[1].loudness != first.loudness))
            cylinder.rules_of_thumb.push_back(
                remark("thumb.loudest_exit_no_path", word_of(first.exit), word_of(first.loudness)));
        else
            cylinder.rules_of_thumb.push_back(
                remark("thumb.exits_tie", word_of(first.exit), word_of(cylinder.exits[1].exit)));
        return std::nullopt;
    }
    const auto add = [&](Remark said, Message source) {
        Derivation from;
        from.title = Word{"from:loudest_exit"};
        from.source = std::move(source);
        said.from.push_back(std::move(from));
        cylinder.rules_of_thumb.push_back(std::move(said));
    };
    if (one->path == Path::rings && seals_well(cylinder)) {
        // Valves, plug and joint must not leak at all; rings may.
        add(remark("thumb.ring_air_normal", word_of(one->exit), word_of(one->loudness)),
            say("source.published", std::string("Continental M84-15")));
        return std::nullopt;
    }
    const auto neighbour =
        one->exit == Exit::next_plug_hole ? heard_neighbour(cylinder) : std::optional<int>();
    add(neighbour
            ? remark("thumb.loudest_exit_joint", *neighbour, word_of(one->loudness))
            : remark("thumb.loudest_exit", word_of(one->exit), word_of(one->loudness), word_of(*one->path)),
        source_of(at.reference.exits_basis));
    if (one->path == Path::coolant || one->path == Path::gasket || one->path == Path::next_cylinder)
        cylinder.rules_of_thumb.push_back(remark("thumb.gasket_or_crack"));
    return one->path;
}

using Joint = std::pair<int, int>;

/// Neighbours that are both low and alike while another cylinder is sound: the joint between them.
std::vector<Joint> leaking_joints(const Case& at, const std::vector<CylinderFindings>& cylinders) {
    std::vector<Joint> out;
    if (at.decompressor_works()) return out;
    const auto find = [&](int number) {
        return std::ranges::find(cylinders, number, &CylinderFindings::number);
    };
    const auto low = [](const CylinderFindings& cylinder) {
        return dry_counts(cylinder) && cylinder.dry->state == State::fault;
    };
    for (const auto& pair : neighbours(at.engine)) {
        const auto a = pair.first, b = pair.second;  // a lambda of clang 14 takes no structured binding
        const auto first = find(a);
        const auto second = find(b);
        if (first == cylinders.end() || second == cylinders.end() || !low(*first) || !low(*second)) continue;
        const bool others_sound = std::ranges::any_of(cylinders, [&](const CylinderFindings& other) {
            return other.number != a && other.number != b && other.dry && !low(other);
        });
        const double one = first->dry->final.figure.si;
        const double two = second->dry->final.figure.si;
        if (others_sound &&
            std::abs(one - two) <= at.reference.assumed("neighbours-close") * std::max(one, two))
            out.emplace_back(a, b);
    }
    return out;
}

bool has(const Joint& joint, int cylinder) {
    return joint.first == cylinder || joint.second == cylinder;
}

void joint_rule(const std::vector<Joint>& joints, std::vector<CylinderFindings>& cylinders) {
    for (const Joint& joint : joints) {
        Derivation from;
        from.title = Word{"from:joint"};
        for (const CylinderFindings& cylinder : cylinders)
            if (has(joint, cylinder.number))
                from.inputs.push_back(input("reading", "", cylinder.dry->final.figure));
        from.source = say("source.published", std::string("Dodge Durango manual"));
        for (CylinderFindings& cylinder : cylinders) {
            if (!has(joint, cylinder.number)) continue;
            cylinder.rules_of_thumb.push_back(Remark{say("thumb.joint", joint.first, joint.second), {from}});
            if (!cylinder.points_at) cylinder.points_at = Path::next_cylinder;
        }
    }
}

}  // namespace

void add_rules_of_thumb(const Case& at, std::vector<CylinderFindings>& cylinders) {
    const Cranking* highest = nullptr;
    for (const CylinderFindings& cylinder : cylinders)
        if (cylinder.dry && (!highest || cylinder.dry->final.figure.si > highest->final.figure.si))
            highest = &*cylinder.dry;
    const auto joints = leaking_joints(at, cylinders);
    for (CylinderFindings& cylinder : cylinders) {
        const Verdict wet = wet_rule(at, cylinder);
        const Heard* heard_at = loudest(cylinder);
        const bool joint =
            (heard_at && heard_at->path == Path::next_cylinder) ||
            std::ranges::any_of(joints, [&](const Joint& pair) { return has(pair, cylinder.number); });
        const Verdict puff = first_puff_rule(at, cylinder, highest, joint);
        const auto exit = exit_rule(at, cylinder);
        const Heard* gasket = gasket_air(cylinder);
        if (gasket && heard_at && heard_at->path != gasket->path)
            cylinder.rules_of_thumb.push_back(
                remark("thumb.gasket_too", word_of(gasket->exit), word_of(gasket->loudness)));
        if (!suspect(cylinder)) {
            if (gasket) cylinder.points_at = gasket->path;
            continue;
        }
        const Verdict heard = !exit                  ? Verdict::none
                              : *exit == Path::rings ? Verdict::rings
                                                     : Verdict::not_rings;
        const auto disagree = [](Verdict a, Verdict b) {
            return a != Verdict::none && b != Verdict::none && a != b;
        };
        if (disagree(wet, heard))
            cylinder.contradictions.push_back(
                remark("contra.rules_disagree", verdict_word(wet), word_of(*exit)));
        else if (disagree(wet, puff))
            cylinder.contradictions.push_back(
                remark("contra.rules_disagree", verdict_word(wet), verdict_word(puff)));
        if (exit && !disagree(wet, heard))
            cylinder.points_at = exit;
        else if (!exit && !disagree(wet, puff) && (wet == Verdict::rings || puff == Verdict::rings))
            cylinder.points_at = Path::rings;
        // What is lost may be no fault at all; that some of it comes out there is one.
        if (gasket_state(cylinder) == State::fault &&
            !(cylinder.leak_down && cylinder.leak_down->state == State::fault))
            cylinder.points_at = gasket->path;
    }
    joint_rule(joints, cylinders);
    // What leaked before a valve was put right may leak no more.
    for (CylinderFindings& cylinder : cylinders)
        if (retest_of(at, cylinder)) cylinder.points_at.reset();
}

}  // namespace lapwing::findings
