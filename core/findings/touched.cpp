// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/findings/touched.h"

#include <algorithm>

namespace lapwing::findings {
namespace {

/// When that valve was first left as it is left now.
Timestamp left_at(const Visit& visit, const Clearance& valve) {
    Timestamp out = valve.at;
    for (const Clearance& one : visit.clearances)
        if (one.cylinder == valve.cylinder && one.side == valve.side && one.valve == valve.valve &&
            one.left && one.left->si() == valve.left->si())
            out = std::min(out, one.at);
    return out;
}

/// Every tag of that cylinder's standing readings and exits that is newer than this moment and another one.
std::vector<Tag> newer_tags(const Visit& visit, int cylinder, Tag tag, Timestamp when) {
    std::vector<Tag> out;
    const auto look = [&](Tag other, Timestamp at) {
        if (other != tag && when < at) out.push_back(other);
    };
    for (const TestKind test : {TestKind::dry, TestKind::leak_down, TestKind::wet})
        for (const Reading* reading : standing(visit.readings, test, cylinder))
            look(reading->tag, reading->taken_at);
    for (const ExitNote* note : standing(visit.exits, cylinder))
        look(note->tag, note->at);
    return out;
}

std::optional<ValveSide> side_of(Path path) {
    if (path == Path::intake) return ValveSide::intake;
    if (path == Path::exhaust) return ValveSide::exhaust;
    return std::nullopt;
}

}  // namespace

bool touches(Tag done, Path path, const Visit& visit, int cylinder) {
    switch (done) {
        case Tag::after_staking:  // which valve was struck is not recorded
            return is_valve(path);
        case Tag::after_adjustment: {
            if (!is_valve(path)) return false;
            const auto clearances = standing(visit.clearances, cylinder);
            const auto adjusted = [&](ValveSide side) {
                return std::ranges::any_of(
                    clearances, [&](const Clearance* one) { return one->side == side && one->left; });
            };
            const bool told = adjusted(ValveSide::intake) || adjusted(ValveSide::exhaust);
            return !told || adjusted(*side_of(path));
        }
        case Tag::after_oil_soak:
            return path == Path::rings;
        case Tag::after_running:  // frees rings, clears seats, and a decompressor's as well
            return path == Path::rings || path == Path::decompressor || is_valve(path);
        case Tag::as_found:
        case Tag::after_repair:
            break;
    }
    return true;
}

Tag tag_now(const Visit& visit, int cylinder) {
    const bool changed = std::ranges::any_of(standing(visit.clearances, cylinder), [](const Clearance* one) {
        return one->found && one->left && one->found->si() != one->left->si();
    });
    return changed ? Tag::after_adjustment : Tag::as_found;
}

bool put_right_since(const Case& at, int cylinder, ValveSide side, Tag tag, Timestamp when) {
    if (tag == Tag::after_adjustment || at.two_stroke() || at.engine.valves.adjuster == Adjuster::hydraulic)
        return false;
    return std::ranges::any_of(standing(at.visit.clearances, cylinder), [&](const Clearance* one) {
        return one->side == side && was_put_right(at, *one) &&
               (tag == Tag::as_found || when < left_at(at.visit, *one));
    });
}

bool put_right_since(const Case& at, int cylinder, Tag tag, Timestamp when) {
    return put_right_since(at, cylinder, ValveSide::intake, tag, when) ||
           put_right_since(at, cylinder, ValveSide::exhaust, tag, when);
}

bool superseded(const Case& at, int cylinder, Tag tag, Timestamp when) {
    return !at.options.tag &&
           (put_right_since(at, cylinder, tag, when) || !newer_tags(at.visit, cylinder, tag, when).empty());
}

ExitsNow exits_now(const Case& at, int cylinder) {
    ExitsNow out{exits_of(at, cylinder), {}, {}};
    if (out.heard.empty() || at.options.tag) return out;
    const auto notes = standing(at.visit.exits, cylinder);
    const Tag tag = notes.back()->tag;
    Timestamp when = notes.back()->at;
    for (const ExitNote* note : notes)
        if (note->tag == tag) when = std::max(when, note->at);
    if (!superseded(at, cylinder, tag, when)) return out;
    const auto newer = newer_tags(at.visit, cylinder, tag, when);
    const auto touched = [&](const Heard& heard) {
        if (!heard.path) return false;
        const auto side = side_of(*heard.path);
        return (side && put_right_since(at, cylinder, *side, tag, when)) ||
               std::ranges::any_of(newer,
                                   [&](Tag done) { return touches(done, *heard.path, at.visit, cylinder); });
    };
    const Loudness most = out.heard.front().loudness;
    const bool masked = most == Loudness::nothing ? std::ranges::any_of(out.heard, touched)
                                                  : std::ranges::any_of(out.heard, [&](const Heard& heard) {
                                                        return heard.loudness == most && touched(heard);
                                                    });
    if (masked) {
        out.earlier = std::move(out.heard);
        out.earlier_tag = tag;
        out.heard.clear();
    } else {
        std::erase_if(out.heard, touched);
    }
    return out;
}

bool dry_counts(const CylinderFindings& cylinder) {
    return cylinder.dry &&
           !(cylinder.dry->superseded && cylinder.leak_down && !cylinder.leak_down->superseded);
}

}  // namespace lapwing::findings
