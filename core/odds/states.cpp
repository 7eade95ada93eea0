// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/states.h"

#include <algorithm>

namespace lapwing::odds {

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

bool anything_changes(Tag done) {
    return done == Tag::as_found || done == Tag::after_repair;
}

Visit before_adjustment(Visit visit) {
    for (Clearance& one : visit.clearances)
        one.left.reset();
    return visit;
}

}  // namespace lapwing::odds
