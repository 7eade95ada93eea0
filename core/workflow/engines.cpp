// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/engines.h"

#include <algorithm>

#include "core/workflow/needs.h"

namespace lapwing::workflow {
namespace {

/// A number that something is recorded for and that the changed engine no longer has; 0 when there is none.
int orphaned_cylinder(const Engine& changed, const Dossier& history) {
    for (const auto& visit : history.visits) {
        std::vector<int> used;
        for (const auto& reading : visit.readings)
            used.push_back(reading.cylinder);
        for (const auto& exit : visit.exits)
            used.push_back(exit.cylinder);
        for (const auto& clearance : visit.clearances)
            used.push_back(clearance.cylinder);
        for (const int number : used)
            if (number != 0 && find_cylinder(changed, number) == nullptr) return number;
    }
    return 0;
}

bool same_numbers(const Engine& a, const Engine& b) {
    return numbers_in_order(a) == numbers_in_order(b);
}

}  // namespace

Intent save_engine(Engine engine) {
    return [engine = std::move(engine)](const Now& now) -> Result<Command> {
        Engine wanted = engine;
        complete(wanted, wanted.made_at, now);
        const auto stored = now.library.engine(wanted.id);
        if (!stored) return tl::unexpected(stored.error());
        if (*stored && !same_numbers(**stored, wanted)) {
            const auto history = now.library.dossier(wanted.id);
            if (!history) return tl::unexpected(history.error());
            if (const int number = orphaned_cylinder(wanted, **history); number != 0)
                return fail(
                    "engine.cylinder_in_use",
                    "Cylinder {} has entries in a session of {}, so it can't go from the engine card. "
                    "Leave it, or take those entries out first.",
                    number, wanted.name);
        }
        std::vector<std::string> args{wanted.name};
        return put_checked(*stored ? "engine.change" : "engine.add", std::move(args), std::move(wanted));
    };
}

Intent remove_engine(EngineId id) {
    return [id](const Now& now) -> Result<Command> {
        const auto engine = need_engine(now, id);
        if (!engine) return tl::unexpected(engine.error());
        const auto sessions = now.library.sessions(id);
        if (!sessions) return tl::unexpected(sessions.error());

        std::vector<Edit> edits;
        for (const auto& session : *sessions) {
            auto below = now.library.removal_of(session.id);
            if (!below) return tl::unexpected(below.error());
            edits.insert(edits.end(), below->begin(), below->end());
        }
        edits.emplace_back(Remove{RecordKind::engine, id.uuid});
        const auto readings = std::ranges::count_if(edits, [](const Edit& edit) {
            const auto* remove = std::get_if<Remove>(&edit);
            return remove != nullptr && remove->kind == RecordKind::reading;
        });
        return Command{"engine.delete",
                       {engine->name, std::to_string(sessions->size()), std::to_string(readings)},
                       std::move(edits)};
    };
}

}  // namespace lapwing::workflow
