// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/misfits.h"

#include <algorithm>
#include <cmath>

#include "core/base/apart.h"

namespace lapwing::findings {
namespace {

const Heard* note_of(const CylinderFindings& cylinder, Exit exit) {
    const auto found = std::ranges::find(cylinder.exits, exit, &Heard::exit);
    return found == cylinder.exits.end() ? nullptr : &*found;
}
bool silent(const CylinderFindings& cylinder, Exit exit) {
    const Heard* note = note_of(cylinder, exit);
    return note && note->loudness == Loudness::nothing;
}

/// Half of the coarsest step that these readings were written to, Pa.
double half_step(const Case& at, const std::vector<ReadingId>& ids,
                 std::optional<TypedPressure> Reading::*field) {
    double out = 0.0;
    for (const Reading& reading : at.visit.readings)
        if (reading.*field && std::ranges::find(ids, reading.id) != ids.end())
            out = std::max(out, 0.5 * step_pa(reading, field));
    return out;
}

bool wildly_apart(const Case& at, TestKind test, const std::vector<ReadingId>& readings) {
    std::vector<const Reading*> repeats;
    for (const Reading& reading : at.visit.readings)
        if (std::ranges::find(readings, reading.id) != readings.end()) repeats.push_back(&reading);
    return findings::wildly_apart(at, test, repeats);
}

/// Of the set pressure.
double held_share(const LeakDown& leak) {
    return leak.held.figure.si / leak.set.figure.si;
}

/// Not to be told from a needle at rest.
bool is_nothing(const Case& at, const Figure& shown, const std::vector<ReadingId>& ids,
                std::optional<TypedPressure> Reading::*field) {
    return shown.si <= std::max(half_step(at, ids, field), shown.u95.value_or(0.0));
}
bool holds_nothing(const Case& at, const LeakDown& leak) {
    return is_nothing(at, leak.held.figure, leak.readings, &Reading::held);
}

/// What a sound cylinder of this engine reads: the limit, or its best cylinder, Pa; 0 where nobody knows.
double sound_reading(const Case& at) {
    double out = at.limits.low      ? at.limits.low->figure.si
                 : at.limits.lowest ? at.limits.lowest->figure.si
                                    : 0.0;
    for (const Cylinder& other : at.engine.cylinders)
        if (const auto dry = cranking_of(at, TestKind::dry, other.number))
            out = std::max(out, dry->final.figure.si);
    return out;
}

std::optional<Misfit> of_oil(const Case& at, const CylinderFindings& cylinder) {
    if (!cylinder.dry || !cylinder.wet || cylinder.wet->reading.tag != cylinder.dry->tag ||
        at.engine.fuel == Fuel::diesel || at.decompressor_works())
        return std::nullopt;
    const Figure& dry = cylinder.dry->final.figure;
    const Figure& wet = cylinder.wet->reading.final.figure;
    const double doubt = 0.5 * std::hypot(dry.u95.value_or(0.0), wet.u95.value_or(0.0));
    const double beyond_chance = at.reference.assumed("beyond-chance") * doubt;
    // Oil can fill up, seal, and cost a little speed.
    if (wet.si < dry.si - beyond_chance) return Misfit::wet_below_dry;
    // Of next to nothing any rise is a large one.
    if (builds_nothing(at, cylinder.wet->reading)) return std::nullopt;
    if (wet.si > at.reference.assumed("wet-far-above") * dry.si + beyond_chance) return Misfit::wet_far_above;
    return std::nullopt;
}

std::optional<Misfit> of_air(const Case& at, const CylinderFindings& cylinder) {
    if (!cylinder.leak_down) return std::nullopt;
    const LeakDown& leak = *cylinder.leak_down;
    if (wildly_apart(at, TestKind::leak_down, leak.readings)) return Misfit::held_apart;
    if (holds_nothing(at, leak)) return Misfit::held_nothing;
    const double lost = leak.leakage.figure.si;
    const auto strong = std::ranges::count_if(cylinder.exits, [](const Heard& heard) {
        return heard.by != ListenedBy::bubbles && heard.by != ListenedBy::soapy_water &&
               heard.loudness == Loudness::strong;
    });
    if (lost < at.reference.assumed("loud-but-tight") &&
        strong >= std::lround(at.reference.assumed("loud-exits")))
        return Misfit::loud_but_tight;
    // Most of a large leak must come out at one of these.
    const bool everywhere = note_of(cylinder, Exit::intake) && note_of(cylinder, Exit::exhaust) &&
                            (at.two_stroke() || note_of(cylinder, Exit::breather));
    if (lost > at.reference.assumed("silent-but-leaks") && everywhere &&
        std::ranges::all_of(cylinder.exits,
                            [](const Heard& heard) { return heard.loudness == Loudness::nothing; }))
        return Misfit::silent_but_leaks;
    // Done again, and nothing again: no slip, its valves don't move.
    if (cylinder.dry && cylinder.dry->readings.size() == 1 && !at.decompressor_works() &&
        builds_nothing(at, *cylinder.dry) && held_share(leak) >= at.reference.assumed("very-low-held"))
        return Misfit::built_nothing;
    return std::nullopt;
}

}  // namespace

bool hears(const CylinderFindings& cylinder, Exit exit) {
    const Heard* note = note_of(cylinder, exit);
    return note && note->loudness != Loudness::nothing;
}

bool builds_nothing(const Case& at, const Cranking& dry) {
    return is_nothing(at, dry.final.figure, dry.readings, &Reading::final) ||
           dry.final.figure.si < at.reference.assumed("builds-nothing") * sound_reading(at);
}

TestKind again(Misfit misfit) {
    switch (misfit) {
        case Misfit::built_nothing:
        case Misfit::dry_apart:
            return TestKind::dry;
        case Misfit::wet_below_dry:
        case Misfit::wet_far_above:
            return TestKind::wet;
        case Misfit::held_nothing:
        case Misfit::loud_but_tight:
        case Misfit::silent_but_leaks:
        case Misfit::held_apart:
            break;
    }
    return TestKind::leak_down;
}

CylinderFindings tested(const Case& at, int cylinder) {
    CylinderFindings out;
    out.number = cylinder;
    out.dry = cranking_of(at, TestKind::dry, cylinder);
    out.leak_down = leak_down_of(at, cylinder);
    out.wet = wet_of(at, cylinder, out.dry);
    out.exits = exits_of(at, cylinder);
    return out;
}

std::vector<Misfit> misfits_of(const Case& at, const CylinderFindings& cylinder) {
    std::vector<Misfit> out;
    if (const auto air = of_air(at, cylinder)) out.push_back(*air);
    if (cylinder.dry && !at.decompressor_works() && wildly_apart(at, TestKind::dry, cylinder.dry->readings))
        out.push_back(Misfit::dry_apart);
    else if (const auto oil = of_oil(at, cylinder))
        out.push_back(*oil);
    return out;
}

bool tdc_in_question(const Case& at, const CylinderFindings& cylinder) {
    if (at.two_stroke() || !cylinder.leak_down) return false;
    const LeakDown& leak = *cylinder.leak_down;
    if (held_share(leak) >= at.reference.assumed("very-low-held")) return false;
    // Told to turn it on, and read as little again: it is the cylinder, both of its valves perhaps. Nothing
    // at all is for the tester to answer.
    if (leak.readings.size() > 1) return false;
    // Both valves open: the crank stands on overlap.
    if (hears(cylinder, Exit::intake) && hears(cylinder, Exit::exhaust)) return true;
    if (holds_nothing(at, leak)) return false;
    // A hole that lets out this much leaves little to read while cranking.
    if (cylinder.dry && !at.decompressor_works() && cylinder.dry->tag == leak.tag) {
        const double sound = sound_reading(at);
        if (sound > 0.0 && cylinder.dry->final.figure.si >= at.reference.assumed("leaks-yet-reads") * sound)
            return true;
    }
    const bool heard_elsewhere = std::ranges::any_of(
        cylinder.exits, [](const Heard& heard) { return heard.loudness >= Loudness::clear; });
    return !heard_elsewhere || !(silent(cylinder, Exit::intake) || silent(cylinder, Exit::exhaust));
}

}  // namespace lapwing::findings
