// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/findings/case.h"
#include "core/findings/firing.h"

namespace lapwing::findings {

std::vector<Heard> exits_of(const Case& at, int cylinder) {
    auto notes = standing(at.visit.exits, cylinder);
    std::vector<Heard> out;
    if (notes.empty()) return out;
    const Tag tag = at.options.tag.value_or(notes.back()->tag);
    // What was heard while a leak-down that doesn't count had its air on doesn't count either.
    const auto left_out = very_low_beside(at, cylinder).readings;
    for (const ExitNote* note : notes) {
        if (note->tag != tag || std::ranges::any_of(left_out, [&](const Reading* reading) {
                return note->reading == reading->id;
            }))
            continue;
        const auto same = std::ranges::find_if(out, [&](const Heard& heard) {
            return heard.exit == note->exit && heard.neighbour == note->neighbour;
        });
        const Heard heard{note->exit, note->neighbour, note->loudness, note->by,
                          at.reference.path_of(note->exit, at.engine.cycle)};
        if (same == out.end())
            out.push_back(heard);
        else if (same->loudness < heard.loudness)
            *same = heard;
    }
    std::ranges::stable_sort(out, std::greater{}, &Heard::loudness);
    return out;
}

void doubt_joints(const Case& at, int cylinder, std::vector<Heard>& exits) {
    const auto listened = [&](Exit exit) { return std::ranges::count(exits, exit, &Heard::exit) > 0; };
    for (Heard& heard : exits) {
        if (heard.exit != Exit::next_plug_hole || !heard.neighbour) continue;
        const Neighbour there = neighbour_while_tested(at.engine, at.reference, cylinder, *heard.neighbour);
        // Past a valve most of the air leaves by that valve's own exit: who listened there has heard it.
        if ((there.by_intake && !listened(Exit::intake)) || (there.by_exhaust && !listened(Exit::exhaust)))
            heard.path.reset();
    }
}

}  // namespace lapwing::findings
