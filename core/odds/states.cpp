// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/states.h"

#include <algorithm>

#include "core/findings/case.h"

namespace lapwing::odds {

using findings::Path;

std::vector<TestedState> states_of(const Visit& visit, int cylinder) {
    std::vector<TestedState> out;
    const auto look = [&](Tag tag, std::int64_t at) {
        // Of two at the same moment the one looked at later counts as the newer.
        const auto known = std::ranges::find(out, tag, &TestedState::tag);
        const std::int64_t newest = known == out.end() ? at : std::max(at, known->newest_ms);
        if (known != out.end()) out.erase(known);
        const auto before =
            std::ranges::find_if(out, [&](const TestedState& state) { return state.newest_ms <= newest; });
        out.insert(before, {tag, newest});
    };
    for (const TestKind test : {TestKind::dry, TestKind::leak_down, TestKind::wet})
        for (const Reading* reading : standing(visit.readings, test, cylinder))
            look(reading->tag, reading->taken_at.unix_ms);
    for (const ExitNote* note : standing(visit.exits, cylinder))
        look(note->tag, note->at.unix_ms);
    return out;
}

bool touches(Tag done, Path path, const Visit& visit, int cylinder) {
    switch (done) {
        case Tag::after_staking:  // which valve was struck is not recorded
            return findings::is_valve(path);
        case Tag::after_adjustment: {
            if (!findings::is_valve(path)) return false;
            const auto clearances = standing(visit.clearances, cylinder);
            const auto adjusted = [&](ValveSide side) {
                return std::ranges::any_of(
                    clearances, [&](const Clearance* one) { return one->side == side && one->left; });
            };
            const bool told = adjusted(ValveSide::intake) || adjusted(ValveSide::exhaust);
            return !told || adjusted(path == Path::intake ? ValveSide::intake : ValveSide::exhaust);
        }
        case Tag::after_oil_soak:
            return path == Path::rings;
        case Tag::after_running:  // frees rings, clears seats, and a decompressor's as well
            return path == Path::rings || path == Path::decompressor || findings::is_valve(path);
        case Tag::as_found:
        case Tag::after_repair:
            break;
    }
    return true;
}

bool anything_changes(Tag done) {
    return done == Tag::as_found || done == Tag::after_repair;
}

Visit before_adjustment(Visit visit) {
    for (Clearance& one : visit.clearances)
        one.left.reset();
    return visit;
}

}  // namespace lapwing::odds
